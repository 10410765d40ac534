"""VADER's lexicon of valence: how good or bad a word sounds by itself, from -4 to 4.

Copyright (c) 2016 C.J. Hutto, MIT licence (`NOTICES.md`); as vaderSentiment 3.3.2 carries it: the mean of ten people's
ratings, rounded to a tenth there. Entries that its rules can never reach (with a space, with capitals) are left out.
Hutto, C.J. & Gilbert, E.E. (2014). VADER: A Parsimonious Rule-based Model for Sentiment Analysis of Social Media Text.
"""

from collections.abc import Iterator, Mapping
from functools import cache


@cache
def lexicon() -> Mapping[str, float]:
    """Value of each word, in small letters."""
    return dict(_entries())


def _entries() -> Iterator[tuple[str, float]]:
    for line in _LINES.strip().splitlines():
        value, *words = line.split()
        yield from ((word, float(value)) for word in words)


# A value, and words that have it: a line each.
_LINES = r"""
-3.9 rapist
-3.8 raping slavery
-3.7 fu kill murder rape terrorist
-3.6 hatefulness hell motherfucker murderer raped rapers terrorism
-3.5 fatality killed killings rapes suicidal suicide torturers
-3.4 apocalyptic brutalizing cancer catastrophe devil evil evilly excruciation faggot fucked horrific killing murdered
-3.4 raper shittiest tragedy twat villains
-3.3 dead devastating evillest excruciating fucker heartbroken horrifyingly killer killers murderers murdering nigger
-3.3 rapists terrorised terrorises terroristic terrorize whore
-3.2 abuse abusive betray brutalises brutalizes d8 d:< devastative doomed dreadfulness faggots fatally fuckface fuking
-3.2 hated hatred hellish kia murderee murderous pissed scumbag terrorisms
-3.1 187 4q abhorrent angriest brutal bullied cocksucker crisis devastate dickhead direful disaster enslave evildoer
-3.1 evildoing evilness fuckhead fucktard hopelessness molests murderees murderously poisoners racism shithead
-3.1 sluttiest terrorise terrorists terrorized terrorizes vile violence worst
-3.0 </3 abusivenesses bastards betrayed bitchiest brutality brutally destructive devastated disgustedly dismal
-3.0 douchebag dx foetor fubar horridnesses infuriated murders racist saddest terrified terrorising terrorizing
-3.0 torturing traumatization whores
-2.9 182 >;( abhors afu anguish assassination bitches brutalised brutalize bullying cruellest cruelness cruelty cunts
-2.9 d; death devastators die disastrous disgust disgustingly drowned eviller excruciatingly fatalities fuckers
-2.9 harshest havoc horrifically horrifies irate molestations murderousness obliterate poisonously sinister torture v.v
-2.9 villainess villainously violent war warmonger wickedest
-2.8 ^urs abduction abusively assault assaultive assholes betrayal bitch brutalising bullshit condemnation contempt
-2.8 cruel cruelly damnified degrading devastates devastator devilry deviltry dooming doomsday enraging ffs fraud
-2.8 greediest harassers heartlessly heartlessness horrendous jackasses maddest miserableness molesting motherfucking
-2.8 obscene offensively perverts poisoning rageful remorselessness repulse ruin ruinate scams slut stab traumatically
-2.8 traumatise ugliest violently warmongers whored wtf
-2.7 >:( >:-( agonizing anger anguishing antagonizing assassinations attacker attackers bastardly bastardy bfd bitchery
-2.7 brutalise chaos corpse criminals crude degradingly depression despaired despairs despising destruction devils
-2.7 dishonest dreaded dreadfully drown evils excruciate fearing fuming furious fury grievousness grim h8 hate
-2.7 heartbreak horrifying horror horrors humiliation injustice insanity joylessness laziest loathing miseries misery
-2.7 moronic negative nfc painfulness pathetic poisoner poisonous poisons retarded ruination ruinous scam sluts
-2.7 sluttier son-of-a-bitch stealing terrifying terrorization torturous totalitarianism tragically traumatic travesty
-2.7 treasonous ugliness unlovable villainousness virulent weep wrathful
-2.6 );< abuser abusers abuses alarmingly ban bankrupt bastardising bfe bitched bitchily bitchiness brutalities
-2.6 cheating cocksuckers compassionless crappy cruelest damnation damnatory destroying destroys destructionist died
-2.6 disasters disgustful distraught dumbass dumbhead enrage fascist fired gloom harassments harmfully harmfulness
-2.6 harming humiliatingly hurtfully idiotic illegal infuriates killingly lousiest lowbred miserliness murderesses
-2.6 nastinesses nasty perversity petrifying po prejudicial punishers punishing rage rancidity rancidness riot rob
-2.6 robber ruinously sadden savageness shamed shit shitheads shitty sin sinful starved stressfully stupidnesses
-2.6 terriblenesses terribly terrifies terrors tortured victimizing villain villainy violater wars whoremonger
-2.6 woebegone
-2.5 :-###.. :-|| :@ ]:< abusiveness aggravate ass assaults assfucking bad bastard betraying betrays chastise cheater
-2.5 choke crestfallen crime curse d-': dangering despisements destroy destructing enemy evildoings evilest fail fatal
-2.5 fearfullest felonies felony fraudster fuck fuked goddam harassed harasses harassing harassment harm horrible
-2.5 horrid horrified horrify hostility humiliate joyless kills lamebrained livid lousy outraged perverted petrified
-2.5 pissants poison poorest prisoner racists rancid rancidly rejection rudest savagery sickened sluttishness snafu
-2.5 sobs sorrowfulness stinkpot strangled stupider suffer tard tortures troubling uglinesses unhappiest victimising
-2.5 victimize violating wanker warmongering whoresons
-2.4 :###.. :'-( abandonment abhorred agonises appall arrogance assaulted bastardization bastardize brutalized casualty
-2.4 conspiracy contemptuously criminal crudest crueller damnifying damnit danger dangered degradation dehumanizing
-2.4 despisement destruct destructively destructiveness destructs devastatingly devilkin dirtiest disgusted disgusting
-2.4 dissatisfying distress distressfulness distrusted doomsdays dreadfuls dreading dullsville evildoers fkm
-2.4 foreclosures fraudsters frustrated goddammed harasser horribleness horribly humiliations hurt hurtful indignation
-2.4 infuriating liars loneliest loser losers lying mofo mourns naggiest nastiest neglected nfw painfully pita
-2.4 poisonings prejudicialness puke punish raging reek retard revenge revengeful sabotage saddened sadder savages
-2.4 scandalous shamefulness sickening sorrow sorrowed spite spited stenchful stinking stupid stupidest sucker
-2.4 sufferers swindle terror thief threat threatening tragical trapped traumatised traumatism traumatize unhappier
-2.4 unhappiness unhealthy viciousness violated violaters violations violative violator warred weepiest whoredoms
-2.4 wicked wth
-2.3 ):{ 3:-( abducted abused agonised agonize agonizes agonizingly angered angers angrier angry assaulting bastardised
-2.3 bastardises bastardizing bitcheries bitchy bitterest blameworthy brutalizations cheated condemns crueler cruelties
-2.3 cwot damaging dearth dejecting depressed depressingly despairing destroyers destructions devilishness devilled
-2.3 dick disappointment disconsolate disheartenment disturbing disturbingly doa downhearted dumb dumbest effin egotist
-2.3 failed failing failure fiasco foetid frauds fraudulence frightful grieving grouchiest hatefully hating horridness
-2.3 hurter idiot ignoramuses impolitenesses incompetence insult insulted insultingly irritant irritation lazier liar
-2.3 molester mourningly nastier negativity numbskull obnoxiously offending offensiveness outcry outrage outrages pain
-2.3 panic pervert petrifies pollute poverty prblms prejudice prison prisoners punitive regrettable rejected rejectee
-2.3 remorseless riots rotten shamefaced shamefulnesses sick slutty sorrower sorrowfully spitefully spitefulnesses
-2.3 starves steals stench stenchy stinkard stressful stricken stupids suckers terrify thieves torturer traumatizing
-2.3 troublesome trustless ugly unethical unjust unloving unprofessional victimization villainies violates weakest
-2.3 worsen ||-:
-2.2 )-:< 3:( 4col :'( aching agonized angering annoyer antagonistically arrogant blaming bomb bsod bully catastrophic
-2.2 chaotic chastised collapse contemptuous cunt damage damnify damns dangers darkest deject dejected depress
-2.2 depresses depressions despairingly desperations destroyed destructivity deviling disappointing disgrace
-2.2 disheartened disheartenments disheartens dismaying disparaging dissatisfaction dissatisfy distressful
-2.2 distressingly dolorous doomsdayer doomster drowns enemies failings fear feared fearful fearfuller fearfully feuded
-2.2 fools fraudulent frightening grief grouch harass harms harsher hateful haters heartbreaker heartless heroin
-2.2 hopelessly hostilely illnesses imbecile infected infuriate insulting jailed loathe lousier lowlifes lunatic mad
-2.2 maddening masochistic menace miserable molesters moron murderess neglects numbskulls overreacts perpetrator
-2.2 perversely pitiful poisoned pollutes powerless prosecution punishment qq rejects repressors repulsed
-2.2 revengefulness rudely saddening savagely scandals scare scary screwed shameful sickener sickeners sluttish
-2.2 sorrowful spammer steal stealers stolen suffered thieve threateningly torturously tragics traumas traumatises
-2.2 traumatizations troublemakers uglier uglification uglifying unhappinesses uninvolved violate violation wasted
-2.2 whoreson wickeder wickednesses
-2.1 )-': )-: )-:{ :< :c >: >:[ @: ]-: accident agitators agonise amort anguishes apprehension arrested ashamed attack
-2.1 badly bankster bastardise bastardizations bereave bereaved blamed blamer broken brutalization btd choked cry
-2.1 crying dangerous defeated defeatists defectively degrades depressively deprival deprive deprived despondent
-2.1 destructionists devilish dipshit disabling disadvantageously disappointed disdain disgusts distrustful distrusting
-2.1 disturbers doomful eviler fag fake faultfinding faultier faultiest faults flawed flunked foetors freakish
-2.1 frighteningly frustration fucks gloomful glum goddamn goddamns grievance grieves gross grossest harmed haunted
-2.1 heartbreakers heavyhearted helplessness hooliganism horribles hostilities hurts immoralist immorally incompetent
-2.1 infringement irrationalist irritable irritants jeopardy killjoy libelous loathed lowlives lugubrious maniac
-2.1 miserably molest moodiest nasties neglectfully nme obliterated obnoxiousness oppressed persecute perverseness
-2.1 perversive pitilessly poor punishes rages rejections resentful revenger ruder ruined sad scaremonger selfish shame
-2.1 shattered shits shittier shylock sickeningly sluttishly smartass smuggler smuggling snubs spamming stinkiest
-2.1 stressors suckering suffering suffers suspended terrible thieveries totalitarian troublous troublously uglify
-2.1 uglily uneasiest unfair unlovely unpleasant upsetting vitriolic weakliest whoredom wickedly wickedness widowed
-2.1 woefulness worrit worse worsens wrong }: }:-(
-2.0 )': :[ >-: abandoned abductions abhor abusing affectionless agitated antagonize appalled appallingly arguing
-2.0 attacked attacking awful banned bastardized beating belittled bitchier bitterly blamers censor cheat chokes
-2.0 choking contagion contemptibilities coward crudeness crudenesses cruder damagers damagingly damningly dangerously
-2.0 dangerousness deceit defeat degradative degrader degraders dejects depriving desperation despises destroyer dire
-2.0 disappointments discouragement disgraced dishearten dishearteningly disparage disrespected dissatisfactory dread
-2.0 eviction exploited failures falsify faultily foes foolishnesses forced frustrate frustratingly frustrations
-2.0 greedier grieved grievous grimaced grouchier grouchiness guiltier heartbreaking helpless heroinism hopeless
-2.0 hypocritical immoral imprisoned incensed inferiorly insipid insulter insulters irritated irritating irritatingly
-2.0 irritative jealous jealousies jealously lamely lament lamenting lowlight melancholiac misrepresentation mocks
-2.0 neglect neglectful neglectfulness obnoxious offends offensive outrageous outraging panicked penalty pessimisms
-2.0 pessimistically phobias pisser polluted polluters problematically punished raged reeked reeking regrettably
-2.0 regretters rejecting remorselessly resentfulness revengers ridicule robs rude rudesby ruiner savage savaged
-2.0 scaremongers screwiest selfishnesses severely shamefacedness shamelessnesses sickens sins sluttishnesses snob
-2.0 snobbery snubbed stresses stupidities stupidly sucked suckered sufferer swindling thievery thoughtless threatened
-2.0 threating tragic troubled troublemaker troubles uglies unacceptable unfortunate ungrateful unintelligent
-2.0 uninvolving unloveliness unworthy upsetters vexing victimhood villainesses villainous vulture wept whoremongers
-2.0 worriedly worrisomely worsening worser }:(
-1.9 ):< ..###: :( :{ abandon abandoner abandoners admonished aggravated aggravates aghast angerly animosity annoy
-1.9 antagonism antagonist appalls arrests arrogances atab attacks aversion banish belittle bereaves bitterer block
-1.9 bloody burden chagrin cheaters chucklehead condemned contemptibleness contradictious criticise criticism crushes
-1.9 damaged damager damages deceitful deceived deception defeature defective defector degrade dehumanized denied
-1.9 denounces destructed devastations devilment dirty disagreeablenesses disappointingly discouragers discourages
-1.9 discouraging discredited disillusioned dismayed dismayingly displeased dissatisfactions disturbs dreadful
-1.9 dullnesses dumbheads dumbness embarrassment emptiness excruciations expel exploiting fightings flunker foe fool
-1.9 forbidding forbiddingly foughten frantic freak freeload frightened frightfulness frustrates frustrating furiously
-1.9 futile gloomed goddams greedily griever grouchy harsh hates horrendously hurters hurtfulness hysteria idealess
-1.9 ignorami ignoramus illiteracy incapacitated inconsiderate inferiorities insincerely intimidated intimidating
-1.9 irresponsible lamentations loathes lowbrow ludicrousness madness meaningless melancholy mindless misbehave
-1.9 molestation molested moochers mope mournfuller mourning nastily notorious painful panicking panics passionless
-1.9 perjury petrifaction prejudiced problematic pukes punishable punisher regretful regretfully resentment resentments
-1.9 revenges ruins saddens sadness savageries scandal scared scaring shamefacedly shamefully sicken smothers sobbed
-1.9 spiteful stabbed stabs stank starve stealings stupidity suck sucky terribleness tired tragedies traumatising
-1.9 treason troublers troublesomeness unattractive undeserving undesirable unemployment unfortunates unhappily unloved
-1.9 unlovelier unloveliest unsavory upsetter vexation violators warring weak weaker weapons weeper weeping weepings
-1.9 whorehouses whoremaster woeful woes worriments worrisomeness worry worsened worthless wreck wronged zealot
-1.8 ): adversity aggressiveness agitating agony angrily anguished annoyances annoys argumentatively arrogantly avoider
-1.8 bastardies bastardizes beaten bitter bittered blamable blamably broke burdensome charmless cheats comfortless
-1.8 complainer conflictive criticised crushed damnableness damnifies defecting defectiveness defectives degraded
-1.8 dehumanize denies depressor deprivation deprivations despiser destructibility detain devastation devilling
-1.8 disadvantage disadvantageous disagreements discomfort discontented discourage discouragements discouragingly
-1.8 disheartening dismay dismays disqualified disrespect dissatisfies distressed distrust distrustfully downcast
-1.8 dullards dumpish duped dysfunction egotistically emptiest enrages erroneous exasperated fails faithlessness fakes
-1.8 faking fcol fearfulness fears flunkey flunks flunky foeman fooleries foolery foolishly foolishness forbidden
-1.8 freaking freakout fumed gloomiest gloominess glooming goddamned gossipping greenwash grimaces grimy grossness
-1.8 guiltiness guilty hater heartbreakingly heartbreaks homesickness homesicknesses hysterics ill impatience
-1.8 impolitely impoliteness indignant injury insecure insecureness insecurities insecurity insensitivity insincere
-1.8 insults intimidation irritably irritate jackass lame lies loneliness lonesomeness lowery lowliest miser
-1.8 misunderstanding mock mourn mourners mournfulness nagger neurotically pained pains pathetically perverse
-1.8 pitifuller pitiless polluter prejudices prejudicing problematical promiscuity prosecutes protesting puked puking
-1.8 punishments rebelliously recession regret rejectees rejecters rejective rejector repressing ridicules ridiculing
-1.8 sadly scornful sedition shitting smother snub somber stampede starving stress stressor struggling tantrum temper
-1.8 threateners threats ticked trauma troublemaking troublesomely ugh uglifies uneasinesses unfulfilled ungratefully
-1.8 unhappy useless vain victimized victimizer warfares waste weaken weakly weakness weepier weirdo whines wiseass woe
-1.8 worrier worries worrywart yucky
-1.7 ..###-: :l >:\ \:< abandonments acrimonious agitate angriness annoying antagonistic antagonists arguments
-1.7 ashamedly avoidance battleground bitterness blameful blames blind botheration boycotted boycotting burdened
-1.7 burdeners chastises chastising cheerless cheerlessness complained complainingly complaints conflicting crash cries
-1.7 criticising cynicism cynicisms damn damnable damnably decay decaying decays deceive defeatist defected defects
-1.7 deficit depressible depressors deprives despised detained difficultly disadvantaged disadvantages disagreeable
-1.7 disagreeableness disappoint disappointedly disconsolation discord discouraged discourager disillusionment disliked
-1.7 dislikes disorder dispute disputing distorted distressfully distressing disturb doom doomsayers dull duller
-1.7 dullest dumped dumps dumpy egotists embarrasses embarrassingly embarrassments enraged enslaved error farce
-1.7 fatalisms fault fearsome fights fooling foolisher freebooter frightens frightfully greed greediness grievously
-1.7 grouching guiltiest hacked haunt helplessnesses hindrance hurting idealless ignoring illness immoralists
-1.7 impatiently inability inadequacies inadequacy inadequate inadequateness inferior injured insane interruptions
-1.7 irrationality irritabilities irritableness irritates isolation jealousness joylessly killjoys lose losses
-1.7 lousiness lowlier madly maniacally masochist menaced misbehaving misleading mocking mooch mooching mournfully
-1.7 nagana nagged nagging naggy neglecter neglecting nonsense oppressive optionless overreacted painfuller paining
-1.7 peril perverter petrify piss pissing problem problems prosecute provoke punishabilities rash reckless reeker
-1.7 refusing regretting reject rejectingly repressions repressively scapegoat scarer scarey scold scorn scream screwup
-1.7 seditious selfishness shames shitted shocking sluggish smartasses smuggles smugnesses snobbishnesses snobby
-1.7 sorrowing stealable stealer stink strained stubborn stupidness sullen suspiciously tensions traumata traumatized
-1.7 trouble unappreciated uncomfortably uncontrollability unease unfocused unsatisfied unsuccessfully unsupported
-1.7 unwelcome wasting woefully worriers worrisome
-1.6 86 :-[ :?c >:/ ]: abandoning ache ached agitatedly amoral annoyed arguer argues aversive battle battlefield
-1.6 battles bitterish blamefully blameworthiness blocking bothering bummer carelessnesses complains condemn conflicts
-1.6 confrontational contemptible contradictors cowardly crap craziness cried criticize criticizers cynical damned
-1.6 decayed decayer decayers deceives defeating demoralized depressant depressants depressing depressive depriver
-1.6 desperately despisers deviled devilishly devilries disadvantageousness disagree disappoints discomfortable
-1.6 discomforted discomforting disillusions dislike disparages disregarded dissatisfied distraction distractive
-1.6 distresses distrustfulness disturbance disturbed doomsters doubter dullard dumbfounded dump dumpiest embarrassable
-1.6 embarrassing emergency enslaves expelling expels falsified feuding fight flu flunkers fooled foolhardiness
-1.6 forbidder freakiest freeloaded freezingly fright funerals glamourless gossiping grave gravesides grieve grimier
-1.6 griminess gullibility hostile ignorantly immoralism impolite inadequatenesses incapable ineffectuality inhibit
-1.6 interrogated intimidator intimidators irrationally jaded lackadaisical lamebrain lied losing louse lowest lunatics
-1.6 manipulated masochism masochistically melancholias misbehaved misbehaves misinformed mistaker mistakers mockeries
-1.6 mourner mournful n00b obstacles paranoids phobia pleasureless prblm pricklier prosecuted punishability
-1.6 rancidnesses regretfulness regretted regretter rejecter reluctancy repression resented restrict restricted
-1.6 restricting ridiculer ridiculers ridiculousnesses riskinesses ruinable ruinations ruing screaming severe severer
-1.6 shock shocks shyster slam sleeplessness smuggle snobbily sobbing sorrows spammers stingy stunk suspicion
-1.6 talentless tensioner threaten threatens tumor uncomfortable unconvinced uneasiness uneasy ungratefulness unkind
-1.6 unsecured upset uptight uselessness victimizers weakener weakhearted weepies wimpish |-:>
-1.5 $: %-) :-( :-< adversarial adverse adversities afflicted agonising amorality annoyers appalling argued argument
-1.5 argumentative argumentive bamboozle bamboozled bamboozles brainwashing burdens careless clueless coerced collision
-1.5 complain confrontations confusedness contagions crazily criticized criticizer criticizing crushing debt defeatures
-1.5 defections degradations dehumanizes denier depressives deriding desperateness destructible detention deviltries
-1.5 difficult disagreeably disagreement disillusionments disoriented disruption distractible doomsaying doomsayings
-1.5 doubt doubtable douche drained dubious dulled dumber dumbs dupe eerie embarrassed emptinesses exhausted exhausting
-1.5 exhaustion fallen fatiguingly faultfinders faultiness fighting flunking foolhardier forbidders freakouts freaky
-1.5 friendless frighting funeral gloomier gravely graveness grievances grime grimmer gullible hesitatingly hooligan
-1.5 ignorance ignore inconvenience inhibition interruption irrationalism irrationalists irrationalities irritations
-1.5 lags lamentable lamentably laments lamest lazy lonelinesses lonely lonesome lowballed lowlife ludicrous
-1.5 manipulating mess messy mischief misers misreporting mistaken mistakes misunderstand moocher moody nag naggers
-1.5 neglecters nitl obsessional obstacle offender offenders offenses overload overweight panicky paranoias persecuting
-1.5 pessimism pessimist pessimistic pissant poorer prejudicially profitless promiscuously quaking rebeldom reekers
-1.5 regrets repressible ridiculed ridiculous rigged riskiest robing rudeness ruinated ruinates ruinating screamers
-1.5 seduced severed severest shylocking smear smuggest smuggled sore spam spitefulness stenches stinker stinkier
-1.5 stinko stinky stressing strikes struggles stubborner stubbornnesses sucks sulking suspicions suspicious sux
-1.5 swindles tantrums tenseness tenser trembling turmoil uglified uncontrollable uncontrollably undermined undermining
-1.5 unfriendly unprotected unstable unsuccessful upsets uselessly vicious victimised victimizations victimizes
-1.5 weaklier weaknesses whine whoremasters wiseasses witch worriment worrywarts
-1.4 /:< /o: 3:-) :/ :o/ <:-| =/ accidentally accuses aggressed aggressivities agitates agitator alarm alarmed
-1.4 antagonized argue arguers arrest avoided avoiders avoiding blame bother boycotts burdening carelessness chagrined
-1.4 combat confusingly contagious contemptibly contradictoriness contradictory contradicts crazy criticizes cynic
-1.4 damnations damning deadlock deceiving defeater defect defection defenseless denounce deny denying deprivers
-1.4 derailed despise difficulty dirt dirtier disagreeing disappears discarded disparaged disputed disregards
-1.4 disruptions distorts distracted distractingly disturbances disturber dork doubtful doubting doubtingly dreads
-1.4 dreary drunk dullness dumbed dumpier egotism egotistic errors excluded exploits failingly fatigued faulted
-1.4 faulting feud feuds fidgety fiery fire firing flop flops flunkies foolhardy foolishest forbiddance frantically
-1.4 freakiness freakishness frighted frighten frowning gag gossipmongers grimacing grouchily guilts gun hapless
-1.4 haplessness harried helplessly hesitater hesitaters hesitates hesitating horridly humiliated humorlessness
-1.4 hurtling inconvenient indoctrinate inflamed inhibitive insecurely insignificant insincerity interrupt interruptive
-1.4 intimidations irrational irresolute irritability jerk lag lamentation lamented lamer leak lethargy lonelier
-1.4 lonesomes lowermost messed miserly misgiving mistake misunderstood mlm mooched mooches moodiness moodinesses
-1.4 moronically mumpish naggier needy neurotic niggas nimy numb numbly obsessing obsession offences ominous perturbed
-1.4 pissers pisses pitying pressuring prick prickliest rant reluctance repress repressive repressor resentfully resign
-1.4 restlessly revengefully ridiculously riskier scapegoats scares screwy selfishly shakedowns shameless shamelessly
-1.4 shamelessness shoot shylocks smileless smothering smugglers smugness snobs spites stifled stressed struggled
-1.4 strugglers stubbornly suspects tense tensioning thieved threatener toothless tragediennes traumatizes trickers
-1.4 trivialising troubler unapproved uncertainly uncertainties uncertainty undermines uneasier uneasily unequal
-1.4 unfortunately unimpressed unimpressive unmotivated virtueless warning weaklings weaponed weeps wimp wisenheimers
-1.4 worrying
-1.3 /-: /: :-c :\ >.< \^: abandons accidents accusations aggress aggressions aggressively agitations agitative
-1.3 annoyance anti awkwardly awol axed bereaving bizarre boredom bores boresome boring botherations bothered
-1.3 bothersome boycott burdener chuckleheaded complainers conflict confrontation confronters confused confuses
-1.3 contradict contradicted contradicting contradictions critical criticises cynically defeatism defeats defectors
-1.3 defenselessness delay derails despair despairer despairers desperate disagreed disagrees discomforts disguising
-1.3 disillusioning disjointed disliking disquiet disruptive distort distractable distractibility distracts distrusts
-1.3 doubters dumbly dumping envyingly excruciated exhauster exhausters fatigues faulty flunk foolhardiest forbid
-1.3 forbids fought freakier freeloading freeloads frenzy gagged ghost gossipped gossips gossipy graveless gravest
-1.3 greedy grimly hardship hesitated hostiles humorless ignored ignorer imperfect impersonal indecisiveness
-1.3 ineffectively ineffectiveness ineffectualness interrupters interruptible interruptor interrupts intimidates
-1.3 isolated isolates jealousy lack lamentableness laughingstocks leaked loner lonesomely loose loses loss lost louses
-1.3 lowness luckless misinformation misinterpreted misunderstands mocked mockers mockery moodily morons mourned
-1.3 numbingly nuts obsessionally odd outrageousnesses paranoiac perplexed persecuted perversion pettiest phobics
-1.3 pitied pitiers pressures problematics provokes rants repressed represses resigns restricts riskiness risking
-1.3 scarers screamed shakeout shocked shyness skeptical smh spiritless startle stereotype stinkingly straining
-1.3 struggle stuttering submissive suspend tease tempers tension timidity trap tricksters uncertainness unimportant
-1.3 unsettled unsurely viciously victims vultures walkout weakened weakeners weakening weakens weakling weepy weirdie
-1.3 weirdoes whiney
-1.2 .-: 0-| :-/ :^/ :s =\ =l >:o \o: accused adversative aggravating aggression agitational allergic amoralities
-1.2 antagonisms apathetic apathy avoid ayor battled battlefront bittering borers censors childish collapses collapsing
-1.2 colluding complaint confrontationists confusion confusional contentious cover-up critics crudely cuts deafening
-1.2 defer deprivals derail derision difficulties disbelieve discourageable disorganized distract distracting
-1.2 dominating dorkiest doubtfully doubtfulness doubts dumper dumpiness dynamiter embarrass ennui exclusion exhaust
-1.2 fatalists fatiguing feeble freaked fume gossipry gravers graves graveyard graveyards grimed hesitantly hiding
-1.2 humiliating ignorances immobilized impatient impose ineffectual inquisition interrupted interrupting jealz lagged
-1.2 lamebrains lamenter lames lethargic limitation lossy lousily lowballs lower lowlinesses madder maniacs
-1.2 manipulation masochists mia missed missing mistakenly nerd nervousness no obsessiveness obsolete obstinate offence
-1.2 offend outrageously outrageousness pathetical persecutes perversions pervertedly pervertedness pesky phobic
-1.2 piteous pitier pities pitifully pitifulness pity pressure pseudoscience questionable ranter ranters rebellious
-1.2 rebelliousness refuse refused resenting resents resignation resignations resigner restlessness sceptical screams
-1.2 screwer shakedown shakiest short-sighted shynesses sillinesses skeptically skepticisms smog snobbishly stereotyped
-1.2 stinkers stop strains strangely suspect suspiciousness teased teaselers teases tensely tensest trembly trickeries
-1.2 trickiest trickiness uncertain underestimate undermine unsophisticated uptightness victimises vulnerably warfare
-1.2 warnings weakish weapon weirdly whiner wimpiness wiseacre woesome worn worried worrits zzz |-0 |-o
-1.1 :o\ \= absentee alarmists alarms alas alienation aversions avoidances battling biased bitching blocked bored
-1.1 boredoms charges chuckleheads collapsed collides collisions complainants contemptuousness controversially cornered
-1.1 critic crudes cut defenselessly deniers deride devilments disguised disinclined disputes disregard distorting
-1.1 dooms doomy dorkier dorky doubted drop dulling dullish dully dumpings embarrassedly envied enviers envious envy
-1.1 exhaustions exhaustiveness exhausts exposing ferociously feudalistic feudist foolish forgetful frights fud
-1.1 gossiped gossiper gossipers graver grievants guilt guiltily haunting hesitate hesitation hesitations hoax
-1.1 hooligans ignorant ignorantness ignores immoralities impotent indecisions ineffectually inferiority interrupter
-1.1 intimidatingly intimidatory irrationals itchy jerks killdeer lagging lone loneness loomed lousing low lowliness
-1.1 masochisms melancholies misread mistaking monopolizes moodier moronity nags naive nastiness nervous numbing
-1.1 numbness o-| overstatement perversities pileup pique pitiable pitiableness pitiably pitifullest postpones provoked
-1.1 pu pushy rebelling rebellions remorse restless restriction ridiculousness rigidification rigorous risk risks s:
-1.1 sapfu sarcastically shitakes shockers short-sightedness slash slashing smothery snobbishness solemnity stammerer
-1.1 struggler stubbornness stutterers suing thorny toughly tremble trembled trickery trivialises trivialize
-1.1 underestimated underestimates unresearched victim victimise vindicating vulnerableness warned weakside weary
-1.1 weepers weirdos whorehouse woebegoneness wowser |^:
-1.0 /^: :^\ :^| \-: \: accusation aches adversaries adversatives agitation alone amorally anxious anxiousness arguable
-1.0 arguably bore cancel cancelled carelessly confrontationist contempts contradictable contradiction contradictor
-1.0 crazinesses criticizable darkness degradable derides devilwoods diffident discard discards disguise disguises
-1.0 disillusion distractions downside dud dulls dumbfounder dumbfounders dumbstruck dumpsters egotisms emptily envier
-1.0 excruciates exhaustible expelled faithless fatalistic fatigue ferociousness ferocities flustered foolhardily
-1.0 forbiddances gloominesses gossipmonger greeds grimace grimes haunts hesitancies hesitant humiliates hunger hurtles
-1.0 ignorable inaction inadequately indecisive inhibitors inhibitory jumpy loused lowering lowly melancholics moping
-1.0 mubar numbest obsess obsesses offended offense overreact paranoia paranoid perpetrators perverting pessimists
-1.0 pityingly poisonwood prickle propaganda protest rebelled reluctant repetitive repressiveness resentence resigned
-1.0 resigners ruining ruinousness sappy sarcastic sceptic screws screwups severeness shamefast shockable shortage shy
-1.0 skepticism smugger snobbism sob squelched stammering stinkards stinkbugs stinks struck stuck stutter stutterer
-1.0 stutters submissively supremacists swearing teaser tensed tensing timid timider timidness torn toughish tragedians
-1.0 tremblers tremulous trickish tricksiness trivialities trivializes unclear uncontrolled uncredited unsure weirdies
-1.0 wimpier wimps wisenheimer
-0.9 (% /= :-. :-\ aggressors anxiously apeshit apprehensions battlefields blocks cancels comedowns confronts confuse
-0.9 confusing confusions contemptibility contradictorily criticisms dearths defeaters defiant delayed demanded
-0.9 demanding disappear disappeared disregarding distractedly dizzy dodgy drag dynamited eery egotistical exclude
-0.9 faithlessly feudalism feudalist forget forgotten glooms graved gravelled gravelly graven grimalkin grimalkins
-0.9 grossly grouches hesitance hesitancy horrent huckster indecisivenesses inhibits insensitive lawsuit libertine
-0.9 limited loners loom lowish lurks misses monopolized naggingly neuroticism numbed obsessions obsessive oversell
-0.9 possessive postpone pressured pricking prickly pricks promiscuousness protesters protests remorseful resigning
-0.9 revenged risked safecrackers safecracking sarcasm sarcasms savagenesses screwing shakier shaky shrew shying
-0.9 shysters silliness skeptic slashed smothered sneaky snobbish snubbing stammer stammered stopped stuttered
-0.9 subversive suspected tears tenses tensioners timidest tits tricker trickster trivialization uncompelling
-0.9 unconcerned undecided unwanted vanity victimhoods vulnerability vulnerable weaponry weirdest weirdness weirdy
-0.9 whined whining wimpiest wimpy |o:
-0.8 =| absentees accuse adversary adversely aggressor aversively bashfulness battlefronts battler bothers bribe
-0.8 cancelling charged cheerlessly combats comedones comedown complaining confronted controversial cramp derided
-0.8 devilfish devilwood droopy dumbbell dumbfounding dumpers empty envies envying exhaustibility fascists faultfinder
-0.8 feudal feudalized feudary foolfish foolscaps freakishly freebooting fumers geek gossipries gratings graveside
-0.8 grievant grimmest grimness grosses grouched indecision indifferent inhibitions intimidate irreversible isolate
-0.8 jerked lameness liabilities liability litigation litigious lowball lowdown lowed lows lurk mischiefs miserere
-0.8 mistakable mocker mongering monopolize nimby nosey o.o offensives overselling overwhelms petty pissoir pityriasis
-0.8 postponed pressurises prickles prickling promiscuities provoking rebels resentenced resignedness rigidifications
-0.8 risker risky ruderal scarecrow scepticism shakeouts shyer slashes sobering stall stalled stalling stammerers
-0.8 stammers startler stinkhorns strainer strange strongyloidosis sulky teaseled teaseler tensional timorous toughs
-0.8 trickily tricksy trite trivialise trivialised unaware unbelieving unstoppable vociferous warmouths wellaway
-0.8 zealots |-:
-0.7 &: (-% :-| accusing amoralism amoralisms anxiety apprehensiveness avert avoids awkwardness complainant confront
-0.7 daze dazed deferring depressurizing dilemma discarding dominative doomsayer drags emptied emptier emptiers empties
-0.7 exaggerating exhaustively ferocity feudalizing feudists flees franticness freeboot freeloader fumelike gossip
-0.7 gravestone grimiest grimily griming grossularites hide hides homesick ignorers indecisively indoctrinating keening
-0.7 lowballing lowborn lowse neurotics nimjd noisy noyb numbfishes numbs obsessed obsessives overreaction
-0.7 overstatements overwhelm paranoiacs passively pressurize pressurizers puzzled remorsefully remorsefulness resent
-0.7 resignedly rigidified rigidities rigidity rigidly riskily robed safecracker safecrackings scarecrows sceptics
-0.7 seriously shake shakily shakiness shaking shockingly shylocked shyly smarting snobbier solemnized startled
-0.7 stinkpots submissiveness suspecting teasers thwarting timidities timidly toughie touting trickier trickishly
-0.7 trickledown trivializations walkouts warship weird weirdnesses
-0.6 :& :o| adverseness affected aggressing aggressive aggressivity anxieties apathies awkward battlegrounds
-0.6 bitterbrushes bittersweetness censored challengingly cock confronting confusedly craze crush defensively
-0.6 devilfishes dreadnought dumbcanes dumpcart dumpster emptying exaggerate exaggerates expose falling fatalism
-0.6 feudally flunkeys fumette geeky giddy gigo gloomy hardier heh hurtled immorality indoctrinates killdees lawsuits
-0.6 looms looses louseworts lowboys lowbrows miss moan moans nervously oversimplify perverters pressurise pressurising
-0.6 pricked prickliness pricky profiteering rebel resentences rigidifies screwier sentencing shakeup shittim shocker
-0.6 shortages solemnizing stopping stops strikers stubbornest toughies trembler tricked tricky trivialized
-0.6 trivializing viciousnesses victimologies vulnerabilities wavering weakfishes weirds whiners wisecracking
-0.6 worshipless
-0.5 :-& aggresses alarming antagonizes barrier battleships battlewagons bitterweeds cocky colliding contradictories
-0.5 crazed crazing cutting damnedest dazedness demand depressurize detached dithering dominate dominatrix dorks
-0.5 dumbing exhaustive exposes fatalist feudality feudalize feudatories foreclosure freemartin gravel graveled gravels
-0.5 gravestones ineffective inferiors ironic isolations lamenters looming lowered lowers lowing lurking melancholia
-0.5 misericordes monopolizing nbif o-8 o_o offline overwhelmingly oxymoron perversenesses pitilessness postponing
-0.5 pricket profiteered protested rapeseeds rebellion rig rigid screwers screwiness shakeups silencing snobbiest
-0.5 solemnified solemnifies startlement startlers startles strike tenderfoots tough toughing toughy tout tragedian
-0.5 tranquilizing tricks tricksier triviality trustbuster unconfirmed victimologist warships weirder wisecracked |:
-0.4 %) &-: (-:< :o :| >:-) amusias apathetically averts axe bailout battlement battlements bias bitterns bitters blah
-0.4 blurry borer cautious challenged constrained costly dazedly defensemen defensiveness depressurizations dodging
-0.4 dominators dreadlock dreadnoughts embittered exaggerated exploit ferocious feudalities flirter foolfishes freaks
-0.4 freebasing freezing fumets funky geeks grating graveling gravelling greenwashing grossed grrr hard hid idk imposes
-0.4 imposing impressment indoctrinated inhibited inhibiting isolator isolators killocks liards lowerclassman lowlander
-0.4 moaned moaning nah neatherd nerves numbfish obsessively paradox parley pay peculiarly petrifications pressurised
-0.4 pretend pretends questioned questioning ragee reluctantly rigorously ruderals screw screwworm shook skeptics
-0.4 stinkweed stunned teaseling teaselled teasingly tenderfeet tensioned thwarts tragedienne tranquilizers trickie
-0.4 trickinesses trickishness vague victimologists vigorish warn warns weepie |=
-0.3 0_o 8-o accidental alarmism apologizing apprehensively averted battlewagon bittersweet boreal borecoles collide
-0.3 complacent confronter cynics dazes defensives depressurization depressurized depressurizes determinantal
-0.3 dominations dumbcane dumbfounds dumplings dwellers dynamites emptins exposed fainthearted feudalization feudaries
-0.3 flatterer foemen freewheelers friendlessness grievers grosser grossing grossular grossulars hurtle imposed
-0.3 inhibitor killock lobbying lowlanders lowlights lowlihead maniacal mediocrity meh melancholic o-: o:<
-0.3 petrifactions pettier pressurizations pricker promiscuous rainy repressurize rigidify rigidness screwballs serious
-0.3 shakeable shaken shitake shittimwood snobbisms solemn sorry startlingly stealth stealthier stealths strainers
-0.3 teasing tmi toughest trickly trivium unmatched wimples winnow wisecracks
-0.2 (:< :$ amorphous amortised apprehensibly backs battlers bitterbrush bittern bitterroots bittersweets blam borecole
-0.2 boreholes champac champaks champerty clouded craziest defences domination dominatrices dragged dreadlocks
-0.2 dumbbells feudalisms fighters flirted freebooters gratingly impatiens indifference inhibin irony j/t joypop leave
-0.2 lowdowns lowercased lowrider ludicrously nerdier nerdy nimq noob o: panicles pressurizes pressurizing prickers
-0.2 prickled screwball seriousness stinkbug stinkhorn strain swear teaselling tenderloin toughens toughness touted
-0.2 tragicomic tranquilized tranquillized tranquillizers trick trickling wag warsaws weakfish wimpishness wimple
-0.2 winnowers winnows
-0.1 (-:{ 2g2bt adversatively agitato amazons amortize awaited bashful battleship boldfaced borescopes btdt champer
-0.1 champerties chilling crazier creditor dominances dumbfound dumbwaiters dwells feudalizes feudatory flirtations
-0.1 flirtatiously flirtier foetal freebase freeloaders freezers freezes fumes funneling funnelled geekiest
-0.1 grossularite hysterical joypoppers killdeers killie killifish killifishes lamella lamellae lamellibranchs longing
-0.1 lowland lowlands nerdish o_0 opportunistic overlooked panicums petrification preventing prizefight prizefighters
-0.1 repressurizing richweeds screwworms sentenced sillibub sillily stealthy stinkwood suretyship teasel teasels
-0.1 tenderfoot thwarted touts tranquilizer tranquilizes tranquillizer trembles trivial unbiased warsaw wellhole
-0.1 winnower winnowing wiseacres wisecrack wisecracker
0.1 0-8 :-o >;) aboard acquits amorists amorphously amortises backed backing boldfaces boldfacing boreen brooding
0.1 commits creatin defenseman defensibly defensive dwelling faille freeholders funnel funneled funnelling graticule
0.1 harmonicas heron heronry keens killick lamedh lamellas libertarianisms libertarians lobby lousewort lowriders
0.1 matter matters misericorde nasturtiums oversimplifies panicled paniculate peculiarities perfectionists piqued
0.1 pressurized pressurizer prevent prevented reach repressurized repressurizes retained richweed screwdrivers
0.1 screwlike securitizations shittah sigh sillimanite silly smartweeds solemnifying stealthily strongyls stuns
0.1 successions tenderize tenderized thrillers toughen toughened tranquillizes tricking trickled warstle weaponless
0.1 wellhead whitewash wisecrackers withdrawal
0.2 affronted amazonite amazonstones amoretti amortizations apologising apology ayc bashfully benignly boreens
0.2 calmodulin champaign champignons compelled contend crazes creatine delicate determinableness determinant
0.2 discounted dominantly dominants dominates dumbwaiter dynamiting escaping excitonic exhaustless foehns foetus
0.2 foetuses freeway freewheeler freeze geekier graticules gratins gratis grey impressionable infatuated isolatable
0.2 joysticks lamellibranch laughable libertinage nastic neath numbat opportunisms opportunist oversimplification
0.2 overwhelmed radians reaches relentless resentencing securitization sentences sillimanites smartweed smugly
0.2 startlements stealthiness strongyles supremacy swears teashops teaspoon teaspoonful tenderization tenderometer
0.2 tenderometers tragicomedy tranquil trickles vitalism warmblooded welly
0.3 (;< *-) amorettos amorphousness amusia aug-00 authority awaits boldface challenge challenges champertous charmeuse
0.3 clears comedo committing convincers defenders diviner diving dweller dynamometer dynamometers dynamometric dynamos
0.3 easel energetics excitative exciton excuse explorations flatterers freeboard freemasonry freestyles freewheeled
0.3 fumeless hail hurtless intense keened landmark lowercase mandatory number opportunists oversells passionflower
0.3 pensive pls plz pmfji prevents prickets prizefights safetyman screwbean screwdriver securitize sentence shakers
0.3 slickest smilaxes solemnify solemnities solemnize startling strongboxes surprisers teas teaspoonsful tenderizes
0.3 tenderizing tolerances toughnesses tranquilize trustees verdicts victimology vindicate vitalist vitalists want
0.3 welladay whimsical wiseguys }:-)
0.4 >:) admitted anticipation apologised apologize await beauticians benefice beneficiation brights bwahaha bz
0.4 challengers champignon charmeuses cleared creatinine darings defence defenceman defender defensibility
0.4 delicatessen delicatessens demonstration dumpling dwelled dynamiters easements enthral exempt expands fantastico
0.4 flagship flatter flattery flirtiest freelancers freelancing freesia freesias freestyler fumet funnels fysa
0.4 gracilis gratin importancies isolationism kidding legally libertarianism libertines longings meritocrat nasturtium
0.4 numbles opportunism painlessness passionflowers pretending prizefighting profiterole promisors radian reached
0.4 resolvents safes sentimentalising sentimentalisms sentimentalizations slicker speculative stealthiest suprematists
0.4 suretyships teaspoonfuls tenderizer tenderloins thriller tolerantly treasurers treasurership trivially trustor
0.4 vigorishes vigorousness vigours warmouth warmup welled wellies wisents yoyo }:)
0.5 3:) [-; adorns ambivalent amortise amortizable assuror calmatives carefully challenger champagnes champaigns
0.5 champers commitments contender creationists daredevil defense devotees divinise dwell escapes excitor exclusive
0.5 extends feeling fervid flirtatious freehand freeholder freewheel freewheeling funnelform harmonicist herons
0.5 idealogues impressionisms impressionists impressments joker keener laidback launched legal lowe outmaneuvered
0.5 panicle popularises profiteers profiteroles reliant soothed stronghold strongmen supremacist teaspoons tendered
0.5 tranquillities treasurer triumphalist troubleshoots trusteeship unequaled vigorously wellheads wellsite yearning
0.5 zealous
0.6 *) ;] activeness amoretto amortization amortizes benignancy blamelessness brisk careful challenging comedienne
0.6 contestable convincer crediting defencemen delicates dignitaries dominatrixes dynamometry dynamotor emotional
0.6 engagements engrossed fighter flatters flirtatiousness flirters flirty freewheels giggler gn8 graciles greets
0.6 guiltlessness harmonica honoraria humoral idealising impressure indestructible infatuation intellection intricate
0.6 invite joyridden keeners meritocracy methodical mmk nerdiest numberable peculiar peculiarity perfectas rapture
0.6 ratified scoop securers slap smilax solemnizes solid strongyl surpriser tenderer tendering tenders tensionless
0.6 trusteeships verdict vested victimless vitalised warming wishes worshipper
0.7 ;-] adopt adopts amazon amusable assets assurors blameless casually champing cleaner competitive convinces
0.7 convincingness creationism defenses dynamite escape excelsior extend favoritism favoritisms flirts freeboards
0.7 freedmen freehold freelanced freelances freemasonries freestyle freeware fumer growing guiltlessly heronries
0.7 honorarium idealists ijs inquisitive iou isolationist joyrider joystick longingly offenseless partiers peaceniks
0.7 perfectionistic pmji privileging profiter raptures relaxants resolved resolvent resolver resolves securitizing
0.7 sentimentalists smarted solemnization solutions spirit stout strongbox strongman surprisals tenderheartedness
0.7 toughed tougher troubleshooting vigilant worshipful
0.8 ;d acquit activenesses admit adorned adornments adventuress agrees amortized amortizing amusingly apologises
0.8 bargain brilliantine casual chances chuckler crazyweed creationist debonair defensible determinate determinations
0.8 divined divines dominance doubtlessness entrusted excitons fine flawlessly flirting freebased freebases
0.8 freestylers freewheelingly freewriting fyi giggles glamourize guiltless harmlessness harmoniums idealisms idealogy
0.8 ideals important impressible impressionism inspirits intact intellections intellectively intellectualists
0.8 intellectualizing invigorated jho joyrides jp livelihood nurturers palatableness passive peacenik playing pmbi
0.8 prizers profiteer promisee radiancies reaching recommended retreat richens safelights sentimentalised
0.8 sentimentalist sentimentalize sentimentalizing significant sillies silliest smug solemnly solve substantial
0.8 succession superiorities supremacies swift top tranquillest tranquillizing treasury troubleshoot troubleshooters
0.8 unbelievable urgent vitalizations warmups worshippers xtc
0.9 ;) acceptations adequate adorn adorners adventurers allow appeased appeases assurer attractancy audacious awarder
0.9 benignities blamelessly boldnesses buoyant certainties cheerleader clarifies compassionateness compelling consent
0.9 decisive determinable determinably determinatives divining doubtless dynamists dynamitic energies exhaustlessness
0.9 exploration fad flexible freeform graced grants grins hailed harmonicists harmonium harmonizations hhok
0.9 humoresques impression impressions innocenter intrigues jk jokesters joking joyriding jt libertarian livelihoods
0.9 lown loyalisms musm okay opportunistically optimizations pardoned perfectiveness perfectives popularizations
0.9 prepared profitwise promissory raptured recommends romanticized sentimentalities spark stimulate stimulated
0.9 straight successional successively successor surprised surprises tendernesses terrorless toughening treasuries
0.9 triumphalists validated vigour virtuosi visions warm wilco wiselier wishing worshipers worth
1.0 :p ;-) >:p [; abilities acquitted adorning advanced advantage alright amazonstone amoristic appeasing beneficiate
1.0 bffn brightener brighteners certainty champed champy chance cleverish comprehensive conciliate consents convince
1.0 created cutesie dearies delicately determinacy dream easing endorsed engagers engages entertainers excitableness
1.0 exonerating favors flatteringly flexibilities freeholds freers freethinker freethinkers freewill frisky fulfills
1.0 gigglier giggly gracioso granted guarantee harmless heroicomic honorariums immortal impressionist interests j/w
1.0 jhomf jj jokes joyrode justifiably keenly loyalism luckiness magnification neater plays pleasers poised
1.0 popularizers pressureless prizefighter prizer promisor readiness relaxant relaxations relievers resolvable
1.0 richening sentimentalism sillier steadfast stimulates strongholds successiveness superiors surefire surety
1.0 troubleshooter trustee trusties vigors virtuose vision warmers wells worshiper worshiping wowsers wp
1.1 (* (; :-, acceptability accepted actives agreed agreements amuser appease apprehensible assurers attachments
1.1 beneficed benefices benignantly brightwork calmative certain chic chuckles chucklesome committed conciliated
1.1 conciliates consolable create creates creation creationisms definite desired determinateness determinative
1.1 determinator devotements divinations dynamics energy engager ensuring entitled excitatory faultlessness fearlessly
1.1 fearlessness fervent fitness forgive forgiveness freedman freelancer freer freestanding freethinking gigglingly
1.1 god grandee greeted grinned grinner gt happing helpers heroicomical humor humoured increased innocents invigorator
1.1 jokey joyride lenient loyalists meriting meritocrats merrythought neatens neats outreach painlessly palatably
1.1 partyers popularised profitabilities profitability promisees radiances relievable resolute respectiveness
1.1 safeguarding safelight salient securement sentimentalized sentimentalizes significance smarty sociability solved
1.1 solves strongly successionally successive successors supporter surprise surprising tnx tolerant txs vigor
1.1 visioning vitalise vitalises vitally vitals warmed warms well willingness worshipfully yolo
1.2 ,-: absolve admiralty admits adventurer adventurists alert amorino attachment attractor attractors avid awardees
1.2 beautician benevolentness blithe bolder champagne championed cheerio cheerleaders cheerleading cheerleads chuckled
1.2 chucklers chucklingly comedians comforters commit convivial creating creditableness d: determinately devotional
1.2 devotionals diviners doubtlessly dynamical dynamisms eased excitability excitants festivalgoers flatteries
1.2 forgivers freeborn freedoms freelance frees gg glamorising glorioles gn gracility grandees hago heavenwards
1.2 helping humored humoresque humorist hurraying idealize immune impressibility inspirators intellectualized
1.2 intelligibly invigorations invigorators jaunty jocular join joke laughableness laughably libertinisms lucking
1.2 magnifications neaten nicety ok opportuneness outgoing painless pardons partyer perfective playfulness
1.2 popularising promisingly prospect prospects radiants relaxins respectableness restore restores restoring
1.2 romanticizing securities sentimentalise sentimentality sentimentalization share shares singleminded sociabilities
1.2 solidarity sparkling stable stamina succeeder supportive surer surprisingly surviving swiftly tenderers tolerance
1.2 tranquilly treasure treasurerships trustors usefulness vital vitalities vitamin warmer wiser worship yeah yep
1.3 (-* (-; :-) :?) =p [: ability absolves acceptable acceptableness acceptation accepts achievable acquitting
1.3 actively admiral adorner adornment adventure adventured adventuresomeness adventurously agreeablenesses amusers
1.3 apologized assures assurgent attractant awarders benign benignity bolds boosts calm calmly calms comfortableness
1.3 competent conciliating cool curious cutely desirable desirous eases easygoing embrace endorse endorsement
1.3 entertain expand fair faithed fan fantasticalness favorer favouring festivalgoer flattering flexibly freebee
1.3 freebees freedwomen fresh funnies funnymen gl glamorise gracing granting gratify greet harmonies harmonised heros
1.3 honorers huge humorists idealizer importantly improvements improvers incentives increase inspirited
1.3 intellectualistic inviting invulnerable joked joyriders kewl laoj leet meaningful meritoriously nbd neatening
1.3 neatness novel nurturances optimally optimistic original pardon perfectionism perfecto pleasantries please
1.3 popularization popularize pray profited prominent promise promiser protects radiantly redeemed reliefs relievo
1.3 rescues respectfulnesses respects responsible riskless romancer romances romanticises romanticists secures
1.3 securing sentimental shockproof smartie sok solution soothing sparkles spirited strengthen succeeders supported
1.3 supremos sure surest sureties trustier truth vitality vitalizing wises wisewomen youthful
1.4 0:-) ;^) ^<_< advantaged adventures adventuresses adventurist adventurous agreeing applauds assurance assurances
1.4 assure assuredness attractants badass benefic benevolently boosting brightnesses certainly charitably chuckling
1.4 clevernesses contented contentedness creditabilities daringness delectables determined devote diamond dignities
1.4 dynamist easefully easily endorses engage engaging enthusiasts excited exciters exultantly favorers flexibility
1.4 forgave forgivingly freehanded funnyman g1 gains gentler gigglers giver giving gladly glamors ha harmlessly
1.4 harmonising harmonizing heavenward helper hho1/2k highlight honorary honorific humerous idealise idealizations
1.4 idealizing importancy innocent innocently intellectually intelligible irresistible j/p j4f keenness lawl m8
1.4 magnificoes meditative merited motivation neatly np ntmu nurture openness partied partier perfecta perfecters play
1.4 played popularizes prays pride promotes proudhearted radiance radiancy reassurances reassure relaxers relievedly
1.4 resolvers respectively restored revive robust safeguards safekeeping secure securely secureness securitized
1.4 security shared solving strengtheners superiority tenderest thks validates validating value valuing vitalizes
1.4 warmish welcomed welcomer wellsprings worships worthwhile
1.5 (-:o (^: (^; 0:-3 5fs :-p absolved acceptably admirals admires advantageous advantages adventurism affectionally
1.5 affections agree amusement amusements apologizes applauded appreciators asset assured attract beneficences boldly
1.5 boldness boosted brightens brightly calmer charminger cheerled comedy comfort contentment courtesy coziness
1.5 creatively credited credits cutesier cuteys cutie d= daring devotement dynamically dynamistic eager ease easeful
1.5 easygoingness efficiency elation encouraged encourager encouragers energizations engagingly enthusiast
1.5 excitabilities excitable ez fantasticate festivals fiestas fit freehearted freemen giggled giggling gloriole grant
1.5 gratifies greater grinning harmonics harmonizes honoraries humoristic idealities importance impressionistic
1.5 incentive inspiratory intellectualization intellectualize intellectualness intelligencer intelligentsia
1.5 intelligibility intelligibleness interestedly invigoration jewel jokester keen kissers kk like loyalist mercy
1.5 natural niceties nurtural o:) opportunely optimal optimizer perfectible perfectionist pleasanter popularizing
1.5 praying privilege promised promoting ready reassurance reassures recommend relaxedly relaxes relieve reliever
1.5 relieves relieving responsive restful romanticization safeguarded safeness safeties satisfactoriness satisfactory
1.5 scrumptiously securer sincerities smartened smartens smartly smartnesses smile smileys sociableness soothe
1.5 supportiveness supports surefootedness surprisal survivor sympathy tenderhearted thank thrill thrills thx
1.5 tranquilities tranquilness truer trustfully tx validate vigoroso virtues vitalized warmness wealthy wellspring
1.5 wised
1.6 (-: (o: *<|:-) *^: 0;^) =] absolving accept acceptabilities acceptant accepting admiralties admirations admiring
1.6 adores advantageousness advantaging agreeably alive amorist amusing apologise appreciativeness assuredly assuring
1.6 astonished beaut benefits blessedness bold boldest brighter brightness calmed calmest calmnesses capable
1.6 captivated charitablenesses cherish clear comedian comediennes commitment compassionated compassionates
1.6 compassionating convincingly creations creativity credit d-: darlingly dear delighting devotedly devotee devotes
1.6 divinatory dynamic dynamism eagerly eagers easement easiness efficiencies elegancies enchanted energization ensure
1.6 entertainer enthuse exonerates favorably favourer favourers flattered focused foolproof forgivably forgiven
1.6 freedwoman freeness freest friendships funninesses gained glamorization glamorizers glorifiers graces
1.6 gratification gratified greeting grinners growth harmonized harmonizer harmonizers helps holidays honourers hoped
1.6 hopefulness huggable hugger humorous humors idealist impressionistically innocence innovation integrity
1.6 intellectuals intelligencers intelligences j/k jw kissed liveliness lts luckie lucks lylb merrythoughts motivate
1.6 niceness nurturance o;^) opportunities optimisation optimises optimists optimization palatable partying passional
1.6 peacekeeper peacekeepers peacekeepings perfects picturesque playfully popularise popularities positivism prettied
1.6 privileges profitably profiting promisers promises promote protect relaxer relieved relishing resolve resolving
1.6 respecters revives rewarder safeguard satisfactorily securitizes smarts sociably stressless stresslessness
1.6 stronger stunning surefootedly thoughtful tranquilest trustily trustiness trustingly trustingness ty unified
1.6 untarnished vindicates vitalization vitalize welldoers welling wiseliest worshipfulness worshipping xp xqzt yvw
1.7 8-d :-* [= acceptances accomplishes active admirers adorer adventuresome adventuristic amuse amuses amusive
1.7 appreciate appreciations appreciatory approves astound attracts awarded beautifier beautifiers beauts
1.7 beneficialness benefitted benevolence blessedly boost calming calmness carefree charitable charm cheerer cheerlead
1.7 chuckle clarity clean clearly comedic comedies comforting comfortingly compassionately complimentarily compliments
1.7 convinced convincing creativities creditably definitely desire determination devoted dignity divination dreams
1.7 eagerness efficiently empathetic energizers engaged enlightens entertained enthuses exhilarating fantasticality
1.7 favor favorited flirtation forgivable forgiver forgives freed freeman freenesses friended funnier gallant gga
1.7 giggliest givers glamorize gracile grander hardy harmonize harmony healthy heavens help hilarious holiday honorer
1.7 honorifics hopefully hugged humouring idealism idealistically impressiveness intellective intellectualities
1.7 intellectuality interested interesting interestingly j4g jollities justified kisser laugher laughers liking
1.7 livelier livelong meritoriousness merits merrier merrymakers neatest nifty nurturant opportune optimised
1.7 optimising pardoning parties party peaceable peacemaking pleaser pleases positivists pretties promising rapturous
1.7 reassured reassuring reinvigorating relaxin respectably respectfully romancers romantic romanticise romanticised
1.7 safest secured sincere smart smartening smarties smiler smiley special splendiferousness strengths strongish
1.7 support terrifically thoughtfully treat trusting truthfulness valuableness values virtuosa warmest warmly welcomes
1.7 wish x-p yeees yes
1.8 accomplish admirer adored adventurousness affectioned agreeable agreeableness amorous amused amusingness applause
1.8 appreciatively approved astounded astounding attracted attractions attractiveness awardee beatific beautifies
1.8 beneficiaries bless cared championing champs charity cheerers comfortably comforted complimented creativeness
1.8 creditable cutes dearly deliciousness devotions dignify divinities easier easiest efficient elegances
1.8 encouragement energetically enjoyably entertainment excitant excitation excitations exonerate exonerated faith
1.8 faithfully faiths favored favoring favorites favoured favours ff foaf forgivingness freebie freebies friending
1.8 friendlily fulfilled funniness funning gaining generously genial gentlest giggle glamorised glamorizing grace
1.8 gratefuller gratifications greetings hahas harmonic harmoniousness harmonise helpful heroines honesties honourer
1.8 hopes hoping huggers hugging hurrayed idealistic idealization idealized ideally improver improves improving
1.8 inspiring inspiriting intellects intellectualizes interestingness jollity kiss kissy lighthearted liked likes
1.8 livelily lmbao lol lucky magnifico marvel mature merit nice once-in-a-lifetime opportunity optimisations optimizes
1.8 peaceableness perfecter perfectibility popular popularizer popularly positivisms powerful proactive progress
1.8 promoted qt reassuringly reinvigorates rescued respectabilities respective romantically romanticize romanticizes
1.8 rotglmao safer safety satisfied satisfies saved sharing sincereness sparkle strengthened strengthener succeeded
1.8 sunny talent tenderly tenderness thankfully tranquility tranquillity treasures true trustworthiness truths united
1.8 usefully vindicated virtue virtuosas virtuosos virtuously vivacious warmhearted wellborn winnable winned wisely
1.8 woot yw {:
1.9 (-:|>* (^;o *: 0:) 0:03 8) <3 accomplished advantageously affectional affectionate agog agreeability appreciating
1.9 attractive awarding beautification beneficial benefitting benevolences better blessers braved braves bright
1.9 brighten brilliants championship charitableness charmer charms cheerfuller cherishers classy comforter commend
1.9 commended complimentary considerate contentedly creative creditability creditworthiness cutenesses dearer dears
1.9 deary deliciously dignitary easy effectively elegantly encourages energetic energising enjoyable enjoyableness
1.9 entertaining entertainingly enthusiasm enthusing esteemed excitements exciter excitingly faithful faithfulness
1.9 fame fave favour fearless fond fondly forgiving fortunate freely friendship fulfill funnily funny gallantly gentle
1.9 gift glamours good hak handsomely harmoniously harmonization helpfulness heroizing hi5 honester honorarily hope
1.9 hurrahed ideality idealizers impress improve influential innocency innovative inspirator inspires inspirit
1.9 intelligential invigorate jovial keenest kissably laughings lively loyalties lucked luckier n1 nicely nicer
1.9 nurtured nurturer nurtures optimality optimise peacefuller playful pleased pleasurability pleasures popularized
1.9 positivistic praiseworthily preciousness privileged profit profitable profits protected proudful reinvigorated
1.9 rejoice relax respectable respectfulness rewarders richened richly romanticist romantics safe satisfaction
1.9 satisfiable satisfyingly sentimentally smarten sociable splendiferously stimulating strongest sunshiny supporters
1.9 supporting supremo surefooted surely thanked thankfuller thanks thoughtfulness thrilled tranquiler triumphalisms
1.9 truest truly truster truthfully urw useful valued welcomely welcomers welcoming wellness wiseness worthy
2.0 (^;0 :) :c) =-3 acceptance amorousness aok applaud attraction awards benefit blesseder braveries breathtaking
2.0 brilliantines carefulness cares charmed cherishable cherishing clever cleverer compassion cute cutiepie dearness
2.0 dedicated delighter delights devotedness devotion dignifies encouragingly energizing engagement enjoyments
2.0 enthused enthusiasms excel fab fantastical fascinates faultless faultlessly fav favorite festive friendlier
2.0 friendliness ftw gently gj glad glamourous glorification goodness graceful grand grateful gratifyingly gratz haha
2.0 handsomer harmonious heroized hhoj honestly hugz humourous idealises idealizes impressively improvement innovates
2.0 inspirers intellect intellectualist intelligent intelligently interest invigoratingly j/j jewels jollies
2.0 jollifications kindness kissable l laughed likeable luck lulz marvels merriments mirthfully mml motivated neat
2.0 neatened noble nurturing o:-) optimisms optimized optimizing passion peaceably peacekeeping peacemaker pleasantry
2.0 positivist praiser praisers prizes rejoiced relaxedness respectful rewardable romancing romanticizations satisfy
2.0 satisfying serene sincerer sincerest smarter smartness smiling splendors sprightly strengthens suave sureness
2.0 sweet talents thankfullest thrillingly triumphal triumphs truthful virtuoso virtuousness warmth wealthily welcome
2.0 welcomeness wows
2.1 ((-: (-;| (?: *-: 10q 1337 2qt :> :^) :o) :} <: =3 >_>^ @>-->-- admire adorably adorers amazedly ambitious
2.1 applauding approval ardent astoundingly astounds attracting attractivenesses beautified beautifuler beneficiary
2.1 brightened champ charmers cheerfully cheerfulness cheers comedically comforts compliment confidently
2.1 courageousness cutesy cutey daringly delightedness delightfulness devoting dignifying effective elegance elegancy
2.1 elegant encouragements energised energize energizer energizes excite excites fantasticalities fascinated favorable
2.1 festivities fiesta freeing friends glamor glamorises glamorized glamorously glories gorgeousnesses grandeurs
2.1 gratefully grin harmonically heartwarming heroize honoree honourable honouring hug humoring humour hurrahs
2.1 idealised impressed impresses improved inspirations inspiritingly intelligence invigorates invigorating jollify
2.1 liveliest loyal loyally medal meritorious nicenesses o/\o okays optimistically optimizers peacefulness peaces
2.1 peacetimes perfectibilities perfectively pleasantly popularity prettier prosperous proud radiant rejoices relief
2.1 respect respected respecter rewards richnesses roflcopter romanticisms satisfactions scrumptious sincerely slaw
2.1 smiles splendidly sweeties sweetly terrific thankfulness thrilling treasuring triumph trueness trustability
2.1 trusted trustful trustfulness trusts valuable valuables vbg virtuosity vitalising vwp winners wise wisest woo wtg
2.2 ('-: (: (= --<--<@ :] ;-* =) @}-;-'--- \o/ admirableness adorability adorable adorations affectionately agreement
2.2 amazed amazements amazes amusedly attractively beneficently benignant blessing bravery care caring championships
2.2 charities charmingly cheeriest cherisher cherishes compassionate confident congratulate courage cutesiest cuties
2.2 darlings dearie devotionally dignified energise energises enjoy enjoyer enjoyers enlightened enthusiastic excelled
2.2 excitement exciting fascination favorableness festival festively festivity friend friendlies friendly funner
2.2 glorifies gracefuller gracefulness gratefulness hagd hagn hand handsome heroisms heroizes honesty honor
2.2 honorability honorableness honorifically honoured honours hugs innovate inspired inspirer intellectualism
2.2 invincible jollification joys kinder kindly kmuf l&r laughing laughs laughter laughters lovelies merriness
2.2 merrymaker merrymaking motivating nh nicest o:-3 optimize passions peaceful peacetime perfectivity positivenesses
2.2 praised preciously pretty prouder reinvigoration relaxed relaxing respecting rewarded richness romanced
2.2 romanticism safely save splendorous splendour splendours splendrous strength strengthening succeed succeeding
2.2 succeeds successfully sunshine superiorly supremest sweetie sweetness sweets triumphed trustiest trusty virtuosic
2.2 w00t wealth wealthier wealthiest |;-)
2.3 (': *\0/* ---'-;-{@ :') :-d :3 :d =d admired admiringly adventuring amoroso amorously appreciated appreciates
2.3 appreciation beautify beautifying beloved beneficent bl bravely bravest brilliancies cheer cheered cheering
2.3 cherished cleverly cleverness comfortable complimenting confidence courageously courteous cuteness cuter
2.3 darlingness dauntless delighted delightsome divinize earnest ecstasies ecstatic encourage energized enjoyed enjoys
2.3 enlighten enlightening enterprising entertainments ethical excitedly flawless free fun funned generosity generous
2.3 glamorous glorified glorifier gorgeously graciously gratifying gratitude h&k heaven heavenlinesses helpfully
2.3 heroes honest honorees honoring honors hooray hopeful humorously impressive inspirational inspirationally
2.3 intellectual iyq jolly jollying joyance k4y kfy kindnesses kisses kudos laughingly liberties luckily magnific
2.3 magnificences muah o:3 passionateness perfecting pleasant pleasantness pleasantnesses pleasured positiveness
2.3 positiver positivity prize prizewinner reinvigorate rescue revered smilingly splendidness strong sunnier
2.3 supremeness supremer survived swak sympathetic talented tgif tia tops triumphantly triumphing trust trustable
2.3 trustworthily valuably vip winningly woohoo xoxozzz
2.4 (:0 *-; 14aa41 =-d admirability adoringly affection awardable beauties beautifications beneficially brave braver
2.4 champions charmingest cheerly congrats courageous creditworthy delightedly encouraging enjoying entertains
2.4 excellencies fabulous fascinate festiveness gain generousness glamorizer glamorizes glamour gloried glorifying
2.4 gracefully graciousness grandest grandeur handsomeness happier heroically heroics honorably humorousness hurrahing
2.4 hurrays ideal inspiration jollied jollier joyfuller justice kind liberty lovers magnifical magnifically
2.4 magnificence merrily merriment merrymakings optimist passionate passionately peacefully peacemakers pleasing
2.4 pleasurable pleasurableness positively positives praises praiseworthiness prized prizewinners profitableness r&r
2.4 relaxation respectability rewarding rewardingly richer riches richest sexy sgtm sunniest triumphant vibrant
2.4 virtuous visionary wealthiness winning wisdom worshiped yay yummy
2.5 (:o :* aas admirably admiration adorableness amaze amazement award beauteous blessings bonus brightening bwahahah
2.5 cheerful cheerily cheeriness excellences excellency excelling excels fascinating fondness fwb gla glory heartfelt
2.5 honorable impressing jolliness joyfully joying lmfao loyalty masterpieces merry mwah optimism peace perfections
2.5 praising roflmao rotflmfao self-confident smiled superior treasurable tyvm welldoer winnings wowing ywia
2.6 (8 1432 :^* admirable adore adoring appreciative appreciator b^d beauteously beautifulest beautifulness blesser
2.6 blesses bonuses brilliancy cheerier cheery cleverest dearest delighters divine enjoyment enthusiastically
2.6 fantastic friendliest funniest gallantry generosities gloriousness gracious hahaha handsomest happily happiness
2.6 hero heroic hurrah ily2 inspiringly laugh ly lylas mirth pleasantest pleasurably positive positivities praise
2.6 praiseworthy proudest proudly ptl remarkable rich romance rotfl securest sophisticated splendiferous successes
2.6 supreme treasured trustworthy vwd wowed x-d
2.7 :'-) aayf beauteousness beautifully benevolent bliss celebrate celebrated celebrates celebrating delicious
2.7 delightfully divinest divinity excellent glorify gr8 happy heavenliest heavenliness heroine honour hurray iluaaf
2.7 inspire jollily joyfulness kissing lmso lolz loves lovingness ly4e lylab merriest mirthful overjoyed perfect
2.7 perfected perfection pleasure precious prettiest reward rofl romanticising sfete splendent success successfulness
2.7 supremely tenderheartedly thankful warmheartedness wd wins won wonderful worshipped
2.8 (-:0 2g2b4g :-)) alol amazing beauty beneficence blessedest brilliant charming cutest darling delectably
2.8 delightful ecstatically exhilarates exuberant fabulousness godsend gracefullest heroism honored joy joyousness
2.8 lifesaver lovely lover loverly miracle pleasuring pukka rejoicing rotflmao sete splendid successful sweethearts
2.8 tenderheartednesses win winner wow xd
2.9 8d adoration ambw beautiful bff blessed blissful blockbuster brilliance brilliances champion congratulation
2.9 congratulations delectable delight divinely ecstasy ecstatics funnest gleeful gloriously gorgeousness heroical
2.9 jolliest joyed joyful joyously lmao loved loving luckiest magnificent marvelous positivest rotgl soulmate super
2.9 wonderfully wonderfulness
3.0 amor brightest brilliantly enrapture exhilarated exultant gorgeous hallelujah heavenlier heavenly honestest
3.0 jubilant lovable lyb outstanding perfectness prizewinning rotflol smartest splendor sweet<3 xlnt xoxo
3.1 awesome excellence excellently great joyous lyl masterpiece peacefullest perfectest superb vbs
3.2 143 best cheerfullest elated euphoric freedom glee glorious greatest happiest heart love lovingly paradise
3.2 perfectly
3.3 ecstacy euphoria hearts lya sweetheart
3.4 aml ilu ily magnificently
"""
