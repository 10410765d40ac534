"""Words for what somebody can do or not, and does or does not: by hand, from common English."""

from collections.abc import Mapping
from dataclasses import dataclass

_N = "[’']"
NEVER = "(?!)"  # a pattern that nothing has
_HAD = rf"(?:had|has|have|{_N}d|{_N}ve)(?: (?!been|never|not)\w+)? "
_DET = "(?:the|a|an|his|her|my|their|our|that|this|another|some|two|three|every|[A-Z]\\w+[’']s)"
_SOME = rf"(?:{_DET} )?(?:[\w’'-]+ ){{0,3}}?"
_WAY = (
    "home|back|over|up|down|off|away|out|to|into|through|along|round|around|across|past|from|north|south|east|west"
    "|slowly|fast|straight|all|alone|for|too|without|on"
)
_VEHICLE = (
    "car|van|truck|lorry|wagon|jeep|taxi|cab|bus|coach|estate|saloon|hatchback|pick-?up|tractor|ambulance|minibus|motor"
    "|motor-?car|automobile|Ford|Volvo|Mini|Beetle|Morris|Austin|Rover|Land Rover|Buick|Fiat|Renault|Citroën|Volkswagen"
)
_MAD = "(?:mad|crazy|wild|to (?:drink|distraction|despair|tears|madness|fury|suicide|it|ruin)|out of|from (?:his|her))"
_HORSE = "horse|mare|pony|cob|gelding|stallion|bay|grey|chestnut|hunter|colt|filly|mule"
_CARRIED = (
    r"(?![^.;,]{0,30}\b(?:bus|train|tram|lift|elevator|car|cart|bike|bicycle|van|truck|taxi|cab|carriage|boat)\b)"
)
_DRINK = (
    "whisky|whiskey|gin(?!ger)|brandy|wine|claret|(?<!ginger )beer|(?<!ginger )ale|stout|rum|vodka|sherry|port"
    "|champagne|cider|cocktail|scotch|bourbon|pint|burgundy|martini"
)
_GOOD = r"(?:was|had been|had always been) an? (?:(?!poor|bad|weak|rotten|terrible|hopeless)\w+ ){0,2}"
_DRINKS = (
    "drank|sipped|gulped|swallowed|finished|drained|emptied|poured (?:him|her|my)self|tossed (?:back|off|down)"
    "|knocked back|took a (?:sip|swallow|pull|swig|gulp) (?:of|at|from)|was drinking"
)
_MEAT = "bacon|ham|steak|chops?|sausages?|beef|mutton|lamb|pork|chicken|goose|turkey|kidneys?|meat|liver|hamburger"
_PLAYED = "piano|violin|fiddle|organ|guitar|cello|flute|chess|bridge|whist|poker|tennis|golf|cricket"
_LANGUAGE = (
    "French|German|Italian|Spanish|Latin|Greek|Russian|Welsh|Irish|Gaelic|Polish|Dutch|Portuguese|Arabic|Hebrew|Yiddish"
    "|Chinese|Japanese|Hindi|Urdu|Norwegian|Swedish|Danish|Turkish|Hungarian|English"
)
_FOOD = "stew|omelettes?|cake|pie|casserole|soup|curry|bread|loaf|pancakes|joint|roast|dinner|supper|breakfast|goose"


@dataclass(frozen=True, slots=True)
class Skill:
    verb: str  # 'swim': of 'cannot swim', 'never learned to swim'
    done: str  # 'swam'
    taught: str  # words near 'taught' or 'lesson' that tell that it is this
    other: str = NEVER  # other ways to claim that it is not done
    able: bool = True  # whether 'cannot', 'never learned to' claim it
    habit: bool = False  # whether 'does not', 'never did' claim it: drink, drive
    past: str = NEVER  # of 'never drove', 'had never driven'
    often: bool = False  # done so often that a doubtful owner is let be

    @property
    def can_be_given_up(self) -> bool:
        """Whether who does not do it may have done it once."""
        return not self.able


