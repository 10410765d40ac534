"""A question was answered: what stands there is meant."""

from afterdraft.desk.answer import Answer
from afterdraft.questions.question import Question
from afterdraft.work.called import quoted
from afterdraft.work.plain import plain
from afterdraft.work.ports import Book


def let_stand(book: Book, question: Question, *, why: str = "") -> None:
    """It is not asked again until its evidence changes, in this draft or in any other."""
    made = Answer(question.fingerprint, question.check, "stands", question.asks, plain(why).strip())
    book.edit(f"Let it stand: {quoted(question.asks)}", lambda desk: desk.answer(made))
