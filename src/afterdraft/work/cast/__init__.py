"""People and places: hers, and what reading found, met and put right."""
