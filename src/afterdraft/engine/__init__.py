"""The language pipeline behind a skin: the only folder that imports it, and its objects never leave."""
