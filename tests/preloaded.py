"""Imported where processes of the program are forked from (`tests.forked`): none of them compiles a template anew."""

from afterdraft.web.render import environment

for name in environment().list_templates():
    environment().get_template(name)
