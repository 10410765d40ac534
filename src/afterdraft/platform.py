"""The only place for what differs between systems."""
