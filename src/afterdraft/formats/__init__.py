"""One folder or file per file format; `table.py` says which are read."""
