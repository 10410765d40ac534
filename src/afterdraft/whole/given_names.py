"""Given names that are hardly ever of the other gender. By hand, from common knowledge of English fiction.

Names that are both (Evelyn, Sidney, Vivian, Jean) stand in neither list.
"""

from afterdraft.reading.lexicon import words_of

FEMALE = words_of(
    """
    abigail ada adela adelaide adele adèle agatha agnes alexandra alexandrina alice alicia alison alma althea amabel
    amanda amelia amy angela angelica angelina ann anna annabel annabella anne annette annie antoinette antonia antonida
    arabella araminta aspasia audrey augusta aurelia aurora babette barbara bathsheba beatrice beatrix becky belinda
    bella bertha beryl bess bessie bessy beth betsey betsy betty biddy blanche brenda bridget camilla carlotta carmen
    caroline carrie cassandra catharine catherine cecilia cecily celestine celia charlotte chloe christabel christina
    cicely clara clare clarice clarissa clementina clementine constance consuelo cora cordelia cornelia cynthia céline
    daisy daphne deborah delia della diana dinah dolly dolores dora dorcas doris dorothea dorothy edith edna effie
    eleanor elena eleonora elfride eliza elizabeth ella ellen ellie elsa elsie elspeth emilia emily emma ernestine
    esmeralda estella esther ethel eugenia eugenie eunice euphemia eustacia eva evangeline eveline evie fanny fay
    felicia felicity flavia fleur flora florence florrie flossie frances freda frieda gabrielle georgiana georgina
    geraldine gertie gertrude gerty ginevra giulietta gladys grace griselda grizel gudrun gwen gwendolen gwendoline
    hannah harriet harriett hattie helen helena henrietta hephzibah hermia hermione hester hetty hilda honor honoria
    hortense ida imogen inez ingrid irene iris irma isabel isabella isobel ivy jane janet janey janie jeanne jemima
    jennie jenny jessica joan joanna josephine juana judith judy julia juliana julie juliet justine kate katharine
    katherine kathleen katie katya kitty lalage laura lavinia leah leila lena lenore leonie leonora letitia lettice
    letty lila lilia lilian lillian lily linda lisbeth lisette lizzie lizzy lois lola lorna lottie louisa louise lucia
    lucilla lucinda lucretia lucy lulu lydia mabel madeleine madeline madge magdalen maggie mamie marcella margaret
    margery margot marguerite maria marian marianne marie marietta marjorie marjory martha mary maryann mathilda matilda
    mattie maud maude mavis meg melissa mercedes mercy mildred milicent millicent milly mimi mina minerva minnie miranda
    miriam moira mollie molly muriel myra myrtle nadia nan nancy naomi natalie natasha nell nellie nelly nesta netta
    nettie nina nora norah norma octavia olga olive olivia ophelia pamela pansy patience patty paula pauline pearl peg
    peggy penelope perdita perpetua philippa phoebe phyllida phyllis polina polly portia primrose priscilla prudence
    rachael rachel rebecca rhoda rita rosa rosalie rosalind rosamond rosamund rosanna rose rosemary rosie rosina roxana
    ruby ruth sabina sadie sally sarah selina selma seraphina sheila sibyl sonia sonya sophia sophie sophronia sophy
    stella sue sukey susan susanna susannah susie sybil sylvia tabitha tamara tatiana tess tessa thea thelma theodora
    theodosia theresa thirza thomasin tilly trixie trudy ulrica una ursula valeria vanessa vera veronica victoria viola
    violet virginia wilhelmina winifred yvonne zelda zenobia zoe
    """
)
MALE = words_of(
    """
    aaron abe abel abner abraham abram adam adolphus adrian alan alaric albert alec alexander alexey alexis alf alfie
    alfonso alfred algernon algy allan allen alonzo alphonse ambrose amos andrew andy angus anselm anthony antoine
    antonio archibald archie arnold art arthur aubrey augustine augustus austin baldwin barnabas barnaby barney barry
    bartholomew basil ben benedict benjamin bernard bert bertie bertram bertrand bill billy bob bobby boris brian bruce
    bryan caleb calvin carl caspar cecil cedric charles charley charlie christopher clarence claud clement clifford
    clive colin conrad cornelius cosmo cuthbert cyril dan daniel dave david denis dennis dermot desmond dick dickie
    dmitri donald douglas duncan ebenezer eddie eddy edgar edmund edward edwin egbert eli elias elijah eliot emanuel
    enoch ephraim eric ernest ernie ernst esau ethan eugene eustace ezekiel ezra felix ferdinand fergus fernando francis
    francisco francois frank franklin franz fred freddie freddy frederic frederick fritz fyodor gabriel gareth gaston
    geoffrey george gerald gerard gideon gilbert giles gino giovanni giuseppe godfrey gordon graham gregory griffith gus
    gustav gustavus guy hal hamilton hamish hank hannibal hans harold hector henry herbert hercule hereward herman
    hezekiah hiram homer horace horatio howard hubert hugh hugo humphrey ignatius igor ike isaac isaiah isidore israel
    ivan jabez jack jacob jacques jake james jasper jean-paul jefferson jeffrey jem jeremiah jeremy jerome jerry jesse
    jim jimmy job joe joel john johnnie johnny jonah jonas jonathan jose joseph joshua josiah jude jules julian julius
    justin karl kenneth konrad lancelot laurence lawrence lemuel lenny leo leon leonard leopold levi lew lewis lionel
    louis lucas lucian lucien ludwig luigi luke luther malcolm marcel marcus mario mark marmaduke marquis martin matthew
    maurice max maximilian michael mick miguel mike miles montague monty mortimer moses nathan nathaniel ned nicholas
    nick nicky nicolas nigel noah noel norman obadiah octavius oliver orlando oscar osmond oswald otto owen paolo pascal
    patrick paul pedro perceval percival percy peregrine perry peter phil philip phineas pierre pip quentin ralph randal
    randolph raoul raphael raymond reggie reginald reuben rex richard robert roddy roderick rodney roger roland rollo
    romeo ron ronald rowland ruben rudolf rudolph rufus rupert sam samson samuel sandro saul sebastian septimus serge
    sergius seth sherlock sid sigismund silas simon solomon stan stanley stephen steve steven stewart stuart sydenham
    ted teddy terence thaddeus theobald theodore theophilus thomas tim timothy titus tobias toby tom tommy tony tristram
    uriah valentine vernon vic victor vince vincent vladimir wallace wally walt walter warren wilfred wilfrid wilhelm
    will william willie willy winston zachariah zachary
    """
)
