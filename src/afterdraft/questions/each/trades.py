"""Two trades of one person, told as what they are called by."""

import re
from collections import defaultdict
from collections.abc import Iterator, Sequence
from itertools import combinations

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.reading.lexicon import TITLES
from afterdraft.whole.traits import PersonTrait

SURE = 0.8  # of whose it is
_ALIKE = (
    "policeman constable detective inspector officer spy",
    "clergyman curate vicar rector parson preacher minister priest monk nun",
    "doctor surgeon physician apothecary chemist pharmacist dentist scientist nurse midwife vet",
    "author novelist poet writer journalist reporter editor publisher printer historian philosopher",
    "sailor mariner pilot fisherman officer smuggler",
    "maid nurse housemaid chambermaid dairymaid governess housekeeper cook",
    "lawyer solicitor barrister judge magistrate clerk coroner",
    "clerk secretary typist accountant librarian",
    "landlord landlady innkeeper barman barmaid waiter waitress shopkeeper brewer",
    "teacher tutor professor headmaster headmistress schoolmaster schoolmistress schoolteacher governess",
    "butler valet steward footman porter waiter",
    "coachman driver groom jockey",
    "farmer shepherd keeper gamekeeper forester hunter miller",
    "artist painter sculptor photographer",
    "musician singer composer conductor actor actress",
    "mason builder architect carpenter joiner surveyor engineer mechanic smith blacksmith plumber electrician",
    "draper tailor dressmaker seamstress saddler shoemaker cobbler weaver grocer merchant shopkeeper salesman",
)  # that one person may well be called in turn; by hand
ALIKE = tuple(frozenset(words.split()) for words in _ALIKE)
_NAME = r"(\b[A-Z][\w’'.-]*)"
_CALLED = re.compile(rf"{_NAME}[’'s]*,? (?:the|our|my|his|her|their|an?) (?:[\w-]+ )?$")
_WAS = re.compile(rf"{_NAME}(?:, who)? (?:was|had been|worked as|had worked as|had once been) an? $")
_GOES_ON = re.compile(r"(?:, (?:the|his|her|and|a|an)\b|[’-]| and\b| [a-z]+er\b)")  # of a list
_BY_TRADE = re.compile(r" by (?:trade|profession|calling)\b")


def find(seen: Seen) -> Iterator[Finding]:
    by: defaultdict[str, list[PersonTrait]] = defaultdict(list)
    for one in seen.traits:
        if one.trait == "trade" and one.sure >= SURE and _is_called_so(seen, one):
            by[one.person].append(one)
    for person, said in by.items():
        pairs = (
            pair
            for pair in combinations(said, 2)
            if not _go_together(pair[0].value, pair[1].value) and not _says_both(seen, pair)
        )
        if pair := next(pairs, None):
            name = seen.name(person)
            yield Finding(
                evidence=tuple(_sentence(seen, one) for one in pair),
                strength=0.65,
                subject=f"trade of {name.lower()}",
                words={"name": name, "first": pair[0].value, "other": pair[1].value},
                people=(person,),
            )


def _is_called_so(seen: Seen, one: PersonTrait) -> bool:
    """'Tom Pike, the baker', 'Tom was a baker', 'he was a baker by trade': right behind a name of that person, and no
    further one of a list; behind a pronoun only where the words say that it is a trade."""
    text = seen.texts[one.scene][one.paragraph]
    if _BY_TRADE.match(text, one.end):
        return True
    names = [form for form, person in seen.book.cast.by_form.items() if person == one.person]
    before = _CALLED.search(text[: one.start]) or _WAS.search(text[: one.start])
    named = before is not None and any(before[1].lower().rstrip(".") in form.split() for form in names)
    return named and not _is_shared(seen, text, before, names) and not _GOES_ON.match(text, one.end)


def _is_shared(seen: Seen, text: str, called: re.Match[str] | None, names: Sequence[str]) -> bool:
    """Whether others of the cast go by that name too, and no further name of this person stands before it."""
    if called is None:
        return False
    word = called[1].lower().rstrip(".")
    bearers = {person for form, person in seen.book.cast.by_form.items() if person and word in form.split()}
    before = text[: called.start(1)].lower().replace(".", "").split()[-1:]
    own = {each for form in names for each in form.split()} - {word} - TITLES
    return len(bearers) > 1 and own.isdisjoint(before)


def _go_together(one: str, other: str) -> bool:
    return one == other or any({one, other} <= some for some in ALIKE)


def _says_both(seen: Seen, pair: Sequence[PersonTrait]) -> bool:
    """Whether one passage has both trades: 'the baker, who had been a soldier'."""
    one, other = (_sentence(seen, each).quote for each in pair)
    return pair[1].value in one or pair[0].value in other


def _sentence(seen: Seen, one: PersonTrait) -> Span:
    text = seen.texts[one.scene][one.paragraph]
    return seen.span(one.scene, one.paragraph, *sentence(text, one.start, one.end))


CHECK = Check(
    id="trade",
    name="Two trades",
    family="continuity",
    looks_at="Somebody who has one trade in one place (‘Tom Pike, the baker’, ‘Tom was a baker’) and quite another "
    "elsewhere.",
    method="Trades that stand right behind a name, or are said to be one (‘a baker by trade’). Those that one person "
    "may well be called in turn (‘the sailor’, ‘the fisherman’) are let be, and so are lists of people. The rule is "
    "our own.",
    blind="Trades told in other words. Who really has two is asked about, and so is who changes his.",
    reads=("words", "cast"),
    find=find,
    recipe=5,
)
