"""The demonstration book's files, built from `demo/` in the source tree. Data only."""
