"""What can be done, one verb a file. Pure of disk and clock: the book is given (`ports.py`)."""
