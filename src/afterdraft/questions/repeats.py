"""From how many words alike a passage stands twice; fewer are a turn of phrase that comes again."""

LEAST = 14  # words from which the same words twice are hardly chance; chosen on the tuning half
