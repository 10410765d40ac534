"""Characters of symbol fonts as Unicode: those that manuscripts use. From memory of the fonts' published tables.

What is not listed stays a private-use character, so that nothing is lost and a row of such signs is still seen
to be an ornament.
"""

from collections.abc import Mapping

_PRIVATE = range(0xF020, 0xF100)  # where symbol fonts keep their characters 0x20…0xFF

_SYMBOL = {
    0x2A: "∗", 0x2D: "−", 0xA2: "′", 0xA3: "≤", 0xA5: "∞", 0xA7: "♣", 0xA8: "♦", 0xA9: "♥", 0xAA: "♠",
    0xAB: "↔", 0xAC: "←", 0xAD: "↑", 0xAE: "→", 0xAF: "↓", 0xB0: "°", 0xB1: "±", 0xB2: "″", 0xB3: "≥",
    0xB4: "×", 0xB7: "•", 0xB8: "÷", 0xB9: "≠", 0xBA: "≡", 0xBB: "≈", 0xBC: "…", 0xC5: "⊕", 0xD7: "⋅",
    0xE0: "◊",
    **dict(enumerate("ΑΒΧΔΕΦΓΗΙϑΚΛΜΝΟΠΘΡΣΤΥςΩΞΨΖ", 0x41)),
    **dict(enumerate("αβχδεφγηιϕκλμνοπθρστυϖωξψζ", 0x61)),
}  # fmt: skip
_WINGDINGS = {
    0x28: "☎", 0x2A: "✉", 0x4A: "☺", 0x4B: "😐", 0x4C: "☹", 0x4E: "☠", 0x51: "✈", 0x52: "☼", 0x54: "❄",
    0x58: "✠", 0x59: "✡", 0x5A: "☪", 0x5B: "☯", 0x5C: "ॐ", 0x5D: "☸", 0x6C: "●", 0x6D: "❍", 0x6E: "■",
    0x6F: "□", 0x71: "❑", 0x72: "❒", 0x74: "⧫", 0x75: "◆", 0x76: "❖", 0x77: "⬥", 0x7B: "❀", 0x7C: "✿",
    0x7D: "❝", 0x7E: "❞", 0x9E: "·", 0x9F: "•", 0xA1: "○", 0xA7: "▪", 0xAB: "★", 0xAC: "✶", 0xAD: "✷",
    0xAE: "✸", 0xAF: "✹", 0xB0: "✵", 0xB6: "☆", 0xD8: "➢", 0xDF: "←", 0xE0: "→", 0xE1: "↑", 0xE2: "↓",
    0xFB: "✗", 0xFC: "✓",
}  # fmt: skip
_FONTS: Mapping[str, Mapping[int, str]] = {"symbol": _SYMBOL, "wingdings": _WINGDINGS}


def symbol(font: str, code: str) -> str:
    """The character that w:sym prints: `font` by name, `code` in hexadecimal; "" where `code` is no character."""
    try:
        number = int(code, 16)
    except ValueError:
        return ""
    if number in _PRIVATE:
        return _FONTS.get(font.casefold(), {}).get(number - 0xF000, chr(number))
    if number < 0x100 and font.casefold() in _FONTS:
        return _FONTS[font.casefold()].get(number, chr(0xF000 + number))
    is_text = 0x20 <= number < 0x110000 and not 0xD800 <= number < 0xE000
    return chr(number) if is_text else ""
