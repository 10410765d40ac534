"""Notes, inks, guarded passages, comments on the web: passages in the text, ticks, forms and their answers."""

import re
from collections.abc import Iterator
from dataclasses import dataclass
from html import unescape
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from lxml import html
from starlette.testclient import TestClient

from afterdraft.desk.anchor import Passage
from afterdraft.desk.ink import COLOURS
from afterdraft.desk.note import About
from afterdraft.manuscript.blocks import Aside, Block, Emphasis, Run
from afterdraft.web.noted import guarded_scenes, ink_ticks
from afterdraft.web.passages import selected
from afterdraft.web.prose import TAGS, Stretch, prose
from afterdraft.web.view import view
from afterdraft.work.notes.change_note import set_note_state
from afterdraft.work.notes.guard_passage import guard_passage
from afterdraft.work.notes.mix_ink import mix_ink, starting_inks
from afterdraft.work.notes.write_note import write_note, write_note_on_passage
from afterdraft.work.ports import Book
from tests.store.sample import TEXTS, begun
from tests.web.opened import opened

COMMENTS = (
    Aside("comment", 4, 1, 5, "Which door?", author="Ottla Brandt"),
    Aside("comment", 6, 2, 2, "Settled?", done=True),
)

kinds: st.SearchStrategy[Emphasis] = st.sampled_from(list(TAGS))


def all_of(element: html.HtmlElement, path: str) -> list[Any]:
    found: Any = element.xpath(path)
    return list(found)


# How passages stand in the text


@st.composite
def laden(draw: st.DrawFn) -> tuple[Block, tuple[Stretch, ...]]:
    """A paragraph with emphasis and passages that overlap anyhow."""
    letters = st.sampled_from("a b\n<&\U0001f30aé\u0301\u00a0")
    text = draw(st.text(alphabet=letters, min_size=1, max_size=30))
    ends = st.integers(0, len(text))
    runs = draw(st.lists(st.tuples(ends, ends, kinds), max_size=4))
    marked = draw(st.lists(st.tuples(ends, ends, st.sampled_from(["noted", "guarded"])), max_size=4))
    return (
        Block(text, tuple(Run(min(a, b), max(a, b), kind) for a, b, kind in runs)),
        tuple(
            Stretch(min(a, b), max(a, b), kind, "blue", "M", f"note-{n}", "Note: <why>")
            for n, (a, b, kind) in enumerate(marked)
            if a != b
        ),
    )


@given(laden())
def test_marked_passages_keep_the_words_and_nest(given_: tuple[Block, tuple[Stretch, ...]]) -> None:
    block, marked = given_
    made = str(prose(block, marked))
    assert unescape(re.sub(r"<[^>]*>", "", made)) == block.text
    # lxml's parser is the outside reader: what it writes back has the same words in as many elements
    parsed = html.fromstring(f"<div>{made}</div>")
    assert len(list(parsed.iterdescendants())) == made.count("</")


@given(laden())
def test_every_code_point_lies_in_the_passages_that_hold_it_and_in_no_other(
    given_: tuple[Block, tuple[Stretch, ...]],
) -> None:
    block, marked = given_
    parsed = html.fromstring(f"<div>{prose(block, marked)}</div>")
    for kind in ("noted", "guarded"):
        expected = [
            any(one.kind == kind and one.start <= at < one.end for one in marked) for at in range(len(block.text))
        ]
        assert [depth > 0 for depth in _depths(parsed, kind)] == expected


def _depths(element: html.HtmlElement, kind: str, depth: int = 0) -> list[int]:
    """For each code point of the text below `element`: how many elements of a class it lies in."""
    inside = depth + (element.get("class") == kind)
    found = [inside] * len(element.text or "")
    for child in element:
        found += _depths(child, kind, inside)
        found += [inside] * len(child.tail or "")
    return found


@given(laden())
def test_each_passage_has_one_sign_that_leads_to_what_is_fastened_there(
    given_: tuple[Block, tuple[Stretch, ...]],
) -> None:
    block, marked = given_
    parsed = html.fromstring(f"<div>{prose(block, marked)}</div>")
    assert sorted(all_of(parsed, ".//a/@href")) == sorted(f"#{one.leads_to}" for one in marked)
    assert all(sign.text_content() == "" and sign.get("aria-label") == "Note: <why>" for sign in all_of(parsed, ".//a"))


