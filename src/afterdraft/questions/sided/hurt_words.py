"""Words that tell of a hurt of the body that heals: how it comes, what it is, what is bound round it, and on whom."""

from collections.abc import Mapping

from afterdraft.questions.sided.said import OWNER

HURTS: Mapping[str, str] = {  # by kind, the parts that it may be told of
    "injured hand": "hand|palm|fist|wrist|thumb|fingers?|forefinger|(?:index|middle|ring|little) finger|knuckles",
    "injured arm": "arm|forearm|upper arm|elbow|wrist|shoulder|collar-?bone",
    "injured leg": "leg|ankle|foot|shin|calf|thigh|knee|heel|hip",
    "injured eye": "eye|eyebrow|brow|eyelid",
    "injured cheek": "cheek|cheekbone|(?:side|half) of (?:his|her|my|the) face",
    "injured temple": "temple",
    "injured side": "side|ribs|flank",
}
PARTS = "|".join(HURTS.values())
_SIDE = "(?P<side>left|right)"
_SIDED = rf"{_SIDE}(?:-hand)? (?P<part>{PARTS})\b"
_ALONE = r"(?:the|his|her|my) (?P<alone>left|right)"  # 'the right one', of hands that were told of
_ONE = rf"(?:{_SIDED}|{_ALONE}(?: one)?\b(?! (?:\w+ )?(?:{PARTS})\b))"
_PLACE = r"(?:the )?(?:back|palm|side|heel|ball|base|root|inside|outside|fleshy part|fingers?|tips?|knuckles|whole|top)"
_OF = rf"(?:{_PLACE} of )?{OWNER} "
_ITS = "(?:the|his|her|my)"
_ON = "up|down|on|round|around|over|across|from|off|about|along|above|below|under|to"
_BREAK = "(?:, |: |[ ]?[—–][ ]?)"  # before what is said more closely: 'his wrist, the right'
_DID = (  # somebody or something did it to a hand, an eye
    "cut|burned|burnt|scalded|sprained|twisted|wrenched|broke|broken|fractured|dislocated|gashed|slashed|skinned|hurt"
    "|injured|crushed|smashed|strained|bruised|grazed|tore|torn|sliced|pierced|jammed|trapped|nicked|ricked|shattered"
    "|cracked|blackened|turned over on|gone over on|went over on"
)
_STRUCK = (  # before whom it befalls: 'caught her on the left wrist'
    "caught|hit|struck|kicked|shot|stabbed|stung|cut|slashed|wounded|burned|burnt|took|clipped|winged|nicked|grazed|bit"
    "|bitten|injured|scalded|gashed|speared|got|pierced"
)
_WHOM = r"(?:him(?:self)?|her(?:self)?|me|myself|[A-Z]\w+(?: [A-Z]\w+)?|the \w+)"
_HIT = "wounded|shot|hit|injured|bitten|stung|stabbed|slashed|burned|burnt|kicked|scalded|gashed"
_TOOLS = (
    "knife|blade|edge|glass|saw|axe|chisel|hook|nail|rope|wire|cable|bullet|ball|shot|needle|teeth|splinter|thorn|spike"
    "|fork|barb|iron|steam|fat|water|oil|tea|coffee|soup|spanner|wheel|hoof|sickle|scythe|razor|scissors|shears|flint"
    "|slate|tin|arrow|spear|sword|line|fangs?|claws?|sting|it"
)
_WENT = "went|gone|passed|drove|slid|sank|sliced|ripped|tore|slashed|splashed|slopped|spilled|spilt|ran"
_OPENED = "opened(?: up)?|laid open|caught|bit into|raked|scored|split|took the skin off"
_PUT = "put|thrust|drove|ran|stuck|got|caught|shut|trapped|jammed"
_WHERE = (
    "pane|window|glass|saw|blade|mangle|fire|flames?|steam|door|machine|belt|press|gears|winch|cogs|lathe|baler|grate"
)
CAME: tuple[str, ...] = (  # how it came
    rf"\b(?:{_DID}) (?:up |open )?{_OF}{_SIDED}(?! (?:behind|off|up|round|around|about|to|into|against)\b)",
    rf"\b(?:{_STRUCK}) {_WHOM} (?:\w+ )?(?:in|on|across|through|round|around|below|over|above|under) the "
    rf"(?:{_PLACE} of the )?{_SIDED}",
    rf"\b(?:{_HIT}) (?:in|on|across|through|over|above|below) {_ITS} (?:{_PLACE} of the )?{_SIDED}",
    rf"\b(?:{_DID}) {OWNER} (?P<part>{PARTS})(?:{_BREAK}|[.] )(?:[Ii]t was )?(?i:{_ITS}) {_SIDE}(?: one)?(?=[,;:.)—]"
    rf"|$)",
    rf"\b(?:{_DID}) (?:himself|herself|myself)[^.;]{{0,25}}?{_BREAK}{_ITS} {_SIDED}",
    rf"\b(?:{_TOOLS})\b[^.;]{{0,40}}? (?:{_OPENED}) {_OF}{_SIDED}",
    rf"\b(?:{_TOOLS})\b[^.;]{{0,40}}? (?:{_WENT}) (?:\w+ )?(?:across|through|into|over|up|down|along) {_OF}{_SIDED}",
    rf"\b(?:{_PUT}) {_OF}{_SIDED} (?:\w+ )?(?:through|into|in|under|against|between) (?:an?|the) (?:\w+ )?"
    rf"(?:{_WHERE})(?=[,.;:]| (?:and|to|of|when|while|at|as)\b)",
    rf"\b(?:break|fracture|sprain), (?:it was )?{_ITS} {_SIDED}",
    rf"\b(?:put|ran|drove|stuck) (?:an?|the|his|her|my) (?:\w+ )?(?:{_TOOLS}) (?:\w+ )?(?:through|into"
    rf"|across) {_OF}{_SIDED}",
    rf"\b(?:slammed|dropped|shut|caught|trapped|brought)\b[^.;]{{0,40}} (?:on|down on|onto|across) {OWNER} {_SIDE} "
    r"(?P<part>thumb|fingers?|foot)\b",
    rf"\b(?:tore|took|taken|ripped|rubbed|burned|scraped|stripped) the skin (?:off|from) {_OF}{_SIDED}",
    rf"\b(?:{_DID}) an? (?:\w+ )?(?:groove|line|hole|strip|furrow) (?:across|in|into|through|along) {_OF}{_SIDED}",
    rf"\bput {OWNER} {_SIDED} out\b",
    rf"\b(?:done|did) {OWNER} {_SIDE} (?P<part>ankle|knee|wrist|shoulder|elbow)\b",
    rf"\b(?:turned|rolled) {OWNER} {_SIDE} (?P<part>ankle)\b",
    rf"\b{_SIDED},? (?:that|which) (?:he|she|I) (?:had|[’']d) (?:{_DID})\b",
    rf"\b(?:bullet|slug|shrapnel|pellets?|fragment|splinters?|shot)(?: \w+){{0,3}}? (?:in|into|through) {_OF}{_SIDED}",
    rf"\b(?:blood|bleeding|bled)\b[^.;]{{0,30}}? (?:from|down|out of|between|through) {_OF}{_SIDED}",
)

