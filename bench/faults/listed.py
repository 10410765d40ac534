"""Word lists as planters write them down."""


def listed(text: str) -> tuple[str, ...]:
    """
    >>> listed("one  two")
    ('one', 'two')
    """
    return tuple(text.split())
