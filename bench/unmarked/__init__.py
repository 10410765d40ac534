"""Unmarked scene breaks: the marked ones of whole novels are removed and looked for."""
