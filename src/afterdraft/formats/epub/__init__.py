"""E-books: the package (EPUB 3.3 and 2), and its pages in the order of reading."""
