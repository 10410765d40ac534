"""What the server says when something cannot be done, and with which status. One table, used once."""

from afterdraft import errors

_STATUS: tuple[tuple[type[errors.AfterdraftError], int], ...] = (
    (errors.Missing, 404),
    (errors.NotPossible, 422),
    (errors.EditRefused, 409),  # stale, nothing to undo
    (errors.TooLarge, 413),
    (errors.UnreadableManuscript, 422),
    (errors.NotABook, 404),
    (errors.CannotWrite, 507),
    (errors.BookTrouble, 409),
)

OPEN_FROM_PROGRAM = (
    "This page belongs to Afterdraft, which is running on this computer, but this browser has not been let in yet. "
    "Nothing is wrong with your books. Open it from the program: start Afterdraft again, or use the address it printed."
)
WRONG_ADDRESS = "Afterdraft answers only at its own address on this computer. Start it again to open the right one."
FOREIGN_FORM = (
    "This was sent from another page than Afterdraft's own, so it was not carried out. "
    "Nothing was changed. Go back to the book and try it there."
)
NO_SUCH_PAGE = "There is no such page. Nothing was changed. Go to Books and open it from there."
WRONG_METHOD = (
    "This address is for the program's own buttons. Nothing was changed. Go to Books and open the page from there."
)
NOT_UNDERSTOOD = (
    "What the page sent could not be understood. Nothing was changed. Load the page again and try once more."
)


def status(error: errors.AfterdraftError) -> int:
    """HTTP status (RFC 9110) of an error raised on purpose; 400 for one that the table does not name."""
    return next((code for kind, code in _STATUS if isinstance(error, kind)), 400)


def too_much(limit: int) -> str:
    """`limit` in bytes."""
    return (
        f"More was sent at once than can be taken in ({limit // 2**20} MB). Nothing was changed. "
        "Bring in fewer files at a time, or save copies without pictures."
    )


def refused(status: int, detail: str) -> errors.AfterdraftError:
    """For a refusal that comes from the framework; only a body too large brings a sentence of its own."""
    return errors.AfterdraftError({404: NO_SUCH_PAGE, 405: WRONG_METHOD, 413: detail}.get(status, NOT_UNDERSTOOD))
