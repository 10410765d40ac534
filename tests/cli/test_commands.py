"""Commands as a person or a script types them: what is printed where, exit codes, and that nothing is half done."""

import hashlib
import json
from contextlib import closing
from pathlib import Path

import pytest

import afterdraft as package
from afterdraft.formats.tables.read import read as read_table
from afterdraft.wiring import look_at
from tests.cli.manuscripts import HARBOUR, harbour
from tests.manuscript.unmarked.test_unmarked import BOOK as QUAY
from tests.server import afterdraft

BOOK = "harbour.afterdraft"


def everything(folder: Path) -> dict[str, str]:
    """Every file below a folder, with its digest."""
    return {
        path.relative_to(folder).as_posix(): hashlib.sha256(path.read_bytes()).hexdigest()
        for path in folder.rglob("*")
        if path.is_file()
    }


def begun(home: Path) -> Path:
    made = home / BOOK
    assert afterdraft("begin", harbour(home), "-o", made, home=home).returncode == 0
    return made


def test_version_and_help(home: Path) -> None:
    assert afterdraft("--version", home=home).stdout == f"Afterdraft {package.__version__}\n"
    whole = afterdraft("--help", home=home)
    assert whole.returncode == 0
    for name in ("demo", "begin", "next", "read", "ask", "compare", "book"):
        assert f"  afterdraft {name} " in whole.stdout
        assert afterdraft(name, "--help", home=home).returncode == 0


@pytest.mark.parametrize(
    "arguments",
    [
        ["--nonsense"],
        ["begin"],
        ["read"],
        ["compare", "one.docx"],
        ["next", "one.afterdraft"],
        ["book"],
        ["book", "mend"],
        ["book", "check"],
        ["--port", "70000"],
        ["--port", "many"],
        ["demo", "extra"],
    ],
)
def test_wrong_use_is_2(home: Path, arguments: list[str]) -> None:
    done = afterdraft(*arguments, home=home)
    assert (done.returncode, done.stdout) == (2, "")
    assert "usage:" in done.stderr


def test_a_manuscript_in_a_books_place_is_2_and_told_the_way(home: Path) -> None:
    manuscript = harbour(home)
    done = afterdraft(manuscript, "--no-open", home=home)
    assert (done.returncode, done.stdout) == (2, "")
    assert f"afterdraft begin {manuscript}" in done.stderr


class TestRead:
    def test_json_and_nothing_else_on_standard_output(self, home: Path) -> None:
        done = afterdraft("read", harbour(home), "--json", home=home)
        assert (done.returncode, done.stderr) == (0, "")
        form = json.loads(done.stdout)
        assert (form["form"], form["afterdraft"]) == ("read/1", package.__version__)
        assert [len(chapter["scenes"]) for chapter in form["chapters"]] == [2, 1]
        assert "paragraphs" not in form["scenes"][0]

    def test_with_the_text(self, home: Path) -> None:
        done = afterdraft("read", harbour(home), "--json", "--text", home=home)
        scenes = json.loads(done.stdout)["scenes"]
        assert scenes[0]["paragraphs"][1] == "“Seven,” said Orla at last. “There should be eight.”"

    def test_places_where_a_scene_may_begin_unmarked(self, home: Path) -> None:
        manuscript = home / "quay.txt"
        manuscript.write_text("Chapter One\n\n" + "\n\n".join(QUAY[0]), "utf-8")
        form = json.loads(afterdraft("read", manuscript, "--json", "--text", home=home).stdout)
        (found,) = form["suggested_breaks"]
        (scene,) = form["scenes"]
        assert "\n\n".join(scene["paragraphs"])[found["at"] :].startswith("Three weeks later")
        assert found["why"][0] == "time"
        assert 0 < found["strength"] < 1

    def test_an_outline_for_a_person(self, home: Path) -> None:
        lines = afterdraft("read", harbour(home), home=home).stdout.splitlines()
        assert lines[0] == "The Low Harbour: 51 words, 2 chapters, 3 scenes"
        assert sum(line.startswith("Chapter") for line in lines) == 2

    def test_letters_of_every_script_whatever_the_system_speaks(
        self, home: Path, monkeypatch: pytest.MonkeyPatch
    ) -> None:
        monkeypatch.setenv("PYTHONIOENCODING", "ascii")
        manuscript = home / "Ærø — 海.txt"
        manuscript.write_text(HARBOUR.replace("Orla", "Þóra 海"), encoding="utf-8")
        done = afterdraft("read", manuscript, "--json", "--text", home=home)
        assert "Þóra 海" in done.stdout
        assert json.loads(done.stdout)["file"]["name"] == "Ærø — 海.txt"

    def test_strict_is_1_only_where_something_was_unsure(self, home: Path) -> None:
        done = afterdraft("read", harbour(home), "--json", "--strict", home=home)
        assert done.returncode == (1 if json.loads(done.stdout)["unsure"] else 0)

    def test_several_files_stand_in_a_writers_order(self, home: Path) -> None:
        for number in (1, 2, 10):
            (home / f"chapter {number}.txt").write_text(f"Chapter {number}\n\nThe day of {number}.\n", "utf-8")
        names = [home / f"chapter {number}.txt" for number in (1, 10, 2)]  # as a shell lists them
        for given in (names, [home]):
            done = afterdraft("read", *given, "--json", "--text", home=home)
            told = [scene["paragraphs"] for scene in json.loads(done.stdout)["scenes"]]
            assert told == [["The day of 1."], ["The day of 2."], ["The day of 10."]]

    @pytest.mark.parametrize(
        ("name", "content", "says"),
        [
            ("novel.docx", b"not a Word file", "cannot be read"),
            ("novel.docx", b"PK\x03\x04 only the beginning", "cannot be read"),
            ("novel.txt", b"", "holds no text"),
            ("novel.pdf", b"%PDF-1.7", "not a kind of file"),
        ],
    )
    def test_what_is_no_manuscript_is_3(self, home: Path, name: str, content: bytes, says: str) -> None:
        (home / name).write_bytes(content)
        for command in (["read", name, "--json"], ["begin", name]):
            before = everything(home)
            done = afterdraft(*command, home=home)
            assert (done.returncode, done.stdout) == (3, "")
            assert says in done.stderr
            assert len(done.stderr.splitlines()) == 1
            assert everything(home) == before

    def test_what_is_not_there_is_3(self, home: Path) -> None:
        done = afterdraft("read", "nowhere.docx", home=home)
        assert (done.returncode, done.stdout) == (3, "")
        assert done.stderr.startswith("nowhere.docx cannot be opened: no such file or directory.")

    def test_a_folder_without_manuscripts_is_3(self, home: Path) -> None:
        (home / "empty").mkdir()
        assert afterdraft("read", "empty", home=home).returncode == 3


