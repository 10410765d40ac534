"""Countries, states and counties that many know, and who comes from them. By hand, from common knowledge."""

from collections.abc import Iterator, Mapping

Home = tuple[str, ...]  # the country first, then what lies in it: ("usa", "alabama")

_COUNTRIES = """
england: englishman englishwoman londoner yorkshireman yorkshirewoman cornishman | london
scotland: scotsman scotchman scotswoman scotchwoman scot highlander | glasgow edinburgh aberdeen
ireland: irishman irishwoman | dublin belfast
wales: welshman welshwoman | cardiff
france: frenchman frenchwoman parisian | paris lyons marseilles
germany: german prussian bavarian | prussia bavaria berlin munich hamburg
austria: austrian viennese | vienna
italy: italian venetian neapolitan | rome milan venice naples
spain: spaniard | madrid
portugal: | lisbon
holland: dutchman dutchwoman | amsterdam
belgium: belgian | brussels
switzerland: | geneva
denmark: dane | copenhagen
norway: norwegian |
sweden: swede | stockholm
finland: finn |
russia: russian | moscow petersburg
poland: pole | warsaw
hungary: hungarian | budapest
greece: greek | athens
turkey: turk | constantinople
china: chinaman | peking shanghai
japan: | tokyo
india: | calcutta bombay delhi
egypt: egyptian | cairo
canada: canadian | montreal toronto quebec
australia: australian | sydney melbourne
mexico: mexican |
brazil: brazilian |
usa: american | america chicago boston philadelphia
"""
_WITHIN = """
usa: alabama alaska arizona arkansas california colorado connecticut delaware florida georgia idaho illinois indiana
usa: iowa kansas kentucky louisiana maine maryland massachusetts michigan minnesota mississippi missouri montana
usa: nebraska nevada ohio oklahoma oregon pennsylvania tennessee texas utah vermont virginia wisconsin wyoming
england: bedfordshire berkshire buckinghamshire cambridgeshire cheshire cornwall cumberland derbyshire devon dorset
england: durham essex gloucestershire hampshire herefordshire hertfordshire kent lancashire leicestershire
england: lincolnshire norfolk northamptonshire northumberland nottinghamshire oxfordshire rutland shropshire somerset
england: staffordshire suffolk surrey sussex warwickshire westmorland wiltshire worcestershire yorkshire
"""


def _lines(text: str) -> Iterator[tuple[str, list[str], list[str]]]:
    """Country, its people, its places."""
    for line in text.strip().splitlines():
        country, _, words = line.partition(":")
        people, _, places = words.rpartition("|")
        yield country, people.split(), places.split()


PEOPLES: Mapping[str, Home] = {word: (country,) for country, words, _ in _lines(_COUNTRIES) for word in words}
HOMES: Mapping[str, Home] = {
    **PEOPLES,
    **{word: (country,) for country, _, words in _lines(_COUNTRIES) for word in (country, *words)},
    **{word: (country, word) for country, _, words in _lines(_WITHIN) for word in words},
}


def home(word: str) -> Home:
    """Of a place, or of one who comes from it, as it is written; () for one that is not known here.

    >>> home("Alabama"), home("Frenchman"), home("Tolland")
    (('usa', 'alabama'), ('france',), ())
    """
    return HOMES.get(word.lower(), ())


def called(where: Home) -> str:
    """As a sentence has it.

    >>> called(home("Alabama")), called(home("American"))
    ('Alabama', 'America')
    """
    return "America" if where[-1] == "usa" else where[-1].title()


def apart(one: Home, other: Home) -> bool:
    """Whether nobody is at home in both: two countries, or two parts of one. What is not known is not apart.

    >>> apart(home("Alabama"), home("Vermont")), apart(home("America"), home("Ohio"))
    (True, False)
    """
    return any(first != second for first, second in zip(one, other, strict=False))
