"""What a file of each habit and format can carry, as a table: targets hold where the sign is in the file."""

from bench.structure.run import readable
from bench.structure.writers.habits import HABITS, Habit

FORMATS = ("docx", "odt", "rtf", "epub", "html", "txt", "md")
LOOKS = ("docx", "odt", "rtf", "epub", "html")  # formats in which a line has a look


def signs() -> list[str]:
    """Rows: N numbers, T titles, L levels told apart, B typed breaks, b breaks by blank lines, P new pages, F look."""
    lines = [
        "What each file carries: **N**umbers, **T**itles, **B**reaks that are typed (**b**: blank lines only), new "
        "**P**ages, the **L**ook of a line. A dash: the format cannot carry the habit, or is not read yet.",
        "",
        "| habit | " + " | ".join(FORMATS) + " |",
        "|---" * (len(FORMATS) + 1) + "|",
    ]
    for habit in HABITS:
        known = readable(habit)
        lines.append(f"| {habit.name} | " + " | ".join(_cell(habit, f) if f in known else "–" for f in FORMATS) + " |")
    return lines


def _cell(habit: Habit, form: str) -> str:
    typed = any(habit.break_marks)
    letters = (
        ("N", habit.numbers and habit.levels),
        ("T", habit.titles and habit.levels),
        ("B", typed),
        ("b", "" in habit.break_marks),
        ("P", habit.pages and form in LOOKS),
        ("L", form in LOOKS and habit.levels),
    )
    return " ".join(letter for letter, carried in letters if carried)
