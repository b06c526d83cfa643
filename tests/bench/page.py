# SPDX-License-Identifier: GPL-3.0-or-later
"""Markdown for docs/performance.md."""


def table(head, rows):
    if any(len(row) != len(head) for row in rows):
        raise ValueError("a row with another number of cells than the head")
    lines = [head, ["---"] * len(head), *rows]
    return "".join("| " + " | ".join(line) + " |\n" for line in lines)


def replaced(text, name, part):
    """The page with `part` between the markers of that name."""
    begin, end = f"<!-- {name} -->\n", f"<!-- end of {name} -->\n"
    if begin not in text or end not in text:
        raise ValueError(f"the page has no marks for {name}")
    before, rest = text.split(begin, 1)
    return before + begin + part + end + rest.split(end, 1)[1]
