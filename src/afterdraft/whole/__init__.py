"""What can be said of the whole book from the facts of its scenes: the cast, who speaks, who is where."""
