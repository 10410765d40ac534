"""What a sharp first reader would ask: checks, each with its method and its blind spots, and their questions."""
