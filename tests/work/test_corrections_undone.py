"""Any run of corrections, taken back one by one and done again: the writer's rows are as they were each time."""

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from afterdraft.desk.anchor import Passage
from afterdraft.errors import EditRefused
from afterdraft.store.book import BookFile
from afterdraft.work.cast.found import Found
from afterdraft.work.cast.join_found import join_found
from afterdraft.work.cast.keep_found import keep_found
from afterdraft.work.cast.part_name import part_name
from afterdraft.work.cast.refuse_name import allow_name, refuse_name
from afterdraft.work.cast.say_present import say_present, say_setting
from afterdraft.work.cast.say_speaker import say_speaker
from afterdraft.work.cast.set_scene_time import set_scene_time
from afterdraft.work.cast.tell_of_person import follow_speech, tell_gender, tell_narrator
from tests.store.sample import desk_dump, redo, undo

people = st.sampled_from([Found("Ottla Brenn", ("Ottla", "Miss Brenn")), Found("the keeper"), Found("Ottla")])
names = st.sampled_from(["Ottla", "Miss Brenn", "the keeper"])
kinds = st.sampled_from(["person", "place"])
flags = st.booleans()
scenes = st.integers(0, 2)
corrections = st.one_of(
    st.tuples(st.just(keep_found), kinds, people, st.fixed_dictionaries({}, optional={"name": names})),
    st.tuples(st.just(join_found), kinds, st.fixed_dictionaries({"into": people, "of": people})),
    st.tuples(st.just(part_name), kinds, people, names),
    st.tuples(st.just(refuse_name), kinds, people),
    st.tuples(st.just(allow_name), kinds, names),
    st.tuples(st.just(tell_gender), people, st.sampled_from(["f", "m", "n", ""])),
    st.tuples(st.just(tell_narrator), people, st.fixed_dictionaries({"narrator": flags})),
    st.tuples(st.just(follow_speech), people, st.fixed_dictionaries({"followed": flags})),
    st.tuples(st.just(say_present), scenes, people, st.sampled_from(["viewpoint", "on page", "mentioned", "not here"])),
    st.tuples(st.just(say_setting), scenes, people, st.fixed_dictionaries({"there": flags})),
    st.tuples(st.just(set_scene_time), scenes, st.sampled_from(["", "noon", "the day after"])),
    st.tuples(st.just(say_speaker), people | st.none()),
)


@given(st.lists(corrections, min_size=1, max_size=8))
@settings(max_examples=40, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
def test_corrections_are_taken_back_and_done_again(book: BookFile, draft: str, run: list[tuple[object, ...]]) -> None:
    depth = book.edits().undo
    states = [desk_dump(book)]
    for one in run:
        top = book.edits().undo
        correct(book, draft, *one)
        now = desk_dump(book)
        assert (now != states[-1]) == (book.edits().undo != top)  # what is said again is no edit
        if now != states[-1]:
            states.append(now)
    for was in reversed(states[:-1]):
        undo(book)
        assert desk_dump(book) == was
    assert book.edits().undo == depth
    for now in states[1:]:
        redo(book)
        assert desk_dump(book) == now
    assert book.check() == ()
    for _ in states[1:]:
        undo(book)


def correct(book: BookFile, draft: str, act: object, *asked: object) -> None:
    assert callable(act)
    named = asked[-1] if isinstance(asked[-1], dict) else {}
    plain = [one for one in asked if not isinstance(one, dict)]
    if act is say_speaker:
        plain = [draft, [Passage(4, 0, 7)], *plain]
    if plain and isinstance(scene := plain[0], int):
        plain[0] = book.division(draft).scenes[scene].id
    before = desk_dump(book)
    try:
        act(book, *plain, **named)
    except EditRefused:
        assert desk_dump(book) == before
