# SPDX-License-Identifier: GPL-3.0-or-later
"""Line and branch coverage of rooms, from gcov's counts: figures.py FOLDER ROOM...

A branch counts as covered if it was taken. Branches for exceptions are left out: gcov marks them, nearly every call has
one, and testing each of them would test the compiler. So are lines that only an exception reaches.
"""
import collections
import gzip
import json
import subprocess
import sys
import tempfile
from pathlib import Path

TREE = Path(__file__).resolve().parents[2]


class Counts:
    """How often each line and each branch of each source ran, in all programs together."""

    def __init__(self):
        self.lines = collections.Counter()
        self.branches = collections.Counter()

    def add(self, report):
        where = Path(report["current_working_directory"])
        for file in report["files"]:
            path = (where / file["file"]).resolve()
            if not path.is_relative_to(TREE / "src"):
                continue
            name = str(path.relative_to(TREE / "src"))
            for line in file["lines"]:
                self._add_line(name, line)

    def _add_line(self, name, line):
        self.lines[(name, line["line_number"])] += line["count"]
        taken = [branch["count"] for branch in line["branches"] if not branch["throw"]]
        for index, count in enumerate(taken):
            key = (name, line["line_number"], line.get("function_name", ""), index)
            self.branches[key] += count


def reports(folder):
    """gcov's report on every object that ran, as parsed JSON."""
    data = [path.resolve() for path in sorted(Path(folder).rglob("*.gcda"))]
    with tempfile.TemporaryDirectory() as place:
        for path in data:
            subprocess.run(["gcov", "--json-format", "--branch-probabilities", path], cwd=place, check=True,
                           stdout=subprocess.DEVNULL)
            for found in Path(place).glob("*.gcov.json.gz"):
                yield json.loads(gzip.decompress(found.read_bytes()))
                found.unlink()


def share(counts, room):
    mine = [count for key, count in counts.items() if key[0].startswith(room + "/")]
    hit = sum(1 for count in mine if count)
    return f"{hit:5} of {len(mine):5}  {100 * hit / len(mine):6.2f} %"


def missed(counts, rooms):
    """Maps each file to the lines that contain something that never ran."""
    lines = collections.defaultdict(set)
    for key, count in counts.items():
        if count == 0 and key[0].split("/")[0] in rooms:
            lines[key[0]].add(key[1])
    return [f"  src/{name}: {' '.join(str(line) for line in sorted(lines[name]))}" for name in sorted(lines)]


def main(folder, *rooms):
    counts = Counts()
    for report in reports(folder):
        counts.add(report)
    for room in rooms:
        print(f"{room:8} lines {share(counts.lines, room)}   branches {share(counts.branches, room)}")
    print("lines that never ran:", *missed(counts.lines, rooms), sep="\n")
    print("lines with a branch never taken:", *missed(counts.branches, rooms), sep="\n")


if __name__ == "__main__":
    main(*sys.argv[1:])