class TestBegin:
    def test_goes_to_the_books_folder_and_never_over_another(self, home: Path) -> None:
        for name in ("The Low Harbour.afterdraft", "The Low Harbour 2.afterdraft"):
            done = afterdraft("begin", harbour(home), home=home)
            assert done.returncode == 0
            assert done.stdout == f"The book is at {home / 'Books' / name}\n"
            assert (home / "Books" / name).is_file()

    def test_the_manuscript_is_as_it_was(self, home: Path) -> None:
        manuscript = harbour(home)
        manuscript.chmod(0o400)
        before = (manuscript.read_bytes(), manuscript.stat().st_mtime_ns)
        assert afterdraft("begin", manuscript, home=home).returncode == 0
        assert (manuscript.read_bytes(), manuscript.stat().st_mtime_ns) == before

    def test_a_title_of_her_own(self, home: Path) -> None:
        done = afterdraft("begin", harbour(home), "--title", "Ashore: a novel?", home=home)
        assert done.stdout.endswith("Ashore a novel.afterdraft\n")

    def test_a_name_that_is_taken_is_2_and_left_as_it_was(self, home: Path) -> None:
        book = begun(home)
        before = everything(home)
        done = afterdraft("begin", harbour(home), "-o", book, home=home)
        assert done.returncode == 2
        assert "there already" in done.stderr
        assert everything(home) == before

    def test_into_a_folder(self, home: Path) -> None:
        (home / "mine").mkdir()
        afterdraft("begin", harbour(home), "-o", home / "mine", home=home)
        assert [path.name for path in (home / "mine").iterdir()] == ["The Low Harbour.afterdraft"]

    def test_where_nothing_can_be_written_is_4(self, home: Path) -> None:
        (home / "file").write_text("", "utf-8")
        done = afterdraft("begin", harbour(home), "-o", home / "file" / "book", home=home)
        assert done.returncode == 4
        assert "cannot be written" in done.stderr


