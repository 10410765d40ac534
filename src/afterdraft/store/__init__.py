"""The book file: one SQLite database, `NAME.afterdraft`."""
