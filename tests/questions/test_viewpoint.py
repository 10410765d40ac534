"""Thoughts of somebody else within a scene."""

import pytest

from afterdraft.questions.each.viewpoint import CHECK
from afterdraft.questions.marks import Marks
from tests.questions.asked import found_in, quotes, read
from tests.questions.people import ILSE, MARTA

pytestmark = pytest.mark.slow
MIND = [
    "Ilse saw the light go out across the water. Ilse wondered who had the oil.",
    "Ilse heard the door. Ilse hoped it was the dog.",
    "Ilse remembered the key. Ilse felt the cold come up through the boards.",
]
JONAS = [
    "Jonas Pell kept the dog. Jonas took his cap from the nail when he went out.",
    "“It bites,” said Jonas. He held the chain in both his hands.",
    "“It never bit me,” said Ilse.",
    "“It will,” said Jonas, and he laughed. Jonas put the cap on his head.",
]
OTHER = "Tobias wished that the boat would sink before morning came."


def test_asks_about_a_thought_of_another() -> None:
    one = found_in(CHECK, [*ILSE, *MIND], [*ILSE, *MIND, OTHER, *MIND], [*ILSE, *MIND])
    assert quotes(one) == [[OTHER]]
    assert (one[0].words["viewpoint"], one[0].words["other"]) == ("Ilse", "Tobias")


def test_asks_where_she_marked_whose_scene_it_is() -> None:
    marks = Marks(present={(0, "read:ilse"): "viewpoint"})
    assert quotes(list(CHECK.find(read([[*ILSE, OTHER], MARTA], marks)))) == [[OTHER]]


@pytest.mark.parametrize(
    "told",
    [
        "“Tobias wished that the boat would sink,” said Ilse.",
        "Ilse wished that the boat would sink before morning.",
        "Tobias felt in his pocket for the key of the shed.",
        "Tobias thought.",
        "She felt that Tobias wished the boat would sink before morning.",
        "Had Tobias really hoped that the boat would sink before morning?",
        "Tobias did not know that the boat had sunk before morning.",
        "Tobias knew the river between the two bridges and all its sandbanks.",
        "Tobias thought the river lonely and the trees damp, and told everybody so.",
        "Tobias was recalled to the landing, and ridiculed the whole idea.",
        "Tobias was feared by all the carters on the other side of the water.",
        "Tobias wished to know whether the boat had sunk before morning.",
        "Tobias would wish that the boat had sunk before morning.",
        "Tobias always hoped that the boat would sink before morning.",
        "It was one of those boats Tobias hoped would sink before the morning.",
        "Tobias said that he was cold. Tobias hoped the boat would sink before morning.",
        "Tobias evidently hoped that the boat would sink before morning.",
        "How Tobias hoped that the boat would sink before morning!",
    ],
)
def test_is_silent_about_what_is_said_shown_or_her_own(told: str) -> None:
    assert not found_in(CHECK, [*ILSE, *MIND], [*ILSE, *MIND, told, *MIND], [*ILSE, *MIND])


def test_is_silent_where_the_telling_knows_everybodys_mind() -> None:
    minds = [*MIND, *(line.replace("Ilse", "Tobias") for line in MIND)]
    assert not found_in(CHECK, *[[*ILSE, *minds]] * 3)


@pytest.mark.parametrize(
    "told",
    [
        "Tobias had long suspected as much and said nothing.",
        "Tobias felt a stab of envy at the sight of it.",
        "Tobias was secretly relieved.",
        "It seemed to Tobias that the river would never go down.",
    ],
)
def test_asks_however_the_thought_is_told(told: str) -> None:
    assert quotes(found_in(CHECK, [*ILSE, *MIND], [*ILSE, *MIND, told, *MIND], [*ILSE, *MIND])) == [[told]]