SKILLS: Mapping[str, Skill] = {
    "swim": Skill(
        "swim(?: a stroke| a yard| a length)?",
        rf"(?:swam|{_HAD}swum|was swimming|swims)\b(?! (?:in|with) (?:tears|grease|gravy|joy)| (?:into|before) "
        r"(?:\w+ )?(?:view|focus|sight|eyes))|struck out for the (?:\w+ )?(?:shore|bank|beach|boat)"
        rf"|{_GOOD}swimmer\b",
        "swim",
        other="non-swimmer|no swimmer",
        habit=True,
    ),
    "drive": Skill(
        rf"drive(?: an?(?: \w+)? (?:{_VEHICLE})| cars| one)?",
        rf"(?:drove|{_HAD}driven|was driving|drives) (?:{_SOME}(?:{_VEHICLE})\b|(?:him|her|my)self\b"
        rf"|(?:him|her|us|them|me|the \w+ of them|[A-Z]\w+) (?!{_MAD})(?:{_WAY})\b"
        rf"|(?:{_WAY})\b(?! the (?:nail|point|cattle|cows|sheep)))"
        rf"|(?:took|was at|was behind|got behind) the wheel\b|(?:parked|reversed|started) {_DET} (?:{_VEHICLE})\b"
        rf"|{_GOOD}driver\b",
        "driv|wheel|clutch",
        other="never (?:been|sat) behind (?:a|the) wheel|(?:had|has|have) never held a licen[cs]e|no driver",
        habit=True,
        past=rf"(?:drove|driven)(?: an?(?: \w+)? (?:{_VEHICLE})| cars| anything)?",
        often=True,
    ),
    "ride a bicycle": Skill(
        "(?:ride|balance on) an? (?:bicycle|bike)|cycle",
        rf"(?:cycled|pedall?ed|bicycled)\b|(?:rode|{_HAD}ridden|was riding) {_DET} (?:\w+ )?(?:bicycle|bike)\b",
        "cycl|bike|ride|riding|rode",
        habit=True,
        past="(?:rode|ridden) an? (?:bicycle|bike)",
    ),
    "ride": Skill(
        "(?:ride|sit on|sit)(?: an?(?: \\w+)? horse| horses| one)?",
        rf"(?:rode|{_HAD}ridden|was riding) (?:{_DET} (?:\w+ ){{0,2}}(?:{_HORSE})\b|(?:{_WAY}|astride|bareback|ahead)\b"
        rf"{_CARRIED})|(?:galloped|cantered)\b"
        rf"|{_GOOD}(?:rider|horseman|horsewoman)\b",
        "rid|rode|horse|pony|saddle",
        habit=True,
        other="never (?:been|sat) (?:up )?(?:on|astride) a (?:horse|pony)",
        past="ridden(?: an?(?: \\w+)? horse)?|rode",
    ),
    "cook": Skill(
        "cook(?: a meal| anything)?|boil an egg|boil water|fry an egg",
        rf"(?:cooked|was cooking|cooks) (?:{_DET}|him|her|them|us|me|dinner|supper|lunch|breakfast|for)\b"
        rf"|(?:fried|scrambled|poached|grilled) {_SOME}(?:eggs?|omelettes?|{_MEAT})\b"
        rf"|(?:made|baked|roasted) {_SOME}(?:{_FOOD})\b"
        rf"|{_GOOD}cook\b",
        "cook|recipe",
        other="no cook",
        habit=True,
        past="cooked(?: a meal| anything)?",
    ),
    "type": Skill("type|use a typewriter", r"(?:typed|was typing|types)\b(?! of)", "typ", habit=True),
    "read": Skill(
        "read or write|read and write|read nor write|read a (?:word|line)|read|write (?:his|her|my) (?:own )?name",
        rf"(?:read|was reading|reads) (?:{_SOME}(?:letters?|notes?|notices?|(?:news)?papers?|books?|novels?|headlines?"
        r"|pages?|chapters?|telegrams?|labels?|lists?|poems?|message|words|sentence|Bible)\b|aloud|it (?:out|"
        r"through|aloud|twice|again))|wrote (?:him|her|them|me|back to|a (?:letter|note)|to (?=[A-Z]|him|her|the))\b",
        "read|letters|alphabet|spell",
        other="(?:was|is|were|are|am|been|[’']m|[’']s|[’']re) (?:quite |still |almost )?illiterate",
        often=True,
    ),
    "fire a gun": Skill(
        "(?:fire|shoot|use|handle) (?:a|any) (?:gun|rifle|pistol|revolver|shotgun)|shoot",
        rf"(?:fired|{_HAD}fired) (?:{_DET} (?:\w+ )?(?:gun|rifle|pistol|revolver|shotgun|shots?)|twice|again)\b"
        r"|shot (?:a|an|the|two|three|four|six) (?:\w+ )?(?:rabbits?|hares?|ducks?|deer|stag|crows?|pigeons?|fox)\b",
        "shoot|gun|rifle",
        other="never (?:fired|held|handled) a (?:gun|rifle|pistol|shot)",
    ),
    "knit": Skill(
        "knit", r"(?:knitted|was knitting|knits)\b(?! (?:\w+ )?brows?)", "knit|needle|wool", habit=True, past="knitted"
    ),
    "sew": Skill(
        "sew(?: a (?:stitch|button|seam)| on a button)?|thread a needle",
        rf"(?:sewed|{_HAD}sewn|stitched|was sewing|hemmed)\b",
        "sew|needle|stitch",
        habit=True,
        past="sewed|sewn(?: a stitch)?",
    ),
    "skate": Skill("skate", r"(?:skated|was skating)\b", "skat", habit=True, past="skated"),
    "ski": Skill("ski", r"(?:skied|ski’d|was skiing)\b", "ski", habit=True, past="skied"),
    "row": Skill(
        "row(?: a boat)?", rf"(?:rowed|was rowing) (?:{_DET} |him|her|them|us|me|{_WAY})", "row|oar", habit=True
    ),
    "sail": Skill(
        "sail(?: a boat| a dinghy)?",
        rf"(?:sailed|was sailing) {_DET} (?:\w+ ){{0,2}}(?:boat|dinghy|yacht|sloop|ketch|cutter|smack|yawl)\b",
        "sail",
        habit=True,
    ),
    "whistle": Skill("whistle", r"(?:whistled|was whistling)\b", "whistl", habit=True),
    "dance": Skill(
        "dance(?: a step)?",
        r"(?:danced|was dancing) (?:with|the|all|every|a (?:waltz|tango|polka|reel|jig|foxtrot|quickstep))\b",
        "danc|waltz",
        habit=True,
    ),
    "drink": Skill(
        "drink(?: alcohol| spirits)?(?! and drive)",
        rf"(?:{_DRINKS}) {_SOME}(?:of )?{_SOME}(?:{_DRINK})\b"
        r"|(?:had|ordered) (?:a|another|two|three) (?:large |small )?"
        rf"(?:glass(?:es)? of |pints? of )?(?:{_DRINK})s?\b",
        "drink|drank",
        other=r"(?<=a )(?:strict |lifelong |strong )?teetotall?er|teetotal|(?:signed|taken|took) the pledge"
        r"|(?:never|not|n[’']t) (?:touch(?:es|ed)?|tastes?d?) (?:a drop|alcohol|drink|spirits|strong drink|the stuff)",
        past="drank|drinks",
        able=False,
        habit=True,
        often=True,
    ),
    "smoke": Skill(
        "smoke",
        rf"(?:lit|smoked|was smoking|puffed (?:at|on)|drew on|stubbed out|inhaled|rolled (?:him|her|my)self) {_SOME}"
        r"(?:cigarettes?|cigar|cheroot|pipe|roll-up)\b|(?:took|accepted|had) (?:a|another) (?:cigarette|cigar)\b",
        "smok|cigar",
        other="non-smoker",
        past="smoked|smokes",
        able=False,
        habit=True,
        often=True,
    ),
    "eat meat": Skill(
        "eat meat|touch meat",
        r"(?:ate|was eating|finished|cut into|bit into|tucked into|chewed|helped (?:him|her|my)self to) "
        rf"{_SOME}(?:of )?(?:{_MEAT})\b",
        "meat",
        other=r"(?<=a )(?:strict |lifelong |strong )?vegetarian(?! \w)|(?:am|was|is|[’']m|[’']s) (?:a )?vegetarian",
        past="(?:ate|eats|eaten|touched|touches) meat",
        able=False,
        habit=True,
    ),
    **{
        f"drink {one}": Skill(
            f"(?:drink|take|touch|like) {one}",
            rf"(?:{_DRINKS}) {_SOME}(?:of )?{_SOME}{one}\b(?! (?:cup|pot|table|spoon))",
            one,
            other=rf"(?:hate[sd]?|loathe[sd]?|detest(?:s|ed)?"
            rf"|(?:could not|couldn{_N}t|cannot|can{_N}t) (?:bear|stand|abide)"
            rf"|never (?:drank|drinks|took|takes|touched|touches)) {one}(?! (?:cup|pot|table|spoon|from|in|at))",
            able=False,
            habit=True,
            often=True,
        )
        for one in ("coffee", "tea")
    },
    "take sugar": Skill(
        "take sugar|like sugar",
        rf"(?:stirred|spooned|dropped|put|shovel[l]?ed|ladled) {_SOME}(?:of )?(?:sugars?|lumps)\b",
        "sugar",
        other="(?:took|takes) no sugar|never (?:took|takes) sugar",
        able=False,
        habit=True,
    ),
    "wear a watch": Skill(
        "wear a watch|own a watch|carry a watch",
        r"(?:(?:looked|glanced|peered|squinted) at|consulted|checked|wound|pulled out|took out|drew out) "
        r"(?:his|her|my) (?:\w+ )?(?:wrist-?)?watch\b",
        "watch",
        past="(?:wore|worn|owned|carried|carries|wears|owns|had) a watch",
        other="(?:wore|owned|carried|wears|owns|carries) no watch",
        able=False,
        habit=True,
        often=True,
    ),
    "wear glasses": Skill(
        "(?:wear|need) (?:glasses|spectacles)",
        r"(?:took off|took|removed|pushed up|put on|polished|wiped|adjusted|straightened|peered over) (?:his|her|my) "
        r"(?:\w+ )?(?:glasses|spectacles)\b(?! of)",
        "glasses|spectacles",
        past="(?:wore|worn|needed|wears|needs) (?:glasses|spectacles)",
        other="(?:wore|wears|needed) no (?:glasses|spectacles)",
        able=False,
        habit=True,
        often=True,
    ),
    **{
        f"play {'the ' if number < 7 else ''}{one}": Skill(
            f"play (?:the )?{one}",
            rf"(?:played|was playing) (?:[\w’']+ ){{0,4}}?{one}\b",
            one,
            habit=True,
            past=f"played (?:the )?{one}",
        )
        for number, one in enumerate(_PLAYED.split("|"))
    },
    **{
        f"speak {one}": Skill(
            f"(?:speak|understand|read) (?:any |a word of |a single word of |much )?{one}",
            r"(?:said|asked|answered|replied|spoke|called|shouted|muttered|whispered|added|explained|cursed|swore|told"
            r"|conversed|chatted|was speaking)\b[^.;“”\"!?]{0,40} in (?:\w+ )?(?<!bad )(?<!broken )(?<!poor )"
            rf"(?<!halting ){one}\b|(?:spoke|was speaking) (?:\w+ )?{one}\b",
            f"{one}|language",
            other=rf"(?:have|has|had|spoke|speaks|knew|knows|with) (?:no|not a word of|no word of) {one}"
            rf"|(?:without|not) (?:speaking |understanding )?a word of {one}",
            habit=True,
            past=f"(?:spoke|spoken) (?:a word of )?{one}",
        )
        for one in _LANGUAGE.split("|")
    },
}
