"""Rich text (RTF 1.9.1): bytes to tokens, tokens to a walk with a state for each group, paragraphs to blocks."""
