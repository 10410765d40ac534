"""How much each sign of whom a pronoun means weighs: by `python -m bench.reading.learn_pronouns`.

Learned from the train passages of LitBank (David Bamman and others, CC BY 4.0; `NOTICES.md`). A weight is what the
sign adds to the natural logarithm of how likely that one is, beside the others.
"""

from collections.abc import Mapping
from functools import cache

from afterdraft.reading.weights_written import entries


@cache
def weights() -> Mapping[str, float]:
    """By sign."""
    return dict(entries(_LINES))


# A weight, and the signs that have it.
_LINES = """
-1.35 paragraphs 1 sentences +
-1.22 across name acts +
-1.19 paragraphs 2 sentences +
-1.18 across role is +
-1.16 her across name is | named 4 pronoun
-0.91 him within gap 8
-0.87 named 8 speech
-0.83 he behind is
-0.8 paragraphs 0 sentences 5
-0.79 across role is 5
-0.76 he behind acts
-0.75 first speech acts rank 2
-0.74 him rank 3
-0.73 paragraphs 3 sentences +
-0.72 across name is 3 | within speech acts gap +
-0.7 him within speech acts
-0.68 himself acted 5 | named 2 name | rank 2 near 2
-0.67 rank 2 of 3
-0.66 himself rank 2
-0.65 himself across role is
-0.64 his acted 3
-0.62 him rank 2
-0.61 his behind acts | named 2 pronoun | opens rank 1 speech acts
-0.6 her across role is | named 8 name | opens rank 2 pronoun is
-0.59 him within name acts | his speaks here
-0.58 across role acts +
-0.57 him acted 5 | himself within gap 60
-0.56 her speaks here | his across role is
-0.54 gender unknown
-0.53 first name is rank 1 | him speaks here
-0.52 across name is 5
-0.51 nobody paragraphs 2 | stranger name
-0.5 himself acted 3
-0.49 times 8
-0.48 he across role is
-0.47 her rank 3 | him within role acts | rank 2 near 1
-0.45 first pronoun acts rank 2
-0.43 paragraphs 2 sentences 5
-0.42 stranger pronoun
-0.4 him within gap 25 | himself behind is
-0.39 he across name acts | rank 3 of 4 | within role is gap +
-0.38 he acted 5 | he speaks here | his acted 5 | rank 3 near 3 | within pronoun acts gap 8
-0.37 her acted 5 | him acted 3
-0.36 named + speech
-0.35 last actor + | stranger role | within speech acts gap 8
-0.34 he acted 3 | last actor 1
-0.32 named 4 speech | opens rank 2 pronoun acts | within name is gap +
-0.31 named 1 name
-0.3 across speech acts 5 | rank 3 near 2
-0.29 paragraphs 4 sentences + | rank 2 of 4
-0.28 he rank 3 | himself within pronoun is | named 2 role
-0.27 himself across pronoun is | nobody others 1 | nobody sentences 1 | paragraphs 0 sentences 3
-0.27 within pronoun is gap 8 | within speech acts gap 60
-0.26 he across name is | his across pronoun is | his acted +
-0.25 named 4 name | rank 1 near 2
-0.24 across speech acts 1 | his across name acts | his across role acts
-0.23 nobody paragraphs 4 | opens rank 1 name is
-0.22 his across speech acts | his within gap 1 | his within role is | rank 3 near 0
-0.21 he across role acts | her across pronoun acts | his within speech acts | named + role | within name is gap 60
-0.2 across name is 1 | he within name is | her across role acts | nobody others 2 | times 1
-0.19 his rank 2 | rank 1 near 3 | rank 1 of 2
-0.18 himself acted + | himself behind acts | himself within speech acts | named 0 role
-0.17 across name is + | across speech acts 2 | her rank 2 | himself across name is | himself speaks here
-0.17 opens rank 1 role is | rank 2 near 0
-0.16 her acted 0 | him across role is | himself rank 1 | rank 2 near 3 | times 4
-0.15 first name is rank 2 | first speech acts rank 1 | he acted + | her across speech acts | her behind is
-0.15 his behind is
-0.14 her last actor | his within gap +
-0.13 across pronoun is 1 | her within name is | him across name acts
-0.12 he rank 2 | nobody of 2 | recent +
-0.11 him acted 2
-0.1 his rank 1 | nobody he | nobody her
-0.09 him within pronoun acts | opens rank 2 name is
-0.08 across name acts 5 | across role acts 3 | himself within gap + | himself within gap 25 | his within pronoun acts
-0.08 paragraphs 1 sentences 3 | paragraphs 3 sentences 5
-0.07 across pronoun acts + | himself across role acts | his rank 3 | opens rank 2 role is
-0.06 he within gap + | rank 1 near 0 | recent 2
-0.05 himself rank 3 | nobody sentences + | paragraphs 3 sentences 3 | rank 0 of 3
-0.04 across role is 2 | himself within pronoun acts | last actor 2 | paragraphs 1 sentences 5
-0.04 within pronoun acts gap 25
-0.03 nobody of 1
-0.02 he acted 2 | he within name acts | nobody paragraphs 1 | opens rank 2 name acts | recent 5
-0.01 himself across speech acts | named 0 speech | recent 1
0.01 first role is rank 2 | her acted 2 | her within speech acts | him within pronoun is
0.02 him acted 0 | him within gap + | opens rank 0 pronoun is | paragraphs 1 sentences 1
0.03 he within speech acts | her rank 1 | him acted + | himself last actor | nobody | opens rank 0 role acts
0.03 rank 0 of 1
0.04 across role acts 1 | across role is 3 | him across speech acts | named 1 pronoun | nobody his
0.04 paragraphs 0 sentences +
0.05 he within pronoun acts | named 1 speech | opens rank 0 pronoun acts
0.06 he last actor | he rank 1 | him within gap 60 | his within gap 8 | nobody sentences 0 | within name acts gap 25
0.06 within name is gap 25 | within pronoun acts gap 60
0.07 cast 2 | he acted 0 | his last actor | last actor 5 | rank 3 near 1 | within name acts gap +
0.08 paragraphs 0 sentences 2
0.09 nobody paragraphs 0 | rank 1 of 3 | times 2 | within name is gap 1
0.1 he across speech acts | himself across name acts | himself acted 2 | himself within role is | nobody of 3
0.1 opens rank 1 role acts | within role is gap 1
0.11 first pronoun is rank 1 | he within pronoun is | him across pronoun is | opens rank 0 speech acts
0.12 nobody sentences 5 | within role is gap 60
0.13 her acted + | him last actor | his rank 0 | his within name is | opens rank 1 name acts
0.13 opens rank 1 pronoun acts
0.14 across name is 2 | across pronoun is + | first pronoun acts rank 0 | her behind acts | himself within name acts
0.16 her across name acts | his within pronoun is | within pronoun is gap 25
0.17 across pronoun is 5
0.18 across speech acts + | himself acted 1 | his across name is | last actor 0 | within pronoun is gap +
0.19 nobody paragraphs 3 | rank 0 near 3 | within pronoun acts gap +
0.2 across pronoun acts 3 | first name is rank 0 | nobody sentences 2 | within name acts gap 8
0.2 within pronoun is gap 1 | within pronoun is gap 60
0.21 he rank 0 | rank 0 of 2
0.22 across pronoun is 3 | he within gap 8 | her within role is | his acted 2 | named 2 speech
0.24 him across pronoun acts | him within role is | named + pronoun | times + | times 16
0.26 across pronoun acts 2 | across role acts 5 | first name acts rank 1 | first pronoun acts rank 1
0.26 he within gap 60 | her within gap + | rank 0 near 2
0.27 across pronoun is 2 | him across name is | last actor 3
0.28 recent 8
0.29 across pronoun acts 1 | first speech acts rank 0 | gender known | his acted 0 | his within gap 60 | rank 1 of 4
0.3 cast 1 | himself across pronoun acts | nobody him | within speech acts gap 25
0.31 he within gap 25 | he within role is | himself within name is | within role is gap 8
0.32 her acted 1 | her within pronoun acts | nobody sentences 3
0.33 across name acts 2 | he across pronoun is | opens rank 2 role acts | paragraphs 0 sentences 0
0.34 across speech acts 3 | within pronoun acts gap 1
0.35 he across pronoun acts | paragraphs 0 sentences 1
0.36 first pronoun is rank 2 | nobody himself
0.37 first role is rank 1 | him within name is | named 0 pronoun | rank 0 of 4
0.38 himself within gap 1 | himself within role acts | within role acts gap 8
0.39 her acted 3 | her rank 0 | him rank 1
0.4 cast 3 | her within pronoun is | her within role acts
0.41 him behind is | himself rank 0 | his acted 1 | within name acts gap 60
0.42 first pronoun is rank 0 | first role is rank 0 | he within gap 1 | his within name acts
0.44 across pronoun acts 5 | first role acts rank 1 | his within gap 25 | nobody others 0 | paragraphs 2 sentences 3
0.47 rank 0 near 1 | within role acts gap +
0.48 across role acts 2
0.49 across role is 1 | her within gap 25
0.5 cast 0 | he acted 1
0.51 her within gap 60 | him rank 0 | recent 3 | within role is gap 25
0.52 him acted 1
0.55 his across pronoun acts | opens rank 1 pronoun is | paragraphs 2 sentences 2
0.56 him across role acts | him behind acts
0.57 paragraphs 1 sentences 2
0.58 her within gap 8 | himself acted 0
0.61 across name acts 1
0.64 her across pronoun is
0.69 her within name acts
0.72 rank 1 near 1
0.73 first role acts rank 2
0.74 himself within gap 8 | within role acts gap 25
0.76 first name acts rank 0
0.79 named 0 name | opens rank 0 name is
0.82 his within role acts
0.88 within name is gap 8
0.91 named 8 pronoun
0.92 first name acts rank 2
0.97 within role acts gap 60
1.0 rank 0 near 0
1.08 paragraphs 4 sentences 5
1.09 he within role acts
1.36 first role acts rank 0
"""
