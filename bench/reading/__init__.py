"""How well the program reads: quotations, speakers, cast."""
