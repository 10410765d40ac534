import pytest

from afterdraft.formats.docx.symbols import symbol


@pytest.mark.parametrize(
    ("font", "code", "sign"),
    [
        ("Symbol", "F0B7", "•"),  # from Unicode's mapping of the Symbol font
        ("Symbol", "F061", "α"),
        ("Symbol", "F057", "Ω"),
        ("Wingdings", "F076", "❖"),
        ("wingdings", "76", "❖"),
        ("Wingdings", "F0FE", "\uf0fe"),
        ("Some Ornaments", "F041", "\uf041"),
        ("Georgia", "2766", "❦"),
        ("Georgia", "", ""),
        ("Georgia", "xyz", ""),
        ("Georgia", "D800", ""),
        ("Georgia", "FFFFFFFF", ""),
        ("Georgia", "1", ""),
    ],
)
def test_symbols_as_unicode(font: str, code: str, sign: str) -> None:
    assert symbol(font, code) == sign
