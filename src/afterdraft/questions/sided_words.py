"""The words by which a side of the body is told to be marked, and those by which it is told to be the whole one."""

from collections.abc import Mapping
from dataclasses import dataclass

NEVER = "(?!)"  # a pattern that nothing has
GOOD = "good|sound|better|hale|unhurt|whole|uninjured|undamaged|perfect"
WORKS = (
    r"the (?:one|ear|eye) (?:that|which) (?:still )?(?:worked|heard|saw|hears|sees|works)"
    r"|the (?:one|ear|eye) (?:(?:that|which) )?(?:he|she|I) (?:could (?:still )?|still )?(?:hear|see|heard|saw) "
    r"(?:with|out of|from|in|by)"
    r"|the (?:one|eye|arm|leg|hand) (?:(?:that|which) )?(?:he|she|I) (?:had|[’']d) (?:left|still|kept)"
    r"|(?:that|which) had (?:all|every one of) (?:its|his|her) fingers|(?:his|her|my) (?:only|one|remaining) one"
)
ITS = "(?:his|her|my|the|its|an?)"
SIDE = rf"{ITS} (?=left|right)"
WHICH = rf"{ITS} (?=left|right|other)"
_FEW = rf"(?:one|two|three|half|both|some|{ITS})"
_PART_OF = r"(?:(?:last|top|tips?|ends?|little|ring|middle|index|fore|third|fourth|first|joints?|of) )*"
_FINGERS = (
    rf"(?:fingers?|forefinger|finger-?tips?|thumbs?)(?: (?:on|of|off|from) {ITS} "
    r"(?:left|right|other)(?: (?:hand|one))?)?"
)
_GONE = (
    r"(?:missing|cut (?:short|off)|lost|lopped|docked|amputated|severed|sliced|shot (?:off|away)|off at|short|taken off"
    r"|gone(?! (?:\w+ly )?(?:numb|white|cold|dead|blue|stiff|slack|limp|to|through|into)))"
)
_LOST = "(?:lost|left|given|shed|parted with|frozen)"
_REMAINS = (  # 'what was left of the right', 'the ruin of the other'
    rf"(?:(?:what|all)(?:ever)? (?:[\w’]+ ){{1,4}}?(?:left|spared|saved|remained|remains)(?: (?:him|her|me))?"
    rf"|ruins?|wreck(?:age)?|remains|remnants?|half) of (?:the fingers of )?{WHICH}"
)
_LESS = "|".join(
    (
        "maimed|mangled|mutilated|crippled|withered|deformed|fingerless|(?:two|three|four)-fingered",
        rf"hook (?:for an? (?:left|right|hand)|where|instead|in place)|stump of {SIDE}",
        r"(?:was|is) (?:only )?an? (?:\w+ )?(?:stump|claw|hook)\b",
        r"hook,? (?:that|which) was",
        rf"(?:short|shy|lacking|wanting|missing|minus|bereft) (?:of )?(?:{_FEW} )?{_PART_OF}(?:\w+ )?{_FINGERS}",
        rf"(?:lacks|lacked|wants|wanted|missed) {_FEW} {_PART_OF}(?:\w+ )?{_FINGERS}",
        r"(?:lost|losing|cost (?:him|her|me)|took|taken|chopped|sliced|severed|shot|crushed) (?:off )?(?:(?:one|two"
        rf"|three|half|both|part|{ITS} (?:\w+ )?(?:last|top|tips?|ends?|joints?)) (?:\w+ ){{0,4}}|a |an )?{_FINGERS}",
        rf"had (?:had )?(?:the \w+ of )?{_FEW} {_PART_OF}(?:fingers?|thumb) off",
        r"left (?:him |her |me )?(?:\w+ )?(?:one|two|three) fingers (?:of|on)",
        rf"{_FINGERS},? (?:(?:that|which) )?(?:he|she|I) (?:had |[’']d )?{_LOST}\b",
        rf"{_FINGERS}(?: and \w+ \w+)?,?(?: (?:that|which))?(?: (?:was|were|is|are|had been))?(?: \w+ly)? {_GONE}",
        rf"{_FINGERS},? (?:(?:that|which) )?(?:stopped|ended|broke off)(?: short)? at",
        rf"(?:short|missing|shortened|docked|cropped) (?:\w+ )?{_FINGERS}|the (?:short|bad|maimed) (?:one|hand)",
        "(?:only|but) (?:one|two|three|four) fingers|(?:three|four|no) fingers (?:on|left)|what fingers there were",
        rf"(?:no|without an?|minus an?) (?:little |ring |middle |index )?(?:{_FINGERS})(?! to be)",
        "its (?:one|two|three) fingers",
        r"stumps? (?:of (?:\w+ ){0,3}fingers?|where)|its gap\b|gap where|(?<=, )a thumb and (?:one|two|three) fingers?",
        r"fingers of the (?:left|right)(?: hand)?,? which was all",
        rf"(?:had|took|taken|lost|cost (?:him|her|me)) (?:half|most|part) of {WHICH}|would(?: not|n[’']t) close",
        _REMAINS,
    )
)
_CAST = (
    rf"in {ITS} (?:[\w-]+ ){{0,3}}(?:cast|sling|splints?|plaster|brace)"
    r"|in (?:a|the) (?:walking|surgical) boot"
    rf"|(?:cast|sling|splints?|plaster|brace) on {WHICH}|on the other (?:leg|arm|foot|wrist) (?:was )?an? (?:\w+ )?cast"
    "|in plaster|(?:leg|arm|foot|wrist|one) with (?:the|a) (?:cast|plaster)"
    rf"|splinted|(?:broke|broken|busted|sprained) {SIDE}|(?:was|is|had been) (?:broken|splinted)"
)
_OFF = r"(?:off|taken off|shot off|gone|ended|ends|stopped|stops)(?: short)? (?:at|above|below|from) the"
_LIMPS = (
    rf"lame|limp(?:s|ed|ing)?|favou?r(?:ed|ing|s)|(?:sparing|spared) {SIDE}|would(?: not|n[’']t) bend"
    r"|turned in(?:ward)?\b|calliper|built-up"
)


