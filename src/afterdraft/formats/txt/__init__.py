"""Plain text: how its bytes, lines and paragraphs are told apart."""
