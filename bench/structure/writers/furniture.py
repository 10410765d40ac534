"""What a page carries beside its text, typed into the file: running heads and page numbers."""

from collections.abc import Iterator, Sequence

from bench.corpus import Novel
from bench.structure.writers.plan import Line, pick

PAGE = 280  # words of a typed page (common practice: 250 to 300)
FORMS = ("{name} / {title} / {n}", "{TITLE}    {n}", "- {n} -", "{n}", "Page {n}")


def furnished(lines: Sequence[Line], novel: Novel) -> Iterator[Line]:
    """The lines with a running head or foot after every page, always between two paragraphs."""
    form = pick(FORMS, novel.title, "page")
    name = novel.author.split()[-1]
    told = page = 0
    for line in lines:
        if told >= PAGE and line.kind == "story" and not line.scene and not line.blanks and not line.page:
            page, told = page + 1, 0
            text = form.format(name=name, title=novel.title, TITLE=novel.title.upper(), n=page)
            yield Line("furniture", text, "furniture")
        yield line
        told += len(line.text.split())
