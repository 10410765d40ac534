"""Which lines are ornaments. Common practice throughout: manuscripts, printed novels, and what people type."""

import unicodedata

import pytest
from hypothesis import given
from hypothesis import strategies as st

from afterdraft.manuscript.ornament import is_ornament

ORNAMENTS = """
*|***|* * *|*  *  *|*\u00a0*\u00a0*|*\t*\t*|*****|#|###|# # #|~|~~~|~ ~ ~|-|--|---|- - -|–|—|———|— — —|_____|= = =|+ + +
• • •|•|·|· · ·
⁂|❦|☙|❦ ❦ ❦|☙❧|◆|◇ ◇ ◇|∗∗∗|✻|✻ ✻ ✻|†|§|¶|※|♠♥♦♣|❤️|\uf0a7|─────|★☆★
-#-|~*~|~ * ~|-*-|(*)|[*]|[***]|[—]|« * »|<<*>>|<<<>>>|-=*=-|=-=-=|*-*-*-*|.:*:.|/ / /
\\* \\* \\*|\\*\\*\\*|^^^|.....|. . . . .|… … …
oOo|o0o|OoO|o O o|oOOo|--oOo--|--oo0oo--|-o-|-0-|— o —|~O~|o o o|x x x|X X X|x-x-x|xXx|- o - o - o -
"""
NOT_ORNAMENTS = """
|I|X|V|x|o|O|0|00|000|10|XXX|XOX|ooo|OOO|Ooo|oo|oO|xo|- x -|- X -|- 3 -|-30-|— I —|0 0 0
…|...|....|. . .|. . . .|……|“…”|‘…’|«…»|“—”|"..."|'...'|— …|—…|— . . .|“***”|?|!|?!|!!!|… ?|***!
.|,|:|;|()|[]|( )|:)|:-)|;-)|:*|=)|^_^|-_-|-.-|>_<|o_o|O_O|😀|😂😂😂|❤ you|<|&|/|%|=|++|'|''
The End|THE END|* The lamp went out *|*I*|#1|* 1 *|<hr>|* * * Note|Ah —|a|é|第|©|™|°|\ufffc
"""


def lines(table: str) -> list[str]:
    return [line for row in table.strip("\n").split("\n") for line in row.split("|")]


@pytest.mark.parametrize("line", lines(ORNAMENTS))
def test_a_line_of_signs_is_an_ornament(line: str) -> None:
    assert is_ornament(line)
    assert is_ornament(f"  {line}\u00a0")


@pytest.mark.parametrize("line", lines(NOT_ORNAMENTS))
def test_what_may_be_said_or_counted_is_not(line: str) -> None:
    assert not is_ornament(line)


@given(st.text())
def test_no_ornament_holds_a_word_or_speech(text: str) -> None:
    if is_ornament(text):
        assert not any(sign.isalnum() and sign not in "oO0xX" for sign in text)
        assert not set("?!\"'“”‘’") & set(text)


@given(st.sampled_from(lines(ORNAMENTS)), st.sampled_from(["Yes", "no", "I", "7", "?", "“", "é"]))
def test_one_word_beside_it_undoes_it(ornament: str, word: str) -> None:
    assert not is_ornament(f"{ornament} {word}")
    assert not is_ornament(f"{word} {ornament}")


@given(st.characters(categories=["So", "Sm"]))
def test_a_symbol_in_a_row_of_three_is_one(sign: str) -> None:
    emoji = 0x1F300 <= ord(sign) < 0x1FB00 and not 0x1F650 <= ord(sign) < 0x1F680
    letter = sign.isalnum() or sign in "°©®™\ufffc\ufffd"
    assert unicodedata.category(sign) in ("So", "Sm")
    assert is_ornament(f"{sign} {sign} {sign}") == (not emoji and not letter)
