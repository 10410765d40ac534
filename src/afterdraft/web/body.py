"""What a page sent, for handlers that are plain functions on a worker thread: the body arrives on the loop."""

import json as _json
from collections.abc import Mapping
from pathlib import PurePosixPath
from typing import TypeVar

import anyio.from_thread
from starlette.datastructures import FormData, UploadFile
from starlette.exceptions import HTTPException
from starlette.requests import Request

from afterdraft.errors import TooLarge

FILE_LIMIT = 64 * 2**20  # bytes of one file
FIELD_LIMIT = 8 * 2**20  # bytes of one field: the largest scene list that is read
FIELDS = 20_000  # of one form: two for each row of the longest scene list, twice over
T = TypeVar("T")


def form(request: Request) -> FormData:
    """All fields and files of a posted form. Call from a plain handler only."""

    async def read() -> FormData:
        return await request.form(max_part_size=FIELD_LIMIT, max_fields=FIELDS)

    return anyio.from_thread.run(read)


def text(form: FormData, name: str, default: str = "") -> str:
    """A field's text, with the line ends that the rest of the program uses."""
    value = form.get(name, default)
    return value.replace("\r\n", "\n") if isinstance(value, str) else default


def files(form: FormData, name: str) -> tuple[tuple[str, bytes], ...]:
    """Name without folders and bytes of each file chosen under this field; none for an empty choice.
    To be called once: what was sent is let go.

    Raises `TooLarge` before anything is read when one is over `FILE_LIMIT`.
    """
    uploads = [value for value in form.getlist(name) if isinstance(value, UploadFile)]
    try:
        chosen = [upload for upload in uploads if upload.filename]
        for upload in chosen:
            if (upload.size or 0) > FILE_LIMIT:
                raise TooLarge(_bare(upload), f"more than {FILE_LIMIT // 2**20} MB")
        return tuple((_bare(upload), upload.file.read()) for upload in chosen)
    finally:
        for upload in uploads:
            upload.file.close()  # larger ones lie on the disk until then


def json(request: Request) -> Mapping[str, object]:
    """A posted JSON object. Call from a plain handler only."""
    raw = anyio.from_thread.run(request.body)
    try:
        value = _json.loads(raw)
    except ValueError:
        raise HTTPException(400) from None
    if not isinstance(value, dict):
        raise HTTPException(400)
    return value


def _bare(upload: UploadFile) -> str:
    """Browsers may send a folder with the name, in either slash."""
    return PurePosixPath((upload.filename or "").replace("\\", "/")).name or "manuscript"
