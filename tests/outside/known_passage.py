# SPDX-License-Identifier: GPL-3.0-or-later
"""Random passages with known notes, in a practice folder of their own, and the score that Piolo writes of each."""
import json
import random
from dataclasses import dataclass, field
from fractions import Fraction

from program import run

STEPS = "CDEFGAB"
SEMITONES = dict(zip(STEPS, (0, 2, 4, 5, 7, 9, 11)))
SHARPS = "FCGDAEB"
METERS = (("4/4", "1/4"), ("3/4", "1/4"), ("2/2", "1/2"), ("6/8", "3/8"), ("7/8", "1/8"), ("5/4", "1/4"), ("12/8", "3/8"))
# A flute, a piccolo, an E flat clarinet, a B flat clarinet, four saxophones' last three, a B flat contrabass clarinet.
TRANSPOSITIONS = (0, 12, 3, -2, -9, -14, -21, -26)


@dataclass
class Known:
    """Times are fractions of a whole note. A note is (onset, length, step, alter, octave)."""
    name: str
    meter: str
    beat: str
    fifths: int
    transposition: int
    bars: int
    pick_up: Fraction
    notes: list = field(default_factory=list)

    def sounding(self, note):
        _, _, step, alter, octave = note
        return 12 * (octave + 1) + SEMITONES[step] + alter + self.transposition

    def quarters(self):
        """(quarters from the beginning, MIDI number) of each note."""
        return sorted((4 * note[0], self.sounding(note)) for note in self.notes)

    def measures(self):
        return self.bars + (1 if self.pick_up else 0) + (1 if any(note[0] == self.end() for note in self.notes) else 0)

    def end(self):
        return self.pick_up + self.bars * Fraction(self.meter)


def alter_in_key(step, fifths):
    if fifths >= 0:
        return 1 if step in SHARPS[:fifths] else 0
    return -1 if step in SHARPS[fifths:] else 0


def text(value):
    return f"{value.numerator}/{value.denominator}"


def random_passage(seed, fifths):
    """In two out of three, it contains exactly the steps of the key's scale; one to eight pulses per beat, with rests and held
    notes."""
    chance = random.Random(seed)
    meter, beat = chance.choice(METERS)
    made = Known(f"Passage {seed}", meter, beat, fifths, chance.choice(TRANSPOSITIONS), chance.randint(3, 5), Fraction(0))
    pulse_room = Fraction(beat)
    if chance.random() < 0.5 and pulse_room < Fraction(meter):
        made.pick_up = pulse_room
    steps = list(STEPS)
    at, end = Fraction(0), made.end()
    while at < end:
        pulses = chance.randint(1, 8) if len(made.notes) >= 7 else 4
        for pulse in range(pulses):
            if len(made.notes) >= 7 and chance.random() < 0.15:
                continue
            step = steps.pop() if steps else chance.choice(STEPS)
            alter = alter_in_key(step, fifths)
            if not steps and seed % 3 == 0 and chance.random() < 0.1:
                alter += chance.choice((-1, 1))
            made.notes.append((at + pulse * pulse_room / pulses, pulse_room / pulses, step, alter, chance.randint(4, 5)))
        at += pulse_room
    if chance.random() < 0.5:
        made.notes.append((end, pulse_room, chance.choice(STEPS), 0, 4))
        made.notes[-1] = (*made.notes[-1][:3], alter_in_key(made.notes[-1][2], fifths), 4)
    hold_some(made, chance)
    return made


def hold_some(made, chance):
    """Now and then ties a note to an equally long one that follows it immediately: also across beats and bar lines."""
    place = 8
    while place < len(made.notes):
        at, length, *pitch = made.notes[place - 1]
        follows = made.notes[place][:2] == (at + length, length) and made.notes[place][0] < made.end()
        if follows and chance.random() < (0.5 if (at + length - made.pick_up) % Fraction(made.meter) == 0 else 0.1):
            made.notes[place - 1] = (at, 2 * length, *pitch)
            del made.notes[place]
        place += 1


def passage_file(passages, target):
    tempi = {"start": 60000, "target": int(1000 * target), "floor": 40000, "step": "bpm", "drop": 4, "climb": 2, "cleanRuns": 5}
    listed = []
    for number, made in enumerate(passages, 1):
        music = {"meter": made.meter, "beat": made.beat, "subdivision": 1, "firstBar": 1, "bars": made.bars, "landing": True,
                 "countInBars": 1, "breathBeats": 0}
        if made.pick_up:
            music["pickup"] = text(made.pick_up)
        lines = [f"{text(note[0])} {text(note[1])} {note[2]}{'#' * note[3]}{'b' * -note[3]}{note[4]} {made.sounding(note)}"
                 for note in made.notes]
        listed.append({"id": f"{number:032x}", "title": {"name": made.name}, "music": music, "tempi": tempi, "notation": lines})
    return json.dumps({"v": 1, "pieces": [], "passages": listed})


def scores(piolo, passages, folder, target):
    """The files that Piolo writes, in the order of the passages; the target is in beats per minute."""
    (folder / "band.piolo.json").write_text(passage_file(passages, target), encoding="utf-8")
    run(piolo, "import", folder / "band.piolo.json", "--folder", folder / "band")
    written = []
    for made in passages:
        written.append(folder / f"{made.name.replace(' ', '-')}.musicxml")
        run(piolo, "export", made.name, "--folder", folder / "band", "--out", written[-1])
    return written
