"""The demonstration book: built the same every time, read back whole, and fit to be shown."""

import json
import re
import zipfile
from collections import Counter
from collections.abc import Iterable, Iterator
from typing import Any

import pytest
from docx import Document

from demo.build import DEMODATA, HERE, built
from demo.revise import consistent, second, stored
from demo.source import parse, parts, plain, read_chapters

SCENES: dict[str, Any] = json.loads((HERE / "scenes.json").read_text(encoding="utf-8"))
WORK: dict[str, Any] = json.loads((DEMODATA / "work.json").read_text(encoding="utf-8"))
CARD_FIELDS = {"opens", "summary", "comes_in", "leaves", "needed_for"}
REPEATED = 8  # words in a row that a careful author does not write twice

# Common practice: what readers of machine-made and hasty fiction complain of first.
STOCK_NAMES = (
    "Elara",
    "Marcus",
    "Elena",
    "Thorne",
    "Blackwood",
    "Maya",
    "Liam",
    "Eleanor",
    "Lily",
    "Chen",
    "Whisper",
    "Aria",
    "Kael",
    "Lyra",
    "Seraphina",
    "Jasper",
    "Evelyn",
    "Ethan",
    "Sophia",
    "Isabella",
    "Ravenwood",
    "Hawthorne",
    "Ilse",
)
STOCK_PHRASES = (
    "something shifted",
    "let out a breath",
    "breath she didn’t know",
    "breath he didn’t know",
    "a testament to",
    "tapestry of",
    "sent shivers",
    "shiver down",
    "heart pounded",
    "heart hammered",
    "heart skipped",
    "eyes widened",
    "time stood still",
    "deafening silence",
    "silence stretched",
    "hung in the air",
    "little did",
    "for the first time in years",
    "couldn’t help but",
    "barely above a whisper",
    "a mix of",
    "the weight of the world",
    "at the end of the day",
    "in that moment",
    "bated breath",
    "steeled herself",
    "steeled himself",
    "unshed tears",
    "ghost of a smile",
    "reach his eyes",
    "reach her eyes",
    "like a knife through",
    "dance of shadows",
    "dust motes",
    "ozone",
    "a knowing look",
    "ever be the same",
    "everything had changed",
)
WORD = re.compile(r"[\w’]+")


def scenes() -> list[dict[str, Any]]:
    return [scene for chapter in SCENES["chapters"] for scene in chapter["scenes"]]


def story() -> Iterator[tuple[str, str]]:
    """(chapter line, paragraph) of the whole book."""
    for chapter in read_chapters(HERE / "first"):
        for line in chapter.lines:
            if line.kind != "mark":
                yield chapter.line, line.text


def test_a_rebuild_gives_the_committed_bytes() -> None:
    made = built()
    assert made == built()
    assert [path.name for path, content in made.items() if path.read_bytes() != content] == []


def test_nothing_lies_among_the_built_files_that_is_not_built() -> None:
    lying = {path for path in DEMODATA.rglob("*") if path.is_file() and path.suffix not in (".py", ".pyc")}
    assert lying == {path for path in built() if path.is_relative_to(DEMODATA)}


def test_the_book_is_long_enough_to_show_every_screen() -> None:
    assert 28 <= len(scenes()) <= 34
    assert 10 <= len(SCENES["chapters"]) <= 12
    assert 20_000 <= SCENES["words"] <= 26_000
    assert {scene["began"] for scene in scenes()} == {"heading", "#", "***", "missing"}
    assert sum(scene["began"] == "missing" for scene in scenes()) == 1
    assert {chapter["heading"] for chapter in SCENES["chapters"]} == {"styled", "centred"}


def test_the_title_page_tells_the_true_length() -> None:
    paragraphs = [paragraph.text for paragraph in Document(str(DEMODATA / "manuscript.docx")).paragraphs]
    about = next(text for text in paragraphs if text.startswith("about "))
    said = int(about.removeprefix("about ").removesuffix(" words").replace(",", ""))
    assert abs(said - SCENES["words"]) <= 50


