"""Questions as pages show them: their passages side by side, what was answered, where in a scene they rest."""

import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from typing import TYPE_CHECKING

from markupsafe import Markup
from starlette.requests import Request

from afterdraft.desk.answer import Answer
from afterdraft.manuscript.outline import SceneView
from afterdraft.questions.question import Question, Span
from afterdraft.questions.sentences import sentence
from afterdraft.web.asking import PATIENCE, Asked, Asking
from afterdraft.web.differing import Place, differing
from afterdraft.web.facts_here import progress_of
from afterdraft.web.prose import Stretch, prose
from afterdraft.web.view import BookView, chapter_title
from afterdraft.work.questions.to_answer import waiting

if TYPE_CHECKING:
    from afterdraft.questions.check import Check

KEY = 12  # digits of a fingerprint that stand for it in addresses
SIDE_BY_SIDE = 6  # passages of one question that are shown at once
LONG = 420  # code points of a passage, from which its middle is left out
ENDS = 180  # of those, how many are shown at either end
_QUOTED = re.compile(r"“[^”]*”")

Piece = tuple[str, bool]  # words, and whether they are marked


@dataclass(frozen=True, slots=True)
class Passage:
    """Words that a question rests on, with what stands round them."""

    scene: SceneView
    name: str
    chapter: str
    paragraph: int  # over the whole file
    before: str  # of the same sentence
    pieces: tuple[Piece, ...]
    after: str
    around: tuple[Markup, ...]  # the paragraphs round it

    @property
    def path(self) -> str:
        return f"scenes/{self.scene.scene.code}#p{self.paragraph}"


@dataclass(frozen=True, slots=True)
class QuestionView:
    question: Question
    check: "Check"
    passages: tuple[Passage, ...]
    scenes: tuple[tuple[str, str], ...]  # code and name of those it is about, where no passage tells
    answer: Answer | None = None

    @property
    def key(self) -> str:
        return self.question.fingerprint[:KEY]

    @property
    def side_by_side(self) -> tuple[Passage, ...]:
        return self.passages[:SIDE_BY_SIDE]


def asked_of(request: Request, seen: BookView, *, patience: float = PATIENCE) -> Asked | None:
    """What is asked of the draft as it is divided now; None where nothing was yet."""
    asking: Asking = request.app.state.asking
    stamp = (seen.edits, seen.facts.changed)
    asked = asking.asked(seen.book, seen.draft, stamp, read=_is_done(request, seen), patience=patience)
    return asked if asked and asked.division == seen.division else None


def asked_last(request: Request, seen: BookView) -> Asked | None:
    """The same without waiting, and perhaps of the draft before the latest edits; begins nothing."""
    asking: Asking = request.app.state.asking
    last = asking.last(seen.book, seen.draft)
    return last if last and last.division == seen.division else None


def asked_here(request: Request, seen: BookView) -> Asked | None:
    """The same for pages that show it beside other things: they begin it only for a draft that is read, where nothing
    was asked of it yet, or not as it is divided now."""
    last = asked_last(request, seen)
    if _is_done(request, seen) and (last is None or last.can_have_more):
        return asked_of(request, seen, patience=0.0)
    return last


@contextmanager
def answering(request: Request, seen: BookView) -> Iterator[None]:
    """What is edited in here changes nothing that is asked, so that nothing is asked anew because of it."""
    asking: Asking = request.app.state.asking
    yield
    before, after = (seen.edits, seen.facts.changed), (seen.book.edits(), seen.book.facts().changed)
    asking.still(seen.book, seen.draft, before, after)


def _is_done(request: Request, seen: BookView) -> bool:
    """Whether all of the draft is read."""
    return progress_of(request, seen).progress.state == "done"


def question_views(seen: BookView, questions: Iterable[Question], answers: Mapping[str, Answer]) -> list[QuestionView]:
    return [_view(seen, one, answers.get(one.fingerprint)) for one in questions]


