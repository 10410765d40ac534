"""Drafts: the first, the next, and what became of every scene."""
