"""Afterdraft: revise a book-length manuscript, draft after draft."""

__version__ = "0.1.0"
