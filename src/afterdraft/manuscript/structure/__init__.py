"""Structure recovery: from the blocks of a file to a draft with parts, chapters and scenes."""
