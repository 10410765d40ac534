"""Putting right what was read: who is who, who is in a scene, where and when it happens, who speaks."""

from collections.abc import Callable
from dataclasses import dataclass

from starlette.datastructures import FormData
from starlette.requests import Request
from starlette.responses import Response

from afterdraft.desk.cast import PRESENCES, KnownKind
from afterdraft.errors import Missing, NotPossible
from afterdraft.web.body import form, text
from afterdraft.web.facts_here import found, found_place, read_of, speech_at
from afterdraft.web.passages import passages
from afterdraft.web.render import back, book_of, go
from afterdraft.web.told import Told
from afterdraft.web.view import BookView, view
from afterdraft.work.cast.add_known import THINGS
from afterdraft.work.cast.found import Found
from afterdraft.work.cast.join_found import join_found
from afterdraft.work.cast.keep_found import keep_found
from afterdraft.work.cast.part_name import part_name
from afterdraft.work.cast.refuse_name import allow_name, refuse_name
from afterdraft.work.cast.say_present import How, say_present, say_setting
from afterdraft.work.cast.say_speaker import say_speaker
from afterdraft.work.cast.set_scene_time import set_scene_time
from afterdraft.work.cast.tell_of_person import follow_speech, tell_gender, tell_narrator
from afterdraft.work.finding import named


@dataclass(frozen=True, slots=True)
class _Asked:
    seen: BookView
    told: Told
    posted: FormData

    def text(self, name: str) -> str:
        return text(self.posted, name).strip()

    def who(self, name: str = "who") -> Found:
        """Somebody, or a place."""
        return (found_place if self.kind == "place" else found)(self.seen, self.told, self.text(name))

    @property
    def kind(self) -> KnownKind:
        """What it is about: a person, unless the form says a place."""
        return "place" if self.text("kind") == "place" else "person"

    @property
    def scene(self) -> str:
        """Id of the scene that is meant by its code."""
        return self.seen.by_code(self.text("code")).scene.id


def correct(request: Request) -> Response:
    """`POST /books/{book}/facts/{act}`: see `ACTS` for the acts and the fields of each; `back` leads on."""
    book, posted = book_of(request), form(request)
    act = ACTS.get(request.path_params["act"])
    if act is None:
        raise Missing("This act")
    seen = view(book)
    opened = act(_Asked(seen, read_of(request, seen), posted))
    top = book.edits().undo
    page = f"/books/{book.id}/people" + (f"?open={opened}#l-{opened}" if opened else "")
    return go(back(posted, page), said=top.name if top else "")


def _keep(asked: _Asked) -> str:
    """`who`; `name` calls them otherwise."""
    name = asked.text("name")
    return keep_found(asked.seen.book, asked.kind, asked.who(), name=named(name, THINGS[asked.kind]) if name else "")


def _join(asked: _Asked) -> str:
    """`who` is the same as `into`."""
    return join_found(asked.seen.book, asked.kind, into=asked.who("into"), of=asked.who())


def _part(asked: _Asked) -> str:
    """`name` is not one of `who`'s."""
    return part_name(asked.seen.book, asked.kind, asked.who(), asked.text("name"))


def _refuse(asked: _Asked) -> str:
    """`who` is no person, or no place."""
    refuse_name(asked.seen.book, asked.kind, asked.who())
    return ""


def _allow(asked: _Asked) -> str:
    """`name` is a person, or a place, after all."""
    allow_name(asked.seen.book, asked.kind, asked.text("name"))
    return ""


def _gender(asked: _Asked) -> str:
    """`who` has the pronouns of `gender`."""
    tell_gender(asked.seen.book, asked.who(), asked.text("gender"))
    return ""


def _narrator(asked: _Asked) -> str:
    """`who` tells the book as I; not, where `narrator` is 0."""
    tell_narrator(asked.seen.book, asked.who(), narrator=asked.text("narrator") != "0")
    return ""


def _follow(asked: _Asked) -> str:
    """What `who` says is shown; not, where `followed` is 0."""
    follow_speech(asked.seen.book, asked.who(), followed=asked.text("followed") != "0")
    return ""


def _present(asked: _Asked) -> str:
    """`who` is in the scene `code` as `how` says."""
    how: How | None = next((one for one in (*PRESENCES, _NOT_HERE) if one == asked.text("how")), None)
    if how is None:
        raise NotPossible("Choose how they are in the scene.")
    say_present(asked.seen.book, asked.scene, asked.who(), how)
    return ""


def _setting(asked: _Asked) -> str:
    """The scene `code` happens in `where`; not, where `there` is 0."""
    where = found_place(asked.seen, asked.told, asked.text("where"))
    say_setting(asked.seen.book, asked.scene, where, there=asked.text("there") != "0")
    return ""


def _time(asked: _Asked) -> str:
    """The scene `code` happens when `words` say."""
    set_scene_time(asked.seen.book, asked.scene, asked.text("words"))
    return ""


def _speaker(asked: _Asked) -> str:
    """`who` speaks the `passage`, or the `words`, of the scene `code`; nobody of the cast, where it is empty."""
    who = asked.who() if asked.text("who") else None
    shown = asked.seen.by_code(asked.text("code"))
    said = passages(asked.seen.book, shown.scene.id, asked.posted)
    speech = speech_at(asked.told, shown, said)
    if not speech:
        raise NotPossible("Choose words that somebody speaks: no speech was read there.")
    say_speaker(asked.seen.book, asked.seen.draft.id, speech, who)
    return ""


_NOT_HERE: How = "not here"
ACTS: dict[str, Callable[[_Asked], str]] = {
    "keep": _keep,
    "join": _join,
    "part": _part,
    "refuse": _refuse,
    "allow": _allow,
    "gender": _gender,
    "narrator": _narrator,
    "follow": _follow,
    "present": _present,
    "setting": _setting,
    "time": _time,
    "speaker": _speaker,
}
