"""Every error the program raises on purpose, as one tree.

An error takes facts and writes its own sentence: what happened, that nothing
is lost, what to do. The faces (command line, web) map the class to an exit code or status once.

    AfterdraftError
    ├── UnreadableManuscript      the file cannot be read as a manuscript (exit 3)
    │   ├── UnknownFormat
    │   ├── EmptyManuscript
    │   ├── DamagedFile
    │   ├── LockedFile
    │   ├── ProtectedFile         protected against copying
    │   ├── TooLarge
    │   ├── UnreadableTable       it cannot be read as a table
    │   └── CannotOpen            it is not there, or may not be read
    ├── BookTrouble               the book file cannot be used as it is (exit 4)
    │   ├── DamagedBook
    │   ├── NewerBook
    │   ├── BookOpenElsewhere
    │   ├── NotABook
    │   ├── CannotWrite           disk full, read-only folder, vanished drive
    │   ├── BookClosed            it was closed meanwhile, in another window
    │   └── NotAnswering          the program runs already but gives no answer
    ├── EditRefused               an edit cannot be done as asked; nothing was changed
    │   ├── Stale                 the text was changed elsewhere meanwhile
    │   ├── NothingToUndo
    │   ├── Missing               the thing named is not there (any more)
    │   └── NotPossible
    │       └── NameTaken         another has this name; it can be added all the same
    ├── WrongUse                  a command was given something it cannot use (exit 2)
    │   ├── PortTaken
    │   ├── NotABookYet           a manuscript where a book is wanted
    │   └── AlreadyThere          the file a command would make exists already
    └── Fault                     a fault of ours (exit 70)
"""


class AfterdraftError(Exception):
    """Base of all; `str(error)` is a sentence a writer understands."""


class UnreadableManuscript(AfterdraftError):
    """The file cannot be read as a manuscript."""


class UnknownFormat(UnreadableManuscript):
    def __init__(self, name: str, reads: str) -> None:
        super().__init__(
            f"“{name}” is not a kind of file that can be read here. Nothing was changed. "
            f"Save the manuscript as one of these and bring it in again: {reads}."
        )


class EmptyManuscript(UnreadableManuscript):
    def __init__(self, name: str) -> None:
        super().__init__(
            f"“{name}” holds no text. Nothing was changed. "
            "Check that it is the right file, and that the text is not a picture."
        )


class DamagedFile(UnreadableManuscript):
    def __init__(self, name: str, what: str) -> None:
        self.what = what
        super().__init__(
            f"“{name}” cannot be read: {what}. Nothing was changed. "
            "Open it in your word processor, save it under a new name, and bring that in."
        )


class LockedFile(UnreadableManuscript):
    def __init__(self, name: str) -> None:
        super().__init__(
            f"“{name}” is locked with a password. Nothing was changed. "
            "Save a copy without the password and bring that in."
        )


class ProtectedFile(UnreadableManuscript):
    def __init__(self, name: str) -> None:
        super().__init__(
            f"“{name}” is protected against copying, as e-books from shops are. Nothing was changed. "
            "Bring in the manuscript that the book was made from."
        )


class TooLarge(UnreadableManuscript):
    def __init__(self, name: str, what: str) -> None:
        self.what = what
        super().__init__(
            f"“{name}” is larger than a manuscript can be ({what}). Nothing was changed. "
            "If it holds pictures, save a copy without them and bring that in."
        )


class UnreadableTable(UnreadableManuscript):
    """A scene list that cannot be read as a table."""

    def __init__(self, name: str, what: str) -> None:
        super().__init__(
            f"“{name}” cannot be read as a table: {what}. Nothing was changed. "
            "Save it as .xlsx or .csv under a new name and bring that in."
        )


class CannotOpen(UnreadableManuscript):
    def __init__(self, path: str, why: str) -> None:
        super().__init__(f"{path} cannot be opened: {why}. Nothing was changed. Check the name and the folder.")


