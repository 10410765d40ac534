"""The tense changes within a scene."""

from dataclasses import replace

import pytest

from afterdraft.questions.each.tense import CHECK
from tests.questions.asked import found_in, quotes, read
from tests.questions.people import ILSE, MARTA

pytestmark = pytest.mark.slow
BEFORE, AFTER = "She came to the steps.", "Nobody spoke."


@pytest.mark.parametrize(
    "turns",
    [
        "Tobias lifts the lamp and goes down.",
        "He takes the rope, and he ties it.",
        "She opens the box. There is a key in it.",
        "Still he can do nothing, and Tobias goes down.",
    ],
)
def test_asks_about_the_present_in_a_scene_told_in_the_past(turns: str) -> None:
    assert quotes(found_in(CHECK, [*ILSE, *MARTA, f"{BEFORE} {turns} {AFTER}"])) == [[turns]]


@pytest.mark.parametrize(
    "told",
    [
        "“Tobias lifts the lamp and goes down,” she said.",
        "There is a kind of man who never lifts a lamp.",
        "The river always runs north here.",
        "She runs away!",
        "That is why Tobias keeps a lamp.",
        "He said that Tobias goes down.",
        "He lies under the third yew.",
        "Tobias lifted the lamp and went down.",
    ],
)
def test_is_silent_about_speech_and_what_is_always_so(told: str) -> None:
    assert not found_in(CHECK, [*ILSE, *MARTA, f"{BEFORE} {told} {AFTER}"])


def test_is_silent_in_a_scene_told_in_the_present() -> None:
    scene = ["Tobias lifts the lamp.", "She opens the box and takes the key.", "He goes down. She follows him."] * 3
    assert not found_in(CHECK, scene)


def test_asks_about_a_paragraph_of_an_i_in_the_present() -> None:
    mine = [
        "I came to the steps. Nobody spoke, and I listened for the dog.",
        "I closed the gate and went up to the house.",
    ]
    now = "I take the lamp and go down. I open the box and find the key."
    assert quotes(found_in(CHECK, [*mine * 9, now])) == [[now]]
    assert not found_in(CHECK, [*mine * 9, "I know now that I was wrong. I think of it every year."])


def test_asks_about_what_is_told_beside_speech() -> None:
    told = "He laughs, and has the grace to look out over the water."
    talk = f"{told} “There were two rooms with a glass floor,” said Tobias. “I had a man draw it.”"
    assert quotes(found_in(CHECK, [*ILSE, *MARTA, talk, *ILSE])) == [[told]]


TAKES = "Tobias takes the lamp and goes down to the landing. He unties the boat, and it drifts out under the bridge."


def test_asks_about_one_paragraph_in_the_present() -> None:
    assert quotes(found_in(CHECK, [*ILSE, *MARTA, TAKES, *ILSE])) == [[TAKES]]


@pytest.mark.parametrize(
    "rows",
    [
        [TAKES, "Marta shuts the box. She turns the key and puts out the lamp."],
        ["To the keeper of the toll, 4th March 1931.", TAKES],
        [TAKES, "THE KEEPER OF THE TOLL"],
        [f"{TAKES} Gone! And nobody is there to see it!"],
        [f"It is well to say that this is common. {TAKES}"],
    ],
)
def test_is_silent_about_several_in_a_row_letters_cries_and_asides(rows: list[str]) -> None:
    assert not found_in(CHECK, [*ILSE, *MARTA, *rows, *ILSE])


def test_asks_in_the_past_of_a_book_that_is_told_in_the_present_as_well() -> None:
    now = [
        "Tobias lifts the lamp that Marta left.",
        "He takes the rope. She had tied it.",
        "He went, and she goes.",
    ] * 4
    assert found_in(CHECK, now, [*ILSE, *MARTA, TAKES, *ILSE], now, [*ILSE, *MARTA])


def test_is_silent_where_who_tells_goes_from_one_tense_to_the_other_all_along() -> None:
    mixed = ["Tobias came in wet. He says nothing.", "He took the lamp. Tobias lights it.", "Marta shut the box."]
    assert not found_in(CHECK, [*ILSE, *MARTA, TAKES, *ILSE, *mixed * 4])


QUIET = [
    "Marta counted it at noon. She shut the box and turned the key.",
    "“Four and six,” said Marta. “That is the week.”",
]


@pytest.mark.parametrize(
    "now",
    [
        "Tobias has come down and stands by the stove. She is quite still. Now he takes the lamp from its hook.",
        "She wonders what he has heard. He is tired, and it seems to her that he knows of the key.",
        "We have reached the ferry, and Tobias ties the rope. He is wet, and there is no light on the other side.",
    ],
)
def test_asks_about_a_whole_paragraph_among_others_in_the_past(now: str) -> None:
    """Though the scene is mostly talk, or somebody is only said to be so."""
    assert quotes(found_in(CHECK, [*QUIET * 4, now, *QUIET])) == [[now]]


