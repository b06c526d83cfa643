# SPDX-License-Identifier: GPL-3.0-or-later
"""Runs the requested parts, prints their tables and, on request, puts them into docs/performance.md."""
import argparse
import os

import clicks
import frames
import journals
import picture
import presses
import windows
from page import replaced
from workspace import SOURCE, Workspace

PARTS = {"clicks": clicks, "journals": journals, "windows": windows, "presses": presses, "frames": frames}
PAGE = os.path.join(SOURCE, "docs", "performance.md")


def words():
    parser = argparse.ArgumentParser(prog="tests/bench/run", description=__doc__)
    parser.add_argument("--build", default=os.path.join(SOURCE, "build"), help="the build folder")
    parser.add_argument("--rounds", type=int, default=9, help="rounds in which each contender has one turn")
    parser.add_argument("--before", help="an earlier build to start in the same rounds (windows)")
    parser.add_argument("--docs", action="store_true", help="put the results into docs/performance.md and its pictures")
    parser.add_argument("parts", nargs="*", help=f"of {', '.join(PARTS)}; all when none is named")
    chosen = parser.parse_args()
    strange = set(chosen.parts) - set(PARTS)
    if strange or chosen.rounds < 1:
        parser.error(f"no part {', '.join(sorted(strange))}" if strange else "at least one round")
    return chosen


def keep(name, text, panels, in_docs):
    """Prints the tables and saves them, with the picture, in the build folder or the docs."""
    print(f"\n{text}", flush=True)
    if in_docs:
        with open(PAGE, encoding="utf-8") as file:
            page = replaced(file.read(), name, text)
        with open(PAGE, "w", encoding="utf-8") as file:
            file.write(page)
    if panels and in_docs:
        with open(os.path.join(SOURCE, "docs", "pictures", f"performance-{name}.svg"), "w", encoding="utf-8") as file:
            file.write(picture.drawn(panels))


def main():
    chosen = words()
    where = Workspace(chosen.build, chosen.rounds, chosen.before)
    try:
        for name in chosen.parts or PARTS:
            print(f"== {name}, {chosen.rounds} rounds", flush=True)
            keep(name, *PARTS[name].measure(where), chosen.docs)
    finally:
        where.clear()


if __name__ == "__main__":
    main()
