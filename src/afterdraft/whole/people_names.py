"""Which forms of names mean people: by title, by speaking and acting, against standing where places stand."""

from collections.abc import Mapping, Sequence, Set
from functools import cache

from afterdraft.reading import lexicon
from afterdraft.reading.lexicon import words_of
from afterdraft.reading.mentions import PARTICLES
from afterdraft.whole.evidence import Evidence
from afterdraft.whole.given_names import FEMALE, MALE
from afterdraft.whole.people_nobody import IN_IT, is_nobody

MARRIED = frozenset({"mrs", "lady", "madame", "mme", "frau", "signora"})
GIVEN_TOO = frozenset({"dean"})  # titles that are given names far oftener, by now
SEVERAL = frozenset({"misses", "messrs", "mesdames"})
GENERIC = words_of(
    """
    man woman girl boy lady gentleman person fellow voice child creature people one lad youth
    """
)
COMMON = words_of(
    """
    young old elder elderly little other poor same first second third tall new
    """
)
ROLE_TAGS = 2  # times that somebody without a name is named as speaker before they count among the cast
ACTING = 0.15  # of its mentions, in which a name must act or be called that is never named as speaker
ELSEWHERE = 2  # times that a word must be written large where nothing but a name is
SURELY = 0.8  # share of its mentions that the pipeline holds for a place or thing, from which a word is no person
DOING = 0.25  # share of its mentions in which a name does something, from which it is a person's for that
MEANT = 0.05  # the same, of mentions after which he or she is said
PLACED = 0.1  # the same, up to which something may be in it or near it
IDLE = 0.5  # share of its mentions in which a word must be called that never does anything


def is_person(form: str, one: Evidence) -> bool:
    """Whether a form means a person: by title, by speaking and acting, against standing where places stand."""
    words = form.split()
    if is_nobody(words, one):
        return False
    if one.signs:
        return True
    if one.roles > one.named:
        return _is_role(words, one)
    if words[0] in lexicon.TITLES and len(words) > 1:
        return one.places + one.others <= one.count * 0.6 or one.tags > 0
    if words[0] in lexicon.TITLES:  # 'Mother', 'Captain': as names
        return one.tags + one.called > 1
    if _acts(one) or _is_given(form, one):
        return True
    if one.named <= one.first and one.tags + one.called < 2 and len(words) == 1:
        return False
    if one.tags == 0 and len(words) == 1 and _is_doubtful(one):
        return False
    bad = one.places + one.others + 2 * one.placed
    good = one.people + 2 * one.tags + one.speaks + one.subject + one.called
    if one.count == 1:
        return one.tags > 0 or (len(words) > 1 and one.people > 0 and bad == 0 and one.subject > 0)
    if one.tags == 0 and one.subject + one.called < ACTING * one.count:
        return False
    return good > bad and (one.tags > 0 or one.speaks > 0 or one.subject > 1 or one.called > 1)


def _acts(one: Evidence) -> bool:
    """Whether a name does things and is spoken of as he or she, and nothing is in it or near it."""
    spoken_of = sum(one.pronouns.values())
    return (
        one.named - one.first >= ELSEWHERE
        and one.subject >= max(2, DOING * one.count)
        and spoken_of >= max(2, MEANT * one.count)
        and one.placed <= PLACED * one.count
    )


def _is_given(form: str, one: Evidence) -> bool:
    """Whether a given name, alone or with a surname, does things, and nothing is in it or near it."""
    known = parse(form)[1][0] in FEMALE | MALE
    return known and one.named > one.first and one.subject >= DOING * one.count and one.placed <= PLACED * one.count


def is_rank(form: str, one: Evidence) -> bool:
    """Whether a role that hardly speaks is somebody's who bears it as a title, if anybody's: 'the duke'."""
    ranks = lexicon.ROLES & lexicon.TITLES - lexicon.NO_NAME_ALONE
    return form in ranks and one.roles > one.named and one.subject >= DOING * one.count


