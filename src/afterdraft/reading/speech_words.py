"""Verbs that tell how words are said, beside the common ones of `lexicon.SPEECH`; by hand, from common practice."""

from afterdraft.reading.lexicon import SPEECH, words_of

RARER = words_of(
    """
    inform informed informs assert asserted asserts speculate speculated grumble grumbled grumbles complain complained
    complains apologise apologised apologize apologized hazard hazarded state stated states proclaim proclaimed
    assent assented pant panted vouchsafe vouchsafed acknowledge acknowledged acquiesce acquiesced affirm affirmed
    allege alleged allow allowed amend amended appeal appealed approve approved aver averred avow avowed babble
    babbled banter bantered bawl bawled bleat bleated blubber blubbered bluster blustered blurt blurted boast boasted
    boom boomed bray brayed cackle cackled caution cautioned challenge challenged chide chided chime chimed choke
    choked clamour clamoured coax coaxed comment commented commiserate commiserated condole condoled congratulate
    congratulated console consoled contend contended contradict contradicted coo cooed counsel counselled counter
    countered croon crooned crow crowed decide decided demur demurred denounce denounced dictate dictated direct
    directed disclaim disclaimed elaborate elaborated emend encourage encouraged enjoin enjoined enthuse enthused
    exhort exhorted expostulate expostulated exult exulted fret fretted fume fumed greet greeted gripe griped gulp
    gulped gurgle gurgled gush gushed hail hailed hint hinted holler hollered howl howled hum hummed imply implied
    insinuate insinuated instruct instructed intone intoned invite invited jeer jeered jest jested lament lamented
    lecture lectured maintain maintained marvel marvelled mention mentioned mimic mimicked mock mocked mouth mouthed
    note noted offer offered opine opined pacify pacified parry parried plead pled pipe piped ponder pondered pout
    pouted praise praised pray prayed prattle prattled press pressed prod prodded prompt prompted pronounce pronounced
    prophesy prophesied propose proposed purr purred query queried question questioned rage raged rant ranted rap
    rapped rasp rasped rattle rattled reason reasoned reassure reassured rebuke rebuked recall recite recited
    recollect recollected recommend recommended rejoice rejoiced relate related remind reminded remonstrate
    remonstrated report reported reprimand reprimanded reproach reproached reprove reproved request requested
    reveal revealed rumble rumbled scold scolded screech screeched simper simpered sniff sniffed snicker snickered
    sniffle sniffled soothe soothed splutter spluttered sputter sputtered squeal squealed squall squalled stipulate
    stipulated storm stormed submit submitted summon summoned supplement supplemented surmise surmised swear swore
    taunt taunted testify testified theorise theorised theorize theorized threaten threatened thunder thundered
    titter tittered trill trilled trumpet trumpeted twitter twittered upbraid upbraided utter uttered vow vowed
    weep wept welcome welcomed wheedle wheedled wheeze wheezed whimper whimpered whine whined yawn yawned yelp yelped
    asseverate asseverated adjure adjured articulate articulated
    """
)
_THOUGHT = words_of(
    "think thought thinks thinking wonder wondered reflect reflected muse mused read reads reading wrote"
)
_BY_A_NOD = words_of(
    """
    nodded assented bowed ignored disclaimed thanked consented refused declined shrugged agreed hesitated obeyed
    acquiesced demurred apologised apologized accepted complied
    """
)
ANSWERING = (SPEECH | RARER | _BY_A_NOD) - _THOUGHT  # by which somebody takes a turn of talk
OPENING = words_of(
    """
    spoke answered replied began repeated continued resumed exclaimed cried interrupted interposed responded
    protested explained
    """
)  # that somebody speaks, said by itself: the words follow
