"""How well a manuscript is divided: whole novels, written out in authors' habits, read back and compared."""