def is_part(form: str, one: Evidence, bare: Set[str]) -> bool:
    """Whether a form may be a surname or given name of somebody in the cast, who is known by a fuller one."""
    told = one.people + sum(one.pronouns.values())
    return (
        form in bare
        and one.named > one.roles
        and one.named - one.first >= ELSEWHERE
        and told > 0
        and one.placed < IN_IT * one.count
    )


def _is_doubtful(one: Evidence) -> bool:
    """Of a word never named as speaker: hardly written large but at beginnings, nobody's by the pipeline, or idle."""
    elsewhere = one.named - one.first
    return (
        elsewhere < ELSEWHERE
        or one.places + one.others >= SURELY * one.count
        or (one.subject == 0 and one.called < IDLE * one.count)
    )


def fills_out(form: str, one: Evidence, bare: Set[str]) -> bool:
    """Whether a rare full name is that of somebody known by one of its parts, or by both."""
    names = parse(form)[1]
    if len(names) != 2 or lexicon.ROLES & set(names) or one.named <= one.roles:
        return False
    if set(names) <= bare or (one.places + one.others + one.placed == 0 and bool(bare & set(names))):
        return True
    return names[0] in bare & (FEMALE | MALE) and one.placed <= PLACED * one.count


def core(form: str, forms: Mapping[str, Evidence]) -> str:
    """The name within a form: nothing of 'Hitherto Ada' and of 'Pike Ada' is new, where Ada and Ada Pike are known.

    "" where the form means a family: 'the Misses Pike', 'the Tom Pikes'.
    """
    words = form.split()
    one = forms[form]
    if words[0] in SEVERAL or (len(words) > 1 and _is_commoner(form.removesuffix("s"), one, forms)):
        return ""
    if len(words) == 2 and _is_commoner(f"{words[1]} {words[0]}", one, forms):
        return f"{words[1]} {words[0]}"
    rest = " ".join(words[1:])
    begins = one.first == one.count and words[0] not in lexicon.TITLES | lexicon.ROLES | MALE | FEMALE
    if begins and _is_commoner(rest, one, forms) and not _is_name(words[0], forms):
        return rest
    return form


def _is_commoner(form: str, one: Evidence, forms: Mapping[str, Evidence]) -> bool:
    return form in forms and forms[form].named > one.named and forms[form] is not one


def _is_name(word: str, forms: Mapping[str, Evidence]) -> bool:
    """Whether a word is written large where nothing but a name is."""
    return word in forms and forms[word].named > forms[word].first


def _is_role(words: Sequence[str], one: Evidence) -> bool:
    if (words[-1] in lexicon.KIN or words[-1] in GENERIC) and 2 * one.large < one.roles:
        return len(words) > 1 and words[0] not in COMMON and one.tags >= ROLE_TAGS and len(one.scenes) <= 2
    if words[-1] in lexicon.ROLES:
        return one.tags >= ROLE_TAGS
    return one.tags >= ROLE_TAGS and one.placed == 0


def is_full(form: str) -> bool:
    return len(parse(form)[1]) > 1


@cache
def parse(form: str) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """Titles and names of a form. A title alone is a name; so is 'St. John'.

    What somebody is can stand for a title ('Farmer Lamb'); a husband's given name is none of hers ('Mrs. John Lamb').
    """
    words = _saints(form.split())
    count = 0
    while count < len(words) - 1 and _is_title(words[count]):
        count += 1
    titles, names = words[:count], words[count:]
    if titles and titles[0] in MARRIED and len(names) > 1 and _is_husband_s(names[0], titles[0]):
        names = names[1:]
    return tuple(titles), tuple(names)


def _is_title(word: str) -> bool:
    return word not in GIVEN_TOO and (word in lexicon.TITLES or word in lexicon.ROLES)


def _is_husband_s(name: str, title: str) -> bool:
    """Whether a given name after Mrs. or Lady is his; a lady has her own unless it is a man's."""
    return name in MALE or (title == "mrs" and name not in FEMALE | PARTICLES)


def _saints(words: Sequence[str]) -> list[str]:
    """'St. John Lamb' is St. John, a Lamb."""
    found: list[str] = []
    for word in words:
        if found and found[-1] == "st":
            found[-1] = f"st {word}"
        else:
            found.append(word)
    return found
