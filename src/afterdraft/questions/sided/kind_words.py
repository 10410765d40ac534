"""The words by which a side of the body is told to be marked, and those by which it is told to be the whole one."""

from collections.abc import Mapping
from dataclasses import dataclass

from afterdraft.questions.sided.hand_words import FINGER, LESS
from afterdraft.questions.sided.limb_words import ACHES, BROKEN, CAST, LEFT, LIMPS, OFF, OUT
from afterdraft.questions.sided.said import SIDE, WHICH

NEVER = "(?!)"  # a pattern that nothing has
GOOD = "good|sound|better|hale|unhurt|whole|uninjured|undamaged|perfect"
WORKS = (
    r"the (?:one|ear|eye) (?:that|which) (?:still )?(?:worked|heard|saw|hears|sees|works)"
    r"|the (?:one|ear|eye) (?:(?:that|which) )?(?:he|she|I) (?:could (?:still )?|still )?(?:hear|see|heard|saw) "
    r"(?:with|out of|from|in|by)"
    r"|the (?:one|eye|arm|leg|hand) (?:(?:that|which) )?(?:he|she|I) (?:had|[’']d) (?:left|still|kept)"
    r"|(?:that|which) had (?:all|every one of) (?:its|his|her) fingers|(?:his|her|my) (?:only|one|remaining) one"
)
PLAIN_GOOD = frozenset(("deaf ear", "blind eye"))  # two good ones of these disagree; a hand is good in its turn


@dataclass(frozen=True, slots=True)
class Kind:
    parts: str  # what has the side
    bad: str  # what tells that it is the one
    worse: str = ""  # the same, where it stands right before the side or the part: 'his bad left knee'
    good: str = GOOD  # right before the side or the part, what tells that the other is
    bare: str = NEVER  # before 'his left' alone, or behind it
    also: str = NEVER  # what has the side too, where it is told right before


