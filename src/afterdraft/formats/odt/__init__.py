"""OpenDocument text, read by our own thin reader."""
