"""The screens, and their addresses in one table."""

from starlette.routing import BaseRoute

ROUTES: tuple[BaseRoute, ...] = ()
