# SPDX-License-Identifier: GPL-3.0-or-later
"""The list of changes without any observable effect: equivalent.txt, one per line."""
from pathlib import Path


class Equivalence:
    def __init__(self, path):
        """Lines of `file | the line of code | change | which of equal ones | why`; # starts a comment."""
        self._why = {}
        for number, line in enumerate(Path(path).read_text().splitlines(), 1):
            if not line or line.startswith("#"):
                continue
            fields = line.split(" | ")
            if len(fields) != 5 or not fields[3].isdigit() or not fields[4].strip():
                raise SystemExit(f"{path}:{number}: five fields wanted: file | code | change | nth | why")
            self._why[(fields[0], fields[1], fields[2], int(fields[3]))] = fields[4]

    def covers(self, mutant):
        return mutant.key() in self._why

    def strangers(self, mutants, files):
        """The entries for these files that match no mutant."""
        known = {mutant.key() for mutant in mutants}
        return [key for key in self._why if key[0] in files and key not in known]


def as_entry(mutant):
    return " | ".join(str(part) for part in mutant.key())
