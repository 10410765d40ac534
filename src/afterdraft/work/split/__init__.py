"""The split put right: what the writer says of parts, chapters, scenes and doubts."""
