"""Marks of a body that are on one side of it: which words tell them, of which side, and whose they are."""
