"""Events, measures and traits against what is annotated by hand, and how the weights of events are learned."""
