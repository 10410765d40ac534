"""Scripts, styles, fonts: sent from memory, under an address that names the set's digest and is kept for good.

One digest for the set, not one a file, so that a script's or style's relative address leads to the same set.
"""

import hashlib
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from pathlib import Path

from starlette.exceptions import HTTPException
from starlette.requests import Request
from starlette.responses import Response

FOLDER = Path(__file__).parent / "static"
DIGEST_LENGTH = 8  # hex digits
KEEP = "private, max-age=31536000, immutable"  # RFC 8246; a year is the customary longest

# Written out: what the system's own table says differs, and a script of the wrong type is not run.
TYPES = {
    ".css": "text/css; charset=utf-8",
    ".ico": "image/x-icon",
    ".js": "text/javascript; charset=utf-8",
    ".json": "application/json",
    ".md": "text/plain; charset=utf-8",
    ".png": "image/png",
    ".svg": "image/svg+xml",
    ".txt": "text/plain; charset=utf-8",
    ".woff2": "font/woff2",
}


@dataclass(frozen=True, slots=True)
class Assets:
    digest: str
    files: Mapping[str, bytes]  # by path below the folder, with forward slashes


@cache
def assets() -> Assets:
    return gather(FOLDER)


def gather(folder: Path) -> Assets:
    """All files below `folder` of the types named above."""
    found = {
        path.relative_to(folder).as_posix(): path.read_bytes()
        for path in sorted(folder.rglob("*"))
        if path.is_file() and path.suffix in TYPES
    }
    digest = hashlib.sha256()
    for name, content in found.items():
        digest.update(f"{name}\0{len(content)}\0".encode() + content)
    return Assets(digest.hexdigest()[:DIGEST_LENGTH], found)


def static(path: str) -> str:
    """The address of a static file, for templates. Raises `KeyError` for one that is not there."""
    if path not in assets().files:
        raise KeyError(path)
    return f"/static/{assets().digest}/{path}"


def serve(request: Request) -> Response:
    """`/static/{digest}/{path}`. A page from before an update asks with an old digest: it gets the new file, unkept."""
    path = request.path_params["path"]
    content = assets().files.get(path)
    if content is None:
        raise HTTPException(404)
    kept = KEEP if request.path_params["digest"] == assets().digest else "no-store"
    return Response(content, headers={"Cache-Control": kept, "Content-Type": TYPES[Path(path).suffix]})
