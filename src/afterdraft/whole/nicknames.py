"""Given names and their short forms, both ways. By hand, from common knowledge of English names."""

from collections.abc import Iterable

from afterdraft.reading.lexicon import ROLES

SHORT = """
william will willie willy bill billy|robert rob bob bobby robbie bert|richard dick rick dickie|john jack johnny johnnie
jane jenny janey|james jim jimmy jem jamie|thomas tom tommy|edward ed eddie ned ted teddy|edmund ned ed|henry harry hal
charles charlie charley|frederick fred freddy freddie|george georgie|joseph joe joey|samuel sam sammy|benjamin ben benny
daniel dan danny|david dave davy|michael mike mick|nicholas nick|alexander alec alex sandy|andrew andy drew|anthony tony
arthur art|albert bert al bertie|herbert bert bertie|philip phil pip|peter pete|stephen steve steenie|walter wat walt
elizabeth eliza lizzie lizzy liz beth betty bessie bess lisa|margaret maggie meg peggy madge daisy|mary molly polly may
catherine kate katie kitty cathy kit|katharine kate katie kitty kit|katherine kate katie kitty kit|anne annie nan nancy
susan sue susie|helen nell nellie|eleanor nell nellie nora|ellen nell nellie|frances fanny fran|dorothy dolly dora dot
harriet hattie harry|caroline carrie caro|charlotte lottie|emily em emmy|emma em emmy|louisa lou|isabella bella isabel
sarah sally sadie|martha patty|matilda tilda tilly|rebecca becky|theresa tess|josephine jo josie|amelia milly
victoria vicky|florence flo florrie|julia julie|rosamond rose|christopher kit chris|gilbert gil|timothy tim|patrick pat
patricia pat|laurence larry laurie|lawrence larry laurie|leonard len lennie|ronald ron|reginald reggie|sebastian seb
"""
GROUPS = tuple(frozenset(group.split()) for line in SHORT.strip().splitlines() for group in line.split("|"))
SHORTEST = 3  # letters of a short form that only cuts a name off


def same_given(name: str, others: Iterable[str]) -> bool:
    """Whether `name` is one of the others, or a short form of one, or one of it."""
    known = set(others)
    if name not in ROLES and any(_cut(name, other) for other in known - ROLES):
        return True  # Den, Denholm
    return name in known or any(name in group and group & known for group in GROUPS)


def _cut(one: str, other: str) -> bool:
    """Whether one name begins the other."""
    short, long = sorted((one, other), key=len)
    return len(short) >= SHORTEST and long.startswith(short)
