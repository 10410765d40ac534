"""See `src/afterdraft/engine/`."""
