# SPDX-License-Identifier: GPL-3.0-or-later
"""A scale as `piolo scale` lists it, as notes one after the other with their lengths in beats, and the files made from it."""
from dataclasses import dataclass
from fractions import Fraction

from program import run

ALTERS = {"": 0, "b": -1, "#": 1, "bb": -2, "##": 2}


@dataclass
class ListedScale:
    key: str
    kind: str
    instrument: str
    notes_per_beat: int
    range: str = "two octaves"

    def words(self):
        return ("scale", "--key", self.key, "--kind", self.kind, "--instrument", self.instrument, "--range", self.range,
                "--subdivision", self.notes_per_beat)

    def read(self, piolo):
        said = run(piolo, *self.words()).decode()
        lines = dict(line.split(": ", 1) for line in said.splitlines() if ": " in line)
        self.names = lines["notes"].split()
        self.sounding = [int(number) for number in lines["sounding"].split()]
        self.signature = lines["signature"]
        self.bars = int(lines["bars"].split()[0])
        self.lands = lines["bars"].endswith("and a landing note")
        return self

    def write(self, piolo, path, *more):
        run(piolo, *self.words(), *more, "--out", path)
        return path

    def onsets(self):
        """In quarters, because the beat of a scale is a quarter."""
        return [Fraction(place, self.notes_per_beat) for place in range(len(self.sounding))]

    def quarters(self):
        return list(zip(self.onsets(), self.sounding))

    def spelled(self):
        """(quarters, step, alter, octave)."""
        return [(at, name[0], ALTERS[name[1:-1]], int(name[-1])) for at, name in zip(self.onsets(), self.names)]

    def title(self):
        return f"{self.key} {self.kind}, {self.notes_per_beat} to the beat, {self.instrument}"
