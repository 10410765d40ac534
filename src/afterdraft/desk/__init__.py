"""The writer's own work, as values."""
