"""How much each sign of an event weighs: made by `python -m bench.measures.learn`, not by hand.

Learned from the train passages of LitBank (David Bamman and others, CC BY 4.0; `NOTICES.md`). A weight is what the
sign adds to the natural logarithm of the odds that the word is an event.
"""

from collections.abc import Mapping
from functools import cache

from afterdraft.reading.weights_written import entries

BIAS = -0.4
OWN = (1.82, 0.94)  # constant, and how much the score of the word by itself counts
NEARBY = (0.2, 0.34, 0.1, 0.27)  # of what `event_nearby.nearby` gives
LEAST = -0.75  # score from which a word is taken for an event


@cache
def weights() -> Mapping[str, float]:
    """By sign."""
    return dict(entries(_LINES))


# A weight, and the signs that have it.
_LINES = """
-2.0 V mark if
-1.9 V is liv
-1.8 V after no | V after nothing | V is hav | V subject with no
-1.7 V advmod always | V before - | V is know | V is want | V is wear | V simply hav
-1.6 V advmod occasionally | V before never | V is do | V is fanci | V object gaz | V on wear as advcl
-1.5 V advmod sometimes | V is form | V is lov | V is stand | V is succeed | V on feel as ROOT | V simply know
-1.5 V simply wish
-1.4 N is fac | N is hand | V advmod perhaps | V before not | V before or | V helper could form both
-1.4 V helper is form both | V is begin | V is believ | V is hat | V is lead | V is seem | V neg never
-1.4 V no subject form base as ROOT | V on creep as conj | V on hav as ROOT | V on know as ROOT | V on seem as xcomp
-1.4 V on stand as ROOT | V on wear as conj | V simply seem
-1.3 N is eye | N is night | N is tim | V advmod ever | V helper might form both | V is attach | V is grow
-1.3 V no subject form part as conj | V object death | V object law | V on used as advcl | V simply liv
-1.2 N after or | N before - | N is boy | N is day | N is father | N is man | N is men | N is mind | N is moment
-1.2 N is mother | N is thing | N is way | N is year | N with no | V advmod fairly | V advmod often | V after even
-1.2 V after then | V before always | V before mary | V before nobody | V before than | V before “
-1.2 V form base helped False as xcomp | V helper might form base | V helper should form base
-1.2 V helper should form both | V is expect | V is guess | V is keep | V is lik | V is need | V is permit
-1.2 V is remain | V is teach | V no subject form base as ccomp | V object tim | V on to as pcomp
-1.1 N 0 above base True False False | N 0 above base True True False | N is door | N is girl | N is hair | N is head
-1.1 N is heart | N is hous | N is kind | N is light | N is nam | N is plac | N is room | N is water | N is woman
-1.1 N with any | V 0 above both True False False | V advmod long | V after “ | V helper may form base
-1.1 V helper would form base | V is caus | V is consider | V is experienc | V is get | V is lying | V is mak
-1.1 V is reckon | V is sit | V is spend | V is suppos | V is ventur | V mark before | V object mean
-1.1 V on enjoi as ROOT | V on tri as xcomp | V on want as xcomp | V on without as pcomp | V simply begin
-1.1 V simply lov | V simply roll | V simply spend | V simply stand | V simply succeed | V simply wear
-1.1 V subject all | V subject with an | V takes acomp | V takes attr
-1.0 N after 's | N after a ADJ | N after made | N after where | N before long | N before no | N before old
-1.0 N is arm | N is child | N is friend | N is hom | N is hors | N is hour | N is ladi | N is lif | N is lip
-1.0 N is morn | N is peopl | N is piec | N is stori | N is wif | N is world | N on lik as pobj | N with all
-1.0 V advmod partly | V after any | V after before | V after only | V after well | V before almost | V before be
-1.0 V before him | V before worth | V helper 'll form base | V helper shall form base | V helper would form both
-1.0 V is becom | V is devot | V is hang | V is join | V is mean | V is possess | V is provid | V is rest
-1.0 V is round | V is stai | V is used | V neg not | V object account | V object attention | V object plac
-1.0 V object question | V on run as ROOT | V on seem as ROOT | V on sur as ccomp | V simply lie | V simply remain
-1.0 V subject this form both | V subject which form base | V subject with whose | V takes oprd | V takes since
-0.9 A 0 above base True False False | N after - | N after who | N before any | N before white | N before young
-0.9 N ends - | N is age | N is bodi | N is business | N is children | N is companion | N is countri | N is daughter
-0.9 N is deal | N is doctor | N is letter | N is manner | N is month | N is number | N is sea | N is sister
-0.9 N is son | N is window | N on ADV | N on wear | N tenses False True | V 0 above base True False False
-0.9 V 1 above base True False False | V 1 above both False False True | V advmod kindly | V advmod perfectly
-0.9 V advmod probably | V advmod quite | V after but | V after enough | V after without | V before ever
-0.9 V before n't | V before verloc | V before what | V before without | V form base as parataxis
-0.9 V form base spoken True | V form both helped True as parataxis | V form s spoken True | V habit True
-0.9 V helper must form both | V is accord | V is acquaint | V is afford | V is belong | V is contain | V is curl
-0.9 V is doing | V is dream | V is fear | V is fill | V is guard | V is happen | V is has | V is inspir | V is knock
-0.9 V is overlook | V is protect | V is reign | V is render | V is support | V is surround | V is travell
-0.9 V is understand | V no subject form both as conj | V no subject form both as pcomp | V object deal
-0.9 V object glanc | V object tal | V object world | V on PRON | V on believ as ccomp | V on follow as ROOT
-0.9 V on happen as ROOT | V on lif as relcl | V on liv as ROOT | V on wish as ccomp | V simply assum
-0.9 V simply bestow | V simply caus | V simply mak | V subject with any | V subject with its
-0.9 V subject you form past
-0.8 A before a ADP | A before all | A ends ! | A habit True | A is mor | A is sur | A tenses False True
-0.8 N 0 above base False True False | N 1 above both True False False | N after a NOUN | N after grew
-0.8 N before a AUX | N before a NUM | N before before | N before or | N before some | N before whose
-0.8 N is afternoon | N is aunt | N is back | N is character | N is cheek | N is cloth | N is cours | N is dog
-0.8 N is even | N is fact | N is famili | N is feet | N is figur | N is glass | N is hat | N is husband | N is leg
-0.8 N is non | N is nos | N is nurs | N is reason | N is river | N is scen | N is servant | N is sid | N is tabl
-0.8 N is town | N is view | N is visitor | N is week | N is women | N is youth | N on PROPN | N on say
-0.8 N on say as nsubj | N with sister | V 0 above both False False True | V 1 above s False True False
-0.8 V advmod eventually | V advmod further | V advmod generally | V advmod is | V after a ADJ | V after a NOUN
-0.8 V after far | V after hard | V after or | V before a SCONJ | V before may | V before much | V before quite
-0.8 V before should | V before us | V before would | V form base helped False as advcl
-0.8 V form base helped False as parataxis | V form both helped False as acomp | V helper am form both
-0.8 V helper do form base | V helper have form part | V helper is form ing | V helper may form both | V is be
-0.8 V is bind | V is characteriz | V is consist | V is destin | V is dress | V is enabl | V is fram | V is hid
-0.8 V is hint | V is includ | V is induc | V is learn | V is long | V is oblig | V is prov | V is surviv
-0.8 V is suspect | V is treat | V is trust | V is wind | V mark although | V mark for | V mark whether
-0.8 V no subject form ing as ROOT | V object ADJ | V object NUM | V object claim | V object peopl
-0.8 V object preparation | V object sister | V on appear as ROOT | V on appear as xcomp | V on call as advcl
-0.8 V on from as pcomp | V on imagin as ROOT | V on learn as ROOT | V on run as conj | V on seat as ROOT
-0.8 V on speak as ccomp | V on wish as xcomp | V on worth as xcomp | V simply be | V simply becom | V simply bring
-0.8 V simply fail | V simply giv | V simply prompt | V subject who form s | V subject with this
-0.8 V tenses False True
-0.7 A 0 above s False False False | A 1 above base False True False | A 1 above base True False False | A after -
-0.7 A after a NOUN | A after as | A before - | A before a DET | A before a SCONJ | A before of | A before the
-0.7 A is good | A is littl | A is wealthi | A length 5 | A on NOUN | A on seem as oprd
-0.7 N 0 above past False True False | N 0 above s False False False | N 1 above base False False True
-0.7 N 1 above base True True False | N 1 above s False False False | N after ! | N after ? | N after are
-0.7 N after could | N after seemed | N after would | N before ' | N before all | N before favorite | N before on
-0.7 N before personal | N before same | N before small | N before whole | N habit True | N is armi | N is aspect
-0.7 N is beauti | N is bed | N is book | N is brother | N is captain | N is chair | N is coat | N is compani
-0.7 N is ear | N is fellow | N is garden | N is gat | N is gentleman | N is land | N is length | N is lin
-0.7 N is matter | N is mean | N is minut | N is monei | N is mouth | N is natur | N is one | N is passag
-0.7 N is person | N is pictur | N is shoulder | N is tre | N is whil | N on be as npadvmod | N on bear as dobj
-0.7 N on find as dobj | N on grow as nsubj | N on hold as dobj | N on know | N on light as dobj | N on lik
-0.7 N on turn as dobj | N on wear as dobj | N with whose | V 0 above s False False True
-0.7 V 1 above base True True False | V advmod above | V advmod longer | V after anything | V after its
-0.7 V after like | V after sir | V after something | V before 's | V before _ | V before a VERB | V before all
-0.7 V before from | V before his | V before might | V before oak | V before often | V before probably
-0.7 V before shall | V before sometimes | V before them | V before will | V form base helped True as acl
-0.7 V form base helped True as ccomp | V form both helped True as ROOT | V form part as pcomp | V form s as advcl
-0.7 V form s helped False as advcl | V form s spoken False | V helper are form both | V helper be form both
-0.7 V helper might form part | V helper need form base | V is accompani | V is attend | V is bestow | V is chanc
-0.7 V is compos | V is emploi | V is escap | V is exercis | V is extend | V is linger | V is proceed | V is resid
-0.7 V is shar | V is sustain | V is tak | V is wrap | V mark with | V object cheek | V object day | V object digniti
-0.7 V object fac | V object min | V object troubl | V object watch | V on SCONJ | V on am as conj
-0.7 V on be as xcomp | V on begin as advcl | V on believ as ROOT | V on call as conj | V on ceas as xcomp
-0.7 V on determin as xcomp | V on going as xcomp | V on liv as advcl | V on look as ROOT | V on lov as ROOT
-0.7 V on need as ROOT | V on pass as ROOT | V on plai as conj | V on wear as ROOT | V simply compos
-0.7 V simply expect | V simply fear | V simply hold | V simply lik | V simply occupi | V simply plai
-0.7 V simply proceed | V simply work | V subject NOUN True form base | V subject everybody
-0.7 V subject there form past | V subject which form ing | V subject which form past | V takes beneath
-0.6 A 1 above base True True False | A 1 above both True False False | A 1 above s False False False | A after a ADJ
-0.6 A after by | A before a | A before a ADJ | A before a PART | A before a PRON | A before an | A before in
-0.6 A before with | A is black | A is full | A is much | A is old | A is other | A is young
-0.6 N 0 above base False False False | N 0 above part True True False | N 1 above base True False False
-0.6 N 1 above base True False True | N after a | N after blew | N after into | N after might | N after than
-0.6 N after took | N after we | N after without | N after — | N before a PUNCT | N before blue | N before english
-0.6 N before few | N before green | N before had | N before high | N before make | N before other | N ends ?
-0.6 N is air | N is centuri | N is class | N is corner | N is cottag | N is cousin | N is digniti | N is distanc
-0.6 N is dress | N is duti | N is earth | N is featur | N is field | N is finger | N is generation | N is gossip
-0.6 N is grind | N is half | N is hall | N is histori | N is influenc | N is lot | N is master | N is neck
-0.6 N is offic | N is officer | N is opinion | N is other | N is paper | N is part | N is pocket | N is poet
-0.6 N is post | N is school | N is shadow | N is sky | N is sort | N is spirit | N is stat | N is stick | N is stor
-0.6 N is stranger | N is street | N is ton | N is villag | N is wood | N on NOUN | N on among | N on among as pobj
-0.6 N on com as npadvmod | N on commenc | N on consider | N on do as nsubj | N on enter | N on form
-0.6 N on giv as nsubj | N on hang | N on los | N on mak as nsubjpass | N on offer | N on plac | N on produc
-0.6 N on reveal | N on room | N on sink | N on sit as nsubj | N on speak | N on stand as nsubj | N with its
-0.6 N with some | N with those | V 0 above part False False True | V 1 above past False False True
-0.6 V advmod continually | V advmod frequently | V advmod gravely | V advmod heavily | V advmod near
-0.6 V advmod possibly | V advmod right | V advmod that | V advmod usually | V advmod yet | V after -
-0.6 V after a PART | V after how | V after miss | V after several | V after so | V after some | V after such
-0.6 V after towards | V after very | V before 'll | V before certainly | V before girls | V before so
-0.6 V before soon | V before ‘ | V ends ? | V form base helped False as pcomp | V form base helped True as ROOT
-0.6 V form base helped True as conj | V form both as amod | V form both helped False as amod
-0.6 V form both helped True as conj | V helper 'd form base | V helper have form both | V helper will form base
-0.6 V helper will form both | V is allow | V is beat | V is car | V is conceal | V is confin | V is dar | V is deriv
-0.6 V is develop | V is end | V is fail | V is feed | V is feel | V is gleam | V is lie | V is pleas | V is relat
-0.6 V is sing | V is studi | V is suffer | V is thank | V mark because | V no subject form base as conj
-0.6 V no subject form past as conj | V object boy | V object chanc | V object dollar | V object kind | V object nerv
-0.6 V object opinion | V object part | V object work | V on ad as ccomp | V on are as advcl | V on be as ROOT
-0.6 V on becom as conj | V on continu as ROOT | V on draw as ROOT | V on fill as conj | V on get as advcl
-0.6 V on go as advcl | V on liv as conj | V on one as relcl | V on read as conj | V on rest as ROOT
-0.6 V on tell as xcomp | V on think as ccomp | V on try as xcomp | V simply allow | V simply believ
-0.6 V simply consider | V simply develop | V simply happen | V simply learn | V simply nam | V simply rest
-0.6 V simply think | V subject i form part | V subject one form base | V subject that form base
-0.6 V subject they form base | V subject they form part | V subject we form base | V subject which
-0.6 V subject who form part | V subject with their | V takes among | V takes throughout
-0.5 A 0 above base False True False | A 0 above base True True False | A 0 above past False True False
-0.5 A 1 above base False False False | A 1 above past False False False | A after ! | A after a | A after a PROPN
-0.5 A after enough | A after than | A before  | A before 's | A before a NUM | A before at | A before be
-0.5 A before his | A before its | A before most | A before my | A before not | A before that | A before this
-0.5 A before very | A ends . | A is clos | A is dear | A is first | A is great | A is larg | A is last | A is mani
-0.5 A is older | A is own | A is red | A is small | A is tall | A length 0 | A length 3 | A on ADV | A on are
-0.5 A on are as acomp | A on be as attr | A on look | A tenses True True | A with - | N 0 above base True False True
-0.5 N 0 above s False False True | N 0 above s False True False | N 1 above ing False True False
-0.5 N 1 above part True False False | N 1 above past False False True | N after a CCONJ | N after a NUM
-0.5 N after a PART | N after has | N after if | N after like | N after looked | N after nor | N after ran
-0.5 N after till | N after went | N after ” | N before big | N before brown | N before curious | N before dark
-0.5 N before different | N before early | N before extra | N before fine | N before inferior | N before perfect
-0.5 N before several | N before them | N before those | N before three | N before various | N before were
-0.5 N before what | N before which | N before “ | N is allowanc | N is art | N is bank | N is belt | N is build
-0.5 N is camp | N is cap | N is chanc | N is chapter | N is circl | N is citi | N is clock | N is comrad
-0.5 N is consciousness | N is countenanc | N is creatur | N is crowd | N is dat | N is desk | N is edg
-0.5 N is education | N is elbow | N is experienc | N is farm | N is fit | N is floor | N is food | N is forest
-0.5 N is front | N is fun | N is gold | N is hill | N is intelligenc | N is interval | N is kindness | N is mil
-0.5 N is min | N is mysteri | N is nerv | N is object | N is pair | N is period | N is portion | N is presenc
-0.5 N is road | N is seat | N is seri | N is shad | N is ship | N is shop | N is skirt | N is societi | N is soul
-0.5 N is spr | N is station | N is ston | N is suit | N is sum | N is top | N is train | N is truth | N is use
-0.5 N is wall | N is war | N length 5 | N on NUM | N on across | N on across as pobj | N on along
-0.5 N on along as pobj | N on do | N on down | N on find | N on form as dobj | N on get as dobj | N on hang as dobj
-0.5 N on hold | N on indicat | N on is as attr | N on know as dobj | N on lay | N on lead | N on open
-0.5 N on over as pobj | N on pick as dobj | N on pull | N on reach | N on see as nsubj | N on shak as dobj
-0.5 N on smok | N on strik as dobj | N on tell as dobj | N on writ | N with both | N with every | N with these
-0.5 V 0 above ing False True False | V 1 above base False True False | V 1 above both True False False
-0.5 V 1 above part True True False | V 1 above s False False False | V advmod down | V advmod enough
-0.5 V advmod forever | V advmod late | V advmod least | V advmod rarely | V advmod still | V advmod surely
-0.5 V advmod thoroughly | V after a CCONJ | V after almost | V after asleep | V after further | V after man
-0.5 V after men | V after more | V after n't | V after pretty | V after quite | V after together | V after which
-0.5 V after why | V before ! | V before 'd | V before a | V before anything | V before better | V before does
-0.5 V before if | V before last | V before nor | V before others | V before rarely | V before there | V before these
-0.5 V before this | V before time | V before usually | V before with | V form base as acl | V form base as ccomp
-0.5 V form base as compound | V form ing helped True as xcomp | V form s as relcl | V form s helped False as relcl
-0.5 V helper 'd form both | V helper be form ing | V helper ca form base | V helper to form ing
-0.5 V helper were form both | V helper wo form base | V is assist | V is assum | V is bear | V is breed | V is cloth
-0.5 V is deal | V is descend | V is deserv | V is direct | V is doe | V is fac | V is fight | V is haunt
-0.5 V is impos | V is mingl | V is pervad | V is represent | V is requir | V is rous | V is sav | V is seek
-0.5 V is sooth | V is spar | V is suit | V is term | V is think | V is visit | V length 5 | V mark than
-0.5 V mark that | V neg n't | V no subject form base as acl | V no subject form base as advcl
-0.5 V no subject form base as csubj | V no subject form both as amod | V object acquaintanc | V object air
-0.5 V object armi | V object character | V object conversation | V object duti | V object father | V object glori
-0.5 V object honour | V object manner | V object men | V object non | V object proof | V object stori
-0.5 V object think | V object word | V on about as xcomp | V on allow as ROOT | V on appear as advcl
-0.5 V on becom as advcl | V on beg as xcomp | V on consider as advcl | V on dar as ROOT | V on declar as ccomp
-0.5 V on desir as xcomp | V on do as advcl | V on driv as ROOT | V on fear as ROOT | V on get as ROOT
-0.5 V on get as ccomp | V on girl as relcl | V on glanc as ROOT | V on guess as ccomp | V on has as ROOT
-0.5 V on hav as advcl | V on help as ROOT | V on let as advcl | V on lik as ROOT | V on of as pcomp
-0.5 V on pass as conj | V on promis as xcomp | V on set as ROOT | V on sit as ROOT | V on stand as conj
-0.5 V on stretch as ROOT | V on stretch as advcl | V on tell as advcl | V on used as xcomp | V on wait as ROOT
-0.5 V on wait as advcl | V on wander as conj | V on want as ccomp | V on writ as conj | V on year as relcl
-0.5 V simply bend | V simply consist | V simply decid | V simply driv | V simply hang | V simply induc
-0.5 V simply intend | V simply pervad | V simply possess | V simply present | V simply serv | V simply studi
-0.5 V subject ADJ False form both | V subject VERB False | V subject it form part | V subject nothing
-0.5 V subject that form s | V subject there form both | V subject these | V subject those | V subject we form ing
-0.5 V subject with every | V takes as | V takes within | V tenses False False
-0.4 A 0 above part True False False | A 1 above ing False False False | A 1 above s False True False | A after ?
-0.4 A after a VERB | A after but | A after man | A after of | A before a PUNCT | A before as | A before but
-0.4 A before growing | A before her | A before how | A before it | A before just | A before no | A before pretty
-0.4 A before some | A before their | A before well | A ends ? | A habit False | A is abl | A is about
-0.4 A is acquaint | A is certain | A is clear | A is difficult | A is few | A is heavi | A is high | A is long
-0.4 A is new | A is poor | A is strong | A is such | A is tru | A is wild | A is wors | A length 1 | A length 4
-0.4 A on NUM | A on PRON | A on be as advcl | A on com | A on eye | A on eye as amod | A on find | A on hav
-0.4 A on is | A on is as acomp | A on look as acomp | A on man | A on man as amod | A on of | A on of as pobj
-0.4 A tenses True False | N 0 above part False True False | N 0 above part True False False
-0.4 N 1 above base False False False | N 1 above both False False True | N 1 above ing True False False
-0.4 N after a DET | N after a PRON | N after back | N after between | N after in | N after is | N after set
-0.4 N after stood | N after together | N after turned | N after will | N before a SCONJ | N before as
-0.4 N before beautiful | N before best | N before black | N before dead | N before dear | N before endless
-0.4 N before every | N before further | N before immediate | N before important | N before large | N before mean
-0.4 N before melancholy | N before neither | N before nice | N before open | N before poor | N before pretty
-0.4 N before single | N before such | N before tall | N before their | N before this | N before true | N before two
-0.4 N before utter | N before very | N before wide | N before with | N before without | N is absenc
-0.4 N is advantag | N is affair | N is affection | N is ambition | N is apartment | N is aristo | N is atmospher
-0.4 N is authoriti | N is babi | N is bag | N is basket | N is belief | N is bill | N is bird | N is blood
-0.4 N is bottl | N is bottom | N is branch | N is brook | N is brow | N is brush | N is cabin | N is career
-0.4 N is carriag | N is chest | N is church | N is cigar | N is cigarett | N is cold | N is collar | N is colour
-0.4 N is condition | N is copi | N is curl | N is danger | N is delight | N is desert | N is dish | N is dollar
-0.4 N is enjoyment | N is evidenc | N is existenc | N is fashion | N is fault | N is fool | N is foot | N is form
-0.4 N is furnitur | N is gam | N is garment | N is gentlemen | N is glori | N is guid | N is habit | N is height
-0.4 N is horror | N is hotel | N is importanc | N is instanc | N is instant | N is instrument | N is king
-0.4 N is kitchen | N is kne | N is knowledg | N is lamp | N is languag | N is liv | N is lover | N is mark
-0.4 N is meal | N is method | N is mirror | N is mistress | N is moon | N is mountain | N is neighbour | N is notic
-0.4 N is occasion | N is packet | N is pag | N is palm | N is parlour | N is path | N is planet | N is pol
-0.4 N is position | N is priest | N is process | N is prospect | N is qualiti | N is quarter | N is reader
-0.4 N is region | N is residenc | N is right | N is ris | N is roof | N is rop | N is round | N is sailor
-0.4 N is season | N is sereniti | N is servic | N is sho | N is sign | N is sir | N is skin | N is slav | N is sleev
-0.4 N is slop | N is sofa | N is soldier | N is spot | N is squar | N is star | N is stream | N is subject
-0.4 N is summer | N is sunshin | N is throat | N is tin | N is treasur | N is troubl | N is uncl | N is vallei
-0.4 N is veil | N is want | N is widow | N is winter | N on ADJ | N on AUX | N on INTJ | N on abov
-0.4 N on abov as pobj | N on acquir | N on are as nsubj | N on as | N on as as pobj | N on ask as nsubj
-0.4 N on behind | N on behind as pobj | N on beyond | N on beyond as pobj | N on breath as dobj | N on call as oprd
-0.4 N on cri | N on cri as nsubj | N on demand | N on down as pobj | N on draw as nsubj | N on dream | N on drink
-0.4 N on driv | N on express | N on express as dobj | N on fac as conj | N on fill | N on from | N on from as pobj
-0.4 N on girl | N on hair | N on hat | N on hous | N on i | N on imagin | N on is | N on kiss | N on lay as dobj
-0.4 N on lie | N on lift | N on los as dobj | N on lov | N on lower | N on marri | N on mind | N on music | N on not
-0.4 N on occupi | N on offer as dobj | N on on as pobj | N on open as dobj | N on pass as nsubjpass | N on point
-0.4 N on present | N on reach as dobj | N on read | N on read as dobj | N on regard | N on repeat | N on represent
-0.4 N on reveal as dobj | N on room as compound | N on serv | N on shak | N on studi | N on tell | N on think
-0.4 N on tre | N on up as pobj | N on upon | N on upon as pobj | N on voic | N on walk | N on want
-0.4 N on want as dobj | N on watch | N on win | N on within | N on within as pobj | N on writ as dobj
-0.4 N tenses False False | N with - | N with another | N with dick | N with the | V 0 above past False False True
-0.4 V 1 above base True False True | V 1 above both False True False | V 1 above past True False False
-0.4 V advmod altogether | V advmod doubtless | V advmod evidently | V advmod hard | V advmod hardly
-0.4 V advmod indeed | V advmod much | V advmod nicely | V advmod otherwise | V advmod over | V advmod seldom
-0.4 V advmod vaguely | V after ) | V after an | V after between | V after father | V after great | V after here
-0.4 V after himself | V after if | V after is | V after many | V after near | V after nearly | V after softly
-0.4 V after they | V after things | V after with | V before 'm | V before 're | V before an | V before face
-0.4 V before frequently | V before generally | V before heart | V before light | V before longer | V before seldom
-0.4 V before thus | V before vaguely | V before which | V before who | V before year | V before —
-0.4 V form base as ROOT | V form base as acomp | V form base as amod | V form base as conj | V form base as dep
-0.4 V form base as prep | V form base helped False as acomp | V form base helped False as amod
-0.4 V form base helped False as prep | V form both as oprd | V form both helped False as oprd
-0.4 V form ing helped True as ccomp | V form part helped True as ROOT | V form s as ccomp | V form s as conj
-0.4 V form s helped False as ccomp | V helper 'm form base | V helper be form part | V helper would form part
-0.4 V is accomplish | V is add | V is back | V is bit | V is brood | V is burn | V is concern | V is depend
-0.4 V is desir | V is fall | V is fit | V is help | V is honour | V is hop | V is increas | V is is | V is leav
-0.4 V is mind | V is obei | V is perform | V is pin | V is preced | V is proc | V is push | V is regret | V is serv
-0.4 V is sleep | V is start | V is suppli | V is twist | V no subject form base as amod
-0.4 V no subject form base as prep | V no subject form both as oprd | V object appearanc | V object expression
-0.4 V object interest | V object meal | V object night | V object nois | V object pair | V object pleasur
-0.4 V object secret | V on ADP | V on ADV | V on NOUN | V on ask as xcomp | V on be as advcl | V on be as conj
-0.4 V on circumstanc as relcl | V on consist as ROOT | V on dar as conj | V on endeavour as xcomp
-0.4 V on expect as xcomp | V on fail as xcomp | V on fall as ROOT | V on far as advcl | V on find as ROOT
-0.4 V on find as advcl | V on find as ccomp | V on follow as advcl | V on go as conj | V on going as ROOT
-0.4 V on hat as ROOT | V on hear as ROOT | V on hear as advcl | V on in as pobj | V on intend as ROOT
-0.4 V on intend as xcomp | V on know as advcl | V on lead as conj | V on lean as ROOT | V on learn as conj
-0.4 V on learn as xcomp | V on let as ROOT | V on lik as pcomp | V on listen as advcl | V on long as advcl
-0.4 V on look as conj | V on lov as xcomp | V on marri as ccomp | V on much as advcl | V on noth as relcl
-0.4 V on notic as ROOT | V on pay as ROOT | V on pretend as ccomp | V on pretend as xcomp | V on readi as xcomp
-0.4 V on regard as ROOT | V on resolv as xcomp | V on rest as advcl | V on talk as conj | V on think as conj
-0.4 V on to as pobj | V on unabl as xcomp | V on woman as relcl | V on women as relcl | V prt away | V simply breed
-0.4 V simply contain | V simply fill | V simply marri | V simply pleas | V simply seek | V simply surround
-0.4 V subject NOUN True form part | V subject all form both | V subject one | V subject some
-0.4 V subject these form both | V subject this form base | V subject what form both | V subject who form base
-0.4 V subject with these | V subject with what | V takes above | V takes because | V takes beside | V takes than
-0.3 A 0 above s False True False | A 1 above both False False False | A 1 above both False False True
-0.3 A after a ADP | A after from | A after he | A after in | A after woman | A before : | A before a VERB
-0.3 A before almost | A before always | A before any | A before are | A before by | A before each | A before for
-0.3 A before get | A before less | A before more | A before once | A before quite | A before still | A before these
-0.3 A before years | A before “ | A is alon | A is beautiful | A is best | A is better | A is blu | A is bright
-0.3 A is busi | A is gentl | A is grai | A is green | A is handsom | A is impossibl | A is lat | A is least
-0.3 A is loneli | A is low | A is most | A is natural | A is nic | A is pleasant | A is possibl | A is quiet
-0.3 A is rich | A is right | A is round | A is sam | A is short | A is strang | A is thin | A is unabl | A is weak
-0.3 A is weari | A is wet | A is whol | A is yellow | A length 2 | A on 's | A on 's as acomp | A on ADJ | A on as
-0.3 A on being | A on being as acomp | A on day | A on day as amod | A on girl | A on girl as amod | A on hair
-0.3 A on hair as amod | A on hand | A on hand as amod | A on keep | A on know | A on lie | A on say | A on see
-0.3 A on thing | A on thing as amod | A on tim | A on tim as amod | A on woman | A on woman as amod | A on year
-0.3 A on year as amod | A with each | A with her | N 0 above both True True False | N 0 above ing False True False
-0.3 N 0 above past False False True | N 1 above s False False True | N after , | N after ; | N after _
-0.3 N after a AUX | N after a PUNCT | N after a VERB | N after about | N after above | N after and | N after around
-0.3 N after be | N after because | N after began | N after beneath | N after beyond | N after filled | N after for
-0.3 N after held | N after here | N after hung | N after it | N after itself | N after must | N after such
-0.3 N after under | N after upon | N after yet | N before a | N before a ADJ | N before a CCONJ | N before a DET
-0.3 N before a NOUN | N before a VERB | N before against | N before anxious | N before back | N before better
-0.3 N before between | N before both | N before brass | N before certain | N before clear | N before common
-0.3 N before constant | N before cool | N before country | N before distant | N before each | N before easy
-0.3 N before elderly | N before exquisite | N before fair | N before family | N before favourite | N before five
-0.3 N before following | N before full | N before generous | N before glittering | N before gray | N before grey
-0.3 N before indian | N before intellectual | N before iron | N before its | N before kind | N before local
-0.3 N before lonely | N before looking | N before lower | N before main | N before me | N before mere | N before my
-0.3 N before mysterious | N before narrow | N before native | N before nor | N before over | N before peculiar
-0.3 N before physical | N before pleasant | N before political | N before possible | N before right
-0.3 N before running | N before sacred | N before silk | N before simple | N before six | N before than
-0.3 N before thick | N before thousand | N before took | N before upper | N before vulgar | N before when
-0.3 N before wooden | N before you | N ends . | N is accent | N is angl | N is arrangement | N is attempt
-0.3 N is attendant | N is attitud | N is band | N is bar | N is bear | N is beard | N is bedroom | N is being
-0.3 N is block | N is board | N is boot | N is bosom | N is brain | N is building | N is bundl | N is burro
-0.3 N is cart | N is castl | N is cat | N is caus | N is cent | N is chain | N is charm | N is chimnei | N is chin
-0.3 N is clerk | N is cliff | N is clos | N is collection | N is colleg | N is comfort | N is constitution
-0.3 N is contempt | N is conviction | N is crat | N is cupboard | N is curtain | N is curv | N is cushion
-0.3 N is custom | N is customer | N is cut | N is danc | N is dear | N is degre | N is deiti | N is description
-0.3 N is detachment | N is difficulti | N is disposition | N is egg | N is enemi | N is energi | N is estat
-0.3 N is evil | N is exampl | N is extent | N is fabric | N is familiariti | N is flesh | N is folk | N is forehead
-0.3 N is fruit | N is glov | N is good | N is gown | N is grandson | N is grov | N is guard | N is guest
-0.3 N is handkerchief | N is happiness | N is health | N is hearth | N is heel | N is herb | N is hol
-0.3 N is homestead | N is honour | N is hospital | N is humour | N is imag | N is imagination | N is individual
-0.3 N is intimaci | N is iron | N is kitten | N is lad | N is ladyship | N is landscap | N is law | N is librari
-0.3 N is limb | N is lock | N is log | N is mail | N is mansion | N is manuscript | N is mat | N is match
-0.3 N is meadow | N is memori | N is misfortun | N is motionless | N is motiv | N is mud | N is muscl
-0.3 N is narrativ | N is new | N is newspaper | N is nurseri | N is o | N is o'clock | N is oak | N is orphan
-0.3 N is overcoat | N is papa | N is parent | N is parson | N is patient | N is patron | N is peac | N is personag
-0.3 N is pip | N is plain | N is plat | N is potato | N is practic | N is pric | N is prison | N is prospector
-0.3 N is pupil | N is rac | N is respect | N is result | N is romanc | N is ros | N is rum | N is sand | N is scor
-0.3 N is seaman | N is self | N is sens | N is shap | N is sheet | N is shirt | N is shor | N is spac | N is spur
-0.3 N is staff | N is stag | N is stair | N is steel | N is stillness | N is strip | N is studi | N is sunlight
-0.3 N is system | N is t | N is teeth | N is term | N is titl | N is todai | N is tongu | N is trac | N is trifl
-0.3 N is trouser | N is twilight | N is twopenc | N is typ | N is veranda | N is vessel | N is virtu | N is volum
-0.3 N is waggon | N is wagon | N is weather | N is whol | N is will | N is wisdom | N is wiv | N is yard
-0.3 N length 3 | N on 's | N on PART | N on about | N on about as pobj | N on acquir as dobj | N on adjust
-0.3 N on adjust as dobj | N on approach | N on are | N on being as attr | N on beneath | N on beneath as pobj
-0.3 N on book | N on boy | N on build | N on buri | N on call | N on cast | N on cast as dobj | N on chang as nsubj
-0.3 N on clos as nsubj | N on complet | N on consist | N on contain | N on contain as dobj | N on countri
-0.3 N on cover as dobj | N on cri as dobj | N on cross | N on desir | N on eat | N on enter as dobj | N on expect
-0.3 N on eye | N on father | N on feel as nsubj | N on for | N on for as pobj | N on get | N on go
-0.3 N on hair as conj | N on hand | N on haunt | N on hav as nsubj | N on head | N on hear as nsubj
-0.3 N on hous as compound | N on in | N on in as pobj | N on includ | N on inherit | N on join | N on keep as nsubj
-0.3 N on lead as nsubj | N on lean | N on let as dobj | N on liv | N on man | N on mark | N on near
-0.3 N on near as pobj | N on need | N on need as dobj | N on on | N on one | N on order | N on pack | N on parti
-0.3 N on parti as compound | N on past | N on pictur | N on plant | N on possess as dobj | N on promot
-0.3 N on pull as dobj | N on regard as dobj | N on remain | N on repli | N on return | N on ring as dobj | N on ris
-0.3 N on ris as nsubj | N on room as conj | N on seek as dobj | N on seem as oprd | N on sell | N on shin
-0.3 N on show | N on show as nsubj | N on sit as dobj | N on sound | N on speak as dobj | N on speak as nsubj
-0.3 N on spend | N on star | N on start as dobj | N on stop | N on strok | N on suffer | N on suffer as dobj
-0.3 N on suggest | N on survei | N on teach | N on threaten | N on touch | N on tre as compound | N on tri
-0.3 N on understand | N on use | N on visit | N on wait | N on wash | N on watch as dobj | N on win as dobj
-0.3 N on without | N on without as pobj | N on you | N on you as appos | N with daughter | N with each
-0.3 N with pinkerton | N with whatever | N with your | V 0 above base False True False
-0.3 V 1 above base False False False | V 1 above past False False False | V 1 above s True False False
-0.3 V advmod almost | V advmod also | V advmod certainly | V advmod close | V advmod exactly | V advmod greatly
-0.3 V advmod half | V advmod hence | V advmod however | V advmod ill | V advmod more | V advmod moreover
-0.3 V advmod most | V advmod properly | V advmod seriously | V advmod short | V advmod twice | V advmod very
-0.3 V advmod well | V after ( | V after a VERB | V after against | V after better | V after care | V after god
-0.3 V after in | V after not | V after of | V after right | V after till | V after upon | V after we | V before ?
-0.3 V before a ADP | V before a AUX | V before a PART | V before actually | V before are | V before dare
-0.3 V before else | V before get | V before like | V before little | V before more | V before of | V before perhaps
-0.3 V before tears | V before that | V before things | V before those | V before winnie | V before world
-0.3 V ends - | V form base as pcomp | V form base as pobj | V form base as xcomp
-0.3 V form base helped False as compound | V form base helped False as pobj | V form both as pobj
-0.3 V form both as xcomp | V form both helped False as pobj | V form both helped True as advcl
-0.3 V form both helped True as relcl | V form both helped True as xcomp | V form part as amod
-0.3 V form part helped False as amod | V form part helped True as ccomp | V form s helped False as conj
-0.3 V helper 're form ing | V helper 've form both | V helper be form base | V helper being form base
-0.3 V helper could form part | V helper does form base | V is affect | V is blaz | V is bound | V is carri
-0.3 V is compar | V is connect | V is cover | V is die | V is endur | V is furnish | V is giv | V is glitter
-0.3 V is go | V is hurt | V is imagin | V is intend | V is manag | V is occupi | V is open | V is print
-0.3 V is realiz | V is recover | V is seiz | V is unit | V mark though | V no subject form base as acomp
-0.3 V no subject form base as compound | V no subject form base as dep | V no subject form base as pobj
-0.3 V no subject form base as relcl | V no subject form base as xcomp | V no subject form both as advcl
-0.3 V no subject form both as pobj | V no subject form both as xcomp | V no subject form part as amod
-0.3 V no subject form s as conj | V object bit | V object business | V object car | V object fault
-0.3 V object feeling | V object gown | V object habit | V object hop | V object lot | V object nos | V object notion
-0.3 V object opportuniti | V object packet | V object rest | V on AUX | V on PUNCT | V on ad as ROOT
-0.3 V on afraid as xcomp | V on are as conj | V on arriv as ccomp | V on be as acomp | V on be as csubj
-0.3 V on boy as relcl | V on call as xcomp | V on consider as ROOT | V on difficult as xcomp | V on do as ROOT
-0.3 V on doe as ROOT | V on enabl as xcomp | V on except as pcomp | V on fill as ROOT | V on forget as ccomp
-0.3 V on hang as conj | V on hat as xcomp | V on hop as ROOT | V on hous as relcl | V on imagin as ccomp
-0.3 V on intend as conj | V on is as ROOT | V on know as conj | V on lie as ROOT | V on lie as ccomp
-0.3 V on lik as xcomp | V on los as ROOT | V on man as amod | V on man as relcl | V on meet as advcl
-0.3 V on meet as conj | V on occupi as ROOT | V on plac as relcl | V on point as relcl | V on possess as ROOT
-0.3 V on possess as advcl | V on pull as ROOT | V on remain as ROOT | V on remember as advcl | V on say as xcomp
-0.3 V on suppos as ROOT | V on teach as xcomp | V on think as ROOT | V on thos as relcl | V on town as relcl
-0.3 V on turn as conj | V on used as conj | V on way as relcl | V on wish as conj | V prt back | V simply determin
-0.3 V simply direct | V simply dress | V simply feel | V simply form | V simply keep | V simply lift
-0.3 V simply print | V simply receiv | V simply represent | V simply run | V simply sit | V simply sweep
-0.3 V simply urg | V subject 's | V subject 's form base | V subject NOUN False form s | V subject NOUN True
-0.3 V subject NUM False | V subject an | V subject anybody | V subject he form s | V subject himself form both
-0.3 V subject it form both | V subject it form ing | V subject me form base | V subject that form past
-0.3 V subject us | V subject us form base | V subject we form part | V subject what | V takes besides
-0.3 V takes between | V takes dative | V takes xcomp
-0.2 A 0 above base False False True | A 0 above both False True False | A 0 above both True False False
-0.2 A 0 above part False True False | A 1 above both True True False | A 1 above modal False False False
-0.2 A 1 above part False True False | A after about | A after afternoon | A after before | A after eyes
-0.2 A after face | A after hair | A after if | A after it | A after like | A after men | A after on | A after one
-0.2 A after thing | A after time | A after was | A after we | A after were | A before ' | A before a NOUN
-0.2 A before being | A before entirely | A before even | A before exceedingly | A before extremely | A before first
-0.2 A before had | A before him | A before lay | A before looked | A before made | A before one | A before our
-0.2 A before perfectly | A before seemed | A before those | A before to | A before two | A before were
-0.2 A before wide | A before your | A ends - | A is aliv | A is attractiv | A is awak | A is bad | A is bar
-0.2 A is big | A is brilliant | A is brown | A is clean | A is cool | A is delicat | A is desirou | A is determin
-0.2 A is dull | A is earli | A is easi | A is enough | A is fin | A is flat | A is flush | A is fond | A is fre
-0.2 A is french | A is half | A is human | A is ill | A is larger | A is likeli | A is necessari | A is nervou
-0.2 A is next | A is odd | A is onli | A is pal | A is particular | A is pink | A is professional | A is proper
-0.2 A is quit | A is real | A is sad | A is second | A is seriou | A is several | A is shy | A is slimi
-0.2 A is straight | A is sweet | A is terribl | A is thick | A is ugli | A is unhappi | A is vain | A is veri
-0.2 A is visibl | A is wid | A on 're | A on 're as acomp | A on ADP | A on AUX | A on appear | A on as as amod
-0.2 A on be as nsubj | A on boy | A on boy as amod | A on com as advcl | A on find as ccomp | A on for | A on friend
-0.2 A on friend as amod | A on heart as amod | A on hous | A on hous as amod | A on interest | A on keep as oprd
-0.2 A on know as dobj | A on ladi | A on ladi as amod | A on larg | A on larg as conj | A on leav | A on men
-0.2 A on men as amod | A on mind | A on month | A on night | A on night as amod | A on one | A on one as amod
-0.2 A on plac | A on plac as amod | A on rag | A on remain | A on remain as acomp | A on render | A on room
-0.2 A on room as amod | A on run | A on seem | A on someth | A on someth as amod | A on tak | A on think | A on tir
-0.2 A on turn | A on voic | A on voic as amod | A on way | A on way as amod | A tenses False False | A with his
-0.2 A with the | N 0 above both True False True | N 0 above modal False False False
-0.2 N 0 above part False False True | N 1 above base False True False | N 1 above base False True True
-0.2 N 1 above ing False False True | N 1 above part False False False | N 1 above part False False True
-0.2 N 1 above part True True False | N 1 above s False True False | N after " | N after a INTJ | N after abroad
-0.2 N after across | N after ago | N after all | N after almost | N after alone | N after along | N after always
-0.2 N after appeared | N after as | N after asked | N after before | N after below | N after came | N after can
-0.2 N after closed | N after crossed | N after first | N after full | N after going | N after half | N after having
-0.2 N after later | N after lay | N after led | N after left | N after looking | N after named | N after of
-0.2 N after off | N after one | N after outside | N after quite | N after really | N after rose | N after sat
-0.2 N after spoke | N after suddenly | N after while | N after whose | N after with | N after within | N after “
-0.2 N before : | N before a - | N before a ADP | N before a PRON | N before a PROPN | N before a X | N before about
-0.2 N before american | N before and | N before apparent | N before been | N before bloody | N before broad
-0.2 N before broken | N before by | N before chinese | N before christian | N before cruel | N before daily
-0.2 N before delightful | N before desert | N before difficult | N before dirty | N before elder | N before empty
-0.2 N before european | N before evil | N before fallen | N before fifty | N before former | N before forty
-0.2 N before four | N before french | N before from | N before front | N before gay | N before glass | N before gold
-0.2 N before good | N before greatest | N before haired | N before handsome | N before have | N before having
-0.2 N before highest | N before his | N before hostile | N before into | N before kitchen | N before known
-0.2 N before latter | N before least | N before leather | N before left | N before london | N before lovely
-0.2 N before market | N before middle | N before moral | N before most | N before one | N before only | N before our
-0.2 N before pale | N before plain | N before principal | N before rare | N before remote | N before rose
-0.2 N before round | N before rustic | N before silent | N before silver | N before slender | N before social
-0.2 N before square | N before steep | N before stone | N before straight | N before sufficient | N before sunday
-0.2 N before ten | N before the | N before top | N before twenty | N before up | N before upon | N before usual
-0.2 N before wandering | N before yellow | N before youthful | N ends ! | N habit False | N is abiliti
-0.2 N is account | N is acquaintanc | N is addition | N is admiration | N is allei | N is amusement | N is ancestor
-0.2 N is anchor | N is animal | N is appl | N is artist | N is ash | N is author | N is baggag | N is barricad
-0.2 N is bath | N is beer | N is bit | N is blackness | N is blanket | N is bloom | N is blossom | N is boat
-0.2 N is bon | N is bonnet | N is border | N is bowl | N is box | N is brass | N is bread | N is breast | N is brick
-0.2 N is bridg | N is burden | N is candl | N is capaciti | N is card | N is chamber | N is childhood
-0.2 N is civilization | N is clergyman | N is club | N is coal | N is color | N is colt | N is compassion
-0.2 N is conduct | N is confidenc | N is conscienc | N is consent | N is consideration | N is counti | N is coupl
-0.2 N is courag | N is court | N is cover | N is crew | N is crown | N is cup | N is dagger | N is dark | N is deck
-0.2 N is depth | N is descent | N is destination | N is distress | N is doorwai | N is dozen | N is draw
-0.2 N is driv | N is expens | N is extravaganc | N is extremiti | N is faith | N is far | N is farmer
-0.2 N is fascination | N is favour | N is femal | N is firelight | N is firesid | N is flower | N is fold
-0.2 N is fondness | N is fortun | N is frock | N is futur | N is gem | N is general | N is ghost | N is gift
-0.2 N is goin | N is governess | N is grandfather | N is grass | N is grav | N is grei | N is group | N is growth
-0.2 N is guillotin | N is gun | N is har | N is hay | N is hedg | N is heir | N is help | N is her | N is hero
-0.2 N is holidai | N is host | N is household | N is humaniti | N is hundred | N is hurri | N is hut | N is i
-0.2 N is improvement | N is inch | N is inclination | N is infant | N is information | N is inhabitant
-0.2 N is instruction | N is jacket | N is jaw | N is judgment | N is labour | N is lac | N is lak | N is lawn
-0.2 N is leather | N is linen | N is lion | N is luxuri | N is machin | N is maid | N is map | N is market
-0.2 N is material | N is member | N is merci | N is middl | N is midnight | N is mill | N is miner | N is minuet
-0.2 N is mixtur | N is moustach | N is mulatto | N is n't | N is necessiti | N is need | N is neighborhood
-0.2 N is neighbourhood | N is nobleman | N is north | N is orchard | N is pack | N is pan | N is parapet
-0.2 N is parti | N is passenger | N is past | N is patch | N is piano | N is pillow | N is pin | N is plant
-0.2 N is population | N is porter | N is portrait | N is pot | N is pound | N is prefect | N is present
-0.2 N is principl | N is properti | N is provinc | N is purpos | N is quadroon | N is railwai | N is rank | N is ray
-0.2 N is reach | N is recess | N is red | N is reformer | N is regard | N is regiment | N is relation
-0.2 N is relativ | N is remainder | N is rent | N is reputation | N is respectabiliti | N is ribbon | N is rock
-0.2 N is root | N is row | N is rul | N is rumor | N is sail | N is sak | N is saloon | N is satisfaction
-0.2 N is savag | N is scienc | N is secret | N is seed | N is sensibiliti | N is sex | N is shawl | N is shed
-0.2 N is shower | N is shrin | N is sidewalk | N is silk | N is simpliciti | N is sit | N is snuff | N is soil
-0.2 N is spe | N is speci | N is spell | N is staircas | N is stamp | N is straw | N is strength | N is stroll
-0.2 N is student | N is styl | N is superstition | N is surfac | N is surgeon | N is swamp | N is sympathi
-0.2 N is talent | N is telegram | N is telescop | N is templ | N is tenderness | N is thank | N is thenc
-0.2 N is theori | N is thousand | N is thread | N is tid | N is tint | N is toe | N is tower | N is track
-0.2 N is trad | N is tradition | N is trai | N is trib | N is valu | N is vaniti | N is velvet | N is victim
-0.2 N is vin | N is waggoner | N is warrior | N is wash | N is weight | N is west | N is whit | N is wilderness
-0.2 N is win | N is wing | N is wit | N is workhous | N is writ | N is yesterdai | N is your | N length 1 | N on 're
-0.2 N on , | N on , as prep | N on ADP | N on VERB | N on _ | N on address | N on ago | N on ago as npadvmod
-0.2 N on amidst | N on amidst as pobj | N on amongst | N on amongst as pobj | N on approach as dobj | N on around
-0.2 N on around as pobj | N on arriv as npadvmod | N on attract | N on await | N on ball | N on bank | N on bar
-0.2 N on be as acomp | N on be as attr | N on becaus | N on becaus as pobj | N on becom as attr
-0.2 N on becom as nsubj | N on bestow | N on bestow as dobj | N on block | N on box | N on boy as compound
-0.2 N on brush | N on buy | N on buy as dobj | N on car as compound | N on chas | N on child | N on clear
-0.2 N on clutch | N on compos | N on concern | N on conduct | N on consider as dobj | N on consider as oprd
-0.2 N on continu | N on cut | N on dar | N on day | N on deriv | N on died as nsubj | N on doctor | N on dog
-0.2 N on dress | N on drink as dobj | N on enter as nsubj | N on escap as dobj | N on exercis | N on expect as dobj
-0.2 N on fear | N on fetch | N on fetch as dobj | N on fill as nsubj | N on float | N on fold | N on friend
-0.2 N on gat | N on gat as compound | N on gather | N on giv as dative | N on glow | N on go as dobj
-0.2 N on go as npadvmod | N on gown | N on grind | N on hall | N on hat as conj | N on haunt as dobj
-0.2 N on hav as npadvmod | N on he as conj | N on heart | N on heat | N on help | N on hold as nsubj | N on hom
-0.2 N on hour | N on hour as compound | N on imagin as dobj | N on impos | N on inherit as dobj | N on is as nsubj
-0.2 N on join as dobj | N on kill | N on land | N on later | N on later as npadvmod | N on laugh as nsubj
-0.2 N on lead as dobj | N on leav as nsubj | N on lie as nsubj | N on lif | N on lift as dobj | N on lin
-0.2 N on look as conj | N on look as dobj | N on look as npadvmod | N on lov as dobj | N on manner | N on men
-0.2 N on mother | N on nos | N on not as dobj | N on notic | N on notic as dobj | N on occupi as dobj | N on occur
-0.2 N on occur as nsubj | N on of | N on of as pobj | N on off | N on off as pobj | N on one as appos | N on opposit
-0.2 N on order as dobj | N on part | N on past as pobj | N on pay as dobj | N on perform | N on perform as dobj
-0.2 N on permit | N on permit as nsubj | N on pil | N on plac as dobj | N on prefer | N on prepar
-0.2 N on present as nsubj | N on preserv | N on produc as dobj | N on promis | N on promot as npadvmod | N on put
-0.2 N on rag | N on realiz | N on realiz as dobj | N on recogniz | N on red | N on refin | N on reflect | N on refus
-0.2 N on remov as dobj | N on render | N on repli as dobj | N on requir | N on requir as dobj
-0.2 N on reveal as nsubj | N on rid | N on round as nsubj | N on run as dobj | N on sav | N on sav as dobj
-0.2 N on school | N on seat | N on see as nsubjpass | N on sell as dobj | N on shoot | N on shrink | N on shut
-0.2 N on sing | N on slip | N on son | N on spend as dobj | N on spoil | N on stand as dobj | N on star as nsubj
-0.2 N on start as nsubj | N on stop as nsubj | N on stor | N on stor as compound | N on strok as dobj | N on struggl
-0.2 N on studi as dobj | N on surround | N on survei as dobj | N on tabl | N on tabl as compound | N on talk
-0.2 N on throughout | N on throughout as pobj | N on thrust | N on till | N on till as pobj | N on tim | N on town
-0.2 N on trip | N on turn | N on twist | N on under | N on under as pobj | N on until | N on until as pobj
-0.2 N on walk as nsubj | N on wav | N on wav as dobj | N on women | N on wood | N on work | N on youth
-0.2 N tenses True False | N tenses True True | N with an | N with father | N with his | N with judge | N with their
-0.2 N with todd | N with which | N with winnie | N with woman | V 0 above base False False False
-0.2 V 0 above both False True False | V 0 above s False False False | V 1 above part False True False
-0.2 V 1 above past False True False | V advmod before | V advmod clearly | V advmod how | V advmod less
-0.2 V advmod nevertheless | V advmod only | V advmod scarcely | V advmod there | V advmod too | V after a
-0.2 V after a DET | V after about | V after across | V after all | V after as | V after every | V after friends
-0.2 V after long | V after mrs | V after quietly | V after rather | V after ready | V after since | V after two
-0.2 V after who | V before  | V before , | V before a - | V before a ADV | V before a NOUN | V before carefully
-0.2 V before hardly | V before lay | V before one | V before since | V before then | V before two | V before women
-0.2 V before words | V before yet | V ends . | V form base as csubj | V form base as relcl
-0.2 V form base helped False as csubj | V form base helped False as dep | V form base helped True as relcl
-0.2 V form base helped True as xcomp | V form base spoken False | V form both helped False as pcomp
-0.2 V form part as ROOT | V form part as ccomp | V form part spoken False | V helper did form base | V is advanc
-0.2 V is advis | V is are | V is assert | V is avoid | V is conclud | V is crawl | V is drift | V is excit
-0.2 V is exist | V is find | V is float | V is gather | V is head | V is lay | V is let | V is look | V is pil
-0.2 V is prai | V is sacrific | V is search | V is wash | V is work | V is wound | V length 4 | V mark since
-0.2 V neg nt | V no subject form both as acomp | V no subject form past as ROOT | V object PROPN | V object advantag
-0.2 V object affection | V object field | V object knowledg | V object occasion | V object order | V object sort
-0.2 V object soul | V object thing | V object wish | V on " as prep | V on ADJ | V on am as advcl
-0.2 V on begin as ccomp | V on bring as conj | V on car as ROOT | V on carri as ROOT | V on caus as ROOT
-0.2 V on clos as conj | V on consider as ccomp | V on countri as relcl | V on dar as xcomp | V on day as relcl
-0.2 V on desir as acl | V on fact as acl | V on feel as ccomp | V on fly as conj | V on giv as ROOT
-0.2 V on glass as amod | V on grow as conj | V on has as conj | V on hav as ccomp | V on is as acomp
-0.2 V on is as xcomp | V on lay as conj | V on lean as conj | V on lie as conj | V on light as conj
-0.2 V on likeli as xcomp | V on listen as conj | V on look as ccomp | V on los as conj | V on lov as conj
-0.2 V on mak as ROOT | V on man as acl | V on men as relcl | V on ought as xcomp | V on permit as xcomp
-0.2 V on remark as ccomp | V on say as ccomp | V on see as advcl | V on send as advcl | V on sink as ROOT
-0.2 V on sit as conj | V on someth as relcl | V on spend as ROOT | V on start as ROOT | V on stop as ROOT
-0.2 V on suppos as xcomp | V on tell as ccomp | V on thing as relcl | V on tri as ROOT | V on upon as pcomp
-0.2 V on used as ROOT | V on ventur as xcomp | V on whisper as ROOT | V on wish as ROOT | V prt forth
-0.2 V simply blow | V simply com | V simply connect | V simply crowd | V simply fight | V simply fix | V simply head
-0.2 V simply mark | V simply pil | V simply remember | V simply see | V simply sell | V simply stretch
-0.2 V simply watch | V subject ADJ False form base | V subject ADJ False form past | V subject NOUN False form ing
-0.2 V subject NOUN True form s | V subject NUM False form base | V subject VERB False form both | V subject me
-0.2 V subject nothing form both | V subject there | V subject there form base | V subject whatever
-0.2 V subject which form s | V subject with that | V subject with those | V subject you | V subject you form both
-0.2 V takes dobj | V takes except | V takes for | V takes from | V takes outside | V takes over
-0.1 A 0 above base False False False | A 0 above past False False True | A 1 above base False False True
-0.1 A 1 above base True False True | A 1 above both False True False | A 1 above ing False True False
-0.1 A 1 above past True False False | A 1 above s True False False | A after ' | A after ) | A after ,
-0.1 A after a CCONJ | A after a DET | A after a PUNCT | A after against | A after air | A after an | A after and
-0.1 A after aspect | A after being | A after black | A after boy | A after brown | A after child | A after cotter
-0.1 A after country | A after day | A after deal | A after english | A after family | A after girl | A after good
-0.1 A after green | A after had | A after hand | A after heart | A after house | A after is | A after lady
-0.1 A after life | A after light | A after manner | A after mind | A after miss | A after month | A after more
-0.1 A after morning | A after mother | A after night | A after old | A after people | A after place | A after right
-0.1 A after roses | A after the | A after they | A after things | A after to | A after water | A after way
-0.1 A after will | A after years | A after young | A after — | A before 're | A before ; | A before a ADV
-0.1 A before a AUX | A before about | A before also | A before another | A before far | A before from
-0.1 A before good | A before great | A before however | A before if | A before is | A before long | A before make
-0.1 A before making | A before me | A before nearly | A before nothing | A before on | A before only
-0.1 A before other | A before own | A before peculiarly | A before remained | A before said | A before seem
-0.1 A before singularly | A before slightly | A before something | A before somewhat | A before such | A before than
-0.1 A before them | A before though | A before three | A before us | A before what | A before where
-0.1 A before wholly | A before whose | A before yet | A before ‘ | A is acut | A is amiabl | A is ancient
-0.1 A is awful | A is bitter | A is blind | A is bloodi | A is brief | A is british | A is broad | A is calm
-0.1 A is capabl | A is careful | A is charm | A is cheerful | A is civil | A is clever | A is common
-0.1 A is considerabl | A is cross | A is cruel | A is curli | A is daili | A is dangerou | A is dark | A is deep
-0.1 A is deeper | A is delightful | A is desirabl | A is devot | A is different | A is dirti | A is disagreeabl
-0.1 A is distant | A is doubl | A is dreadful | A is eager | A is empti | A is english | A is enormou | A is equal
-0.1 A is excellent | A is faint | A is favourit | A is foolish | A is former | A is fortunat | A is fresh
-0.1 A is frighten | A is funni | A is gay | A is general | A is generou | A is german | A is ghastli | A is greater
-0.1 A is grei | A is hair | A is happier | A is hollow | A is hug | A is humbl | A is identical | A is idl
-0.1 A is important | A is indian | A is intelligent | A is intimat | A is kind | A is latter | A is less
-0.1 A is light | A is lik | A is lofti | A is loos | A is loveli | A is lower | A is lucki | A is magnificent
-0.1 A is mean | A is mer | A is mighti | A is miserabl | A is modern | A is muddi | A is mysteriou | A is narrow
-0.1 A is nativ | A is neat | A is obviou | A is occasional | A is ordinari | A is past | A is peculiar
-0.1 A is perfect | A is personal | A is plain | A is political | A is powerful | A is preciou | A is pretti
-0.1 A is privat | A is probabl | A is public | A is rar | A is regular | A is remarkabl | A is remot | A is rough
-0.1 A is rud | A is satisfi | A is scarc | A is scarlet | A is simpl | A is singl | A is slim | A is slow
-0.1 A is smaller | A is smooth | A is southern | A is steadi | A is steep | A is stiff | A is stout
-0.1 A is successful | A is sudden | A is sufficient | A is superior | A is third | A is tight | A is timid
-0.1 A is unknown | A is upper | A is useful | A is usual | A is valuabl | A is variou | A is vivid | A is vulgar
-0.1 A is wis | A is worst | A is worth | A is worthi | A is wretch | A is youngest | A on , | A on , as prep
-0.1 A on PUNCT | A on SCONJ | A on age | A on age as amod | A on air | A on air as amod | A on anyth | A on be
-0.1 A on be as acomp | A on be as advmod | A on bear | A on bid | A on black | A on black as conj | A on blow
-0.1 A on breath | A on brown | A on by | A on call | A on car | A on centuri | A on centuri as amod | A on chap
-0.1 A on character | A on character as amod | A on cheek | A on cheek as amod | A on child | A on child as amod
-0.1 A on children | A on children as amod | A on cloth | A on color | A on com as acomp | A on consider
-0.1 A on cotter | A on cotter as amod | A on countri | A on creatur | A on creatur as amod | A on cri | A on cut
-0.1 A on dark | A on daughter | A on daughter as amod | A on deal | A on deal as amod | A on do | A on do as dobj
-0.1 A on dog | A on dream | A on dress | A on dress as amod | A on end | A on end as amod | A on even
-0.1 A on even as amod | A on famili | A on famili as amod | A on father | A on father as amod | A on fellow
-0.1 A on fellow as amod | A on figur | A on figur as amod | A on fir | A on for as pobj | A on forc
-0.1 A on forc as amod | A on from | A on from as pobj | A on gentl | A on glanc | A on glanc as amod | A on going
-0.1 A on good | A on green | A on hat | A on hat as amod | A on hav as dobj | A on hav as nsubj | A on head
-0.1 A on head as amod | A on hors | A on hors as amod | A on hour | A on hour as amod | A on in as amod | A on kind
-0.1 A on know as advmod | A on let | A on lif | A on lif as amod | A on light | A on light as amod | A on lik
-0.1 A on lin | A on lin as amod | A on lip | A on lip as amod | A on liv | A on mak as oprd | A on manner
-0.1 A on manner as amod | A on margaret | A on mind as amod | A on moment | A on moment as amod | A on month as amod
-0.1 A on mor | A on morn | A on morn as amod | A on mother | A on mother as amod | A on music | A on music as amod
-0.1 A on mysteriou | A on mysteriou as conj | A on nam | A on nam as amod | A on natur | A on natur as amod
-0.1 A on nos | A on nos as amod | A on not | A on noth | A on old | A on old as conj | A on on | A on on as pobj
-0.1 A on open | A on peopl | A on peopl as amod | A on person | A on person as amod | A on reason
-0.1 A on reason as amod | A on red | A on red as conj | A on regard | A on right | A on ros | A on say as nsubj
-0.1 A on see as dobj | A on sho | A on sho as amod | A on small | A on small as conj | A on sound | A on speak
-0.1 A on stand | A on step | A on step as amod | A on stori | A on stori as amod | A on strang | A on talk
-0.1 A on tall | A on tall as conj | A on tell | A on than | A on than as amod | A on think as ccomp | A on town
-0.1 A on town as amod | A on water | A on water as amod | A on week | A on week as amod | A on whistl | A on whit
-0.1 A on window | A on word | A on word as amod | A on work | A on work as amod | A on young | A on young as conj
-0.1 A with an | A with any | A with its | A with my | A with no | A with that | N 0 above base False True True
-0.1 N 0 above both False False True | N 0 above both False True False | N 0 above ing True False False
-0.1 N 0 above past False True True | N 1 above both True False True | N 1 above past False False False | N after
-0.1 N after ' | N after a ADP | N after a ADV | N after after | N after again | N after among | N after an
-0.1 N after another | N after away | N after behind | N after bent | N after box | N after boy | N after but
-0.1 N after changed | N after country | N after day | N after do | N after does | N after door | N after er
-0.1 N after ever | N after felt | N after get | N after go | N after her | N after himself | N after his
-0.1 N after home | N after house | N after instead | N after late | N after life | N after lived | N after long
-0.1 N after man | N after men | N after my | N after never | N after o | N after old | N after open | N after opened
-0.1 N after opposite | N after put | N after remained | N after room | N after said | N after saw
-0.1 N after sometimes | N after stopped | N after store | N after table | N after there | N after three
-0.1 N after used | N after were | N after when | N after whom | N before ? | N before a PART | N before adjacent
-0.1 N before advertising | N before after | N before amiable | N before among | N before are | N before arizona
-0.1 N before avonlea | N before be | N before because | N before brief | N before british | N before busy
-0.1 N before called | N before coloured | N before comfortable | N before considerable | N before do
-0.1 N before domestic | N before drug | N before dry | N before dutch | N before eight | N before either
-0.1 N before eyed | N before fifteen | N before found | N before fresh | N before future | N before garden
-0.1 N before gave | N before great | N before greater | N before higher | N before how | N before hundred
-0.1 N before if | N before in | N before intimate | N before is | N before laid | N before later | N before less
-0.1 N before little | N before male | N before many | N before married | N before medical | N before muddy
-0.1 N before nine | N before noble | N before not | N before ordinary | N before orphan | N before parish
-0.1 N before past | N before railway | N before remarkable | N before seafaring | N before secret | N before see
-0.1 N before seven | N before so | N before southern | N before steady | N before surrounding | N before that
-0.1 N before thirteen | N before thirty | N before through | N before to | N before unknown | N before vacant
-0.1 N before vast | N before village | N before where | N before winter | N before wonderful | N before younger
-0.1 N before your | N before — | N is advertis | N is angel | N is appellation | N is application | N is asylum
-0.1 N is birch | N is black | N is blessing | N is centr | N is chap | N is chief | N is churchyard | N is coach
-0.1 N is coast | N is cock | N is commander | N is complexion | N is connection | N is content | N is contrari
-0.1 N is cotton | N is counter | N is cow | N is delicaci | N is descendant | N is despair | N is din | N is disguis
-0.1 N is distinction | N is district | N is drug | N is east | N is end | N is entertainment | N is envelop
-0.1 N is establishment | N is fam | N is fat | N is fight | N is forc | N is friendship | N is frontier | N is geniu
-0.1 N is handl | N is harm | N is heaven | N is hitherto | N is honor | N is horn | N is horseback | N is incom
-0.1 N is infanci | N is inn | N is institution | N is jewel | N is job | N is judg | N is keeper | N is key
-0.1 N is knif | N is knight | N is lantern | N is lawyer | N is level | N is lodg | N is lodger | N is luck
-0.1 N is magistrat | N is mamma | N is mankind | N is march | N is margin | N is merit | N is midst | N is model
-0.1 N is mood | N is morrow | N is mourn | N is needl | N is negro | N is neighbor | N is nonsens | N is novel
-0.1 N is observer | N is owner | N is painter | N is parlor | N is pastur | N is peasant | N is pit | N is plenti
-0.1 N is poetri | N is politician | N is possibiliti | N is power | N is practitioner | N is profession
-0.1 N is propensiti | N is purs | N is quaint | N is rat | N is record | N is religion | N is remembranc
-0.1 N is remnant | N is rug | N is ruin | N is saddl | N is second | N is sheep | N is shilling | N is silver
-0.1 N is spruc | N is stock | N is stov | N is suitor | N is sun | N is sweetness | N is tal | N is teacher
-0.1 N is tender | N is threshold | N is trader | N is tun | N is vengeanc | N is vic | N is voyag | N is wait
-0.1 N is wealth | N is wheel | N is wig | N is witch | N is wizard | N is yeh | N length 2 | N length 4 | N on 'm
-0.1 N on 'm as attr | N on 're as attr | N on 's as nsubj | N on 've | N on 've as dobj | N on _ as compound
-0.1 N on admit | N on afford | N on afford as dobj | N on after as npadvmod | N on afternoon | N on against
-0.1 N on against as pobj | N on air | N on am | N on am as attr | N on answer as dobj | N on asylum
-0.1 N on asylum as compound | N on aunt | N on aunt as conj | N on bag | N on be | N on bear | N on beard
-0.1 N on beauti | N on bed | N on bed as compound | N on befor as npadvmod | N on beg | N on believ | N on below
-0.1 N on bend | N on bird | N on black | N on board | N on bodi | N on bodi as conj | N on book as compound
-0.1 N on book as conj | N on bottl | N on bowl | N on box as compound | N on brother | N on build as dobj
-0.1 N on business | N on chair | N on chair as compound | N on chapter | N on characteriz | N on cheek | N on clerk
-0.1 N on cloth | N on coat | N on coat as compound | N on collar | N on com as nsubj | N on compani
-0.1 N on companion | N on confin | N on corner | N on cottag | N on countri as compound | N on cross as dobj
-0.1 N on cry | N on cup | N on day as compound | N on dear | N on deed | N on depart | N on deriv as dobj
-0.1 N on devot | N on dog as compound | N on doing | N on doing as dobj | N on door | N on door as compound
-0.1 N on eat as dobj | N on eat as nsubj | N on end as appos | N on examin | N on exclaim | N on exhibit
-0.1 N on eye as compound | N on eye as conj | N on fac as poss | N on famili | N on father as appos
-0.1 N on father as conj | N on fear as dobj | N on featur | N on field | N on figur | N on fill as dobj | N on folk
-0.1 N on friend as conj | N on furnish | N on gain | N on gain as dobj | N on garden | N on get as npadvmod
-0.1 N on girl as ROOT | N on girl as appos | N on girl as compound | N on glass | N on go as nsubjpass
-0.1 N on gown as compound | N on green | N on grind as compound | N on hair as compound | N on hand as conj
-0.1 N on has as nsubj | N on hat as compound | N on histori | N on hold as nsubjpass | N on husband
-0.1 N on i as appos | N on i as compound | N on interest | N on is as conj | N on keep | N on keeper
-0.1 N on kill as dobj | N on know as npadvmod | N on know as nsubj | N on know as nsubjpass | N on ladi | N on learn
-0.1 N on learn as dobj | N on less | N on letter | N on lie as dobj | N on lif as compound | N on lik as npadvmod
-0.1 N on lin as compound | N on liv as npadvmod | N on liv as nsubj | N on long | N on look as nsubj
-0.1 N on los as nsubj | N on lov as conj | N on mak as npadvmod | N on mak as nsubj | N on man as appos
-0.1 N on man as conj | N on mark as dobj | N on marri as dobj | N on marri as nsubj | N on mat | N on meet as nsubj
-0.1 N on men as compound | N on men as conj | N on mill | N on mill as compound | N on monei | N on mother as conj
-0.1 N on mouth | N on natur | N on nos as conj | N on not as compound | N on noth | N on nurs | N on observ
-0.1 N on old | N on old as npadvmod | N on open as nsubj | N on out | N on over | N on pass as dobj
-0.1 N on pass as npadvmod | N on peac | N on peopl | N on pin | N on pit | N on pit as compound
-0.1 N on plac as compound | N on plac as nsubjpass | N on plat | N on pluck | N on pot | N on pot as compound
-0.1 N on pound | N on practitioner | N on prefer as dobj | N on press | N on press as dobj | N on print
-0.1 N on promis as dobj | N on pull as nsubj | N on push | N on put as nsubj | N on put as nsubjpass | N on rank
-0.1 N on reach as nsubj | N on refus as dobj | N on respect | N on rid as nsubj | N on roll | N on run
-0.1 N on say as ccomp | N on say as dep | N on say as npadvmod | N on search | N on seat as compound | N on see
-0.1 N on see as npadvmod | N on serv as dobj | N on settl | N on shad | N on ship | N on shut as dobj | N on sid
-0.1 N on sid as compound | N on skin | N on sleev | N on sleev as compound | N on soldier | N on stand
-0.1 N on station | N on stick | N on ston | N on suit | N on surround as dobj | N on sweep as dobj | N on t
-0.1 N on t as nmod | N on tak as npadvmod | N on than | N on than as pobj | N on thank | N on thing
-0.1 N on think as ccomp | N on think as dobj | N on think as npadvmod | N on think as nsubj | N on thousand
-0.1 N on through | N on through as pobj | N on to | N on toward | N on toward as pobj | N on trai
-0.1 N on understand as dobj | N on vanish | N on vanish as nsubj | N on visit as dobj | N on volum
-0.1 N on wait as npadvmod | N on walk as dobj | N on wash as dobj | N on water | N on water as compound | N on way
-0.1 N on wear as nsubj | N on weed | N on wheel | N on wheel as compound | N on wif | N on wif as conj | N on window
-0.1 N on window as compound | N on woman | N on women as compound | N on women as conj | N on word | N on yard
-0.1 N on year | N on year as conj | N on yo | N on yo as appos | N on youth as appos | N with either | N with her
-0.1 N with my | N with our | N with what | V 0 above base False False True | V 0 above part True False False
-0.1 V 1 above both False False False | V 1 above ing False False False | V 1 above ing False True False
-0.1 V 1 above part True False False | V advmod abroad | V advmod aloud | V advmod anywhere | V advmod carefully
-0.1 V advmod early | V advmod easily | V advmod either | V advmod entirely | V advmod in | V advmod lately
-0.1 V advmod once | V advmod quietly | V advmod round | V advmod swiftly | V advmod together | V after '
-0.1 V after 's | V after a AUX | V after a NUM | V after abroad | V after also | V after beside | V after business
-0.1 V after by | V after cold | V after everything | V after eyes | V after from | V after general | V after itself
-0.1 V after less | V after lord | V after other | V after our | V after she | V after somebody | V after their
-0.1 V after them | V after themselves | V after under | V after until | V after what | V after worse
-0.1 V before a PRON | V before a PROPN | V before already | V before as | V before do | V before each | V before has
-0.1 V before her | V before here | V before its | V before lad | V before scarcely | V before some
-0.1 V before thing | V before to | V form base as advcl | V form base helped False as ccomp
-0.1 V form base helped False as relcl | V form base helped True as parataxis | V form base helped True as prep
-0.1 V form both as acl | V form both as pcomp | V form both as relcl | V form both helped False as acl
-0.1 V form both spoken True | V form ing as ccomp | V form ing as pobj | V form ing as prep
-0.1 V form ing helped False as pobj | V form ing helped False as prep | V form ing spoken True
-0.1 V form part helped False as acl | V form part helped False as advcl | V form part helped True as conj
-0.1 V form part helped True as pcomp | V form past as ROOT | V form past helped False as ccomp
-0.1 V form past spoken True | V helper 're form base | V helper am form base | V helper are form base
-0.1 V helper are form ing | V helper been form base | V helper can form both | V helper could form base
-0.1 V helper has form both | V helper is form base | V helper to form both | V helper were form part | V is ai
-0.1 V is appear | V is arrang | V is bow | V is conduct | V is crack | V is engag | V is finish | V is forget
-0.1 V is greet | V is hunt | V is lean | V is maintain | V is pass | V is plai | V is preserv | V is project
-0.1 V is propos | V is receiv | V is recogniz | V is scatter | V is sell | V is steal | V is strok | V is tast
-0.1 V is train | V is tread | V is use | V is wander | V length 3 | V mark once | V mark until
-0.1 V no subject form both as relcl | V no subject form ing as amod | V no subject form ing as prep
-0.1 V object answer | V object box | V object chang | V object corner | V object dream | V object eye
-0.1 V object fact | V object fun | V object girl | V object good | V object hous | V object mark | V object music
-0.1 V object offic | V object plan | V object position | V object spirit | V object town | V object turn
-0.1 V object view | V on 's as advcl | V on PROPN | V on VERB | V on afraid as ccomp | V on anyth as relcl
-0.1 V on appear as conj | V on approach as ROOT | V on are as ROOT | V on are as xcomp | V on arriv as ROOT
-0.1 V on becom as ROOT | V on becom as ccomp | V on bow as ROOT | V on cri as ccomp | V on cross as conj
-0.1 V on died as conj | V on door as amod | V on enough as xcomp | V on enter as conj | V on feel as conj
-0.1 V on fill as advcl | V on giv as conj | V on go as ccomp | V on hang as ROOT | V on hop as ccomp
-0.1 V on hors as relcl | V on keep as ROOT | V on keep as conj | V on know as ccomp | V on know as xcomp
-0.1 V on leav as advcl | V on lie as advcl | V on lik as advcl | V on manner as relcl | V on monei as relcl
-0.1 V on mor as advcl | V on observ as ccomp | V on other as relcl | V on peopl as relcl | V on put as ROOT
-0.1 V on road as relcl | V on roll as ROOT | V on say as parataxis | V on seek as conj | V on seem as advcl
-0.1 V on seem as ccomp | V on seem as conj | V on send as ROOT | V on sufficient as xcomp | V on turn as ROOT
-0.1 V on want as ROOT | V on with as pcomp | V prt over | V simply bind | V simply break | V simply call
-0.1 V simply carri | V simply ceas | V simply command | V simply drink | V simply fad | V simply find
-0.1 V simply greet | V simply grow | V simply interrupt | V simply kill | V simply los | V simply order
-0.1 V simply part | V simply pay | V simply plac | V simply suggest | V subject ADJ False
-0.1 V subject NOUN False form past | V subject NOUN True form ing | V subject NUM False form s
-0.1 V subject PROPN False form base | V subject SCONJ False | V subject i form s | V subject it | V subject they
-0.1 V subject who | V subject who form ing | V subject with a | V subject with her | V subject with some
-0.1 V subject you form base | V takes against | V takes along | V takes down | V takes like | V takes near
0.1 A 1 above part False False False | A 1 above past False True False | A after a PRON | A after upon
0.1 A before a CCONJ | A before been | A before or | A before rather | A is afraid | A is apparent | A on VERB
0.1 A on in | N 0 above base False False True | N 0 above both False False False | N 1 above modal False False False
0.1 N 1 above past False True False | N after ) | N after : | N after also | N after beside | N after every
0.1 N after from | N after he | N after may | N after two | N after until | N after up | N after which | N before an
0.1 N before charming | N before eager | N before for | N before mighty | N before natural | N before own
0.1 N before red | N before strong | N before summer | N is bell | N is car | N is charg | N is cloud | N is command
0.1 N is cross | N is darkness | N is direction | N is plan | N is prid | N is watch | N on 's as attr
0.1 N on allow | N on amid | N on amid as pobj | N on answer | N on appear | N on be as nsubj | N on besid
0.1 N on besid as pobj | N on break as dobj | N on by | N on by as pobj | N on call as dobj | N on carri
0.1 N on cover | N on except | N on except as pobj | N on fall | N on fix | N on follow as nsubj
0.1 N on forget as dobj | N on has as dobj | N on hav as dobj | N on into | N on into as pobj | N on light
0.1 N on meet | N on mingl | N on quit | N on remain as nsubj | N on remember | N on ring | N on seem
0.1 N on seem as nsubj | N on shak as nsubj | N on show as dobj | N on tak | N on throw | N with wife
0.1 V 0 above both False False False | V 0 above past False True False | V 0 above s False True False | V advmod far
0.1 V advmod forth | V advmod good | V advmod suddenly | V advmod truly | V after , | V after ? | V after along
0.1 V after another | V after beth | V after forth | V after forward | V after half | V after hay | V after jo
0.1 V after myself | V after new | V after old | V after on | V after one | V after out | V after over
0.1 V after straight | V after there | V after tommy | V after too | V after whether | V after within
0.1 V after would | V after your | V after — | V before about | V before after | V before arms | V before could
0.1 V before faintly | V before father | V before finally | V before half | V before have | V before henry
0.1 V before is | V before it | V before lucilla | V before men | V before still | V before we | V ends !
0.1 V form both as advcl | V form both helped False as relcl | V form both helped False as xcomp
0.1 V form both spoken False | V form ing as acl | V form ing as compound | V form ing as conj | V form ing as nsubj
0.1 V form ing as pcomp | V form ing as relcl | V form ing helped False as compound
0.1 V form ing helped False as nsubj | V form ing helped False as pcomp | V form part as acl | V form part as conj
0.1 V form part as xcomp | V form part helped True as advcl | V form part helped True as xcomp
0.1 V form past helped False as ROOT | V form s as pobj | V form s helped False as pobj | V habit False
0.1 V helper 'm form ing | V helper can form base | V helper have form base | V helper is form part
0.1 V helper must form base | V helper was form both | V helper was form ing | V is adjust | V is amus | V is arriv
0.1 V is danc | V is determin | V is drag | V is enter | V is exhibit | V is hir | V is indicat | V is indulg
0.1 V is inherit | V is judg | V is los | V is mark | V is meet | V is quit | V is rain | V is reach | V is rush
0.1 V is shoot | V is show | V is sink | V is stretch | V is sweep | V is talk | V is toss | V is touch | V is urg
0.1 V length 1 | V mark while | V no subject form both as ROOT | V no subject form both as acl
0.1 V no subject form ing as compound | V no subject form ing as conj | V no subject form part as xcomp
0.1 V no subject form s as pobj | V object appointment | V object basket | V object bodi | V object book
0.1 V object breath | V object countri | V object dinner | V object dish | V object door | V object doubt
0.1 V object heart | V object idea | V object lif | V object notic | V object parti | V object power
0.1 V object right | V object ship | V object sound | V object tabl | V object window | V on 's as ccomp
0.1 V on about as pcomp | V on be as parataxis | V on buy as conj | V on com as advcl | V on com as conj
0.1 V on cover as ROOT | V on creatur as relcl | V on cri as advcl | V on decid as ROOT | V on descend as conj
0.1 V on eat as ROOT | V on expect as ROOT | V on forc as xcomp | V on giv as ccomp | V on going as conj
0.1 V on hang as advcl | V on hunt as conj | V on is as conj | V on is as parataxis | V on let as conj
0.1 V on long as conj | V on marri as ROOT | V on one as acl | V on pass as advcl | V on set as conj
0.1 V on shak as ROOT | V on shak as conj | V on sit as advcl | V on stop as xcomp | V on suppos as ccomp
0.1 V on sweep as ROOT | V on understand as ROOT | V on understand as ccomp | V on walk as ROOT | V on watch as ROOT
0.1 V prt on | V prt through | V simply address | V simply amus | V simply awaken | V simply commenc
0.1 V simply continu | V simply crack | V simply do | V simply engag | V simply enjoi | V simply follow
0.1 V simply jump | V simply offer | V simply produc | V simply remark | V simply retir | V simply return
0.1 V simply ris | V simply show | V simply talk | V subject ADV False form both | V subject NOUN False form both
0.1 V subject he form base | V subject his | V subject i form ing | V subject it form past | V subject she form base
0.1 V subject she form part | V subject that form ing | V subject with - | V subject with all | V takes amid
0.1 V takes ccomp | V takes of | V takes on | V takes to | V takes with
0.2 A 0 above both False False False | A 1 above part True False False | A after  | A after a PART | A after a SCONJ
0.2 A after for | A after here | A after you | A before " | A before and | A before too | A before — | A is happi
0.2 A is quick | A is soft | A on am | A on at | A on fac | A on stand as advcl | A on to | A on to as pobj
0.2 N 0 above part False False False | N 0 above past False False False | N 1 above past True False False
0.2 N 1 above s True False False | N after a PROPN | N after against | N after became | N after followed
0.2 N after more | N after near | N after she | N after since | N after to | N after too | N after towards
0.2 N after you | N before 's | N before , | N before delicate | N before dim | N before excellent | N before late
0.2 N before made | N before much | N before queer | N before second | N before shadowy | N before sweet
0.2 N before terrible | N is claim | N is consequenc | N is counsel | N is gloom | N is intention | N is opportuniti
0.2 N is point | N is rest | N is sentiment | N is set | N is silenc | N is situation | N is tast
0.2 N on ad as dobj | N on begin as nsubj | N on bend as dobj | N on between | N on between as pobj | N on breath
0.2 N on car | N on carri as nsubj | N on caus as nsubj | N on creep | N on creep as nsubj | N on develop
0.2 N on draw | N on drop as nsubj | N on end | N on experienc as dobj | N on explain | N on fly | N on go as nsubj
0.2 N on happen as nsubj | N on induc | N on induc as nsubj | N on laugh | N on neglect | N on pinch | N on plai
0.2 N on prompt | N on prompt as nsubj | N on quit as dobj | N on rais as dobj | N on round as dobj
0.2 N on run as nsubj | N on say as dobj | N on seek | N on set | N on smil | N on start | N on stretch
0.2 N on stretch as dobj | N on stretch as nsubj | N on suppos | N on tak as dobj | N on tak as nsubj
0.2 N on throw as dobj | N on wip | N on wip as dobj | N on with | N on with as pobj | N with a | N with mother
0.2 N with this | V 0 above base True False True | V 0 above base True True False | V 0 above ing False False False
0.2 V 0 above modal False False False | V 1 above both True True False | V advmod ago | V advmod apart
0.2 V advmod deftly | V advmod finally | V advmod home | V advmod next | V advmod presently | V advmod rather
0.2 V advmod so | V advmod up | V advmod when | V advmod wholly | V after above | V after among | V after aside
0.2 V after because | V after early | V after five | V after hands | V after her | V after perfectly | V after that
0.2 V before a ADJ | V before also | V before both | V before buck | V before dante | V before door
0.2 V before edith | V before himself | V before must | V before my | V before only | V before robert
0.2 V before were | V form base helped False as acl | V form base helped True as advcl | V form both as conj
0.2 V form both as dep | V form both helped False as advcl | V form both helped True as pcomp | V form ing as ROOT
0.2 V form ing helped False as acl | V form ing helped False as conj | V form ing helped True as ROOT
0.2 V form part as acomp | V form part helped False as ROOT | V form part helped False as acomp
0.2 V form part helped False as ccomp | V form part helped False as conj | V form part helped True as acl
0.2 V form part spoken True | V helper am form ing | V helper having form part | V helper was form base
0.2 V helper was form part | V is awaken | V is breath | V is ceas | V is continu | V is cross | V is explain
0.2 V is fasten | V is fetch | V is forc | V is interrupt | V is kiss | V is mix | V is paint | V is part | V is pat
0.2 V is peep | V is prompt | V is run | V is send | V is shrink | V is spread | V is threaten | V is toil
0.2 V is trot | V is wast | V is welcom | V mark till | V no subject form base as pcomp
0.2 V no subject form both as dep | V no subject form part as acl | V no subject form part as acomp
0.2 V no subject form part as advcl | V no subject form s as ROOT | V no subject form s as ccomp | V object PRON
0.2 V object belt | V object daughter | V object ear | V object gat | V object hair | V object land | V object light
0.2 V object paper | V object ring | V object shoulder | V on bear as ROOT | V on begin as conj
0.2 V on being as conj | V on break as conj | V on bring as advcl | V on died as ROOT | V on exclaim as ROOT
0.2 V on explain as ccomp | V on eye as amod | V on forget as ROOT | V on form as ROOT | V on go as xcomp
0.2 V on hesitat as ROOT | V on hid as ROOT | V on is as csubj | V on keep as advcl | V on kind as relcl
0.2 V on mak as advcl | V on mak as conj | V on open as conj | V on paus as ROOT | V on put as advcl
0.2 V on put as conj | V on read as ROOT | V on remember as ccomp | V on set as advcl | V on slip as ROOT
0.2 V on sort as relcl | V on speak as ROOT | V on stai as conj | V on strik as ROOT | V on tak as advcl
0.2 V on tak as conj | V on throw as ROOT | V on tri as conj | V prt up | V simply announc | V simply clos
0.2 V simply express | V simply fasten | V simply light | V simply mean | V simply rais | V simply remind
0.2 V simply sing | V simply start | V simply step | V simply trembl | V subject NOUN True form past
0.2 V subject NUM False form past | V subject PROPN False form s | V subject he | V subject he form past
0.2 V subject him form ing | V subject himself | V subject it form s | V subject my | V subject she
0.2 V subject she form both | V subject she form ing | V subject she form s | V subject we
0.2 V subject which form both | V takes after | V takes agent | V takes at | V takes during | V takes into
0.2 V takes under
0.3 A 0 above ing False False False | A before become | A before bit | A before much | A before so | A is fair
0.3 A is familiar | A is hard | A is mad | A is silent | A is warm | A on am as acomp | A on fac as amod | A on mak
0.3 A on with as pobj | A with a | N 1 above both False True False | N after ( | N after a SCONJ | N after by
0.3 N after called | N after just | N after once | N after only | N after still | N after threw | N after through
0.3 N after told | N before _ | N before a ADV | N before actual | N before bad | N before bright | N before but
0.3 N before dozen | N before hard | N before huge | N before interesting | N before light | N before like
0.3 N before making | N before misty | N before next | N before proper | N before public | N before thin
0.3 N is curiositi | N is doubt | N is eas | N is fever | N is flood | N is glar | N is gleam | N is lustr
0.3 N is plai | N is tea | N on PUNCT | N on appear as nsubj | N on art | N on ask | N on break | N on call as nsubj
0.3 N on discover as dobj | N on do as dobj | N on drag | N on fad | N on fight | N on fight as dobj | N on forget
0.3 N on hid as dobj | N on increas | N on increas as dobj | N on keep as dobj | N on leav as dobj | N on maintain
0.3 N on maintain as dobj | N on night as compound | N on pass | N on possess | N on remark
0.3 N on remember as dobj | N on silenc | N on strik | N on sweep | N on tell as nsubj | N on up | N on urg
0.3 N with brother | N with doctor | V 0 above both True True False | V advmod alone | V advmod around
0.3 V advmod briskly | V advmod even | V advmod harder | V advmod immediately | V advmod now | V advmod obviously
0.3 V advmod out | V advmod particularly | V advmod somehow | V advmod somewhere | V advmod through | V advmod why
0.3 V after ! | V after each | V after first | V after for | V after it | V after just | V after little | V after mr
0.3 V after this | V after when | V after you | V before : | V before and | V before being | V before came
0.3 V before children | V before day | V before emma | V before first | V before marjoribanks | V before most
0.3 V before originally | V before people | V before story | V before the | V before well | V before went
0.3 V before wife | V before wind | V form base helped True as pcomp | V form both as ROOT | V form ing as advcl
0.3 V form ing as csubj | V form ing as xcomp | V form ing helped False as ROOT | V form ing helped False as advcl
0.3 V form ing helped False as ccomp | V form ing helped False as csubj | V form ing helped True as relcl
0.3 V form ing spoken False | V form past as conj | V form past as pcomp | V form past helped False as conj
0.3 V form past helped False as pcomp | V helper 's form both | V helper been form both | V helper been form ing
0.3 V helper had form ing | V helper has form part | V is advertis | V is attack | V is bless | V is blow
0.3 V is burst | V is buy | V is call | V is din | V is discover | V is enjoi | V is frighten | V is gallop
0.3 V is goe | V is going | V is hand | V is hold | V is hurri | V is lower | V is notic | V is own | V is pack
0.3 V is pick | V is prefer | V is promis | V is pull | V is rais | V is read | V is repos | V is retir
0.3 V is return | V is roll | V is shin | V is sound | V is speak | V is stir | V is strik | V is swear | V is weep
0.3 V length 0 | V no subject form both as ccomp | V no subject form ing as csubj | V no subject form ing as xcomp
0.3 V object SCONJ | V object aspect | V object glass | V object lamp | V object leg | V object man
0.3 V object truth | V on all as relcl | V on answer as ROOT | V on answer as ccomp | V on ask as advcl
0.3 V on at as pcomp | V on be as ccomp | V on bid as xcomp | V on by as pcomp | V on com as ccomp | V on do as conj
0.3 V on explain as ROOT | V on grow as ROOT | V on hold as ROOT | V on hold as advcl | V on inquir as ROOT
0.3 V on leav as xcomp | V on light as ROOT | V on mean as ROOT | V on meet as ROOT | V on on as pcomp
0.3 V on pick as ROOT | V on reach as conj | V on return as conj | V on ris as advcl | V on run as advcl
0.3 V on settl as ROOT | V on stai as ROOT | V on stand as advcl | V on tak as xcomp | V on talk as ROOT
0.3 V on thing as acl | V prt by | V simply arriv | V simply breath | V simply danc | V simply drop | V simply eat
0.3 V simply establish | V simply fly | V simply gaz | V simply lead | V simply leav | V simply listen
0.3 V simply notic | V simply sink | V simply star | V simply stop | V simply throw | V simply understand
0.3 V simply vanish | V simply want | V simply wonder | V subject NOUN False form base | V subject everyone
0.3 V subject everyone form both | V subject he form both | V subject her | V subject i form past
0.3 V subject it form base | V subject there form s | V subject we form past | V subject with the | V takes advcl
0.3 V takes around | V takes behind | V takes till
0.4 A 0 above part False False False | A after : | A after a ADV | A after a NUM | A after now | A after or
0.4 A after she | A after that | A after when | A before 'm | A before a PROPN | A before feel | A before fell
0.4 A before grow | A before highly | A before little | A is awar | A is invisibl | A is sick | A is tiresom
0.4 A on 'm as acomp | A on at as pobj | A on be as conj | A on fall as acomp | A on in as pobj | N after night
0.4 N after not | N after shook | N after so | N after soon | N after they | N before ! | N before "
0.4 N before business | N before fearful | N before firm | N before general | N before gentle | N before half
0.4 N before happy | N before him | N before morning | N before occasional | N before original | N before private
0.4 N before real | N before serious | N is appearanc | N is bow | N is call | N is circumstanc | N is deed
0.4 N is desir | N is disappointment | N is effort | N is illness | N is indifferenc | N is mischief | N is notion
0.4 N is pool | N is sal | N is sentenc | N is solitud | N is song | N is step | N is vision | N is voic
0.4 N on accept | N on accept as dobj | N on affect | N on arm as conj | N on beat | N on befor
0.4 N on being as nsubj | N on break as nsubj | N on catch | N on effect | N on fac as dobj | N on fad as nsubj
0.4 N on fall as nsubj | N on feel as dobj | N on fir | N on fog as conj | N on going | N on let | N on mak as ccomp
0.4 N on meet as dobj | N on nam | N on observ as dobj | N on obtain | N on obtain as dobj | N on pick
0.4 N on prevent as dobj | N on report | N on shoulder | N on step | N on succeed | N on turn as nsubj
0.4 N on urg as dobj | N with man | V 0 above past False False False | V 1 above part False False False
0.4 V advmod abruptly | V advmod actually | V advmod faintly | V advmod fast | V advmod forward | V advmod neatly
0.4 V advmod open | V advmod quickly | V advmod slowly | V advmod softly | V advmod thus | V advmod where
0.4 V after " | V after _ | V after around | V after close | V after dick | V after good | V after herself
0.4 V after home | V after off | V after the | V after those | V after three | V after through | V after up
0.4 V before alexandra | V before am | V before been | V before captain | V before easily | V before fire
0.4 V before guide | V before had | V before hair | V before he | V before merely | V before now | V before rachel
0.4 V before rather | V before slowly | V before son | V before thoughts | V before tuppence | V before when
0.4 V before you | V before youth | V form both as acomp | V form both as parataxis
0.4 V form both helped False as ROOT | V form both helped False as dep | V form part as relcl
0.4 V form part helped True as relcl | V helper had form both | V is act | V is animat | V is announc
0.4 V is approach | V is awak | V is bend | V is clear | V is complet | V is consent | V is decid | V is depart
0.4 V is drink | V is earn | V is examin | V is flutter | V is fly | V is fold | V is light | V is obtain
0.4 V is produc | V is puzzl | V is regard | V is ring | V is ruin | V is seat | V is settl | V is shav | V is shut
0.4 V is stick | V is suggest | V is try | V is watch | V no subject form ing as advcl
0.4 V no subject form part as ROOT | V object VERB | V object charg | V object cigarett | V object feet
0.4 V object hom | V object mass | V object match | V object one | V object room | V object veil | V object visit
0.4 V object voic | V on ask as ccomp | V on befor as pcomp | V on bring as ROOT | V on catch as advcl
0.4 V on do as ccomp | V on eat as conj | V on find as conj | V on get as conj | V on get as xcomp
0.4 V on hand as relcl | V on happen as ccomp | V on help as xcomp | V on in as pcomp | V on laugh as conj
0.4 V on mak as ccomp | V on much as relcl | V on murmur as ROOT | V on order as conj | V on plai as ROOT
0.4 V on point as ROOT | V on remov as ROOT | V on ris as ROOT | V on say as ROOT | V on see as ROOT
0.4 V on see as xcomp | V on send as conj | V on sing as ROOT | V on spring as advcl | V on steal as conj
0.4 V on step as ROOT | V on tell as ROOT | V on throw as conj | V on walk as advcl | V on walk as conj
0.4 V on watch as advcl | V simply animat | V simply cover | V simply cross | V simply enter | V simply fold
0.4 V simply get | V simply hunt | V simply lean | V simply look | V simply mount | V simply murmur | V simply point
0.4 V simply reflect | V simply regard | V simply scatter | V simply speak | V simply strik | V simply wait
0.4 V simply walk | V subject PROPN False form both | V subject PROPN False form part | V subject he form part
0.4 V subject i | V subject i form base | V subject i form both | V subject nobody form both
0.4 V subject she form past | V subject that form both | V subject them | V subject they form ing | V subject this
0.4 V subject who form past | V subject with my | V subject with our | V takes out | V takes through | V takes until
0.5 A after because | A after so | A after with | A before ! | A before particularly | A is comfortabl | A is dead
0.5 A is excit | A is pleas | A is readi | A is scar | A is sleepi | A on PROPN | A on cold | A on ris
0.5 N 1 above part False True False | N after entered | N after i | N after round | N after should | N after that
0.5 N after the | N before  | N before ; | N before cheerful | N before cold | N before crimson | N before deep
0.5 N before dull | N before earnest | N before entire | N before final | N before heavy | N before immense
0.5 N before mental | N before rough | N before third | N before under | N before warm | N before wild
0.5 N is address | N is anger | N is begin | N is cholera | N is crack | N is disaster | N is drop | N is errand
0.5 N is excess | N is excursion | N is exercis | N is fall | N is heat | N is hop | N is incident | N is lunch
0.5 N is movement | N is objection | N is occupation | N is pac | N is proof | N is reserv | N is return
0.5 N is search | N is spit | N is strok | N is supper | N is throng | N is touch | N is understand | N is victori
0.5 N is wish | N is wonder | N on answer as nsubj | N on attend | N on be as dep | N on befor as pobj | N on bring
0.5 N on bring as nsubj | N on burn | N on burst as nsubj | N on chang | N on check | N on clos as dobj
0.5 N on curl | N on end as nsubj | N on excit | N on explain as dobj | N on fail | N on fail as nsubj
0.5 N on find as nsubj | N on giv as dobj | N on hav as conj | N on he | N on hors | N on mak | N on mean as dobj
0.5 N on mov | N on pay | N on pervad | N on remov | N on rous | N on see as dobj | N on seem as dobj | N on send
0.5 N on set as nsubj | N on sit | N on spread | N on succeed as nsubj | N on tear | N with day | V advmod directly
0.5 V advmod last | V advmod low | V advmod therefore | V after a PROPN | V after abruptly | V after he
0.5 V after him | V after his | V after my | V after six | V after was | V after yourself | V before ' | V before ;
0.5 V before at | V before comrade | V before life | V before seen | V before suddenly | V before sun
0.5 V before terry | V before warwick | V before water | V before while | V form both helped False as conj
0.5 V form ing as dobj | V form ing helped False as dobj | V helper having form both | V helper to form part
0.5 V is appli | V is aris | V is assur | V is build | V is chang | V is commenc | V is crowd | V is deposit
0.5 V is establish | V is fix | V is glow | V is marri | V is miss | V is mount | V is not | V is occur | V is pay
0.5 V is present | V is promot | V is reflect | V is resolv | V is spoil | V is struggl | V is swing | V is trembl
0.5 V is wait | V is wish | V mark whilst | V no subject form ing as dobj | V object brush | V object fir
0.5 V object friend | V object grind | V object ladi | V object monei | V object number | V object reason
0.5 V object row | V object sensation | V object sight | V object woman | V on 's as conj | V on 's as xcomp
0.5 V on accept as ROOT | V on affect as ROOT | V on allow as ccomp | V on answer as conj | V on as as pcomp
0.5 V on bend as ROOT | V on burn as ROOT | V on burst as ROOT | V on caus as ccomp | V on clos as ROOT
0.5 V on discover as ROOT | V on discover as advcl | V on fac as amod | V on feel as advcl | V on grow as advcl
0.5 V on hold as conj | V on is as advcl | V on keep as xcomp | V on lead as ROOT | V on lead as xcomp
0.5 V on notic as ccomp | V on observ as ROOT | V on order as acl | V on rais as conj | V on return as ROOT
0.5 V on rid as ROOT | V on say as conj | V on sleep as conj | V on smok as conj | V on sorri as xcomp
0.5 V on stand as xcomp | V on tak as ROOT | V on tell as conj | V on think as advcl | V on wander as ROOT
0.5 V on want as conj | V on withdraw as conj | V prt down | V simply ask | V simply bow | V simply build
0.5 V simply descend | V simply describ | V simply imagin | V simply inquir | V simply kiss | V simply mov
0.5 V simply reach | V simply resum | V simply seat | V simply tri | V subject PROPN False | V subject he form ing
0.5 V subject her form base | V subject somebody | V subject somebody form both | V subject they form both
0.5 V subject they form past | V takes about | V takes by | V takes toward | V takes towards
0.6 A 0 above past False False False | A after little | A after part | A after rose | A before now
0.6 A is affectionat | A is cold | A is curiou | A is drink | A is fit | A is interest | A is sorri | A on answer
0.6 A on feel as acomp | A on get | A on giv | A on hold | A on mak as ccomp | A on part | A on part as amod
0.6 A on round | N after at | N after brought | N after comes | N after did | N after no | N after over
0.6 N after passed | N after very | N before at | N before hot | N before paper | N before rapid | N before similar
0.6 N is breakfast | N is dread | N is feeling | N is frost | N is hunt | N is impuls | N is jok | N is problem
0.6 N is protection | N is ring | N is rout | N is settlement | N is severiti | N is sham | N is swim | N is trip
0.6 N is wed | N is work | N on accompani | N on affect as nsubj | N on arriv | N on be as conj | N on bring as dobj
0.6 N on colour | N on escap | N on forc | N on giv | N on hid | N on hors as compound | N on lend | N on lip
0.6 N on plai as dobj | N on prov | N on receiv | N on round | N on step as compound | N on wind | N on witness
0.6 N on witness as dobj | V advmod affectionately | V advmod away | V advmod carelessly | V advmod first
0.6 V advmod hastily | V advmod instead | V advmod outside | V advmod passionately | V advmod rapidly
0.6 V advmod really | V advmod silently | V advmod soon | V advmod then | V advmod though | V advmod whenever
0.6 V after : | V after at | V after behind | V after i | V after meg | V after people | V after time | V after us
0.6 V after ‘ | V before again | V before aunt | V before boy | V before hands | V before i | V before just
0.6 V before kronborg | V before room | V before voice | V before wilcox | V form ing helped False as xcomp
0.6 V helper been form part | V helper had form part | V is address | V is agre | V is attract | V is beckon
0.6 V is beg | V is clos | V is eat | V is exclaim | V is frown | V is hesitat | V is introduc | V is mention
0.6 V is observ | V is rid | V is see | V is separat | V is set | V is sigh | V is slip | V is tear | V is whisper
0.6 V mark after | V no subject form past as ccomp | V object children | V object hat | V object hors
0.6 V object mother | V object newspaper | V object step | V object trail | V on admit as ROOT
0.6 V on answer as advcl | V on break as ROOT | V on go as ROOT | V on hav as xcomp | V on leav as ROOT
0.6 V on let as ccomp | V on open as advcl | V on promot as ROOT | V on repli as ROOT | V on soon as advcl
0.6 V on tim as relcl | V prt out | V simply ad | V simply chang | V simply draw | V simply exclaim | V simply fall
0.6 V simply glanc | V simply help | V simply neglect | V simply observ | V simply peer | V simply promot
0.6 V simply repli | V subject ADJ False form ing | V subject ADV False | V subject PROPN False form past
0.6 V subject some form both | V subject them form base | V subject what form base | V subject you form ing
0.6 V takes across | V takes before | V takes past
0.7 A after " | A after faces | A before both | A before felt | A before grew | A is absent | A is asleep
0.7 A is astonish | A is hungri | A is sharp | A is sullen | A is thoughtful | A is wrong | A on afternoon
0.7 A on afternoon as amod | A on feel | A on get as acomp | A on heart | A on ris as amod | A on round as conj
0.7 A on with as pcomp | N after broke | N after burst | N after down | N after now | N after then | N after this
0.7 N after toward | N before double | N before dreadful | N before growing | N before has | N before it
0.7 N before odd | N before professional | N before savage | N before scarlet | N before singular | N before strange
0.7 N is concern | N is crim | N is execution | N is interest | N is issu | N is jest | N is perplexiti
0.7 N is recollection | N is struggl | N is task | N is temper | N is terror | N is thrill | N is turn | N is wav
0.7 N on accompani as dobj | N on attend as dobj | N on begin as dobj | N on boom | N on catch as dobj | N on died
0.7 N on fac | N on fog as ROOT | N on follow | N on get as nsubj | N on going as nsubj | N on row
0.7 N on send as dobj | N on ton | V 0 above part False True False | V advmod along | V advmod consequently
0.7 V advmod simply | V after after | V after alone | V after and | V after me | V after past | V after round
0.7 V after somewhere | V before even | V before fellow | V before got | V before having | V before on
0.7 V before once | V before pett | V before pontellier | V before was | V helper were form ing | V is abandon
0.7 V is answer | V is blush | V is break | V is com | V is creep | V is dig | V is distinguish | V is fling
0.7 V is laugh | V is murmur | V is press | V is purchas | V is select | V is star | V is vanish | V is witness
0.7 V object ADV | V object bell | V object chair | V object child | V object cigar | V object doctor
0.7 V object hand | V object mind | V object moment | V object nam | V object tea | V on NUM | V on ask as conj
0.7 V on begin as ROOT | V on cri as conj | V on cross as ROOT | V on declar as ROOT | V on hour as relcl
0.7 V on nam as relcl | V on pretend as ROOT | V on remember as ROOT | V on remov as conj | V on room as relcl
0.7 V on see as ccomp | V on slip as conj | V on smil as ROOT | V on speak as conj | V on turn as advcl
0.7 V on wonder as ccomp | V simply go | V simply halt | V simply hesitat | V simply laugh | V simply open
0.7 V simply pass | V simply send | V simply shak | V simply sleep | V simply threaten | V simply whisper
0.7 V takes round | V takes upon | V takes without
0.8 A after cheeks | A after over | A before last | A is dreari | A is marri | A is troublesom | A on becom as acomp
0.8 A on go | N after gave | N before got | N before keen | N before low | N before solitary | N before twelve
0.8 N before vague | N is appointment | N is breath | N is differenc | N is emotion | N is pleasur | N is question
0.8 N on assum | N on doe | N on enjoi | N on enjoi as dobj | N on finish | N on finish as dobj
0.8 N on follow as dobj | N on lik as dobj | N on mak as dobj | N on mean | N on night as conj | N on occasion
0.8 N on sinc | N on sinc as pobj | N on used | V advmod back | V advmod eagerly | V advmod earnestly
0.8 V advmod later | V after away | V after certain | V after down | V after open | V after these | V after toward
0.8 V before ) | V before by | V before dog | V before girl | V before help | V before margaret | V before she
0.8 V before stranger | V before woman | V form both helped False as parataxis | V helper were form base | V is ad
0.8 V is admit | V is buri | V is declar | V is draw | V is drop | V is flash | V is grumbl | V is hear
0.8 V is inquir | V is listen | V is offer | V is paus | V is reveal | V is spring | V is tri | V is turn | V is wip
0.8 V is withdraw | V is writ | V object head | V object impression | V object piec | V object pip
0.8 V object stick | V object wif | V on are as ccomp | V on cri as ROOT | V on hear as ccomp | V on is as ccomp
0.8 V on ladi as relcl | V on moment as relcl | V on pull as conj | V on suffer as advcl | V prt in
0.8 V simply answer | V simply approach | V simply aris | V simply cri | V simply explain | V simply forget
0.8 V simply hurri | V simply mention | V simply pick | V simply promis | V simply refus | V simply resolv
0.8 V simply rid | V simply say | V simply slip | V simply smil | V simply startl | V subject him form base
0.8 V subject that form part | V subject which form part | V subject who form both | V takes up
0.9 A is sunni | A on 'm | A on grow | A on grow as acomp | A on master | A on master as amod | N after during
0.9 N after enough | N before ghastly | N before nervous | N before severe | N before slow | N before take
0.9 N is leav | N is look | N is pain | N is piti | N is regret | N is success | N is talk | N on ad | N on after
0.9 N on com | N on danc | N on endur | N on endur as dobj | N on flash | N on happen | N on night
0.9 N on receiv as dobj | N on reflection | V advmod again | V advmod just | V after strange | V before before
0.9 V before cameron | V before mother | V before stood | V is agr | V is await | V is catch | V is driv | V is peer
0.9 V is persuad | V is prepar | V is recollect | V is remind | V is say | V is shak | V is survei | V is win
0.9 V object point | V object song | V on abl as xcomp | V on ask as ROOT | V on draw as conj | V on enter as ROOT
0.9 V on friend as relcl | V on open as ROOT | V on remark as ROOT | V on return as advcl | V on say as advcl
0.9 V on smil as conj | V on start as conj | V prt off | V simply fac | V simply paus | V simply spring
0.9 V subject him
1.0 A is open | A on becom | A on fanci | A on with | N before dying | N before first | N before off
1.0 N before quiet | N before was | N is accident | N is act | N is adventur | N is advic | N is departur
1.0 N is drowsi | N is fear | N is observation | N is open | N is possession | N is request | N is scent
1.0 N is sight | N is snow | N is storm | N on after as pobj | N on begin | N on blow | N on convinc
1.0 N on hear as dobj | N on pass as nsubj | N on shout | V advmod aside | V advmod naturally | V advmod sooner
1.0 V after most | V before stephen | V helper 've form base | V helper being form both | V is confess | V is cry
1.0 V is cut | V is gaz | V is insist | V is lift | V is remark | V is remember | V is shout | V is whistl
1.0 V object finger | V object look | V object way | V on fall as advcl | V on ris as conj | V simply writ
1.0 V takes according
1.1 A before got | A before then | A is agreeabl | A is anxiou | A is glad | A is hot | A is proud | N before last
1.1 N is dream | N is enterpris | N is meet | N is preparation | N is rag | N is sleep | N is start | N on accident
1.1 N on arm | N on assum as dobj | N on commit | N on hear | N on rest | V before 've | V before dale
1.1 V before mulligan | V helper has form base | V is accept | V is ask | V is convinc | V is cri | V is declin
1.1 V is disturb | V is halt | V is plant | V is startl | V is thrust | V object arm | V object cloth
1.1 V object letter | V object shadow | V on reason as relcl | V on suggest as ROOT | V on watch as ccomp
1.1 V simply pull | V simply tak | V subject with your
1.2 A is present | N before faint | N before sharp | N before soft | N is attention | N is defeat | N is discoveri
1.2 N is excitement | N is grief | N is laugh | N is promis | N is shin | N is speech | N is whisper | N is word
1.2 N on burst | N on caus | N on ceas | N on fog | N on grow | V before " | V before did | V before man
1.2 V helper had form base | V is fle | V is glanc | V is inform | V is itch | V is plac | V is pretend | V is put
1.2 V is remov | V is resum | V is shiver | V is walk | V on hear as conj | V on induc as xcomp
1.2 V on prompt as xcomp | V simply meet | V subject we form both
1.3 A is delight | A is fanci | A on fall | N before awful | N before idle | N before more | N is effect | N is glow
1.3 N is joy | N is order | N is outbreak | N is passion | N is think | N is walk | N on com as dobj
1.3 N with strether | V 0 above past True False False | V 1 above modal False False False | V advmod already
1.3 V is choos | V is disappear | V is endeavour | V is invit | V is kill | V is pursu | V is refus | V is repli
1.3 V is smell | V is wav | V on for as pcomp | V on glanc as conj | V on remember as conj | V simply hear
1.3 V simply shin | V subject with another
1.4 A before became | N is chang | N is expression | N is shoot | N is visit | N on greet | V advmod upstairs
1.4 V before child | V before eyes | V is cast | V is wonder | V object tear | V on after as pcomp
1.4 V on induc as advcl
1.5 A after at | A is angri | A is consciou | N before present | N is blow | N is event | N is expedition
1.5 N is explanation | N is fanci | N is flash | N is gaz | N is idea | N is impression | N is presentation
1.5 N is roar | N is sunset | V before doctor | V before ” | V is stop
1.6 N before sad | N is breez | N is entranc | N is footstep | N is journei | N is motion | N is sensation
1.6 V advmod plainly | V is report | V on continu as xcomp | V simply hid
1.7 N is answer | N is battl | N is confusion | N is exclamation | N is feel | N is not | N is resolution
1.7 N is shock | V is dying | V on happen as xcomp
1.8 N before quick | N is death | N is gas | N is murmur | N is music | V is bid | V on glad as xcomp
1.8 V on proceed as xcomp
1.9 N is action | N is blaz | N is blush | N is dinner | N is glimps | N is paus | N is repli | N is sound
1.9 N on crowd | V is born | V on oblig as xcomp
2.0 A is surpris | N is campfir | N is contemplation | N is nois | N is remark | N is sigh
2.1 N is mist | N is rain
2.2 N is marriag | V is order
2.3 N is cri | N is funeral | N is inferenc | N is loss | N is reflection | N is smok | V is died
2.4 N before sudden | N is cry | N is thought
2.5 N is conversation
2.6 N is discours | N is glanc | N is wind | V on begin as xcomp
2.7 N is smil
2.8 N is fir | N is fog | N is surpris
2.9 N is birth
3.0 N is tear
"""
