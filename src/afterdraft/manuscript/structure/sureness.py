"""How sure each way of recognising a heading or a break is, 0…1; where a number or a typed mark says it, 1.

Share of such decisions that were right in the novels for tuning, every one in all habits and formats (1,580 files of
`bench/structure`): (right + 1) / (all + 2), Laplace's rule of succession, the formats of one habit (4.4 in the mean)
counted as one, and at most `MOST`. Beside each: files' decisions that were right, and wrong.
"""

MOST = 0.99  # a score of novels is not all novels
NAMED = MOST  # a name in the look of the other names: 4,282, 0
NUMBERED = MOST  # a section's number: 10,681, 0
TITLED = MOST  # a section's title in the look of several: 4,812, 3
SPACED = MOST  # a break by extra space: 6,751, 0
ALIKE = 0.98  # a heading without a number in the look of those that have one: 237, 1
LONE_TITLE = 0.93  # a section's title in a look of its own: 57, 0
# What those novels have once or never; chosen by hand.
OPENING = 0.75  # told before the first heading
PAGED = 0.85  # a break by a new page
KIND = 0.84  # "Epilogue", where no other heading is
FILED = 0.86  # a chapter because a file begins
UNSTYLED = 0.7  # a numbered line without the style of the others
PART = 0.8  # what stands over chapters without saying that it is a part
