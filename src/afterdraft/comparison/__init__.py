"""Two drafts of one book: which paragraph became which, what has moved, what became of every scene."""
