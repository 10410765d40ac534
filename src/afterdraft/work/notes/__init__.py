"""Notes, inks and guarded passages."""
