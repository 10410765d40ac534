"""Two drafts compared: synthetic revisions of whole novels, two real drafts, time and memory."""