_SORE = "cut|gash|burn|scald|graze|bruise|bite|sting|weal|blister|shiner|swelling|lump|wound(?! (?:round|around|about))"
_NEW = rf"an? (?:\w+ )?(?:{_SORE})|cuts|gashes|burns|grazes|bruises|bruising|blisters|swelling|bullet-hole"
_KNOWN = rf"(?:the|his|her|my|its|that|this) (?:\w+ )?(?:{_SORE})"
_BOUND = (
    "bandages?|bandaging|dressings?|strapping|lint|gauze|(?:sticking|sticky)[- ]plaster|Elastoplast|Band-Aid|poultice"
    "|tourniquet|splints?|(?:the|a|his|her|my|plaster|new|heavy|white) (?:plaster|cast)|compress"
)
_CLOTH = "handkerchief|rag|strip|tea-?towel|towel|shirt|scarf|bandana|linen|cloth|tie|petticoat"
_WRAPS = "wrapped|wound|tied|bound|knotted|put|wrapping|winding|tying|binding|knotting"
_DRESSES = "strapped|bandaged|bound|splinted|dressed|stitched|bandaging|strapping|dressing|stitching|unwrapped|unbound"
_SWOLLEN = r"swelling|swollen|blacked|blackened|black and blue|puffed|puffy|black with bruis\w+"  # also without 'was'
_TIED = (  # the same
    "bandaged|strapped(?: up)?|swathed|splinted|in plaster|plastered|(?:bound|tied|done|wrapped) up"
    rf"|(?:wrapped|bound) in (?:an? |the |his |her )?(?:\w+ ){{0,2}}(?:bandages?|rags?|lint|gauze|{_CLOTH})"
)
_HURT = (  # behind 'was'
    "(?:cut|gashed|slashed|sliced|split|laid)(?: open| to the bone| across| deep)?(?! off)"
    "|(?:burned|burnt)(?! (?:brown|red|by the sun))|scalded|opened (?:to|up)|torn(?! between)|broken|fractured|sprained"
    "|wrenched|dislocated|crushed|bruised|twisted(?! (?:behind|up|round|around|about))|grazed|skinned|bitten|wounded"
    "|injured|blistered|smashed|hurt(?:ing)?|put out|pierced|shattered|lacerated|infected|septic|bleeding|black|cracked"
    "|strained"
)
_MENDS = "stitched|sewn up|healing|on the mend"
_HELD = (
    "was|were|is|being|hung|rested|lay|encased|carried|still|all|now|up|bound|wrapped|done up|swathed|held|stiff"
    "|propped|hanging|slung|strapped|tied|heavy|fat|clumsy"
)
_IN_IT = "bandages?|dressing|plaster|cast|sling|splints?|strapping|poultice|tourniquet|lint|gauze|brace"
_IN_CLOTH = (
    "(?:walking|surgical|moon|air|medical|support) boot|(?:clean |wet |old |bit of )*(?:rags?|handkerchief|tea-?towel)"
)
_RAW = "swollen|bruised|grazed|sore|raw|throbbing|bleeding|black|split|gashed|puffy|blistered|cut|torn|skinned"
_ILL = (  # before 'left hand', of what is known
    "bandaged|strapped|splinted|sprained|broken|burned|burnt|scalded|stitched|wounded|injured|hurt|fractured"
    "|dislocated|plastered|swathed|damaged|bitten|crushed|lacerated|wrenched|infected|septic|ruined"
)
_NURSED = "(?:nursing|nursed|cradling|cradled)(?= \\w+ (?:left|right) (?:hand|wrist|arm|elbow|shoulder|thumb|palm))"
_HOLDS = "holding|held|gripping|gripped|clutching|clutched"
_USE = "(?:no|lost the|losing the|loss of the|without the) use (?:of|in)"
_AUX = r"(?: (?:was|were|is|are|had been|has been|being|[’']d been|got))"
_HOW = r"(?: (?:\w+ly|still|all|now|already|badly|quite|half|so|too|very))*"
CAME += (  # how it is, told for the first time
    rf"\b(?i:{_NEW})(?: [\w’'-]+){{0,6}}?,? (?:{_ON}) {_OF}{_SIDED}",
    rf"\b(?i:{_NEW}) (?:\w+ )?(?:in|into|through) {_OF}{_SIDED}",
    rf"\b{_ONE},?(?:{_AUX}| had)?{_HOW} (?:{_SWOLLEN})\b",
    rf"\b{_ONE}(?:[^.;,]{{0,50}}? and)?{_AUX}{_HOW} (?:{_HURT})\b",
    rf"\b{_ONE}, (?:{_HURT})\b",
    rf"\b{_SIDE} (?P<part>eye) (?:was|were|had) (?:\w+ )?(?:closing|closed up|half[- ]shut)\b",
    rf"\b{OWNER} (?:\w+,? )?(?:{_RAW}),? (?:\w+ )?{_SIDED}",
    rf"\b(?:an|a|{OWNER}) (?:{_RAW}) (?P<part>{PARTS}){_BREAK}(?:which was |it was )?{_ITS} {_SIDE}(?: one)?"
    rf"(?=[,;:.)—])",
    rf"\b(?i:{_NURSED}|{_USE}) {OWNER} {_SIDED}",
    rf"\b(?:{_HOLDS}) {OWNER} {_SIDE} (?P<part>wrist|arm|elbow|shoulder) (?:in|with) "
    r"(?:his|her|my) (?:other|right|left|good) (?:hand|one)",
)
BORNE = (  # how it is since
    rf"\bset {OWNER} {_SIDE} (?P<part>leg|arm|wrist|ankle|collar-?bone)(?! (?:on|down|upon|in|to|forward|against)\b)",
    rf"\b(?:{_DRESSES}) (?:up )?{OWNER} {_SIDED}(?! (?:to|round|about|behind)\b)",
    rf"\b(?i:{_WRAPS}) (?:an?|his|her|the|some|my) (?:[\w-]+ ){{0,3}}?(?:{_CLOTH}|{_BOUND})(?: \w+){{0,2}}? "
    rf"(?:round|around|about|over) {OWNER} {_SIDED}",
    rf"\b(?i:{_CLOTH})(?: [\w’'-]+){{0,3}}? (?:wound|wrapped|tied|knotted|bound|pinned) (?:round|around|about|over) "
    rf"{_OF}{_SIDED}",
    rf"\b(?i:{_KNOWN})(?: [\w’'-]+){{0,6}}?,? (?:{_ON}) {_OF}{_SIDED}",
    rf"\b(?i:{_KNOWN}|stitch(?:es)?),? (?:\w+ )?(?:in|into|through|across|on|over|above|along) {_OF}{_SIDED}",
    rf"\b(?i:{_BOUND})(?: [\w’'-]+){{0,4}}? (?:{_ON}) {_OF}{_SIDED}",
    rf"\b(?i:{_KNOWN}|{_BOUND}|stitch(?:es)?)(?: [\w’'-]+){{0,4}}? (?:on|in|round|from) {_ALONE}(?=[,;:.)—])",
    rf"\b{_ONE},?{_AUX}?{_HOW} (?:{_TIED})\b",
    rf"\b{_ONE}{_AUX}{_HOW} (?:{_MENDS})\b",
    rf"\b{_ONE},?(?: (?:{_HELD}))*,? in (?:an?|the|its|his|her|my) (?:{_IN_CLOTH})\b",
    rf"\b{_ONE},?(?: (?:{_HELD}))*,? (?:in|with) (?:an?|the|its|his|her|my)? ?(?:[\w-]+,? ){{0,3}}?(?:{_IN_IT})\b",
    rf"\b{_ONE}[^.;,]{{0,20}}, (?:bandages?|plaster|cast|sling|splints?|stitches|dressing) and all\b",
    rf"\bin (?:(?:an?|the) )?(?:{_IN_IT}), (?:it was )?{_ITS} {_SIDED}",
    rf"\b{OWNER} (?:\w+,? )?(?:{_ILL}),? (?:\w+ )?{_SIDED}",
    rf"\b(?:an|a|{OWNER}) (?:{_ILL}) (?P<part>{PARTS})(?:,? |{_BREAK})(?:which was |it was )?{_ITS} {_SIDE}(?: one)?"
    r"(?=[,;:.)—])",
)
WELL = (rf"\b{OWNER} (?:one )?(?:good|sound|unhurt|uninjured|unbandaged|undamaged|unbroken),? (?:\w+ )?{_SIDED}",)
_PAIRS: Mapping[str, str] = {
    "injured hand": "hands|palms|wrists",
    "injured arm": "arms|elbows|shoulders",
    "injured leg": "legs|feet|ankles|knees",
    "injured eye": "eyes",
}


def both(kind: str) -> str:
    """What tells that it is on both sides."""
    pairs, ill = f"(?:{_PAIRS.get(kind, '(?!)')})", f"(?:{_ILL}|blistered|cut|raw|blacked|blackened)"
    return (
        rf"\b{ill} {pairs}\b|\b{pairs}(?: were| are| had been|,)(?: \w+)? (?:{ill}|in bandages|in plaster)\b"
        rf"|\b(?:bandages|burns|blisters|cuts|plaster|stitches) (?:on|round|over|across|in) (?:both|his|her|my|the) "
        rf"{pairs}\b"
    )
