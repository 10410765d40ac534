"""Reads docx: container (package), XML (styles, numbering, inline, body) and meaning (line, making, asides) apart."""
