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
-1.39 paragraphs 1 sentences +
-1.22 across name acts +
-1.17 her across name is
-1.16 across role is +
-1.14 named 4 pronoun
-1.03 paragraphs 2 sentences +
-0.84 he behind is
-0.78 he behind acts | him within gap 8 | named 2 name
-0.77 across name is 3 | across role is 5 | opens rank 1 speech acts | paragraphs 0 sentences 5
-0.76 rank 2 near 2
-0.75 first speech acts rank 2
-0.74 within speech acts gap +
-0.73 him rank 3
-0.72 him within speech acts
-0.71 named 2 pronoun
-0.68 named 8 speech
-0.67 across role acts + | himself rank 2
-0.66 opens rank 0 pronoun acts
-0.64 himself acted 5
-0.63 her speaks here | him rank 2 | himself across role is | his acted 3 | nobody paragraphs 2
-0.62 his behind acts | named 8 name
-0.6 opens rank 2 pronoun is | rank 2 of 3
-0.59 her across role is
-0.57 him acted 5 | his across role is
-0.56 himself acted 3 | his speaks here
-0.55 times 8
-0.54 across name is 5 | him speaks here | himself within gap 60
-0.53 paragraphs 3 sentences +
-0.5 gender unknown | him within name acts
-0.48 stranger name
-0.47 her rank 3
-0.46 he acted 3 | paragraphs 2 sentences 5
-0.45 him within role acts | nobody paragraphs 4
-0.44 he across role is | within speech acts gap 8
-0.43 rank 2 near 1
-0.42 first name is rank 1 | he across name acts | he acted 5
-0.41 named + speech | named 4 speech
-0.4 stranger pronoun
-0.39 he speaks here | his acted 5 | rank 3 near 3 | rank 3 of 4
-0.38 him within gap 25
-0.37 paragraphs 4 sentences + | within role is gap +
-0.36 within name is gap +
-0.35 her acted 5 | him acted 3 | himself behind acts | nobody others 1 | stranger role
-0.34 within pronoun acts gap 8
-0.33 across speech acts 5 | rank 2 of 4
-0.32 opens rank 2 pronoun acts
-0.31 rank 3 near 2
-0.3 himself across pronoun is | himself within pronoun is | named 4 name
-0.29 last actor +
-0.28 he rank 3 | last actor 1
-0.27 across speech acts 1 | her across pronoun acts | his across speech acts
-0.26 he across name is | his across role acts | named 2 role | opens rank 1 name is | paragraphs 1 sentences 3
-0.26 within pronoun is gap 8
-0.25 his across name acts | his acted + | nobody sentences 1 | times 1
-0.24 rank 1 near 2 | within name is gap 60
-0.23 first pronoun acts rank 2 | he within name is | rank 1 near 3
-0.22 across name is 1 | his rank 2 | opens rank 1 role acts
-0.21 his within gap 1 | his within role is | paragraphs 0 sentences 3
-0.2 himself within speech acts | named + role | named 0 role | rank 3 near 0
-0.19 first speech acts rank 1 | he across role acts | rank 2 near 0
-0.18 himself behind is | his across pronoun is | within speech acts gap 60
-0.17 her rank 2 | himself rank 1 | named 1 name | opens rank 1 role is | paragraphs 3 sentences 5
-0.16 her behind is
-0.15 first name is rank 2 | he acted + | her across role acts | her acted 0 | himself across name is
-0.15 himself acted + | rank 1 near 0 | rank 2 near 3 | times 4
-0.14 across name is + | nobody of 2 | nobody others 2
-0.13 her last actor | his behind is | recent +
-0.12 across pronoun acts + | his within gap + | last actor 2 | nobody her | rank 1 of 2
-0.11 he rank 2 | him across name acts | him across role is | his within speech acts | opens rank 2 name is
-0.1 her within name is | himself speaks here | himself within gap 25
-0.09 across pronoun is 1 | his within pronoun acts | nobody he
-0.08 her across speech acts | his rank 3
-0.07 he within gap + | himself across role acts | nobody sentences + | recent 5
-0.06 himself within gap + | last actor 5 | opens rank 2 role is | paragraphs 1 sentences 1 | paragraphs 3 sentences 3
-0.05 across speech acts 2 | he within name acts | recent 2
-0.04 across role acts 3 | first pronoun acts rank 0 | himself rank 3 | his rank 1 | within pronoun acts gap 25
-0.03 across name acts 3 | across role is 2 | him acted + | him acted 2
-0.02 he acted 2 | he within speech acts | him within pronoun acts | himself across speech acts
-0.02 himself within pronoun acts | opens rank 0 pronoun is | opens rank 2 name acts | recent 1
-0.01 her within speech acts | him within pronoun is | his within gap 8 | named 0 speech | nobody of 1
-0.01 paragraphs 0 sentences + | paragraphs 1 sentences 5 | rank 0 of 3 | times 2
0.01 first role is rank 2 | him within gap + | nobody paragraphs 1 | rank 0 of 1
0.02 named 1 pronoun | nobody
0.03 him within gap 60 | within pronoun acts gap 60
0.04 he within pronoun acts | him across speech acts | nobody his | within name acts gap 25
0.05 across role is 3 | her rank 1 | him acted 0 | himself last actor | nobody sentences 0 | within name acts gap +
0.05 within name is gap 25
0.06 he last actor | opens rank 0 role acts
0.07 he rank 1 | him last actor | his last actor | named 1 speech | nobody paragraphs 0
0.08 across pronoun is 5 | across role acts 1 | him across pronoun is | within name is gap 1
0.09 cast 2 | himself within role is
0.1 her acted 2 | nobody of 3 | paragraphs 0 sentences 2 | rank 3 near 1 | within role is gap 1
0.11 he within pronoun is | his within name is
0.12 across name is 2 | he acted 0 | his within pronoun is
0.13 across pronoun is 3 | first pronoun is rank 1 | he across speech acts | her acted + | himself across name acts
0.13 himself acted 1 | himself acted 2 | his rank 0 | nobody sentences 2 | within pronoun is gap 25
0.14 her behind acts | himself within name acts | rank 1 of 3 | within role is gap 60
0.15 across speech acts + | his across name is
0.16 across name acts 5 | across pronoun acts 3 | last actor 0 | nobody sentences 5 | within pronoun is gap 60
0.17 rank 0 of 2
0.18 first name is rank 0 | her across name acts
0.19 named 2 speech | within pronoun is gap +
0.2 across pronoun acts 2 | rank 0 near 2 | rank 0 near 3
0.21 he rank 0 | his acted 2 | within pronoun acts gap +
0.22 first pronoun acts rank 1 | her within role is | within pronoun is gap 1
0.23 across pronoun is 2 | he within gap 60
0.24 he within gap 8 | named + pronoun
0.25 her within gap + | him across pronoun acts | him within role is
0.26 across pronoun is + | first speech acts rank 0 | rank 1 of 4 | times 16
0.27 first pronoun is rank 0 | gender known | he within gap 25 | himself across pronoun acts
0.27 opens rank 1 pronoun acts
0.28 her acted 1 | nobody him
0.29 first name acts rank 1 | his acted 0 | within name acts gap 8
0.3 first pronoun is rank 2 | her within pronoun acts | him across name is | him within name is
0.3 himself within name is | within role is gap 8 | within speech acts gap 25
0.31 across role acts 5
0.32 cast 1 | he across pronoun acts | nobody sentences 3 | opens rank 0 speech acts | opens rank 2 role acts
0.32 paragraphs 0 sentences 0
0.33 across name acts 2 | her acted 3 | his within gap 60 | recent 8 | times +
0.34 he within role is | within pronoun acts gap 1
0.35 across speech acts 3 | first role is rank 1 | his acted 1
0.36 across pronoun acts 5 | rank 0 of 4
0.37 he across pronoun is | himself within gap 1 | paragraphs 2 sentences 3
0.38 across pronoun acts 1 | named 0 pronoun | nobody himself | within role acts gap 8
0.39 her rank 0 | her within role acts | himself within role acts | paragraphs 0 sentences 1
0.4 him behind is | himself rank 0
0.41 her within pronoun is | last actor 3
0.42 him across role acts | him rank 1
0.43 cast 3 | he within gap 1 | his within gap 25 | his within name acts | nobody others 0
0.45 across name acts 1 | across role acts 2 | first role is rank 0 | he acted 1 | within name acts gap 60
0.45 within role acts gap +
0.46 first role acts rank 1 | opens rank 0 name acts
0.47 cast 0
0.48 him acted 1 | opens rank 1 name acts | rank 0 near 1
0.49 her within gap 60
0.5 across role is 1
0.51 him rank 0
0.52 her within gap 25 | paragraphs 2 sentences 2 | within role is gap 25
0.54 him behind acts
0.56 recent 3
0.57 himself acted 0 | his across pronoun acts | paragraphs 1 sentences 2
0.58 her within gap 8
0.6 her across pronoun is
0.69 nobody paragraphs 3
0.7 her within name acts
0.71 himself within gap 8
0.74 first role acts rank 2 | within role acts gap 25
0.79 named 0 name
0.81 named 8 pronoun | opens rank 1 pronoun is
0.82 his within role acts
0.85 opens rank 0 name is
0.86 rank 1 near 1
0.88 within name is gap 8
0.92 first name acts rank 0
0.93 first name acts rank 2
0.94 rank 0 near 0
0.96 within role acts gap 60
1.04 he within role acts
1.15 paragraphs 4 sentences 5
1.32 first role acts rank 0
"""
