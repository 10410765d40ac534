"""Paragraphs and asides as compact JSON, defaults left out, and back again."""

import json
from dataclasses import asdict, fields
from typing import Any

from afterdraft.manuscript.blocks import Aside, Block, Gap, Look, Run, Source


def block_form(block: Block) -> str:
    """All of a block but its text."""
    form: dict[str, Any] = {
        "runs": [[run.start, run.end, run.kind] for run in block.runs],
        "look": _spare(block.look),
        "gap": _spare(block.gap),
        "source": _spare(block.source),
    }
    return dumped({name: value for name, value in form.items() if value})


def block_of(text: str, form: str) -> Block:
    """The block that `block_form` was given."""
    value = json.loads(form)
    return Block(
        text=text,
        runs=tuple(Run(start, end, kind) for start, end, kind in value.get("runs", ())),
        look=Look(**value.get("look", {})),
        gap=Gap(**value.get("gap", {})),
        source=Source(**value.get("source", {})),
    )


def aside_form(aside: Aside) -> str:
    return dumped(asdict(aside))


def aside_of(form: str) -> Aside:
    return Aside(**json.loads(form))


def dumped(value: object) -> str:
    return json.dumps(value, ensure_ascii=False, separators=(",", ":"))


def _spare(value: Look | Gap | Source) -> dict[str, Any]:
    """What differs from the default; every field of these has one."""
    named = {field.name: (getattr(value, field.name), field.default) for field in fields(value)}
    return {name: given for name, (given, default) in named.items() if given != default}
