"""What runs through the book: threads, strands, setups, reveals, and what follows from what."""
