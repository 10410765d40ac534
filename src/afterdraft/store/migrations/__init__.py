"""Forms of the book file, one module per step, in order.

A book's `user_version` says how many of these it has been through. A step is a named function that takes the open
connection inside its own transaction; steps are never changed once released, only added.
"""

import sqlite3
from collections.abc import Callable

from afterdraft.store.migrations.m0001_first import first
from afterdraft.store.migrations.m0002_desk import desk
from afterdraft.store.migrations.m0003_reading import reading
from afterdraft.store.migrations.m0004_drafts import drafts
from afterdraft.store.migrations.m0005_ground import ground
from afterdraft.store.migrations.m0006_former import former

Migration = Callable[[sqlite3.Connection], None]

MIGRATIONS: tuple[Migration, ...] = (first, desk, reading, drafts, ground, former)
