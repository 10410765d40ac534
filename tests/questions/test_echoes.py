"""A turn of phrase that comes again."""

from collections.abc import Sequence
from dataclasses import replace

from afterdraft.questions.each.echoes import CHECK
from afterdraft.questions.question import Finding
from afterdraft.reading.counted import Event
from afterdraft.reading.facts import SceneFacts
from tests.questions.asked import book, quotes

TURN = "wrung the brim of his borrowed bowler"
PLAIN = "The ferry went over and came back, and nobody was on it but the dog."
FAR = [PLAIN] * 30  # words between


def asked(*scenes: Sequence[str], verbs: Sequence[str] = ("wrung", "was", "said")) -> list[Finding]:
    """With these words for events."""
    facts = [
        SceneFacts(
            len(scene),
            events=tuple(
                Event(place, at, at + len(verb))
                for place, text in enumerate(scene)
                for verb in verbs
                if (at := text.find(verb)) >= 0
            ),
        )
        for scene in scenes
    ]
    return list(CHECK.find(book(scenes, facts)))


def test_asks_where_a_gesture_comes_again_in_the_same_words() -> None:
    (one,) = asked([f"Tobias {TURN} and sat.", *FAR], [*FAR, f"Later he {TURN}, and was gone."])
    assert quotes([one]) == [[f"Tobias {TURN} and sat.", f"Later he {TURN}, and was gone."]]
    assert one.words["words"] == TURN


def test_is_silent_about_a_title_in_italics() -> None:
    title = "The progress of the borrowed bowler in the treatment of ague"
    told = book([[f"Tobias wrote {title}.", *FAR], [*FAR, f"There lay {title}, in a heap."]])
    assert list(CHECK.find(told))
    slanted = {(0, 0): ((13, 13 + len(title)),), (1, len(FAR)): ((10, 10 + len(title)),)}
    assert not list(CHECK.find(replace(told, italics=slanted)))


def test_is_silent_about_words_that_everybody_uses() -> None:
    assert not asked([f"He was at the end of it. {TURN}.", *FAR], [*FAR, "And so he was at the end of it."])


def test_a_thing_that_is_named_again_is_no_echo() -> None:
    named = "the widow with the crooked vermilion umbrella"
    assert not asked([f"There stood {named}.", *FAR], [*FAR, f"It was {named}."], verbs=("stood", "was"))


def test_is_silent_about_speech_refrains_and_repetition_on_one_page() -> None:
    one = f"Tobias {TURN} and sat."
    assert not asked([f"“He {TURN},” said Ilse.", *FAR], [*FAR, one])
    assert not asked([one, *FAR], [one, *FAR], [one])
    assert not asked([one, PLAIN, f"And he {TURN} again."])


def test_asks_of_the_rarest_few_alone() -> None:
    turns = [f"The {one} {verb} the {other} of {third} {fourth}." for one, verb, other, third, fourth in _RARE]
    verbs = [verb for _, verb, _, _, _ in _RARE]
    found = asked([*turns, *FAR], [*FAR, *turns[::-1]], verbs=verbs)
    assert 0 < len(found) < len(turns)


def test_a_gesture_needs_fewer_words_than_anything_else() -> None:
    gesture = "stroked his chin thoughtfully"
    (one,) = asked([f"Tobias {gesture}.", *FAR], [*FAR, f"At noon the lodger {gesture}, and left."], verbs=("stroked",))
    assert one.words["words"] == gesture
    other = "moored the skiff thoughtfully"
    assert not asked([f"Tobias {other}.", *FAR], [*FAR, f"And the lodger {other}."], verbs=("moored",))


def test_a_gesture_with_two_rare_words_is_one_that_people_make() -> None:
    assert not asked(["Tobias pivoted on his heels and sat.", *FAR], [*FAR, "Ilse pivoted on his heels, and left."])


def test_far_apart_only_many_rare_words_stay_in_mind() -> None:
    long_way = [PLAIN] * 400
    assert not asked([PLAIN, f"Tobias {TURN} and sat."], long_way, [f"Later he {TURN}, and was gone."])
    rare = "wrung the vermilion brim of his borrowed bowler"
    assert asked([f"Tobias {rare} and sat."], long_way, [f"Later he {rare}, and was gone."])


def test_far_apart_two_scenes_that_open_alike_are_asked_about() -> None:
    assert asked([f"Tobias {TURN} and sat.", *FAR], [PLAIN] * 400, [f"Later he {TURN}, and was gone.", *FAR])


def test_is_silent_where_the_second_points_back_to_the_first() -> None:
    first = [f"Tobias {TURN} and sat.", *FAR]
    for second in (f"He {TURN}, as he did before.", f"He {TURN} once more.", f"He thought of the day when he {TURN}."):
        assert not asked(first, [*FAR, second])


def test_two_turns_in_the_same_two_paragraphs_are_one_question() -> None:
    both = f"Tobias {TURN}. He folded the crimson awning over the gunwale."
    assert len(asked([both, *FAR], [*FAR, both], verbs=("wrung", "folded"))) == 1


def test_a_line_in_another_tongue_is_a_quotation() -> None:
    line = "alpestri valloncelli fiorivano rugiadosi intrecciati vermigli"
    assert not asked([f"Tobias hummed {line}.", *FAR], [*FAR, f"Later {line}."], verbs=("fiorivano",))


_RARE = [
    ("sexton", "shouldered", "handles", "crimson", "barrows"),
    ("cobbler", "swallowed", "remnants", "mouldy", "gherkins"),
    ("lodger", "trampled", "borders", "scented", "verbena"),
    ("grocer", "sharpened", "blades", "rusted", "scythes"),
    ("tinker", "polished", "bottoms", "dented", "saucepans"),
]


def test_a_gesture_that_everybody_makes_is_no_echo() -> None:
    for gesture, verb in (("cleared his throat", "cleared"), ("scratched her chin", "scratched")):
        first, second = f"The lodger {gesture}.", f"At noon the vicar {gesture}, and left."
        assert not asked([first, *FAR], [*FAR, second], verbs=(verb,))
        assert not asked([f"He {gesture}.", *FAR], [*FAR, f"He {gesture}."], verbs=(verb,))
    own = "scratched his chin with the spoon"
    assert asked([f"He {own}.", *FAR], [*FAR, f"At noon he {own}."], verbs=("scratched",))


def test_a_phrase_that_stands_elsewhere_in_a_shorter_form_is_a_catchphrase() -> None:
    first, second = f"Tobias {TURN} and sat.", f"Later he {TURN}, and was gone."
    shorter = ["Nobody spoke of the borrowed bowler.", "It was a day for a borrowed bowler, said Ilse."]
    assert not asked([first, *FAR], [*shorter, *FAR, second])
    assert asked([first, *FAR], [shorter[0], *FAR, second])


def test_a_thing_that_is_taken_up_again_in_its_scene_is_no_echo() -> None:
    thing = "the breakers tumbling over the drowned pier"
    first, verbs = f"He saw {thing}.", ("tumbling", "saw")
    for second in (f"The boatman pointed to {thing}.", f"“There,” and she nodded at {thing}."):
        assert not asked([first, *FAR, second], verbs=verbs)
        assert asked([first, *FAR], [*FAR, second], verbs=verbs)
    turn = "the lamplight crept across the mildewed wallpaper"
    assert asked([f"Then {turn}.", *FAR, f"And {turn}."], verbs=("crept",))
