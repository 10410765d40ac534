"""Measurements. `make bench` runs them all and writes `RESULTS.md`; nothing here is part of the program."""
