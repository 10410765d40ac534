"""Scenes of one invented household, in which a few people are named and speak often enough to be known."""

ILSE = [
    "Ilse Brandt came down to the ferry before it was light. The rope was wet, and she coiled it twice.",
    "“You’re early,” said Tobias. “The river’s up.”",
    "“It was up yesterday,” said Ilse. She put the basket under the seat.",
    "“Then we’ll be slow,” said Tobias, and he took the long pole from its hook.",
    "Ilse sat down in the bow. Tobias pushed off, and the bank went away behind them.",
]
MARTA = [
    "Marta Kell kept the toll in a cigar box. She counted it at noon, when nobody came.",
    "“Four and six,” said Marta. “That’s the week.”",
    "“It was nine last year,” said Tobias. He leaned on the rail and looked at the water.",
    "“Last year there was no bridge,” said Marta. She shut the box and turned the key.",
    "Tobias went out to the landing, and Marta heard him whistle for the dog.",
]
NIGHT = [
    "After supper Ilse lit the lamp in the boathouse. Tobias was mending the net.",
    "“Marta wants to sell,” said Ilse.",
    "“She’s wanted to for years,” said Tobias. “Nobody buys a ferry.”",
    "Ilse turned the wick down. “Somebody asked,” said Ilse, and Tobias put the needle down on the bench.",
]
