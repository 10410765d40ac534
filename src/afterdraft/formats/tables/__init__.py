"""Tables: spreadsheets, text with separators, tables in documents; read into rows of text, and written."""