def test_is_silent_where_the_one_whose_scene_it_is_does_not_come_back() -> None:
    rest = ["The boat lay where it was.", "It rained, and nobody was on the water.", "A dog barked beyond the weir."]
    assert not found_in(CHECK, [*ILSE, *MIND], [*ILSE, *MIND, OTHER, *rest], [*ILSE, *MIND])


NOW = [
    "Ilse sees the light go out across the water. Ilse wonders who has the oil.",
    "Ilse hears the door. Ilse hopes it is the dog.",
    "Ilse remembers the key. Ilse feels the cold come up through the boards.",
]
NOW_ILSE = [
    "Ilse Brandt comes down to the ferry before it is light. The rope is wet, and she coils it twice.",
    "“You’re early,” says Tobias. “The river’s up.”",
    "“It was up yesterday,” says Ilse. She puts the basket under the seat. She goes to the rail and looks.",
    "“Then we’ll be slow,” says Tobias, and he takes the long pole from its hook.",
]


def test_asks_in_a_book_told_in_the_present() -> None:
    told = "Tobias wishes that the boat were at the bottom of the river."
    one = found_in(CHECK, [*NOW_ILSE, *NOW], [*NOW_ILSE, *NOW, told, *NOW], [*NOW_ILSE, *NOW])
    assert quotes(one) == [[told]]


def test_is_silent_about_who_thinks_so_to_this_day() -> None:
    told = "Tobias thinks to this day that the boat was at the bottom of the river."
    assert not found_in(CHECK, [*ILSE, *MIND], [*ILSE, *MIND, told, *MIND], [*ILSE, *MIND])


def test_is_silent_where_what_follows_goes_on_with_the_other() -> None:
    told = "It seemed to Tobias that the river would never go down. He would not have liked it to."
    assert not found_in(CHECK, [*ILSE, *MIND], [*ILSE, *MIND, told, *MIND], [*ILSE, *MIND])


def test_is_silent_where_the_one_whose_scene_it_is_is_not_there() -> None:
    away = [
        *JONAS[:2],
        "Jonas gave the dog the bone.",
        "The dog took it.",
        OTHER,
        "The dog barked.",
        *JONAS[1:2],
        "The dog lay down.",
        "It rained.",
        "The bone was gone.",
    ]
    assert not found_in(CHECK, [*ILSE, *MIND], [*ILSE, *MIND, *away, *MIND], [*ILSE, *MIND])


def test_speech_between_them_does_not_take_the_one_whose_scene_it_is_away() -> None:
    talk = ["“It is late.”", "“It was late yesterday.”", "“Then go.”", "“I mean to.”", "“Well?”", "“Well.”"]
    asked = found_in(CHECK, [*ILSE, *MIND], [*ILSE, *MIND, *talk, OTHER, *talk, *MIND], [*ILSE, *MIND])
    assert quotes(asked) == [[OTHER]]


def test_is_silent_in_a_book_of_one_scene() -> None:
    assert not found_in(CHECK, [*ILSE, *MIND, OTHER, *MIND])


def test_is_silent_about_a_she_in_a_mans_scene_where_no_name_says_who() -> None:
    her = "She wished that the boat would sink before morning came."
    scenes = [[*ILSE, *TOBIAS], [*ILSE, *TOBIAS[:2], "The rope was wet. " + her, TOBIAS[2]], [*ILSE, *TOBIAS]]
    assert not found_in(CHECK, *scenes, [*JONAS])


def test_is_silent_where_a_deed_is_done_in_secret() -> None:
    told = "Tobias was there in the shed, secretly drinking the oil."
    assert not found_in(CHECK, [*ILSE, *MIND], [*ILSE, *MIND, told, *MIND], [*ILSE, *MIND])


def test_is_silent_where_it_is_not_said_what_is_secret() -> None:
    told = "Tobias was there secretly, and had not shown himself at the house."
    assert not found_in(CHECK, [*ILSE, *MIND], [*ILSE, *MIND, told, *MIND], [*ILSE, *MIND])


