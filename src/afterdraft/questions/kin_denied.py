"""What words say that somebody has none of: brothers or sisters, a wife or husband, children, any family."""

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from afterdraft.questions.sentences import sentence

SIBLINGS, SPOUSE, CHILDREN, FAMILY = "siblings", "spouse", "children", "family"
_BROTHER, _SISTER = frozenset({"brother", "brothers"}), frozenset({"sister", "sisters"})
_SON, _DAUGHTER = frozenset({"son", "sons"}), frozenset({"daughter", "daughters"})
_SIBLING = frozenset({"sibling", "siblings", "twin"})
_MORE = frozenset({"aunt", "uncle", "cousin", "cousins", "nephew", "niece", "nephews", "nieces", "grandson"})
KIN: Mapping[str, frozenset[str]] = {
    SIBLINGS: _BROTHER | _SISTER | _SIBLING,
    SPOUSE: frozenset({"wife", "husband"}),
    CHILDREN: _SON | _DAUGHTER | {"children"},  # ‘my child’ is said to anybody
    FAMILY: _BROTHER | _SISTER | _MORE,
}
_N = "[’']"
_IS = rf"(?:\b(?:was|were|am|is|been|being)|{_N}m|{_N}s|,)(?: (?:only|really|still|both|himself|herself))?"
_HAS = rf"(?:\b(?:had|has|have|having|got|with)|{_N}ve|{_N}d|{_N}s)(?: got)?"
_NOW = (
    r"\b(?! (?:of (?!(?:his|her|my) own)|left|now|like|here|there|to|with|in|at|who|that|yet|but|except|save|ships?)\b"
    rf"|-|{_N}s)"
)
_BOTH = r"(?:(?:,? (?:and|or|nor)(?: no| an?y?)?|, no) (?:brothers?|sisters?))?"
_CLAIMS: Mapping[str, tuple[str, ...]] = {
    SIBLINGS: (
        rf"\bno (?:brothers?|sisters?|siblings){_BOTH}{_NOW}",
        rf"\bnever had (?:an?|any) (?:brothers?|sisters?|siblings?){_BOTH}{_NOW}",
        rf"(?:\b(?:neither|not|nor|without)|n{_N}t(?: got| have)?(?: any)?) (?:an? )?(?:brothers?|sisters?),? n?or "
        rf"(?:an? )?(?:brothers?|sisters?){_NOW}",
        rf"{_IS} (?:an?|(?:the )?[\w’']+{_N}s|the|their|his|her) (?:\w+ )?only (?:child|son|daughter)"
        r"(?! (?:in|here|at|left|now|who|that|to)\b|[’'-])",
    ),
    SPOUSE: (
        rf"(?:\b(?:had|has|have|was)|{_N}ve|{_N}d|{_N}s) never (?:been )?married"
        r"(?! (?:him|her|me|you|again|if|a|an|the|to|any)\b)",
        r"\bnever (?:took|taken|had) a (?:wife|husband)(?! (?:who|that|to|like)\b)",
        rf"{_IS} an? (?:(?:old|confirmed|lifelong|elderly|middle-aged|born) )?(?:bachelor|spinster|old maid)\b"
        r"(?! \w|[’'-])",
    ),
    CHILDREN: (
        rf"{_HAS} no (?:children|child|kids|sons?|daughters?)(?: of (?:his|her|my) own)?{_NOW}",
        rf"\bnever had (?:any |an? )?(?:children|child|kids|son|daughter){_NOW}",
        rf"{_IS} childless\b",
    ),
    FAMILY: (
        rf"{_HAS} no (?:family|relations?|relatives?|kin|people)(?: \w+)? "
        r"(?:living|left|alive|in the world|anywhere|at all)\b",
        rf"{_HAS} no living (?:relations?|relatives?|kin)\b",
        rf"(?:\bnot|n{_N}t) a (?:single )?(?:living )?(?:relation|relative) in the world\b",
        rf"{_IS} (?:all |quite |utterly )?alone in the world\b",
        r"\bwithout (?:kith (?:n?or|and) kin|a (?:relation|relative) in the world)\b",
    ),
}
_COMPILED = tuple((kind, re.compile(pattern)) for kind, some in _CLAIMS.items() for pattern in some)
_UNREAL = re.compile(
    r"\b(?:if|unless|wish\w*|as though|might|would|pretend\w*|lie[ds]?|lying|jok\w+|say(?:s|ing)? that|whether|almost"
    r"|like (?:an?|being)|perhaps|suppos\w+|imagin\w+|until|till|before|now that"
    r"|dream\w*|in those days|then|at (?:the|that) time)\b"
    r"|\?",
    re.IGNORECASE,
)
_OTHERS = re.compile(
    r"\b(?:who|whom|that|which|of|for)\s(?:\w+\s)?$"
)  # 'an aunt who had no children', 'guest of neither'
_REPORT = re.compile(
    r"\b(?:you|he|she|they|we|I|[A-Z]\w+)(?: had|[’']d| have|[’']ve)? (?:told|said|swore|sworn|claimed|thought|wrote"
    r"|understood|knew|believed|heard|gave out)\b[^.?!;]{0,60}$"
)


@dataclass(frozen=True, slots=True)
class Denied:
    """Code points of a paragraph that say it; `words` are those for kin that cannot be."""

    kind: str
    words: frozenset[str]
    start: int
    end: int


def denials(text: str) -> Iterator[Denied]:
    """Of one paragraph, what is plainly said.

    >>> [(one.kind, sorted(one.words)) for one in denials("She had no brothers. If I had no sisters, I’d go.")]
    [('siblings', ['brother', 'brothers', 'sibling', 'siblings', 'twin'])]
    """
    for kind, pattern in _COMPILED:
        for match in pattern.finditer(text):
            start, end = sentence(text, *match.span())
            before = text[start : match.start()]
            if not (_UNREAL.search(text[start:end]) or _REPORT.search(before) or _OTHERS.search(before)):
                yield Denied(kind, _words(kind, match.group()), *match.span())


def is_called_in_question(text: str, kind: str) -> bool:
    """Whether somebody there reports or asks it: 'you told me that you had no brother'."""
    for one, pattern in _COMPILED:
        for match in pattern.finditer(text) if one == kind else ():
            start, end = sentence(text, *match.span())
            if _REPORT.search(text[start : match.start()]) or "?" in text[start:end]:
                return True
    return False


def _words(kind: str, said: str) -> frozenset[str]:
    """'No brothers' leaves sisters; an only son has none of his own kind."""
    if kind == SIBLINGS and "child" not in said and "sibling" not in said:
        brother, sister = re.search(r"\b(?:brother|son)", said), re.search(r"\b(?:sister|daughter)", said)
        return (_BROTHER if brother else frozenset()) | (_SISTER if sister else frozenset()) | _SIBLING
    if kind == CHILDREN and re.search(r"\b(?:son|daughter)", said):
        return _SON if "son" in said else _DAUGHTER
    return KIN[kind]
