"""Cards and arrangements: what is written on them, how they lie, tables out and in."""