def test_is_silent_about_what_an_i_may_have_been_told() -> None:
    told = "Tobias hoped that the boat would sink before morning came."
    assert not found_in(CHECK, [*ILSE, *I_TELL], [*ILSE, *I_TELL, told, *I_TELL])


TOBIAS = [line.replace("Ilse", "Tobias") for line in MIND]


def test_is_silent_about_a_he_who_may_be_either_of_two() -> None:
    either = "Tobias looked at Jonas across the boat. He wished that it would sink before morning came."
    scenes = [[*ILSE, *TOBIAS], [*ILSE, *TOBIAS[:2], either, TOBIAS[2]], [*ILSE, *TOBIAS]]
    assert not found_in(CHECK, *scenes, [*JONAS])


def test_asks_about_a_he_right_behind_the_one_name() -> None:
    his = "Jonas shut the door behind him. He wished that the boat would sink before morning came."
    one = found_in(CHECK, [*ILSE, *TOBIAS], [*ILSE, *TOBIAS[:2], his, TOBIAS[2]], [*ILSE, *TOBIAS], [*JONAS])
    assert quotes(one) == [["He wished that the boat would sink before morning came."]]
    assert one[0].words["other"] == "Jonas Pell"


def test_asks_once_for_each_mind() -> None:
    again = "Tobias hoped that nobody would look for it before noon."
    one = found_in(CHECK, [*ILSE, *MIND], [*ILSE, *MIND, f"{OTHER} {again}", *MIND], [*ILSE, *MIND])
    assert quotes(one) == [[OTHER, again]]


def test_is_silent_where_the_scene_closes_with_another() -> None:
    closes = [f"{OTHER} He wondered who had the oil.", "Tobias dreaded the morning and the long way back."]
    assert not found_in(CHECK, [*ILSE, *MIND], [*ILSE, *MIND, *closes], [*ILSE, *MIND])


I_TELL = [
    "I saw the light go out across the water, and I wondered who had the oil. My lamp was dry.",
    "I heard the door, and I hoped it was my dog. I remembered the key, and I felt for it in my coat.",
]


def test_asks_about_what_no_i_can_know() -> None:
    told = "Tobias remembered a summer long ago, and said nothing of it."
    assert quotes(found_in(CHECK, [*ILSE, *I_TELL], [*ILSE, *I_TELL, told, *I_TELL])) == [[told]]


def test_is_silent_about_what_an_i_can_see_or_is_told() -> None:
    told = [
        "Tobias despised the captain and his boat and everybody in it.",
        "Tobias hoped that I would stay for supper.",
        "Unfortunately Tobias understood the word, and went red.",
    ]
    assert not found_in(CHECK, [*ILSE, *I_TELL], [*ILSE, *I_TELL, *told, *I_TELL])


I_SHORT = [
    "I came down to the ferry before it was light, and my lamp was dry. Tobias moved the dog so that I could sit.",
    "“You’re early,” said Tobias. He gave me the end of my own rope. “Who sent you?”",
    "“Nobody,” I said. I put my basket under the seat.",
]


@pytest.mark.parametrize(
    "told",
    [
        "Tobias felt sorry at once for having asked.",
        "Tobias, coiling the rope, wondered who had the oil.",
        "It was too late in the year to row, thought Tobias.",
        "Tobias was reminded of his mother, who never asked.",
        "Tobias told himself that the boat would sink before morning.",
        "Tobias longed for his bed and for a dry coat.",
        "Tobias could not help thinking of the house by the weir.",
    ],
)
def test_asks_what_no_i_can_know_however_short_the_scene(told: str) -> None:
    one = found_in(CHECK, [*I_SHORT, told, *I_SHORT[1:]], *[[*ILSE, *I_SHORT]] * 2)
    assert quotes(one) == [[told]]


