"""The demonstration book: its sources and the builder. It imports nothing of the program."""
