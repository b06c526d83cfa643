# SPDX-License-Identifier: GPL-3.0-or-later
"""Scales and arpeggios of all 28 kinds on all 21 tonics (C flat to B sharp) as Tonal spells them (npm registry, tonal 6.5.1, a general
library of music theory): the notes on the way up, their intervals from the tonic, the way down, and the key signature. Where Piolo differs, the table says what it has instead and why; nothing else may differ.

A note that would need three accidentals has the next letter in Piolo: these are counted, must sound the same, and must have at most two.
The chromatic scale has no fixed letters: checked are its semitones, with sharps on the way up and flats on the way down (common practice, no source), except for the tonic.

    test_tonal.py PIOLO PACKAGES
"""
import itertools
import json
import re
import sys
from concurrent.futures import ThreadPoolExecutor

import registry
from program import finish, held, run

# Piolo's kind: its name in Tonal, and whose signature it has. For a kind that is not a key or mode, the signature is a
# choice: that of the major or minor key or mode with which it shares most notes; 0 if there is none.
SCALES = {
    "major": ("major", "major"), "natural minor": ("minor", "minor"), "harmonic minor": ("harmonic minor", "minor"),
    "melodic minor": ("melodic minor", "minor"), "jazz minor": ("melodic minor", "minor"), "dorian": ("dorian", "dorian"),
    "phrygian": ("phrygian", "phrygian"), "lydian": ("lydian", "lydian"), "mixolydian": ("mixolydian", "mixolydian"),
    "locrian": ("locrian", "locrian"), "chromatic": ("chromatic", None), "whole tone": ("whole tone", None),
    "whole-half diminished": ("whole-half diminished", None),
    "half-whole diminished": ("half-whole diminished", None), "major pentatonic": ("major pentatonic", "major"),
    "minor pentatonic": ("minor pentatonic", "minor"), "blues": ("minor blues", "minor"), "altered": ("altered", None),
    "lydian dominant": ("lydian dominant", "mixolydian"), "bebop dominant": ("bebop", "mixolydian"),
    "bebop major": ("bebop major", "major"), "bebop minor": ("bebop minor", "dorian")}
CHORDS = {
    "major arpeggio": ("M", "major"), "minor arpeggio": ("m", "minor"), "dominant arpeggio": ("7", "mixolydian"),
    "diminished arpeggio": ("dim7", None), "half-diminished arpeggio": ("m7b5", "locrian"),
    "augmented arpeggio": ("aug", "major")}
# Tonal's interval: the enharmonic one that Piolo writes instead. For the reasons, see WHY.
INSTEAD = {"altered": {"2A": "3m", "4A": "5d"}, "whole tone": {"6A": "7m"}}
WHY = {
    "altered": "one letter for each note: third, fifth, sixth and seventh flat, as the seventh mode of a melodic minor scale",
    "whole tone": "two augmented steps are enough: a flat seventh is read more easily than a sharp sixth"}
TONICS = [letter + sign for letter, sign in itertools.product("CDEFGAB", ("b", "", "#"))]
MOST_FIFTHS = 7


