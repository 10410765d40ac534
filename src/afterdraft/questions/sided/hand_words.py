"""Words by which a hand is told to have lost something for good."""

from afterdraft.questions.sided.said import ITS, SIDE, WHICH

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
_MILLS = (
    "(?:mangle|press|baler|thresher|saw|sawmill|winch|wheel|cart|lorry|roller|mill|machine|lathe|loom|door|gears?"
    "|propeller|auger"
    "|chain|rope|cable|dog|wolf|bear|pike|frost|shell|mine|bomb|blast|grenade|bullet|digger|reaper|binder|mower|planer)"
)
FINGER = "(?:(?:index|ring|little|middle|first|third|fourth) )?finger|thumb|forefinger|pinkie|pinky"
LESS = "|".join(
    (
        "maimed|mangled|mutilated|crippled|withered|deformed|fingerless|(?:two|three|four)-fingered",
        rf"hook (?:for an? (?:left|right|hand)|where|instead|in place)|stump of {SIDE}",
        r"(?:was|is) (?:only )?an? (?:\w+ )?(?:stump|claw|hook)\b",
        r"hook,? (?:that|which) was",
        rf"(?:short|shy|lacking|wanting|missing|minus|bereft) (?:of )?(?:{_FEW} )?{_PART_OF}(?:\w+ )?{_FINGERS}",
        rf"(?:lacks|lacked|wants|wanted|missed) {_FEW} {_PART_OF}(?:\w+ ){{0,2}}{_FINGERS}",
        r"(?:lost|losing|cost (?:him|her|me)|took|taken|chopped|sliced|severed|shot|crushed) (?:off )?(?:(?:one|two"
        rf"|three|half|both|part|{ITS} (?:\w+ )?(?:last|top|tips?|ends?|joints?)) (?:\w+ ){{0,4}}|a |an )?{_FINGERS}",
        rf"had (?:had )?(?:the \w+ of )?{_FEW} {_PART_OF}(?:fingers?|thumb) off",
        r"left (?:him |her |me )?(?:\w+ )?(?:one|two|three) fingers (?:of|on)",
        rf"{_FINGERS},? (?:(?:that|which) )?(?:he|she|I) (?:had |[’']d )?{_LOST}\b",
        rf"{_FINGERS}(?: and \w+ \w+)?,?(?: (?:that|which))?(?: (?:was|were|is|are|had been))?(?: \w+ly)? {_GONE}",
        rf"{_FINGERS},? (?:(?:that|which) )?(?:stops|stopped|ends|ended|broke off) (?:short|at|in an?)\b",
        rf"the (?:two|three|four) fingers (?:of|on) {SIDE}(?=\w+ hand\b)|(?:one|hand) with (?:only |but |just |its )?"
        rf"(?:two|three) "
        rf"fingers(?! of)|(?:robbed|relieved|shorn|stripped|deprived|eased|docked) of (?:\w+ ){{0,3}}?{_FINGERS}",
        r"gap in (?=\w+ (?:left|right) hand)|empty fingers?\b|(?:was|been) (?:\w+ )?(?:crushed|smashed|mangled"
        r"|shattered)",
        rf"{_FINGERS},? (?:that|which) (?:(?:were|was)|(?:\w+ ){{1,3}}?(?:had|has)) (?:left|spared)"
        rf"(?: (?:him|her|me))?(?: on {SIDE})?|(?:remaining|surviving) {_FINGERS}",
        r"(?:which|it|that|hand) (?:had|has) (?:on it |left |only |but |no more than )*(?:a thumb|(?:one|two"
        r"|three) fingers)\b",
        rf"where (?:the|his|her|its|an?) (?:\w+ ){{0,3}}{_FINGERS} (?:should|ought|used|had (?:once )?been)",
        r"left (?:him|her|me|it) (?:with )?(?:only )?(?:an? |the )?(?:thumb|finger|two fingers) and (?:an? |one "
        r"|two )?(?:fingers?|thumb)",
        r"(?:one|two|three|four) fingers and an? (?:stub|stump|thumb|half|gap|bit|piece)|fingers? off\b|gap "
        r"(?:in it )?where",
        r"(?:was|were|being|only|but|just) (?:only |just )?(?:the |an? )?thumb and (?:an? |one |two |three "
        r"|fore)fingers?",
        r"(?:kept|ate|eaten|eats|claimed|swallowed|nipped off|whipped off|bitten off|bit off|cost him|cost her|lost"
        r"|took|taken)"
        rf" (?:the |both |both the |half )?(?:\w+ ){{0,3}}?(?:(?:joints?|half|ends?|tips?) of (?:the |his |her |my )?"
        rf"(?=left|right)|{_FINGERS} (?:of|on|from) {SIDE})",
        rf"been (?:through|under|in|caught in) an? (?:\w+ )?{_MILLS}",
        r"(?:lost|losing|stump of|cost (?:him|her|me)|missing|without) (?:his|her|my|the) "
        r"(?=(?:left|right) (?:hand|thumb|(?:\w+ )?finger|forefinger)\b)",
        rf"(?:one|hand),? (?:(?:that|which) )?(?:the|an?) (?:\w+ )?{_MILLS} (?:had|has) (?:got|caught|taken|had"
        rf"|spoiled|spoilt)"
        r"|what (?:was|is|there was) left of it",
        r"the (?:one|hand) (?:(?:that|which) )?(?:the|an?) \w+ (?:had|has) (?:\w+ )?(?:spoil(?:ed|t)|ruined|wrecked"
        r"|smashed|crushed|caught|got|taken|bitten|chewed|mangled|shattered)",
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