@given(st.one_of(st.text(), st.recursive(st.none() | st.integers() | st.floats() | st.text(), st.lists).map(repr)))
def test_whatever_a_window_sends_as_a_passage_is_one_or_none(sent: str) -> None:
    assert all(type(one) is Passage for one in selected(sent))


@pytest.mark.parametrize(
    "sent",
    [
        "",
        "{}",
        "[1]",
        "[" * 100_000,
        '[{"paragraph": 1e999, "start": 0, "end": 1}]',
        '[{"paragraph": 1, "start": 0}]',
        '[{"paragraph": null, "start": 0, "end": 1}]',
    ],
)
def test_what_is_no_passage_is_none(sent: str) -> None:
    assert selected(sent) == ()


def test_a_passage_is_read_as_the_selection_gives_it() -> None:
    sent = '[{"paragraph": 4, "start": 1, "end": 5}, {"paragraph": 6, "start": 0, "end": 3}]'
    assert selected(sent) == (Passage(4, 1, 5), Passage(6, 0, 3))


# Forms, as a browser without scripts sends them


@dataclass
class Screen:
    client: TestClient
    book: Book
    draft: str

    @property
    def base(self) -> str:
        return f"/books/{self.book.id}"

    @property
    def codes(self) -> list[str]:
        return [scene.code for scene in view(self.book).division.scenes]

    def post(self, path: str, **sent: str | list[str]) -> str:
        """Where it leads, in the book."""
        answer = self.client.post(f"{self.base}{path}", data=sent, follow_redirects=False)
        assert answer.status_code == 303, answer.text
        return str(answer.headers["location"]).removeprefix(self.base)

    def refused(self, path: str, status: int, **sent: str) -> str:
        answer = self.client.post(f"{self.base}{path}", data=sent, headers={"Accept": "application/json"})
        assert answer.status_code == status, answer.text
        return str(answer.json()["error"])

    def page(self, path: str) -> html.HtmlElement:
        answer = self.client.get(f"{self.base}{path}")
        assert answer.status_code == 200
        return html.fromstring(answer.text)


@pytest.fixture
def screen(tmp_path: Path) -> Iterator[Screen]:
    book, draft = begun(tmp_path, asides=COMMENTS)
    book.close()
    with opened(Path(book.path)) as (client, shown):
        yield Screen(client, shown, draft)


def test_a_note_on_typed_words_is_shown_in_the_text_and_leads_there_and_back(screen: Screen) -> None:
    screen.post("/inks", start="1")
    motive, *_ = screen.book.inks()
    code = screen.codes[0]
    screen.post("/notes", scene=code, text="Whose door?", ink=motive.id, words="“Door,” said")
    (note,) = screen.book.notes()
    page = screen.page(f"/scenes/{code}")
    (marked,) = all_of(page, "//article//*[@class='noted']")
    assert (marked.text_content(), marked.get("data-ink")) == ("“Door,” said", motive.colour)
    (sign,) = all_of(page, "//article//a[@class='passage-tick']")
    assert (sign.get("href"), sign.get("data-letter")) == (f"#note-{note.id}", motive.letter)
    (item,) = all_of(page, f"//li[@id='note-{note.id}']")
    assert all_of(item, ".//a[@class='quote']/@href") == [f"{screen.base}/scenes/{code}#p4"]
    (listed,) = all_of(screen.page("/notes"), f"//li[@id='note-{note.id}']//a[@class='quote']/@href")
    assert listed == f"{screen.base}/scenes/{code}#p4"


def test_a_note_that_is_done_leaves_the_text_as_it_was(screen: Screen) -> None:
    code = screen.codes[0]
    screen.post("/notes", scene=code, text="Whose door?", words="Door")
    (note,) = screen.book.notes()
    screen.post(f"/notes/{note.id}", state="done")
    page = screen.page(f"/scenes/{code}")
    assert not all_of(page, "//article//*[@class='noted']")
    assert all_of(page, f"//li[@id='note-{note.id}']")