class Listed:
    """What `piolo scale` lists for one octave, up and down, on a flute."""

    def __init__(self, piolo, kind, tonic):
        self.kind, self.tonic = kind, tonic
        said = run(piolo, "scale", "--key", tonic, "--kind", kind, "--instrument", "flute", "--range", "one octave",
                   "--subdivision", 1).decode()
        lines = dict(line.split(": ", 1) for line in said.splitlines() if ": " in line)
        notes = lines["notes"].split()
        self.up = notes[:len(notes) // 2 + 1]
        self.down = list(reversed(notes[len(notes) // 2:]))
        self.sounding = [int(number) for number in lines["sounding"].split()][:len(self.up)]
        self.octave = int(self.up[0][-1])
        self.signature = lines["signature"]

    def fifths(self):
        """None: without a signature, because it would need more than seven signs."""
        if self.signature.startswith("none"):
            return None
        count = re.match(r"(\d+) (flat|sharp)", self.signature)
        return 0 if count is None else int(count[1]) * (-1 if count[2] == "flat" else 1)

    def question(self, scale, notes):
        name, mode = (SCALES | CHORDS)[scale]
        return {"tonic": self.tonic, "octave": self.octave, "scale" if scale in SCALES else "chord": name, "mode": mode,
                "instead": INSTEAD.get(scale, {}), "notes": notes}


def alter(note):
    return note.count("#") - note.count("b", 1)


def next_letter(note):
    """The letter used instead for a note with three or more accidentals."""
    letters = "CDEFGAB"
    return letters[(letters.index(note[0]) + (1 if alter(note) > 0 else -1)) % 7]


class Judge:
    def __init__(self):
        self.same = self.respelled = self.keys = 0
        self.wrong = []

    def note(self, listed, ours, theirs, midi, sounding):
        if ours == theirs:
            self.same += 1
        elif abs(alter(theirs)) > 2 and ours[0] == next_letter(theirs) and abs(alter(ours)) <= 2 and midi == sounding:
            self.respelled += 1
        else:
            self.wrong.append(f"{listed.tonic} {listed.kind}: {ours}, not {theirs}")

    def hold(self, listed, holds, line):
        if not holds:
            self.wrong.append(f"{listed.tonic} {listed.kind}: {line}")

    def letters(self, listed, said):
        """The notes on the way up, including the upper tonic, and their intervals."""
        size = len(said["notes"])
        self.hold(listed, len(listed.up) == size + 1, f"{len(listed.up)} notes")
        base = said["midi"][0]
        instead = INSTEAD.get(listed.kind, {})
        for place in range(size):
            self.note(listed, listed.up[place], said["notes"][place], said["midi"][place], listed.sounding[place])
            if abs(alter(said["notes"][place])) <= 2:
                wanted = said["intervals"][place]
                self.hold(listed, said["distances"][place] == instead.get(wanted, wanted), f"{listed.up[place]} is no {wanted}")
        self.hold(listed, said["distances"][-1] == "8P", "no octave")
        self.hold(listed, said["midi"][-1] == base + 12 and listed.sounding == said["midi"], "the sounding numbers")
        self.hold(listed, all(a == b for a, b in said["semitones"]), "what stands instead sounds otherwise")

    def semitones(self, listed, said):
        self.hold(listed, said["midi"] == list(range(said["midi"][0], said["midi"][0] + 13)), "no semitones")
        self.hold(listed, all("b" not in note[1:] for note in listed.up[1:-1]), "a flat on the way up")
        self.hold(listed, all("#" not in note for note in listed.down[1:-1]), "a sharp on the way down")
        self.hold(listed, said["midi"] == listed.sounding, "the sounding numbers")

    def key(self, listed, said):
        fifths = said["fifths"]
        wanted = 0 if fifths is None else fifths if abs(fifths) <= MOST_FIFTHS else None
        self.keys += 1
        self.hold(listed, listed.fifths() == wanted, f"{listed.signature}, not {wanted} fifths")


def scales(piolo):
    every = list(itertools.product(SCALES | CHORDS, TONICS))
    with ThreadPoolExecutor(2) as two:
        return list(two.map(lambda one: Listed(piolo, *one), every))


def judged(listed, packages):
    """The scales by Tonal's rules, and the way down if it is a different scale."""
    ways = [(one, one.kind, one.up) for one in listed]
    ways += [(one, "natural minor" if one.kind == "melodic minor" else one.kind, one.down) for one in listed]
    said = json.loads(registry.node("tonal_theory.cjs", packages,
                                    json.dumps([one.question(kind, notes) for one, kind, notes in ways]).encode()))
    judge = Judge()
    for (one, _, _), answer in zip(ways[:len(listed)], said[:len(listed)], strict=True):
        (judge.semitones if one.kind == "chromatic" else judge.letters)(one, answer)
        judge.key(one, answer)
    for (one, kind, notes), answer in zip(ways[len(listed):], said[len(listed):], strict=True):
        if kind == "chromatic":
            judge.hold(one, answer["midi"] == one.sounding, "other semitones on the way down")
            continue
        for ours, theirs, midi in zip(notes, answer["notes"], answer["midi"]):
            judge.note(one, ours, theirs, midi, midi)
    return judge


def main():
    packages = registry.needed(sys.argv[2])
    listed = scales(sys.argv[1])
    judge = judged(listed, packages)
    for kind, why in WHY.items():
        print(f"       {kind}: {INSTEAD[kind]}: {why}")
    print(f"       {judge.respelled} notes with three signs and more have the next letter")
    finish([held(len(listed) == 28 * 21, f"{len(listed)} scales and arpeggios"),
            held(not judge.wrong, f"{judge.same} notes as Tonal has them, and {judge.keys} signatures; {judge.wrong[:5] or 'none else'}")])


if __name__ == "__main__":
    main()