KINDS: Mapping[str, Kind] = {
    "deaf ear": Kind(
        "ear|side(?! of)",
        r"deaf(?! (?:man|woman|old|boy|girl|people|mute|and dumb))|hard of hearing|hearing[- ]aid"
        r"|lost (?:the|his|her|my) hearing|ear(?:[’']s| was| is| had been| has been) (?:no (?:use|good)|useless|gone)"
        r"|(?:was|been) (?:ruined|burst|perforated|deafened)|(?:ear|other)(?: one)? (?:had|has) (?:not worked|gone"
        r"|been (?:dead|gone|useless))"
        r"|(?:side|ear)\W(?:\W?\w+ ){0,3}(?:never|could not|couldn[’']t|cannot|can[’']t|did not|didn[’']t) hear[ds]?"
        r"|(?:could not|couldn[’']t|cannot|can[’']t) hear (?:\w+ ){0,2}(?:on|in|with) (?:it|that|the (?=left|right))"
        rf"|hear[ds]? (?:nothing|little|badly) (?:on|with|in|through) {WHICH}|(?:private )?silence (?:of|on|in) {SIDE}"
        r"|(?:no|not|never|n[’']t) (?:an? |any |much |got |have |had )*(?:scrap of |bit of |shred of )?hearing",
        "deaf|bad|dead|cloth",
        f"{GOOD}|hearing|working",
    ),
    "blind eye": Kind(
        "eye|eye-socket|socket|side(?! of)",
        r"blind(?! (?:man|woman|beggar|boy|girl|child|mother|father|wife|horse|alley|with|to)\b)"
        r"|sightless|eye-?patch|(?:was|is|being|of) glass|patch "
        rf"(?:over|on|across) {SIDE}|(?:took|taken|takes|popped|puts|put) (?:out|in) {SIDE}(?=(?:left|right) eye)|"
        rf"(?:lost|losing|put out|gouged out|had had|had taken|cost (?:him|her|me)) (?:the "
        rf"(?:sight|use) (?:of|in) )?{SIDE}|empty socket|eye(?: that| which)? (?:he|she|I|they) (?:had |[’']d )?lost"
        r"|(?:was|had) (?:clouded|filmed|milky|sunken|shut and sunken|sewn)|clouded like"
        r"|eye (?:was|is|had been) (?:gone|closed for good|missing|taken out|removed)"
        r"|(?:could not|couldn[’']t|cannot|can[’']t) see (?:with|out of|from)|the (?:glass|blind|bad) one",
        "blind|bad|dead|glass|false|artificial|china|milky|missing",
        f"{GOOD}|seeing|living",
    ),
    "maimed hand": Kind(
        "hand|paw|fist|one|glove",
        LESS,
        "bad|maimed|crippled|ruined|mangled|clawed|damaged|spoiled|spoilt|short",
        bare="lack|was short|had only|want",
        also=FINGER,
    ),
    "lost arm": Kind(
        "arm|sleeve",
        r"sleeve(?:, which)? (?:was |had been )?(?:pinned|sewn|folded|tucked|hung|hanging|swung|flapped|empty|dangl\w+)"
        rf"|pinned (?:up|across)|stump of {SIDE}|(?:lost|losing|had taken) {SIDE}|(?:had|has) no (?=(?:left"
        rf"|right) arm)|{LEFT}|amputated|{OFF}"
        rf"|hook (?:for an? (?:left|right|hand)|where|instead|in place)|was gone(?! \w*(?:numb|dead|cold|stiff|to))"
        rf"|nothing in {SIDE}|arm (?:had )?(?:stopped|ended)(?: short)?(?= (?:at|above|below))",
        "empty|withered|artificial|false|missing|prosthetic|wooden|tin",
        f"{GOOD}|remaining|only",
    ),
    "false leg": Kind(
        "leg|foot|shin|knee(?= there was)|trouser[- ]leg",
        rf"(?:lost|losing|had no|has no) {SIDE}?(?=(?:left|right) (?:leg|foot))|{LEFT}|(?:unbuckled|unstrapped"
        rf"|unscrewed|buckled on|strapped on) (?:his|her|the|my) leg"
        rf"|amputated|stump of {SIDE}|(?:of|was|is|being) (?:wood|cork|tin|metal|wooden|false)"
        rf"|nothing (?:below|beyond) {SIDE}|there was (?:nothing but|only) a peg|{OFF}"
        r"|leg of his (?:trousers|breeches) (?:was|hung) (?:folded|pinned|sewn|empty)",
        "wooden|false|artificial|cork|tin|metal|prosthetic|peg|missing",
        f"{GOOD}|remaining|only",
    ),
    "lame leg": Kind(
        "leg|foot",
        rf"{LIMPS}|dragg(?:ed|ing)|drags|shorter than|crippled|the (?:bad|stiff|lame|game) (?:one|leg)",
        "bad|stiff|game|gammy|gimpy|withered|club|dud|short|crippled|lame",
    ),
    "bad knee": Kind(
        rf"knee|leg(?= (?:\w+ ){{0,2}}(?:{OUT})\b)",
        rf"{LIMPS}|{ACHES}|the (?:bad|stiff|trick) (?:one|knee)|arthritic|(?:was|had been) (?:bad|stiff)",
        "bad|stiff|game|gammy|gimpy|dud|trick|weak|rheumatic|dicky",
    ),
    "bad hip": Kind(
        "hip",
        rf"{ACHES}|arthritic|the (?:bad|stiff) (?:one|hip)|(?:replaced|done|pinned)\b",
        "bad|stiff|dud|rheumatic|artificial|arthritic|new",
    ),
    "bad shoulder": Kind(
        "shoulder", rf"{ACHES}|arthritic|frozen|the (?:bad|stiff) (?:one|shoulder)", "bad|stiff|frozen|arthritic|dicky"
    ),
    "maimed ear": Kind(
        "ear",
        r"cauliflower|ear (?:was |is |had been )?(?:torn|notched|ragged|missing|cropped|shredded|mangled|gone)\b"
        rf"|(?:top|tip|half|lobe|part|piece|rim|most|bit) of {SIDE}|(?:lost|losing|sliced off|cut off"
        rf"|bitten off) {SIDE}",
        "torn|notched|ragged|mangled|cauliflower|half|cropped|missing|tattered",
        "",
    ),
    "weak eye": Kind(
        "eye",
        r"squint\w*|lazy|cataract\w*|(?:a|the) cast in|turned (?:in|out)(?:ward)?\b|wandered|drooped",
        "lazy|wall|drooping|wandering|wonky",
        "",
    ),
    "weak side": Kind(
        r"side(?: of (?:his|her|my) (?:face|mouth|body))?|arm|hand|leg|foot|corner of (?:his|her|my) mouth",
        r"stroke|wasted|paralysed|paralyzed|palsied|(?:was|hung|lay) (?:\w+ )?useless|no (?:use|feeling) in"
        r"|dragged down|droop\w*",
        "paralysed|paralyzed|palsied|useless",
        "",
    ),
    "injured arm": Kind("arm|wrist|hand|elbow|forearm", CAST, "splinted|plastered"),
    "leg in a cast": Kind("leg|ankle|foot|shin", rf"{CAST}|{BROKEN}", "broken|splinted|plastered"),
    "injured hand": Kind(
        "hand|wrist|palm",
        rf"(?:bandages?|dressing) (?:on|round|around|over|from|off) {WHICH}|in (?:a|an|the) (?:\w+ )?bandages?"
        r"|(?:was|were|being|been|still) (?:\w+ly )?(?:bandaged|wrapped|swathed|done up|bound up|tied up)",
        "bandaged|swathed",
        "unbandaged|unhurt",
    ),
    "wedding ring": Kind(
        "hand|finger|third finger|ring finger|fourth finger",
        r"wedding[- ](?:ring|band)(?![^.;]*\b(?:now|moved|since)\b)",
        good="",
    ),
    "signet ring": Kind("hand|finger|little finger|third finger|ring finger|one", "signet", good=""),
}