@pytest.mark.parametrize(
    "told",
    [
        "Tobias said that he was sorry for having asked.",
        "Tobias looked as if he felt sorry for having asked.",
        "Tobias must have felt sorry for having asked.",
        "Tobias told me that he felt sorry for having asked.",
        "I knew that Tobias felt sorry for having asked.",
        "Tobias felt for the key under the seat of the boat.",
        "Tobias reminded himself aloud of the rope.",
        "Perhaps Tobias felt sorry for having asked.",
    ],
)
def test_is_silent_about_what_an_i_sees_and_is_told_however_short_the_scene(told: str) -> None:
    assert not found_in(CHECK, [*I_SHORT, told, *I_SHORT[1:]], *[[*ILSE, *I_SHORT]] * 2)


def test_is_silent_about_an_i_that_knows_everybodys_mind() -> None:
    told = "Tobias felt sorry at once for having asked."
    assert not found_in(CHECK, *[[*I_SHORT, told, *I_SHORT[1:]]] * 4)


SHORT = [
    "Ilse came in with the towel. “Just hold it,” said Jonas, and he wiped the bench.",
    "“It bites,” said Ilse. She held the towel in both her hands.",
]
ONCE = [
    "Jonas, wiping down the bench, thought what thin wrists she had.",
    "Jonas was reminded of his niece, whom he had not written to since Easter.",
    "Jonas wondered if she got enough to eat.",
    "Jonas told himself that he would write on Sunday.",
]


@pytest.mark.parametrize("told", ONCE)
def test_asks_about_the_only_thought_of_somebody_in_the_book(told: str) -> None:
    book = [*[[*ILSE, *MIND]] * 3, [*JONAS], [*SHORT, told, *SHORT[1:], SHORT[0]]]
    one = found_in(CHECK, *book)
    assert quotes(one) == [[told]]
    assert (one[0].words["viewpoint"], one[0].words["other"]) == ("", "Jonas")


@pytest.mark.parametrize("told", [*ONCE[:1], "It was late in the year, Jonas thought, but there was room for one."])
def test_is_silent_about_a_mind_that_is_entered_again_and_about_an_opinion(told: str) -> None:
    again = [*JONAS, "Jonas wondered who had the oil.", JONAS[0]] if told in ONCE else JONAS
    assert not found_in(CHECK, *[[*ILSE, *MIND]] * 3, again, [*SHORT, told, *SHORT[1:], SHORT[0]])


def test_is_silent_about_the_only_thought_of_somebody_where_nobody_else_is_whose_mind_is_told() -> None:
    assert not found_in(CHECK, *[[*ILSE, *MIND]] * 3, [*JONAS, ONCE[2], *JONAS[1:2]])


ONLY = [
    "Jonas was thinking of a dance at the mill, and of a girl whom he had never named to anybody.",
    "It occurred to Jonas that nobody had paid him for the rope.",
    "It struck Jonas how thin her wrists were.",
    "Jonas wiped the bench and wondered who had the oil.",
    "Jonas’s mind went back to the year of the flood.",
    "Jonas could not remember when he had last been warm.",
    "Jonas had been meaning to speak since Easter, and put it off again.",
    "Jonas would have liked to say that he was sorry.",
    "Jonas thought that she had her mother’s chin, and resolved not to say so.",
    "Jonas thought that the rope was old, and wondered what it had cost.",
    "Jonas thought of the tin in the shed; every day it was lighter.",
    "Jonas thought how old they all looked, and how tired.",
    "Jonas thought for a moment, seeing the lamp, that it was his niece, and wondered who had sent her.",
]


@pytest.mark.parametrize("told", ONLY)
def test_asks_about_the_only_thought_of_somebody_in_whatever_words(told: str) -> None:
    book = [*[[*ILSE, *MIND]] * 3, [*JONAS], [*SHORT, told, *SHORT[1:], SHORT[0]]]
    assert quotes(found_in(CHECK, *book)) == [[told]]


