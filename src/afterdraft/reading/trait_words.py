"""Words that say what somebody is like, each with its normal form. By hand, from common English."""

from collections.abc import Mapping

from afterdraft.reading.lexicon import KIN, words_of
from afterdraft.reading.trait import TraitKind


def _forms(text: str) -> dict[str, str]:
    """`grey: gray silver` makes all three 'grey'."""
    found: dict[str, str] = {}
    for line in text.strip().splitlines():
        value, words = line.split(":")
        found |= dict.fromkeys((value.strip(), *words.split()), value.strip())
    return found


_EYES = _forms(
    """
    grey: gray greyish steely slate
    blue: bluish azure sapphire
    green: greenish emerald
    brown: brownish chestnut
    hazel:
    black: jet
    violet:
    amber: yellow golden tawny
    dark: darker darkest
    light: pale
    """
)
_HAIR = _forms(
    """
    fair: blond blonde golden gold yellow yellowy flaxen straw-coloured sunny sandy pale light
    red: ginger auburn copper coppery carroty reddish foxy
    brown: chestnut brownish mousy
    black: raven jet
    dark: darker
    grey: gray silver silvery grizzled greying graying iron-grey iron-gray
    white: snowy snow-white
    curly: curling wavy
    straight: lank
    """
)
PARTS: Mapping[str, TraitKind] = {
    "eyes": "eyes",
    "eye": "eyes",
    "hair": "hair",
    "hairs": "hair",
    "curls": "hair",
    "locks": "hair",
    "beard": "beard",
    "moustache": "beard",
    "mustache": "beard",
    "whiskers": "beard",
    "eyed": "eyes",
    "haired": "hair",
    "bearded": "beard",
}
LOOKS: Mapping[TraitKind, Mapping[str, str]] = {"eyes": _EYES, "hair": _HAIR, "beard": _HAIR}
COLOURS = frozenset({*_EYES, *_HAIR})
SHADES = frozenset({"dark", "light"})  # of eyes: said only where no colour is beside them
HEIGHTS = _forms(
    """
    tall: taller tallish lanky
    short: shortish stumpy squat
    """
)
SCARRED = words_of("cheek temple brow eyebrow jaw forehead hand wrist arm shoulder")
LAMED = words_of("leg foot knee hip")
HANDS = {"left": "left", "right": "right"}
PEOPLE = words_of(
    """
    man woman girl boy lady gentleman person fellow child creature youth lad chap figure stranger
    """
)
KINSHIP = KIN - words_of("child friend") | words_of(
    "mother-in-law father-in-law brother-in-law sister-in-law son-in-law daughter-in-law half-brother half-sister"
)
TRADES = words_of(
    """
    accountant actor actress apothecary architect artist auctioneer author baker banker barber barmaid barman barrister
    blacksmith bookseller botanist brewer builder butcher butler carpenter chambermaid chemist clergyman clerk coachman
    cobbler collier composer conductor constable cook coroner curate dairymaid dentist detective doctor draper
    dressmaker driver editor electrician engineer farmer fireman fisherman footman forester gamekeeper gardener
    governess grocer groom headmaster headmistress historian housekeeper housemaid hunter innkeeper inspector jockey
    joiner journalist judge keeper landlady landlord lawyer librarian magistrate maid mariner mason mechanic merchant
    midwife miller miner minister monk musician novelist nun nurse officer painter parson pharmacist philosopher
    photographer physician pilot plumber poet policeman policewoman porter postman potter preacher priest printer
    professor publisher rector reporter saddler sailor salesman schoolmaster schoolmistress schoolteacher scientist
    sculptor seamstress secretary shepherd shoemaker shopkeeper singer smith smuggler soldier solicitor spy steward
    surgeon surveyor tailor teacher thatcher tutor typist valet vet vicar waiter waitress weaver writer
    """
)
_ONES = (
    "one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen "
    "eighteen nineteen"
)
_TENS = "twenty thirty forty fifty sixty seventy eighty ninety"
_NUMBERS = {word: value for value, word in enumerate(_ONES.split(), 1)} | {
    word: 10 * value for value, word in enumerate(_TENS.split(), 2)
}
OLDEST = 110
DECADES = {f"{word.removesuffix('y')}ies": f"{10 * value}s" for value, word in enumerate(_TENS.split(), 2)}


def number(word: str) -> int | None:
    """Of an age: 'forty-five', '45', 'nine-and-twenty'; None for no number, or one that no age is."""
    if word.isdecimal():
        found = int(word)
    else:
        parts = [_NUMBERS.get(part, 0) for part in word.split("-") if part != "and"]
        pair = len(parts) == 2 and min(parts) < 10 and max(parts) >= 20
        if not all(parts) or not (len(parts) == 1 or pair):
            return None
        found = sum(parts)
    return found if 0 < found <= OLDEST else None
