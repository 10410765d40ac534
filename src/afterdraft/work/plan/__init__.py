"""The plan of the round: changes and their places."""
