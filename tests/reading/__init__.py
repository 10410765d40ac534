"""See `src/afterdraft/reading/`."""