def by_paragraph(seen: BookView, shown: SceneView, asked: Asked | None) -> dict[int, list[QuestionView]]:
    """By paragraph of a scene, the questions whose evidence begins in it; those without a passage at the
    beginning of their first scene."""
    found: dict[int, list[QuestionView]] = {}
    if asked is None or not shown.story:
        return found
    for one in waiting(asked.questions, seen.book.answers(), seen.book.turned_checks()):
        here = [span.paragraph for span in one.evidence if span.scene == shown.index]
        for paragraph in dict.fromkeys(here or ([0] if one.scenes[:1] == (shown.index,) and not one.evidence else [])):
            found.setdefault(shown.story[paragraph], []).append(_view(seen, one, None))
    return found


def words_asked(shown: SceneView, rows: Iterable[QuestionView]) -> dict[int, tuple[Stretch, ...]]:
    """By paragraph of a scene, the words that questions rest on; shown where a question is opened there."""
    found: dict[int, tuple[Stretch, ...]] = {}
    for span in {span for row in rows for span in row.question.evidence if span.scene == shown.index}:
        paragraph = shown.story[span.paragraph]
        found[paragraph] = (*found.get(paragraph, ()), Stretch(span.start, span.end, "asked"))
    return found


def _view(seen: BookView, question: Question, answer: Answer | None) -> QuestionView:
    from afterdraft.questions.catalogue import BY_ID  # late: with it come all checks

    scenes = seen.outline.scenes
    evidence = [one for one in question.evidence if one.scene < len(scenes)]
    marked = differing([one.quote for one in evidence], _without_names(seen, question))
    return QuestionView(
        question=question,
        check=BY_ID[question.check],
        passages=tuple(_passage(seen, one, places) for one, places in zip(evidence, marked, strict=True)),
        scenes=tuple((scenes[n].scene.code, seen.name(scenes[n])) for n in question.scenes) if not evidence else (),
        answer=answer,
    )


def _without_names(seen: BookView, question: Question) -> str:
    """The sentence without what scenes are called in it."""
    names = {_bare(seen.name(seen.outline.scenes[number])) for number in question.scenes}
    return _QUOTED.sub(lambda found: " " if _bare(found[0]) in names else found[0], question.asks)


def _bare(text: str) -> str:
    return "".join(filter(str.isalnum, text)).casefold()


def _passage(seen: BookView, span: Span, marked: Sequence[Place]) -> Passage:
    scene = seen.outline.scenes[span.scene]
    paragraph = scene.story[span.paragraph]
    near = [n for n in range(paragraph - 1, paragraph + 2) if n in scene.story]
    blocks = seen.book.blocks(seen.draft.id, near[0], near[-1] + 1)
    text = blocks[paragraph - near[0]].text
    start, end = sentence(text, span.start, span.end)
    stretch = (Stretch(span.start, span.end, "asked"),)
    return Passage(
        scene=scene,
        name=seen.name(scene),
        chapter=chapter_title(seen.chapter(scene)),
        paragraph=paragraph,
        before=_cut(text[start : span.start], at_end=False),
        pieces=tuple(_pieces(span.quote, marked)),
        after=_cut(text[span.end : end], at_end=True),
        around=tuple(prose(blocks[n - near[0]], stretch if n == paragraph else ()) for n in near),
    )


def _cut(text: str, *, at_end: bool) -> str:
    if len(text) <= ENDS:
        return text
    return f"{text[:ENDS].rsplit(' ', 1)[0]} …" if at_end else f"… {text[-ENDS:].split(' ', 1)[-1]}"


def _pieces(quote: str, marked: Sequence[Place]) -> Iterator[Piece]:
    """The words, the marked ones by themselves; of a long passage the beginning and the end."""
    if len(quote) > LONG and not marked:
        yield f"{quote[:ENDS].rsplit(' ', 1)[0]} … {quote[-ENDS:].split(' ', 1)[-1]}", False
        return
    at = 0
    for start, end in marked:
        if quote[at:start]:
            yield quote[at:start], False
        yield quote[start:end], True
        at = end
    if quote[at:]:
        yield quote[at:], False
