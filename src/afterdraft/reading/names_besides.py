"""Names that are something else besides: 'Will', 'June', 'Christian', and 'Miss French'.

The pipeline takes them for a verb, a month, a people. What stands beside them tells; the words are those of any school
grammar and of any list of given names (common practice).
"""

import re
from collections.abc import Iterable, Sequence

from afterdraft.reading import lexicon
from afterdraft.reading.lexicon import words_of
from afterdraft.reading.tense_forms import form

VERBS = words_of("will may")
TIMES = words_of("april may june august march monday tuesday wednesday thursday friday saturday sunday")
GIVEN = VERBS | TIMES | words_of("christian paris india london")
ALONE = words_of("english french german irish welsh roman england church street park house young little good asia")
SURNAMES = (
    GIVEN
    | ALONE
    | words_of(
        """
    january february july september october november december christmas lent easter italian russian scotch scottish
    spanish dutch france italy germany rome road square book part chapter poor look see pray hall-door first second so
    """
    )
)  # behind a title, or behind a given name
TITLES_TOO = words_of("king prince duke bishop dean judge major justice marshall master constable squire")
_BY_TITLE = lexicon.PLAIN_TITLES | words_of(
    """
    miss mme madame mlle dr doctor prof professor captain capt colonel col major lieutenant sergeant sgt corporal
    inspector superintendent constable reverend rev aunt uncle nurse
    """
)
_ACTS = words_of(
    """
    looked stared glanced smiled grinned frowned nodded shrugged shook sat walked ran climbed stepped crossed picked
    reached pulled pushed lifted leaned leant knelt bent swallowed hugged kissed ate drank wiped listened waited
    slept woke lay pointed waved blushed winced blinked looks stares glances smiles grins frowns nods shrugs shakes
    sits walks runs climbs steps crosses picks reaches puts pulls pushes lifts leans kneels bends swallows listens
    waits
    """
)
_NOT_THEIRS = words_of(
    """
    put went burst broke began begin begins returned continued finished promised read called cheer cheered saw see
    sees felt feel feels meant
    """
)  # of speaking and feeling, what days and months do too: 'Monday saw them off'
_PERSON = ((lexicon.SPEECH | lexicon.FEELING) - _NOT_THEIRS) | _ACTS
_NAMES = "|".join(sorted(one.capitalize() for one in GIVEN | ALONE))
_ACTING = re.compile(rf"(?<![Tt]he\s)\b({_NAMES})\s(?:\w+ly\s|then\s|only\s|just\s)?([a-z]+)\b")
_TAGGED = re.compile(
    rf"[”\"’'»]\s*([a-z]+)\s({_NAMES})\b(?!\s(?:was|were|is|are|had|has|would|will|might|could|should|next|last)\b)"
)
_BEFORE_A_TIME = words_of(
    """
    in on last next this every each since until till early late mid during coming following
    """
)
_PART_OF = words_of("end beginning middle start month week days day morning evening weeks rest most all ides")
_BEHIND_A_TIME = words_of("morning afternoon evening night noon weather sun sunshine day days rain of")
_NUMBER = re.compile(
    r"\d|^(?:one|two|three|four|five|six|seven|eight|nine|ten|first|second|third"
    r"|(?:four|fif|six|seven|eigh|nin|ten|eleven|twelf|\w+teen|twentie|thirtie)th)$"
)


def names_besides(texts: Iterable[str]) -> frozenset[str]:
    """Which of these words, in small letters, somebody bears in the paragraphs: one speaks, perceives or acts."""
    found: set[str] = set()
    for text in texts:
        found |= {who.lower() for who, does in _ACTING.findall(text) if does in _PERSON}
        found |= {who.lower() for says, who in _TAGGED.findall(text) if says in lexicon.SPEECH}
    return frozenset(found)


def is_titled(title: str, word: str) -> bool:
    """Whether a word behind a title is a surname: 'Mr. Young'. Both in small letters."""
    return title in _BY_TITLE and word in SURNAMES


def is_meant(word: str, before: Sequence[str], after: str, *, first: bool) -> bool:
    """Whether such a name is meant where it stands, and no verb or day: of the two words before it and the one behind
    it, in small letters; `first` where it begins a sentence."""
    if first and word in VERBS:
        return after in ("'s", "’s", ",", "and") or form(after) in ("past", "both") or after in _PERSON
    if word in TIMES:
        earlier, last = ["", "", *before][-2:]
        within = last == "of" and (earlier in _PART_OF or _NUMBER.search(earlier))
        dated = last in _BEFORE_A_TIME or _NUMBER.search(last) or _NUMBER.search(after) or after in _BEHIND_A_TIME
        return not (within or dated)
    return True
