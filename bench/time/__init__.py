"""Dates and story time, against the marked dates and dated entries of the corpus folder."""
