"""What can be said of one scene: speech, names, who is meant, how it is told. Pure; no model, no disk."""