def retold(kind: str, sentence: str) -> UnreadableManuscript:
    """A refusal as another process of ours wrote it: the class called `kind`, with the sentence it wrote."""
    known = {one.__name__: one for one in UnreadableManuscript.__subclasses__()}
    cls = known.get(kind, UnreadableManuscript)
    return cls.__new__(cls, sentence)


class BookTrouble(AfterdraftError):
    """The book file cannot be used as it is."""


class DamagedBook(BookTrouble):
    def __init__(self, path: str, what: str) -> None:
        super().__init__(
            f"The book at {path} is damaged: {what}. The file was left as it is. "
            "Restore the latest backup: afterdraft book restore."
        )


class NewerBook(BookTrouble):
    def __init__(self, path: str, has: int, knows: int) -> None:
        super().__init__(
            f"The book at {path} was made by a newer Afterdraft (its form is {has}, this program knows {knows}). "
            "It was left as it is. Update the program to open it."
        )


class BookOpenElsewhere(BookTrouble):
    def __init__(self, path: str) -> None:
        super().__init__(f"The book at {path} is open in another program. Nothing was changed. Close it there first.")


class NotABook(BookTrouble):
    def __init__(self, path: str) -> None:
        super().__init__(f"There is no Afterdraft book at {path}. Nothing was changed. Check the name and the folder.")


class CannotWrite(BookTrouble):
    def __init__(self, path: str, why: str) -> None:
        super().__init__(
            f"{path} cannot be written: {why}. What was saved before is safe. "
            "Make room or choose another folder, then try again."
        )


class BookClosed(BookTrouble):
    def __init__(self, path: str) -> None:
        super().__init__(
            f"The book at {path} has been closed. What was saved is safe. Open it again from Books to go on."
        )


class NotAnswering(BookTrouble):
    def __init__(self, process: int) -> None:
        super().__init__(
            f"Afterdraft is running already (process {process}) but does not answer. Nothing was changed. "
            "Close it, or end that process, and start again."
        )


class EditRefused(AfterdraftError):
    """An edit cannot be done as asked; nothing was changed."""


class Stale(EditRefused):
    """The text was changed elsewhere since it was read. Carries what stands now."""

    def __init__(self, *, what: str, stands: str, revision: int) -> None:
        self.stands = stands
        self.revision = revision
        super().__init__(f"{what} was changed in another window. Both texts are kept: choose which shall stand.")


class NothingToUndo(EditRefused):
    """The edit named is not the one on top of the stack any more."""

    def __init__(self, on_top: str | None) -> None:
        now = f"The latest edit is now “{on_top}”." if on_top else "There is nothing there any more."
        super().__init__(f"Nothing was taken back, because something changed in the meantime. {now}")


class Missing(EditRefused):
    def __init__(self, what: str) -> None:
        super().__init__(f"{what} is not there. It may have been joined to another or taken back meanwhile.")


class NotPossible(EditRefused):
    def __init__(self, why: str) -> None:
        super().__init__(f"{why} Nothing was changed.")


class NameTaken(NotPossible):
    """Another has this name, among its own or its other names. It can be added all the same, once she says so."""


class WrongUse(AfterdraftError):
    """A command was given something it cannot use; nothing was done."""


class PortTaken(WrongUse):
    def __init__(self, port: int) -> None:
        super().__init__(
            f"Port {port} cannot be used; another program may have it. Nothing was changed. "
            "Name another, or leave --port out and a free one is found."
        )


class NotABookYet(WrongUse):
    def __init__(self, path: str) -> None:
        super().__init__(
            f"{path} is a manuscript, not a book. Nothing was changed. Make a book of it first: afterdraft begin {path}"
        )


class AlreadyThere(WrongUse):
    def __init__(self, path: str) -> None:
        super().__init__(f"{path} is there already and was left as it is. Choose another name or folder.")


class Fault(AfterdraftError):
    """A fault of ours. `log` is the file where its kind and place in the program are written down."""

    def __init__(self, log: str) -> None:
        super().__init__(
            "Something went wrong inside Afterdraft. What was saved before is safe. Try again; if it happens again, "
            f"what happened is written down, without your text, in {log}."
        )
