"""The face in the browser: a server on this machine only, its guard, its pages."""
