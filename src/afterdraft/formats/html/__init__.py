"""HTML and XHTML: bytes to a tree (document), what is said of its elements (css, looks), and the walk over it."""
