"""Small invented novels for planters, in which people act, think, travel, and days can be told."""

from bench.faults.planted import Scenes

CHAPTERS = 14


def thinking() -> Scenes:
    """Ilse thinks, Tobias acts, and both speak."""
    return tuple(
        (
            f"Ilse came down to the ferry for the {number}th crossing. Ilse wondered who had coiled the rope.",
            f"“You’re early,” said Tobias. “The river’s up, and there are {number} boats out.”",
            f"Tobias turned to the {number}th post and untied it with his cold hands. He was slow.",
            "“It was up yesterday,” said Ilse. She hoped that it would rain.",
            f"Ilse thought of her sister. She knew that she had {number} letters to write, and that she would not.",
            f"Tobias pushed off. He had his pipe with him, but he did not light it, though Ilse had {number} matches.",
            f"She set her basket down beside her and drew her shawl over her knees, and she felt the cold, "
            f"and counted {number} gulls, "
            "and then she shut her eyes and let the water carry her where it would, as she always did.",
            "“We’ll be slow,” said Tobias.",
        )
        for number in range(1, CHAPTERS + 1)
    )


def travelling() -> Scenes:
    """Two people act, and go to two towns."""
    return tuple(
        (
            f"Ilse Brandt came down to the ferry for the {number}th crossing. Ilse wondered who had coiled the rope.",
            f"“You’re early,” said Tobias. “The river’s up, and there are {number} boats out.”",
            f"Tobias turned to the {number}th post and untied it with his cold hands. He was slow.",
            "“It was up yesterday,” said Ilse. She hoped that it would rain.",
            f"Ilse thought of her sister in Ashwater. She knew that she had {number} letters to write.",
            f"Tobias pushed off for Thirle. He had his pipe with him, and {number} matches.",
            f"She had come from Thirle to Ashwater by the {number}th boat, and she was tired.",
            "“We’ll be slow,” said Tobias.",
        )
        for number in range(1, CHAPTERS + 1)
    )


def acting() -> Scenes:
    """Three people act within one hour; one has a rank."""
    return tuple(
        (
            f"Ilse came down to the ferry for the {number}th crossing with a basket of eels.",
            f"“You’re early,” said Tobias. “The river’s up, and {number} boats are out.”",
            f"Tobias turned to the {number}th post and untied it with his cold hands.",
            f"“It was up yesterday,” said Ilse. “Ask Captain Averay about the {number}th.”",
            f"Ilse sat down in the bow with her {number} eels. Captain Averay took the pole and looked at her.",
            f"Tobias pushed off, and he had {number} matches with him.",
            f"“We’ll be slow,” said Tobias. Ilse counted {number} gulls, and she was cold.",
        )
        for number in range(1, CHAPTERS + 1)
    )


def dated() -> Scenes:
    """Nothing tells of a day, so that days can be told."""
    return tuple(
        (
            f"The door opened slowly and Hannah came into the {number}. room with the lamp in her hand.",
            "“No,” said Hannah. “The bridge is down, and the ferry is on the other side.”",
            f"She stood by the window and looked out over {number} roofs, and she was tired.",
            f"The boat lay under the bank, and Hannah pushed it off with pole number {number} from the shed.",
            f"There was a light on the far bank, and Hannah counted {number} boats in it without a word.",
            "“They will come,” said Hannah.",
        )
        for number in range(1, CHAPTERS + 1)
    )
