"""Word lists that the readers of scenes share. All by hand, from common knowledge of English fiction."""


def words_of(text: str) -> frozenset[str]:
    """The words between white space."""
    return frozenset(text.split())


SPEECH = words_of(
    """
    said say says saying ask asked asks asking reply replied replies replying answer answered answers answering cry
    cried cries crying call called calls calling exclaim exclaimed exclaims exclaiming shout shouted shouts shouting
    whisper whispered whispers whispering murmur murmured murmurs murmuring mutter muttered mutters muttering add
    added adds adding begin began begins beginning continue continued continues continuing repeat repeated repeats
    repeating return returned returns rejoin rejoined rejoins remark remarked remarks remarking observe observed
    observes observing inquire inquired inquires inquiring enquire enquired enquires demand demanded demands
    demanding suggest suggested suggests explain explained explains explaining declare declared declares protest
    protested protests insist insisted insists agree agreed agrees admit admitted admits confess confessed confesses
    announce announced announces persist persisted persists interrupt interrupted interrupts interpose interposed
    interject interjected retort retorted retorts respond responded responds scream screamed screams screaming
    shriek shrieked shrieks yell yelled yells bellow bellowed roar roared roars growl growled growls snarl snarled
    hiss hissed snap snapped gasp gasped gasps sigh sighed sighs groan groaned moan moaned sob sobbed wail wailed
    laugh laughed chuckle chuckled giggle giggled grunt grunted mumble mumbled stammer stammered falter faltered
    stutter stuttered breathe breathed echo echoed pursue pursued proceed proceeded resume resumed conclude
    concluded finish finished urge urged urges plead pleaded beg begged implore implored entreat entreated order
    ordered command commanded warn warned assure assured promise promised advise advised argue argued object
    objected correct corrected concede conceded confirm confirmed deny denied venture ventured ejaculate ejaculated
    cheer cheered volunteer volunteered reflect reflected muse mused wonder wondered think thought thinks thinking
    tell told tells telling speak spoke speaks observe quote quoted read reads reading write wrote writes writing
    sing sang sings singing chant chanted drawl drawled lisp lisped croak croaked squeak squeaked bark barked snort
    snorted sneer sneered scoff scoffed tease teased joke joked quip quipped put went burst broke
    """
)
FEMALE_TITLES = words_of(
    """
    mrs miss ms mme madame mlle mademoiselle lady dame aunt auntie sister princess duchess countess queen empress
    baroness signora signorina frau fraulein senora nurse mother mamma madam mistress
    """
)
MALE_TITLES = words_of(
    """
    mr mister sir lord uncle brother prince duke count king emperor baron signor signore herr monsieur father papa
    master squire senor viscount marquis
    """
)
OTHER_TITLES = words_of(
    """
    dr doctor prof professor captain capt cap'n colonel col major general gen lieutenant lieut sergeant sgt corporal
    private commander admiral inspector superintendent constable judge justice reverend rev bishop archbishop
    cardinal canon dean saint st cousin grandpa grandma president senator governor mayor detective officer deacon
    comrade citizen chief dowager dci pc wpc supt insp
    """
)
TITLES = FEMALE_TITLES | MALE_TITLES | OTHER_TITLES
PLAIN_TITLES = frozenset({"mr", "mrs", "ms", "mister"})  # say nothing but how someone is addressed
NO_NAME_ALONE = words_of(
    """
    mr mrs ms mister miss lord sir master lady monsieur madame m mme saint st general major sister brother
    """
)  # titles that are no name by themselves

KIN = words_of(
    """
    mother father aunt uncle sister brother daughter son wife husband grandmother grandfather niece nephew cousin
    child friend mamma papa bride groom widow
    """
)  # whose, is told by the words before: nobody in particular
FEMALE_ROLES = words_of(
    """
    woman lady girl mother aunt sister daughter wife widow landlady housekeeper maid housemaid nurse governess queen
    princess duchess countess hostess mistress grandmother granny niece bride waitress actress stewardess nun witch
    matron cook chambermaid seamstress midwife heiress schoolgirl barmaid hen mamma
    """
)
MALE_ROLES = words_of(
    """
    man gentleman boy father uncle brother son husband widower landlord king prince duke count lord host master
    grandfather nephew groom waiter butler footman coachman driver cabman policeman constable fireman postman
    salesman fisherman sailor soldier priest monk vicar parson curate rector clergyman squire lad fellow chap
    workman barman innkeeper blacksmith sergeant tramp mariner navvy porter schoolboy headmaster watchman foreman
    conductor
    """
)
OTHER_ROLES = words_of(
    """
    doctor professor captain colonel major general lieutenant inspector detective judge lawyer solicitor barrister
    coroner clerk secretary teacher tutor student child baby stranger visitor guest traveller servant cousin friend
    officer guard guide chief president chairman mayor minister bishop cardinal ambassador surgeon physician patient
    prisoner witness neighbour neighbor passenger keeper gardener farmer miller baker butcher shepherd hunter spy
    thief voice ghost editor author poet painter artist musician singer cripple beggar chemist banker merchant agent
    manager engineer cat dog horse wolf fox bear mouse rabbit owl rat duck turtle lion tiger bird caterpillar pigeon
    youth person creature speaker
    """
)
ROLES = FEMALE_ROLES | MALE_ROLES | OTHER_ROLES

HE = frozenset({"he", "him", "his", "himself"})
SHE = frozenset({"she", "her", "hers", "herself"})
SELF = frozenset({"i", "me", "my", "mine", "myself"})
OWNERS = frozenset({"his", "her", "my", "their", "our"})  # before a role: somebody's, and nobody by that alone
THEY = frozenset({"they", "them", "their", "it", "its"})

# Capitalised and yet no name of anyone: what begins sentences in speech, and what English writes large.
NO_NAMES = words_of(
    """
    i ok oh ah yes no well good now then why what how where when who whom whose which there here this that these
    those dear god heaven heavens lord goodness gracious christ jesus damn hullo hello hallo hush alas indeed
    certainly sure surely nonsense perhaps please thank thanks never not nothing come go look see let do don't did
    is are was were will would can could shall should may might must have has had be been am if and but or nor for
    so yet to of in on at by with from as it its he she we you they me him her us them my your his our their mine
    yours a an the some any all both each every one two three four five six seven eight nine ten first second third
    monday tuesday wednesday thursday friday saturday sunday january february march april may june july august
    september october november december christmas easter lent michaelmas whitsun english french german italian
    russian american british irish scotch scottish welsh greek roman latin indian spanish dutch polish jewish
    christian catholic protestant england france italy germany london paris rome europe america africa asia india
    chapter book part volume letter park street road square house hall-door bible church poor old young little great
    my lord lor gawd lordy sir madam don hi ha hm hum eh elp pray
    hark listen because supposing whereupon sometimes whilst while although though since unless until after before once
    however therefore later meanwhile presently suddenly happily abruptly evidently apparently only even also still
    again dearest darling beloved majesty majesties highness lordship ladyship excellency worship being having diary
    """
)

# Perceiving, thinking, feeling: whose they are, tells the scene (beside speech; 'common practice').
FEELING = words_of(
    """
    saw see sees heard hear hears felt feel feels smelt smelled tasted noticed notice notices watched recognised
    recognized thought think thinks knew know knows wondered wonder wonders remembered remember remembers forgot
    realised realized understood believed supposed imagined wished hoped feared wanted longed loved hated dreaded
    doubted decided resolved meant guessed suspected expected considered reflected perceived sensed recalled dreamed
    dreamt
    """
)
