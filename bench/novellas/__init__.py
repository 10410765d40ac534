"""Questions about six novellas that were written for it, slips and traps with them."""
