"""See `src/afterdraft/whole/`."""