def test_notes_are_looked_at_by_ink_and_by_state_by_plain_links(screen: Screen) -> None:
    motive = mix_ink(screen.book, "Motive")
    code = screen.codes[0]
    write_note(screen.book, "In ink.", scene=view(screen.book).division.scenes[0].id, ink=motive)
    done = write_note(screen.book, "Plain and done.")
    set_note_state(screen.book, done.id, "done")
    for query, shown in (
        ("", ["In ink."]),
        ("?state=all", ["Plain and done.", "In ink."]),
        ("?state=done", ["Plain and done."]),
        (f"?ink={motive}&state=all", ["In ink."]),
        ("?ink=plain", []),
        ("?ink=nonsense&state=nonsense", []),
    ):
        page = screen.page(f"/notes{query}")
        words = [one.text_content() for one in all_of(page, "//ul[@class='notes-list']//*[@class='words']")]
        assert [one for one in words if one in ("In ink.", "Plain and done.")] == shown, query
    ways = all_of(screen.page("/notes?state=all"), "//nav[@aria-label='Which notes']//a/@href")
    assert f"{screen.base}/notes?ink={motive}&state=all" in ways
    assert all_of(screen.page("/notes"), f"//a[@href='{screen.base}/scenes/{code}#notes']")


def test_notes_on_a_chapter_and_on_the_book(screen: Screen) -> None:
    chapter = view(screen.book).division.chapters[0].id
    screen.post("/notes", text="Too early?", about=f"chapter {chapter}")
    screen.post("/notes", text="Whose book?", about="book")
    screen.post("/notes", text="A bus.", about="")
    first, second, third = screen.book.notes()
    assert (first.chapter, second.about_book, third.loose) == (chapter, True, True)
    heads = [head.text_content().strip() for head in all_of(screen.page("/notes"), "//*[@class='note-group']/h2")]
    assert heads == ["Loose", "The book", "Chapter 1: The ferry"]


def test_a_loose_note_is_fastened_to_words_inked_and_loosened(screen: Screen) -> None:
    note = write_note(screen.book, "Look this up.")
    ink = mix_ink(screen.book, "Timeline")
    code = screen.codes[1]
    screen.post(f"/notes/{note.id}", fasten=code.lower(), words="nobody minded")
    screen.post(f"/notes/{note.id}", ink=ink)
    stands = screen.book.note(note.id)
    assert [anchor.quote for anchor in stands.anchors] == ["nobody minded"]
    assert stands.ink == ink
    screen.post(f"/notes/{note.id}", loosen="1")
    assert screen.book.note(note.id).loose
    assert "not in the text" in screen.refused(f"/notes/{note.id}", 422, fasten=code, words="no such words")
    screen.refused(f"/notes/{note.id}", 404, fasten="Z9")
    screen.refused(f"/notes/{note.id}", 422, nothing="1")


def test_a_passage_is_guarded_shown_and_let_go(screen: Screen) -> None:
    code = screen.codes[2]
    screen.post("/guarded", scene=code, words="step. 🌊", text="It rings.")
    (guarded,) = screen.book.guarded(screen.draft)
    page = screen.page(f"/scenes/{code}")
    assert [one.text_content() for one in all_of(page, "//article//*[@class='guarded']")] == ["step. 🌊"]
    assert all_of(page, "//article//a[@class='passage-tick']/@href") == [f"#guarded-{guarded.id}"]
    assert all_of(page, f"//li[@id='guarded-{guarded.id}']//input[@name='why']/@value") == ["It rings."]
    screen.post(f"/guarded/{guarded.id}")
    assert screen.book.guarded(screen.draft) == ()
    screen.refused("/guarded", 422, scene=code, words="")


def test_inks_are_mixed_looked_after_and_done_without(screen: Screen) -> None:
    screen.post("/inks", name="Weather", colour="yellow")
    (ink,) = screen.book.inks()
    assert (ink.name, ink.colour, ink.letter) == ("Weather", "yellow", "W")
    screen.post(f"/inks/{ink.id}", do="look", colour="blue", letter="q")
    (ink,) = screen.book.inks()
    assert (ink.colour, ink.letter) == ("blue", "Q")
    screen.post("/inks", name="Pace")
    screen.post(f"/inks/{ink.id}", do="down")
    assert [one.name for one in screen.book.inks()] == ["Pace", "Weather"]
    screen.post(f"/inks/{ink.id}", do="remove")
    assert [one.name for one in screen.book.inks()] == ["Pace"]
    assert "already" in screen.refused("/inks", 422, name="pace")
    screen.refused("/inks", 422, name="Fog", colour="mauve")
    screen.refused("/inks/ik-none", 404, do="remove")


