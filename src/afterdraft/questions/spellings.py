"""Words that are spelled in two ways, and which way is which."""

import re
from dataclasses import dataclass

from afterdraft.reading.lexicon import words_of

# Words of which both spellings are in use; from memory, as dictionaries of British and American English list them
_OUR = words_of(
    """
    ard arm behavi cand clam clang col demean endeav ferv fav flav harb hon hum lab neighb od parl ranc rig rum sav
    splend succ tum val vap vig
    """
)
_OUR_ENDS = "s ed ing ite ites able ably less ful fully y hood ly er ers ist"
_ISE = words_of(
    """
    agon apolog author bapt brutal capital central character civil critic crystall dramat econom emphas equal familiar
    fertil general harmon hospital human ideal immortal italic jeopard legal local memor modern monopol moral natural
    neutral organ patron penal popular public pulver rational real recogn rhapsod satir scrutin signal social special
    stabil steril subsid symbol sympath tantal terror theor tranquill tyrann util vandal visual vocal vulgar colon
    """
)
_ISE_ENDS = "e ed es ing ation er"
_ONE_L = words_of(
    """
    apparel bevel cancel channel chisel counsel cudgel devil dial dishevel drivel duel enamel equal flannel fuel funnel
    grovel initial jewel label level libel marshal marvel medal model panel parcel pedal pencil quarrel ravel revel
    rival shovel shrivel signal snivel spiral stencil swivel total towel trammel travel trowel tunnel unravel wool yodel
    """
)
_L_ENDS = "ed ing ings er ers or ors ous ously en ens ist ists"
_PAIRS = """
    grey gray  greyish grayish  greyer grayer  greyness grayness  toward towards  afterward afterwards
    theatre theater  theatres theaters  centre center  centres centers  lustre luster  sombre somber  spectre specter
    spectres specters  sabre saber  sabres sabers  meagre meager  fibre fiber  fibres fibers  sepulchre sepulcher
    calibre caliber  manoeuvre maneuver  manoeuvres maneuvers  reconnoitre reconnoiter  defence defense  offence offense
    pretence pretense  judgement judgment  judgements judgments  acknowledgement acknowledgment
    connexion connection  connexions connections  reflexion reflection  plough plow  ploughed plowed  mould mold
    mouldy moldy  sceptic skeptic  sceptical skeptical  scepticism skepticism  gaol jail  gaoler jailer
    pyjamas pajamas  moustache mustache  moustaches mustaches  ageing aging  cosy cozy  cosily cozily  jewellery jewelry
    programme program  programmes programs  whisky whiskey  axe ax  gipsy gypsy  gipsies gypsies  waggon wagon
    waggons wagons  despatch dispatch  despatched dispatched  despatches dispatches  shew show  shewed showed
    lacquey lackey  surprize surprise  surprized surprised  encrease increase  encreased increased  ancle ankle
    ancles ankles  cloathes clothes  chuse choose  grimey grimy  fulfil fulfill  instal install
    enrol enroll  skilful skillful  wilful willful  omelette omelet  cigarette cigaret  okay ok  goodbye goodby
    drily dryly  gaily gayly
"""


ENDS = {"-our": ("-our", "-or"), "-ise": ("-ise", "-ize"), "-ll": ("a doubled l", "a single l")}
_ENDINGS = re.compile(r"(?:s|ed|er|ing|ish|ly|n|ness)$")


@dataclass(frozen=True, slots=True)
class Form:
    """A spelling: of which word, or of which ending that words have in common, and which of the two it is."""

    of: str
    side: int
    other: str


def _forms() -> dict[str, Form]:
    listed = _PAIRS.split()
    pairs = [(_ENDINGS.sub("", one), one, other) for one, other in zip(listed[::2], listed[1::2], strict=True)]
    pairs += [("-our", f"{stem}our{end}", f"{stem}or{end}") for stem in _OUR for end in ("", *_OUR_ENDS.split())]
    pairs += [("-ise", f"{stem}is{end}", f"{stem}iz{end}") for stem in _ISE for end in _ISE_ENDS.split()]
    pairs += [("-ll", f"{stem}l{end}", f"{stem}{end}") for stem in _ONE_L for end in _L_ENDS.split()]
    return {
        word: Form(of, side, (other, one)[side]) for of, one, other in pairs for side, word in enumerate((one, other))
    }


FORMS = _forms()