class TestBook:
    def test_a_new_book_is_sound(self, home: Path) -> None:
        done = afterdraft("book", "check", begun(home), home=home)
        assert (done.returncode, done.stdout) == (0, "The book is sound.\n")

    def test_a_damaged_book_is_4_and_left_as_it_was(self, home: Path) -> None:
        book = begun(home)
        content = bytearray(book.read_bytes())
        content[4096:12288] = bytes(8192)
        book.write_bytes(content)
        before = everything(home)
        done = afterdraft("book", "check", book, home=home)
        assert (done.returncode, done.stdout) == (4, "")
        assert "damaged" in done.stderr
        assert everything(home) == before

    @pytest.mark.parametrize("act", ["check", "backup", "list", "restore"])
    def test_what_is_no_book_is_4(self, home: Path, act: str) -> None:
        (home / "letter.afterdraft").write_text("Dear Sir", "utf-8")
        for name in ("letter.afterdraft", "nowhere.afterdraft"):
            done = afterdraft("book", act, name, home=home)
            assert (done.returncode, done.stdout) == (4, "")
            assert "There is no Afterdraft book" in done.stderr

    def test_backup_list_and_restore(self, home: Path) -> None:
        book = begun(home)
        then = afterdraft("read", harbour(home), home=home).stdout
        assert "no backups" in afterdraft("book", "list", book, home=home).stdout
        made = afterdraft("book", "backup", book, home=home)
        assert Path(made.stdout.removeprefix("The backup is at ").strip()).is_file()
        book.write_bytes(b"gone")  # a disk that failed
        listed = afterdraft("book", "list", book, home=home).stdout
        assert listed.split()[0] == "1"
        done = afterdraft("book", "restore", book, home=home)
        assert done.returncode == 0
        assert "The book is as it was in backup 1" in done.stdout
        assert afterdraft("book", "check", book, home=home).returncode == 0
        assert then

    def test_a_backup_that_is_not_there_is_2(self, home: Path) -> None:
        done = afterdraft("book", "restore", begun(home), "7", home=home)
        assert done.returncode == 2
        assert "Backup 7" in done.stderr

    def test_a_book_of_a_newer_form_is_4(self, home: Path) -> None:
        import sqlite3

        book = begun(home)
        db = sqlite3.connect(book)
        db.execute("PRAGMA user_version = 9999")
        db.close()
        before = everything(home)
        done = afterdraft("book", "check", book, home=home)
        assert done.returncode == 4
        assert "newer Afterdraft" in done.stderr
        assert everything(home) == before


class TestTables:
    @pytest.mark.parametrize("form", ["xlsx", "csv", "docx"])
    def test_the_reverse_outline_as_a_table(self, home: Path, form: str) -> None:
        book = begun(home)
        done = afterdraft("book", "table", book, "-o", f"outline.{form}", home=home)
        assert (done.returncode, done.stdout) == (0, f"The table is at outline.{form}\n")
        (sheet,) = read_table((home / f"outline.{form}").read_bytes(), f"outline.{form}")
        assert sheet.rows[0][:6] == ("Code", "Part", "Chapter", "Number", "Title", "First words")
        with closing(look_at(book)) as opened:
            assert [row[0] for row in sheet.rows[1:]] == [
                scene.code for scene in opened.division(opened.drafts()[0].id).scenes
            ]

    def test_what_is_there_is_left_and_other_kinds_are_refused(self, home: Path) -> None:
        book = begun(home)
        (home / "mine.csv").write_text("mine", "utf-8")
        for name, told in (
            ("mine.csv", "is there already"),
            ("x.ods", ".xlsx, .csv or .docx"),
            ("no/x.csv", "cannot be written"),
        ):
            done = afterdraft("book", "table", book, "-o", name, home=home)
            assert (done.returncode, done.stdout) == (4 if "no" in name else 2, "")
            assert told in done.stderr
        assert (home / "mine.csv").read_text("utf-8") == "mine"


class TestDemo:
    def test_made_once_and_then_found_again(self, home: Path) -> None:
        first = afterdraft("demo", "--make-only", home=home)
        path = Path(first.stdout.removeprefix("The demonstration book is at ").strip())
        assert path.parent == home / "Books"
        before = path.read_bytes()
        assert afterdraft("demo", "--make-only", home=home).stdout == first.stdout
        assert path.read_bytes() == before

    def test_fresh_keeps_what_was(self, home: Path) -> None:
        book = home / "demo.afterdraft"
        afterdraft("demo", "--make-only", "--book", book, home=home)
        done = afterdraft("demo", "--make-only", "--fresh", "--book", book, home=home)
        kept = next(line for line in done.stdout.splitlines() if line.startswith("What it was before"))
        assert Path(kept.removeprefix("What it was before is kept at ")).is_file()
        assert afterdraft("book", "check", book, home=home).returncode == 0
        assert [path.name for path in home.glob("*.afterdraft")] == ["demo.afterdraft"]
        assert not list(home.glob(".*"))

    def test_fresh_where_there_is_none_just_makes_it(self, home: Path) -> None:
        done = afterdraft("demo", "--make-only", "--fresh", home=home)
        assert done.returncode == 0
        assert "kept" not in done.stdout


def test_a_fault_of_ours_is_70_and_written_down_without_text(home: Path) -> None:
    """A broken installation, as nothing else makes one happen on purpose."""
    (home / "broken").mkdir()
    for library in ("docx", "lxml"):
        code = "text = 'The boats came in'\nraise ValueError(text)\n"
        (home / "broken" / f"{library}.py").write_text(code, encoding="utf-8")
    manuscript = Path(package.__file__).parent / "demodata" / "manuscript.docx"
    done = afterdraft("read", manuscript, home=home, variables={"PYTHONPATH": str(home / "broken")})
    assert (done.returncode, done.stdout) == (70, "")
    (log,) = home.rglob("afterdraft.log")
    assert str(log) in done.stderr
    written = log.read_text("utf-8")
    assert "ValueError" in written
    assert "The boats" not in written + done.stderr
