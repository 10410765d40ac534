"""What the writer can do, one verb a file, and the ports those verbs need."""
