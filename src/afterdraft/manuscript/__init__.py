"""What a manuscript is: blocks as a file gives them, and a draft divided into parts, chapters and scenes."""
