"""Questions put to her, and her answers."""