def test_the_typescript_holds_what_an_author_s_file_holds() -> None:
    document = Document(str(DEMODATA / "manuscript.docx"))
    runs = [run for paragraph in document.paragraphs for run in paragraph.runs]
    assert any(run.italic for run in runs)
    assert any(run.text.startswith("\t") for run in runs)
    assert 1 <= len(list(document.comments)) <= 3
    assert {comment.author for comment in document.comments} == {document.core_properties.author}
    assert not any("footnote" in name for name in zipfile.ZipFile(DEMODATA / "manuscript.docx").namelist())


def test_no_paragraph_is_lost_between_source_and_typescript() -> None:
    typed = {paragraph.text.strip() for paragraph in Document(str(DEMODATA / "manuscript.docx")).paragraphs}
    assert [text for _, text in story() if text not in typed] == []


@pytest.mark.parametrize("entry", WORK["summaries"] + WORK["notes"], ids=lambda entry: str(entry["opens"]))
def test_each_card_and_note_finds_its_one_scene(entry: dict[str, Any]) -> None:
    if entry["opens"] is None:
        return
    found = [scene for scene in scenes() if opening(scene).startswith(entry["opens"])]
    assert len(found) == 1
    assert found[0]["began"] != "missing"


def test_the_writer_has_outlined_every_scene_that_is_one() -> None:
    summaries, notes = WORK["summaries"], WORK["notes"]
    assert all(set(entry) <= CARD_FIELDS and entry["summary"].strip() for entry in summaries)
    assert len(summaries) == sum(scene["began"] != "missing" for scene in scenes())
    assert sum(note["opens"] is None for note in notes) >= 3
    assert sum(note["opens"] is not None for note in notes) >= 3
    assert any("comes_in" in entry for entry in summaries)


def test_no_stock_names_or_phrases() -> None:
    text = "\n".join([paragraph for _, paragraph in story()] + [scene.text for scene in second()])
    assert [name for name in STOCK_NAMES if re.search(rf"\b{name}\b", text)] == []
    assert [phrase for phrase in STOCK_PHRASES if phrase in text.lower()] == []


def runs_twice(texts: Iterable[str]) -> list[str]:
    """Runs of as many words as no careful author writes twice, that stand twice in `texts`."""
    seen: Counter[tuple[str, ...]] = Counter()
    for text in texts:
        words = [word.lower() for word in WORD.findall(text)]
        seen.update(set(zip(*(words[at:] for at in range(REPEATED)), strict=False)))
    return [" ".join(words) for words, times in seen.items() if times > 1]


def test_no_passage_is_written_twice_but_the_two_that_are_planted() -> None:
    planted = [f["passages"][0]["words"] for f in stored("faults.json")["faults"] if f["kind"] == "twice"]
    allowed = set(runs_twice(planted + planted))
    assert set(runs_twice(paragraph for _, paragraph in story())) == allowed
    assert runs_twice(plain(part) for scene in consistent() for part in parts(scene)) == []


def test_quotes_are_curly_and_closed() -> None:
    for where, paragraph in story():
        assert '"' not in paragraph and "'" not in paragraph, (where, paragraph[:60])
        assert paragraph.count("“") - paragraph.count("”") in (0, 1), (where, paragraph[:60])


def test_a_chapter_file_without_its_heading_is_refused() -> None:
    with pytest.raises(ValueError, match="begins with @styled or @centred"):
        parse("The sack came down.\n\nIt was black.")


def opening(scene: dict[str, Any]) -> str:
    return str(scene["opens"])


def test_opening_words_tell_all_scenes_apart() -> None:
    openings = [opening(scene) for scene in scenes()]
    assert len(set(openings)) == len(openings)


def test_only_sources_lie_in_the_folder_of_chapters() -> None:
    files = sorted((HERE / "first").iterdir())
    assert [path.suffix for path in files] == [".txt"] * len(SCENES["chapters"])
