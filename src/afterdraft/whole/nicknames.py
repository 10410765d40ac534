"""Given names and their short forms, both ways. By hand, from common knowledge of English names."""

from collections.abc import Iterable

from afterdraft.reading.lexicon import ROLES

SHORT = """
william will willie willy bill billy|robert rob bob bobby robbie bert|richard dick rick dickie
john jack johnny johnnie|jane jenny janey|james jim jimmy jem jamie|thomas tom tommy|edward ed eddie ned ted teddy
edmund ned ed|henry harry hal hank|charles charlie charley|frederick fred freddy freddie|george georgie
joseph joe joey
samuel sam sammy|benjamin ben benny|daniel dan danny|david dave davy|michael mike mick|nicholas nick
alexander alec alex sandy|andrew andy drew|anthony tony|arthur art|albert bert al bertie|herbert bert bertie
philip phil pip|peter pete|stephen steve steenie|walter wat walt
elizabeth eliza lizzie lizzy liz beth betty bet bessie bess lisa elsie libby betsy
margaret maggie meg peg peggy mags madge daisy
mary molly polly may|catherine kate katie kitty cathy kit|katharine kate katie kitty kit
katherine kate katie kitty kit|anne annie nan nancy|susan sue susie suzie|helen nell nellie|eleanor nell nellie nora
ellen nell nellie|frances fanny fran frankie francie|dorothy dolly dora dot dottie dodie|harriet hattie harry
caroline carrie caro|charlotte lottie
emily em emmy|emma em emmy|louisa lou|isabella bella isabel|francis frank frankie|sarah sally sadie|martha patty
matilda tilda tilly|rebecca becky|theresa tess tessa|josephine jo josie|amelia milly|victoria vicky
florence flo florrie
julia julie
rosamond rose|christopher kit chris|gilbert gil|timothy tim|patrick pat|abigail abby|adelaide addie|agatha aggie
agnes aggie nessie|alfred alf alfie fred|alice allie|amanda mandy|angela angie|archibald archie|arabella bella
augustus gus|augusta gussie|barbara babs barbie|barnabas barney|beatrice bea bee trixie|beatrix bea trixie
bernard bernie
bridget biddy bridie|cecilia cissie cissy cis|cecily cissie cissy cis|clara clarrie|clement clem|clementina clemmie
cornelius con|constance connie|cordelia delia|cyril cy|deborah debby debbie|denis den|donald don donnie
douglas doug dougie|ebenezer eben|edith edie|edwin ed eddie ned|elinor nell nellie|ernest ernie|ethel eth
eugene gene
euphemia effie|eustace stacy|evelyn evie|ezekiel zeke|ferdinand ferdie|flora florrie flo|georgiana georgie
georgina georgie|geoffrey geoff jeff|jeffrey jeff|gerald gerry jerry|gertrude gertie trudy|gregory greg
gwendolen gwen
hannah nan|henrietta hetty etta harry|hester hetty|hester essie|horace horry|hubert bert|hugh hughie|ignatius iggy
isaac ike|jacob jake|janet jenny jessie|jeremiah jerry|jerome jerry|jessica jess jessie|joanna jo|jonathan jon
joshua josh|judith judy|kenneth ken|lancelot lance|letitia letty|lillian lily lil|leopold leo poldy|lewis lew
louis lou|lucinda lucy cindy|lydia liddy|madeleine maddie|magdalen maudlin maggie|marianne molly
marjorie madge marge
matthew mat matt|maurice morrie|maximilian max|mildred milly|millicent milly millie|minerva minnie|mabel may
maud maudie|montague monty|mortimer morty|nathaniel nat nathan|nathan nat|nigel nige|octavius tavy|oliver noll ollie
olivia livvy|oswald ozzie|pamela pam|penelope pen penny|percival percy|phoebe phebe|priscilla prissy cilla
prudence prue|rachel rae|ralph rafe|randolph randy|raymond ray|reuben rube|roderick rod roddy|rodney rod|roger hodge
rosalind ros rose|rosemary rosie|rose rosie|rudolf rudi|rupert rupe|samantha sam|samson sam|silas si|simon si sim
sidney sid|sydney syd|solomon sol|sophia sophy sophie|sophie sophy|stanley stan|stella stell
susannah sue susie sukey
susanna sue susie sukey|sylvester syl|terence terry|theodora dora theo|theodore ted teddy theo|theophilus theo
thaddeus thad|tobias toby|ursula ursie|valentine val|vanessa nessa|veronica ronnie vera|vincent vin vince
virginia ginny|walburga wally|wilfred wilf|wilhelmina minnie mina|winifred winnie freda|zachariah zach|zachary zach
patricia pat|laurence larry laurie|lawrence larry laurie|leonard len lennie|ronald ron|reginald reggie|sebastian seb
lettice letty|bertram bert bertie berty
jeremy jerry jem|maureen mo reenie|moira mo|gabriel gabe|gabriella gabby|natalie nat|cameron cam|kimberly kim
loretta etta|jennifer jen jenn jenny|melissa mel missy|melanie mel|michelle shelly|nicole nikki nicky nic
stephanie steph|tabitha tabby|valerie val|allison ally allie|alison ali ally|alexandra alex lexie sandra sasha
cassandra cass cassie|christina tina chrissie|christine chris chrissie tina|danielle dani|diana di
felicity fliss|francesca fran|gillian gill jill|jacqueline jackie|natasha tasha|philippa pip pippa|russell russ
sandra sandy|tiffany tiff|wesley wes|bradley brad|calvin cal|callum cal|clifford cliff|clinton clint|dominic dom
emmanuel manny|gavin gav|howard howie|julian jules|juliet jules|kathleen kath kathy kate
kathryn kath kathy kate katie|leonora nora|malcolm mal|manuel manny|norman norm|roxanne roxy|teresa tess
trevor trev|vivian viv|vivienne viv|mitchell mitch|megan meg
"""
GROUPS = tuple(tuple(group.split()) for line in SHORT.strip().splitlines() for group in line.split("|"))
BY_NAME: dict[str, list[tuple[str, ...]]] = {}
for _group in GROUPS:
    for _name in _group:
        BY_NAME.setdefault(_name, []).append(_group)
LONG = frozenset(group[0] for group in GROUPS)
SHORTEST = 3  # letters of a short form that only cuts a name off


def same_given(name: str, others: Iterable[str]) -> bool:
    """Whether `name` is one of the others, or a short form of one, or one of it; Bess is not Eliza by that alone.

    Where long names are among the others, it must be one of them: Bert may be Robert, but Bertram, called Bert, is not.
    """
    known = set(others)
    if name in known:
        return True
    if name not in ROLES and any(_cut(name, other) for other in known - ROLES):
        return True  # Den, Denholm
    known = known & LONG or known
    return any((name == group[0] or group[0] in known) and known & set(group) for group in BY_NAME.get(name, ()))


def _cut(one: str, other: str) -> bool:
    """Whether one name begins the other."""
    short, long = sorted((one, other), key=len)
    return len(short) >= SHORTEST and long.startswith(short)
