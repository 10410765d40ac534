"""Words by which a limb or a joint is told to be hurt, lame or gone."""

from afterdraft.questions.sided.said import ITS, SIDE, WHICH

CAST = (
    rf"in {ITS} (?:[\w-]+ ){{0,3}}(?:cast|sling|splints?|plaster|brace)"
    r"|in (?:a|the) (?:walking|surgical) boot"
    rf"|(?:cast|sling|splints?|plaster|brace) on {WHICH}|on the other (?:leg|arm|foot|wrist) (?:was )?an? (?:\w+ )?cast"
    "|in plaster|(?:leg|arm|foot|wrist|one) with (?:the|a) (?:cast|plaster)|splinted"
)
BROKEN = rf"(?:broke|broken|busted|sprained) {SIDE}|(?:was|is|had been) (?:broken|splinted)"
LEFT = rf"(?:had|[’']d|having) left {SIDE}"  # 'he had left his right leg at Ypres'
OFF = r"(?:off|taken off|shot off|gone|ended|ends|stopped|stops)(?: short)? (?:at|above|below|from) the"
LIMPS = (
    rf"lame|limp(?:s|ed|ing)?|favou?r(?:ed|ing|s)|(?:sparing|spared|easing|eased) {SIDE}|(?:old |bad )(?:break"
    rf"|fracture) in {SIDE}|would(?: not|n[’']t)(?: \w+){{0,3}} bend"
    rf"|no longer (?:bent|bend)|(?:plate|pins?|rod|shrapnel) in {SIDE}|in irons"
    r"|turned in(?:ward)?\b|calliper|built-up"
)
OUT = "stretched|stuck|propped|held out|thrust|out"
ACHES = (  # of a joint, for years
    rf"\b(?:an?|any|the|his|her) (?:torment|martyrdom|barometer)\b|(?:disliked|hated|objected to) (?:the )?(?:cold"
    rf"|damp|rain|stairs|steps|hills?)|(?:tormented|plagued) (?:him|her|me)"
    r"|play(?:s|ed|ing) (?:him |her |me )?up\b|(?:knee|hip|shoulder|ankle|elbow|one),? (?:that|which) (?:had |has "
    r"|always )*(?:tells|told|knows|known|knew|warned|warns|felt|feels|foretold)\b"
    rf"|(?:spare|spared|sparing|ease|eased|easing|favou?r|favou?red|favou?ring) (?:his|her|my|the) (?:\w+ )?knee"
    rf"|(?:knee|hip|shoulder) (?:was|is|had) (?:\w+ )?(?:shot|gone|finished|worn out|done for)|weight off {SIDE}"
    rf"|would(?: not|n[’']t) (?:take|hold|bear|carry|straighten)\b|(?:giv\w+|gave) (?:him|her|me) (?:trouble|gyp|hell"
    rf"|grief)"
    rf"|(?:had|has) (?:been )?[^.;,]{{0,30}}\bsince (?!\w*(?:day|morning|breakfast|noon|lunch|night|evening|tea|then))"
    rf"|(?:because of|on account of|owing to) {SIDE}|never (?:mended|healed|been right|been the same|set right)"
)
