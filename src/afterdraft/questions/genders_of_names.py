"""Of which gender a given name is, where that is known: those of older novels, of people now alive, and short forms.

The lists here are by hand, from common knowledge of names in English-speaking countries since 1900; those that are both
(Kim, Leslie, Robin) stand in neither, and those of the older list are not said again.
"""

from collections.abc import Set

from afterdraft.reading.lexicon import words_of
from afterdraft.whole.given_names import FEMALE, MALE
from afterdraft.whole.nicknames import BY_NAME

_HERS = words_of(
    """
    abbie aileen aisha alana alexa allison amber amelie amina amira anita anneliese annika antonella anya aoife
    april ariana asha astrid ava avril barb beatriz bernadette bethany beverley bianca bonnie bridie brittany brooke
    bryony candice carla carly carmel carol carole cathy catriona ceri chantal charlene cheryl chiara christine
    ciara cindy claire claudia colleen connie coral corinne crystal danielle darlene dawn debbie debra deirdre
    delphine denise desiree diane dianne donna doreen edie eileen elaine eleni elisa elise eloise elsbeth emilie
    enid erica erika erin esme estelle fatima fern fiona francesca francine freya gail gaynor gemma georgia germaine
    ghislaine gillian gina giulia glenda glenys greta gwyneth hayley hazel heather heidi helga hollie holly ilse
    imelda ioana iona isla jacqueline jade janice janine jasmine jeanette jennifer jill joanne jodie josie joy joyce
    juanita june karen karin kath kathy katrina kay kayleigh keira kirsten kirsty kristen kristin krystyna lana lara
    latoya lauren leanne lesley lisa liz lorraine lowri lucie luisa lynda lynette lynn lynne mair mandy marcia
    mariana marina marlene marnie maureen maxine megan melanie mhairi mia michelle mona monica monique morag myfanwy
    nadine nerys niamh nicola nicole noreen nuala orla paige pam patricia petra pippa priya raquel rebekah renata
    renee rhian rhiannon roberta roisin roxanne sabrina saffron salma samantha sandra saoirse saskia shanice sharon
    sheena shelley sheryl shirley sian silvia sinead siobhan sofia stephanie summer suzanne tamsin tania tanya tara
    teresa tiffany tina tracey valerie verity vicky vivienne wanda wendy yasmin yolanda yvette zainab zara
    """
)
_HIS = words_of(
    """
    abdul ahmed aidan alasdair alastair albie ali alistair alun alvin amir andre andreas anton arjun arnie arran
    ashraf barrie benny bernie bjorn blake brad brandon brendan brett bruno bryn byron callum calum carlos chad
    chester christian ciaran clark clayton cliff clint clyde cody conall connor conor craig curtis dafydd dale
    damian damien damon danny darius darren darryl dean declan denny derek derrick des diego dominic don donal doug
    dougal duane dudley dwayne dwight dylan eamon earl eduardo elliot elliott emlyn emrys enrique erik euan evan
    ewan finlay finn floyd fraser garth gary gavin gene geoff geraint gerry glen glenn glyn gord graeme grant greg
    gregor guillermo gurdial gwyn haroon harvey hassan hedley hussein huw ian ibrahim imran ivo jamal jared jarvis
    jason javier jay jed jeff joaquim johan jorge josh juan keith kelvin ken kenny kevin kieran kirk kurt kyle
    lachlan lance lars lee len leroy les lester lex liam lloyd logan luca luis mac manuel marc marco marius marlon
    martyn marvin matt maxwell mehmet melvin merlin milo mitchell mohammed morris murray neil neville niall olaf
    oleg omar osman otis pablo paddy pavel pete piotr preston rafael raj rajesh ramon randall randy ravi ray reece
    reg rhodri rhys ricardo richie rick ricky rob roberto rod rolf roman ronan ronnie rory ross roy russell rusty
    ryan samir sanjay scott sean selwyn sergio shane shaun spencer stefan sven tariq terry theo todd travis trevor
    tristan troy tyler tyrone viktor wade wayne wes wesley wilf wyn xavier yusuf zac zach
    """
)


def genders(name: str) -> Set[str]:
    """‘f’, ‘m’, or both, of a given name or of those that it is short for; nothing where it is not known."""
    small = name.lower()
    long = {small, *(group[0] for group in BY_NAME.get(small, ()))}
    hers, his = bool(long & (FEMALE | _HERS)), bool(long & (MALE | _HIS))
    return {gender for gender, is_it in (("f", hers), ("m", his)) if is_it}


def may_be_of_one_gender(name: str, other: str) -> bool:
    """Whether nothing is known that speaks against it."""
    one, two = genders(name), genders(other)
    return not one or not two or bool(one & two)