def test_asks_softly_about_a_paragraph_in_which_nobody_does_anything() -> None:
    now = "Tobias is on the bank at noon, and he is quite still. She has the key, and there is no work for him."
    (soft,) = found_in(CHECK, [*QUIET * 4, now, *QUIET])
    assert soft.strength < 0.6
    (sharp,) = found_in(CHECK, [*QUIET * 4, "He takes the rope. He ties it, and she sees him go.", *QUIET])
    assert sharp.strength > 0.8


@pytest.mark.parametrize(
    "now",
    [
        "There is a kind of man who knows the river. He is always early, and he never speaks of it.",
        "The reader knows that Tobias is early. He stands by the stove, and she sees him.",
        "I know that he is dead, and I think of him. I shall write of it when I am calm.",
        "The house is old. It has a stove, and the river runs behind it.",
        "In summer the ferry is slack. The men are seen on the bank at noon, and there is no work for them.",
        "As I write there is a noise of hammering below, and it is the box that is being nailed down.",
        "Have I not told of the ferry, when I speak of it as old? He is tired of it, and she has the key.",
        "When pride walketh on the bank, he walketh there softly. He takes many a shape, and he has her key.",
        "Often a ferryman’s life is one of waiting for people. A boat comes, and a man goes.",
        "No man who keeps a ferry is early. Every boat has its hours, and you know them.",
    ],
)
def test_is_silent_about_a_paragraph_of_what_is_so(now: str) -> None:
    assert not found_in(CHECK, [*QUIET * 4, now, *QUIET])


def test_is_silent_about_a_note_in_italics() -> None:
    notes = "He looks ill, poor lad."
    told = f"{BEFORE} {notes} {AFTER}"
    seen = read([[*ILSE, *MARTA, told]])
    place, start = len(ILSE) + len(MARTA), told.find(notes)
    assert list(CHECK.find(seen))
    assert not list(CHECK.find(replace(seen, italics={(0, place): ((start, start + len(notes)),)})))


def test_is_silent_about_a_note_set_in() -> None:
    note = "Marta takes the key and goes down. She minds the lamp, and waits for word, and Tobias comes."
    assert found_in(CHECK, [*QUIET * 4, "She read it twice.", note, *QUIET])
    assert not found_in(CHECK, [*QUIET * 4, "She read it twice:", note, *QUIET])
    letter = "Your son takes the ferry over. He keeps the key, and she thinks well of him."
    assert not found_in(CHECK, [*QUIET * 4, "She read it twice.", letter, *QUIET])


def test_teeth_are_no_sermon() -> None:
    for thing in ("his teeth", "the twentieth oar", "Elizabeth"):
        now = f"Tobias takes the lamp and shows her {thing}. He ties the boat, and he waits for the bell to ring."
        assert quotes(found_in(CHECK, [*QUIET * 4, now, *QUIET])) == [[now]]
    sermon = "He maketh the lamp to shine, and he goes down to the landing, and he ties the boat, and he waits."
    assert not found_in(CHECK, [*QUIET * 4, sermon, *QUIET])


def test_a_day_that_begins_a_paragraph_of_the_telling_is_over_no_letter() -> None:
    now = "Tobias takes the lamp and goes down to the landing. He ties the boat, and he waits for the bell."
    told = "On the next day, May 12, they had some hopes of the ferry, and Tobias went down to the landing with her."
    assert quotes(found_in(CHECK, [*QUIET * 4, told, now, *QUIET])) == [[now]]
    assert not found_in(CHECK, [*QUIET * 4, "May 12.", now, "Ada Kell", *QUIET])


def test_is_silent_about_how_a_house_stands_that_nobody_is() -> None:
    lies = "She had been there once. The Rectory stands half a mile beyond the ferry. Nobody spoke of it."
    assert not found_in(CHECK, [*ILSE, *MARTA, lies])
    assert found_in(
        CHECK, [*ILSE, *MARTA, "She had been there once. Tobias stands beyond the ferry. Nobody spoke of it."]
    )


def test_is_silent_about_the_argument_over_a_chapter() -> None:
    argument = "Of the ferry and who keeps it. Tobias takes a walk, and resolves to speak."
    assert not found_in(CHECK, [argument, *QUIET * 4])


def test_is_silent_about_the_present_of_a_diary() -> None:
    day = ["{} May. Tobias came down at noon.", *QUIET * 3, "She is asleep now. He takes the lamp, and she lies still."]
    assert not found_in(CHECK, *([day[0].format(number), *day[1:]] for number in (3, 4, 5)))
    assert found_in(CHECK, *(["Tobias came down at noon.", *day[1:]] for _ in range(3)))


def test_asks_about_a_paragraph_that_tells_of_them_among_others_that_are_told() -> None:
    """With words that essays have too."""
    now = "She says nothing to him of any key. Mrs. Kell has always kept it, and she goes to the box where it lies."
    assert quotes(found_in(CHECK, [*QUIET * 4, now, *QUIET])) == [[now]]