@dataclass(frozen=True, slots=True)
class Kind:
    parts: str  # what has the side
    bad: str  # what tells that it is the one
    worse: str = ""  # the same, where it stands right before the side or the part: 'his bad left knee'
    good: str = GOOD  # right before the side or the part, what tells that the other is
    bare: str = NEVER  # before 'his left' alone, or behind it


KINDS: Mapping[str, Kind] = {
    "deaf ear": Kind(
        "ear|side(?! of)",
        r"deaf(?! (?:man|woman|old|boy|girl|people|mute|and dumb))|hard of hearing|hearing[- ]aid"
        r"|lost (?:the|his|her|my) hearing|ear (?:was|is|had been|has been) (?:no (?:use|good)|useless|gone)"
        r"|(?:ear|other)(?: one)? (?:had|has) (?:gone|been (?:dead|gone|useless))"
        r"|(?:side|ear)\W(?:\W?\w+ ){0,3}(?:never|could not|couldn[’']t|cannot|can[’']t|did not|didn[’']t) hear[ds]?"
        r"|(?:could not|couldn[’']t|cannot|can[’']t) hear (?:\w+ )?(?:on|in|with) (?:it|that)"
        rf"|hear[ds]? (?:nothing|little|badly) (?:on|with|in|through) {WHICH}",
        "deaf|bad|dead|cloth",
        f"{GOOD}|hearing|working",
    ),
    "blind eye": Kind(
        "eye|eye-socket|socket|side(?! of)",
        r"blind(?! (?:man|woman|beggar|boy|girl|child|mother|father|wife|horse|alley|with|to)\b)"
        r"|sightless|eye-?patch|(?:was|is|being|of) glass|patch "
        rf"(?:over|on|across) {SIDE}|(?:lost|losing|put out|gouged out|had had|had taken|cost (?:him|her|me)) (?:the "
        rf"(?:sight|use) (?:of|in) )?{SIDE}|empty socket|eye(?: that| which)? (?:he|she|I|they) (?:had |[’']d )?lost"
        r"|(?:was|had) (?:clouded|filmed|milky|sunken|shut and sunken|sewn)|clouded like"
        r"|eye (?:was|is|had been) (?:gone|closed for good|missing)"
        r"|(?:could not|couldn[’']t|cannot|can[’']t) see (?:with|out of|from)|the (?:glass|blind|bad) one",
        "blind|bad|dead|glass|false|artificial|china|milky|missing",
        f"{GOOD}|seeing|living",
    ),
    "maimed hand": Kind("hand|paw|fist|one|glove", _LESS, "bad|maimed|crippled", bare="lack|was short|had only|want"),
    "lost arm": Kind(
        "arm|sleeve",
        r"sleeve(?:, which)? (?:was |had been )?(?:pinned|sewn|folded|tucked|hung|hanging|swung|flapped|empty|dangl\w+)"
        rf"|pinned (?:up|across)|stump of {SIDE}|(?:lost|losing|having left|had taken) {SIDE}|amputated|{_OFF}"
        rf"|hook (?:for an? (?:left|right|hand)|where|instead|in place)|was gone(?! \w*(?:numb|dead|cold|stiff|to))"
        rf"|nothing in {SIDE}|arm (?:had )?(?:stopped|ended)(?: short)?(?= (?:at|above|below))",
        "empty|withered|artificial|false|missing|prosthetic|wooden|tin",
        f"{GOOD}|remaining|only",
    ),
    "false leg": Kind(
        "leg|foot|shin|knee(?= there was)|trouser[- ]leg",
        rf"(?:lost|losing) {SIDE}|amputated|stump of {SIDE}|(?:of|was|is|being) (?:wood|cork|tin|metal|wooden|false)"
        rf"|nothing (?:below|beyond) {SIDE}|there was (?:nothing but|only) a peg|{_OFF}"
        r"|leg of his (?:trousers|breeches) (?:was|hung) (?:folded|pinned|sewn|empty)",
        "wooden|false|artificial|cork|tin|metal|prosthetic|peg|missing",
        f"{GOOD}|remaining|only",
    ),
    "lame leg": Kind(
        "leg|foot",
        rf"{_LIMPS}|dragg(?:ed|ing)|drags|shorter than|crippled|the (?:bad|stiff|lame|game) (?:one|leg)",
        "bad|stiff|game|gammy|gimpy|withered|club|dud|short|crippled|lame",
    ),
    "bad knee": Kind(
        "knee",
        rf"{_LIMPS}|the (?:bad|stiff|trick) (?:one|knee)|arthritic|(?:was|had been) (?:bad|stiff)",
        "bad|stiff|game|gammy|gimpy|dud|trick|weak|rheumatic|dicky",
    ),
    "bad hip": Kind(
        "hip",
        r"arthritic|the (?:bad|stiff) (?:one|hip)|replaced|never (?:mended|healed)",
        "bad|stiff|dud|rheumatic|artificial",
    ),
    "arm in a cast": Kind("arm|wrist|hand|elbow|forearm", _CAST, "broken|splinted|plastered"),
    "leg in a cast": Kind("leg|ankle|foot|shin", _CAST, "broken|splinted|plastered"),
    "bandaged hand": Kind(
        "hand|wrist|palm",
        rf"(?:bandages?|dressing) (?:on|round|around|over|from|off) {WHICH}|in (?:a|an|the) (?:\w+ )?bandages?"
        r"|(?:was|were|being|been|still) (?:\w+ly )?(?:bandaged|wrapped|swathed|done up|bound up|tied up)",
        "bandaged|swathed",
        "unbandaged|unhurt",
    ),
    "signet ring": Kind("hand|finger|little finger|third finger|ring finger|one", "signet", good=""),
}