def test_comments_in_the_file_are_offered_once(screen: Screen) -> None:
    first, second = screen.book.offers(screen.draft, 0, len(TEXTS))
    page = screen.page("/notes")
    assert "2 comments in your file could become notes" in page.text_content()
    assert "by Ottla Brandt" in " ".join(page.text_content().split())
    screen.post("/comments", comment=[str(first.aside)], do="keep")
    screen.post("/comments", comment=[str(second.aside)], do="leave")
    assert [note.text for note in screen.book.notes()] == ["Which door?"]
    assert screen.book.offers(screen.draft, 0, len(TEXTS)) == ()
    screen.refused("/comments", 422, do="keep")
    screen.refused("/comments", 404, comment=str(first.aside), do="keep")


def test_cards_carry_a_tick_for_each_ink_with_open_notes_and_a_sign_where_something_is_guarded(screen: Screen) -> None:
    book = screen.book
    starting_inks(book)
    motive, timeline, *_ = book.inks()
    one, two, _ = (scene.id for scene in view(book).division.scenes)
    write_note(book, "Why?", scene=one, ink=timeline.id)
    write_note(book, "Why not?", scene=one, ink=motive.id)
    write_note(book, "Plain.", scene=one)
    write_note_on_passage(book, "Which door?", draft=screen.draft, passages=[Passage(4, 1, 5)], ink=motive.id)
    set_note_state(book, write_note(book, "Settled.", scene=two, ink=motive.id).id, "done")
    guard_passage(book, screen.draft, [Passage(6, 0, 2)])
    assert ink_ticks(view(book)) == {one: ((motive, 2), (timeline, 1), (None, 1))}
    assert guarded_scenes(view(book)) == {two: 1}
    for path in ("/cards", "/outline"):
        shown = [one.get("title") for one in all_of(screen.page(path), "//p[@class='ticks']/*")]
        assert shown == ["Motive: 2 notes", "Timeline: 1 note", "Plain: 1 note", "1 guarded passage"]


def test_a_note_that_is_found_leads_to_itself(screen: Screen) -> None:
    book = screen.book
    scene = view(book).division.scenes[0]
    on_scene, loose = write_note(book, "Sturgeon?", scene=scene.id), write_note(book, "A sturgeon, loose.")
    on_book = write_note(book, "Why the sturgeon?", about=About(book=True))
    found = {one.get("href"): one.text_content() for one in all_of(screen.page("/search?q=sturgeon"), "//main//li//a")}
    assert set(found) == {
        f"{screen.base}/scenes/{scene.code}#note-{on_scene.id}",
        f"{screen.base}/notes?state=all#note-{loose.id}",
        f"{screen.base}/notes?state=all#note-{on_book.id}",
    }
    assert "Loose note" in found[f"{screen.base}/notes?state=all#note-{loose.id}"]
    assert "Note on a chapter" in found[f"{screen.base}/notes?state=all#note-{on_book.id}"]


def test_the_eight_colours_are_those_that_were_published() -> None:
    """Okabe & Ito, "Color Universal Design", 2008: names and sRGB values, from memory."""
    published = {
        "black": "#000000",
        "orange": "#e69f00",
        "sky blue": "#56b4e9",
        "bluish green": "#009e73",
        "yellow": "#f0e442",
        "blue": "#0072b2",
        "vermillion": "#d55e00",
        "reddish purple": "#cc79a7",
    }
    tokens = (Path(__file__).parents[2] / "src/afterdraft/web/static/css/tokens.css").read_text("utf-8")
    light, _, _ = tokens.partition("@media")
    assert set(published) == set(COLOURS)
    for name, value in published.items():
        assert f"--ink-{name.replace(' ', '-')}: {value};" in light