@pytest.mark.parametrize(
    "now",
    [
        "The mast goes at noon. It hangs over the side, and the boat drifts; they will find the sail in the morning.",
        "They take him down to the landing. Nobody speaks. The boat lies on the mud, and a gull sits on the rail.",
        "She crosses the yard, and he sees that she must have been ill. He takes the lamp from its hook.",
        "He goes down to the rope and looks at the knot the way you look at a dog. She waits, and he says:",
        "They run to the landing. They cut the rope, and they push off. The bell rings in the tower.",
        "Marta waits at the gate. She knows that he must be back by now, and her hands are cold.",
    ],
)
def test_asks_about_things_that_happen_and_what_is_to_be(now: str) -> None:
    assert quotes(found_in(CHECK, [*QUIET * 4, now, *QUIET])) == [[now]]


@pytest.mark.parametrize(
    "now",
    [
        "A ferryman must be early. The river is his clock, and the work will wait for nobody.",
        "Thus it is with ferries. The boat is old before the rope is, and somebody must mend both.",
        "He is late again, thought she. It must be the rope; he never minds it, and he lets the boat drift.",
        "Let us leave her on the landing. She waits for the boat, and he takes his time.",
        "If you let a boat lie it will rot. The sun opens it, and the rain fills it, and he who owns it pays.",
    ],
)
def test_is_silent_about_what_must_be_and_what_is_thought(now: str) -> None:
    assert not found_in(CHECK, [*QUIET * 4, now, *QUIET])


NOW = "They take him down to the landing. He looks at nobody. The boat lies on the mud, and he steps over the rope."


def test_asks_about_the_first_paragraph_behind_a_break() -> None:
    seen = read([[*ILSE, *MARTA], [NOW, *QUIET]])
    assert quotes(list(CHECK.find(replace(seen, heads=(("One",), ()))))) == [[NOW]]
    assert not list(CHECK.find(replace(seen, heads=(("One",), ("Two",)))))


def test_is_silent_about_a_scene_in_the_present_throughout() -> None:
    seen = read([[*ILSE, *MARTA], [NOW, "She watches him. He goes on board.", NOW]])
    assert not list(CHECK.find(replace(seen, heads=(("One",), ()))))


def test_is_silent_about_a_first_paragraph_that_sets_the_scene() -> None:
    sets = (
        "The night fades over the weir. The mist goes up from the water. The lamp burns down, the boat drifts on its "
        "rope, and the bell rings in the tower."
    )
    seen = read([[*ILSE, *MARTA], [sets, *QUIET]])
    assert not list(CHECK.find(replace(seen, heads=(("One",), ()))))
    there = f"Tobias comes down to the landing and looks at the mist. {sets}"
    seen = read([[*ILSE, *MARTA], [there, *QUIET]])
    assert quotes(list(CHECK.find(replace(seen, heads=(("One",), ()))))) == [[there]]


OURS = [
    "I came to the steps with Marta. Nobody spoke, and we listened for the dog.",
    "I closed the gate behind us and went up to the house. It was late.",
]


@pytest.mark.parametrize(
    "now",
    [
        "We take the path to the ferry, and we reach the landing before the rain. So we wait under the shed.",
        "I take the lamp and go down to the landing, which is wet, and there is no light on the other side.",
        "I go as far as you can throw a rope. Then I tie the boat up, and I take the oars out and wait.",
        "Marta is sitting opposite me, and Tobias has been mending the net. Six men are carrying the box ashore.",
        "I tell him that it is late. I ask her for the key, and they look at each other as a child’s friends do.",
        "I bring the box a reader’s slip is kept in. I open it, and I take the key out.",
    ],
)
def test_asks_about_what_an_i_does_alone_or_with_others(now: str) -> None:
    assert quotes(found_in(CHECK, [*OURS * 6, now, *OURS])) == [[now]]


@pytest.mark.parametrize(
    "now",
    [
        "The colonists run to the landing, and the two ferrymen bring the oars to them. They carry the box up a hill.",
        "The Marshal springs back out of her reach and throws the rope on the bank. The leap is a long one.",
    ],
)
def test_asks_about_deeds_of_people_whom_reading_does_not_note(now: str) -> None:
    assert quotes(found_in(CHECK, [*QUIET * 4, now, *QUIET])) == [[now]]


@pytest.mark.parametrize(
    "now",
    [
        "We come now to the ferry, and we leave Marta with her box. It is late, and we return to Tobias.",
        "The brain gets muddled at such work, the head grows heavy, and the rope seems to hang from the eyes.",
        "I take you down to the ferry, where you see the rope. I tell you what it is, and I show you the bank.",
    ],
)
def test_is_silent_about_an_author_with_the_reader_and_what_is_true_of_anybody(now: str) -> None:
    assert not found_in(CHECK, [*QUIET * 4, now, *QUIET])