@pytest.mark.parametrize(
    "told",
    [
        "Jonas thought for some time before he spoke of the rope.",
        "Jonas thought that the rope would go another year.",
        "Jonas doubted whether the rope would be wanted again.",
        "Jonas made up his mind and took the rope down from the nail.",
        "Jonas could think of nothing to say about the rope.",
        "Jonas thought of nothing, and took the rope down from the nail.",
        "It struck Jonas on the hand, and the rope fell into the water.",
    ],
)
def test_is_silent_about_a_pause_an_opinion_and_what_is_seen(told: str) -> None:
    assert not found_in(CHECK, *[[*ILSE, *MIND]] * 3, [*JONAS], [*SHORT, told, *SHORT[1:], SHORT[0]])


def test_asks_about_the_thought_of_somebody_who_is_hardly_told_of() -> None:
    told = "Father Anselm was thinking of a girl in a kitchen, of whom he had never spoken to anybody."
    one = found_in(CHECK, *[[*ILSE, *MIND]] * 3, [*ILSE, "The dog barked.", told])
    assert quotes(one) == [[told]]
    assert one[0].words["other"] == "Father Anselm"


def test_asks_about_a_she_who_can_be_nobody_else() -> None:
    told = "She was thinking of a dance at the mill, years ago, and of the long way home."
    his = [
        "Tobias came up to the toll house at noon, and Marta let him in.",
        "Marta shut the box. She put it under the bench. " + told,
        "Tobias saw the light go out across the water. He wondered who had the oil.",
    ]
    one = found_in(CHECK, *[[*ILSE, *TOBIAS]] * 3, MARTA, his)
    assert quotes(one) == [[told]]


def test_is_silent_about_the_only_thought_of_one_whose_scene_it_is() -> None:
    told = "Jonas was thinking of a dance at the mill, and of the long way home."
    own = ["Jonas saw that the towel was wet.", "Jonas heard the dog across the water."]
    assert not found_in(CHECK, *[[*ILSE, *MIND]] * 3, [*JONAS], [*SHORT, told, *own, SHORT[1], *own])


def test_asks_about_a_he_of_whom_no_i_can_know() -> None:
    told = "He thought of a summer long ago, and of a girl on the weir."
    scene = [*ILSE, *I_TELL, "Tobias went out to the landing. The rain had stopped. " + told, *I_TELL]
    assert quotes(found_in(CHECK, [*ILSE, *I_TELL], scene)) == [[told]]


@pytest.mark.parametrize(
    "told",
    [
        "He had thought of a summer long ago, and of a girl on the weir.",
        "He felt her heart, and shook his head, and said nothing.",
        "He told himself no.",
    ],
)
def test_is_silent_about_a_he_whom_an_i_sees_or_hears_of(told: str) -> None:
    scene = [*ILSE, *I_TELL, "Tobias went out to the landing. The rain had stopped. " + told, *I_TELL]
    assert not found_in(CHECK, [*ILSE, *I_TELL], scene)


def test_is_silent_about_what_somebody_reports() -> None:
    before = [*[[*ILSE, *MIND]] * 3, [*JONAS]]
    told = "Jonas wondered if she got enough to eat."
    assert found_in(CHECK, *before, [*SHORT, f"The boat was off. {told}", *SHORT[1:], SHORT[0]])
    for says in ("The boat was off, Jonas said.", "Jonas said she would wait.", "Jonas told them that it was off."):
        assert not found_in(CHECK, *before, [*SHORT, f"{says} {told}", *SHORT[1:], SHORT[0]])


def test_is_silent_about_whom_somebody_is_taken_for() -> None:
    before = [*[[*ILSE, *MIND]] * 3, [*JONAS]]
    told = "Jonas thought she was his niece, and then the bishop."
    assert not found_in(CHECK, *before, [*SHORT, told, *SHORT[1:], SHORT[0]])
