"""The first ten questions of ten novels, each judged by reading it against the text."""
