# SPDX-License-Identifier: GPL-3.0-or-later
"""Playbacks of random passages, checked with aubio and midicsv: the notes of a passage file, written here as text, are found in what `piolo model` writes, each at its time and pitch.

In the WAV file aubio hears onsets (method `hfc`, threshold 0.5, windows of 512 every 128 at 48 kHz, 40 ms apart at least)
and pitches (`yinfast`, windows of 2048, the median inside each note). aubio's own delay varies with how a note swells: an
onset counts as found up to 12 ms late, a pitch within 10 cents of 440·2^((n-69)/12). Its default methods do not work here: they take the swelling itself for onsets, and get some octaves wrong. In the MIDI file midicsv reads
ticks, which are exact. Debian 12's packages aubio-tools 0.4.9 and midicsv.

    test_model.py PIOLO [SEED]
"""
import json
import pathlib
import random
import sys
import tempfile
from fractions import Fraction

import numpy

from program import finish, held, run

RATE = 48_000
EARLY, LATE = -0.001, 0.012
CENTS = 10
# Meter, beat, and a tempo of that beat with decimals, so that no beat is a whole number of samples.
PASSAGES = (("4/4", "1/4", "83.257"), ("3/4", "1/4", "61.003"), ("6/8", "3/8", "47.771"), ("5/8", "1/8", "139.9"))
BARS = 4
# Figures that fill a quarter or an eighth, in fractions of a whole note.
FIGURES = {Fraction(1, 4): (["1/4"], ["1/8", "1/8"], ["1/12", "1/12", "1/12"], ["3/16", "1/16"]), Fraction(1, 8): (["1/8"],)}


def notes_of(meter, chance):
    """(onset, length, MIDI number) of tongued notes; neighbours differ, so that each can be distinguished from the previous
    one."""
    beats, unit = map(int, meter.split("/"))
    end, at, key, notes = Fraction(beats * BARS, unit), Fraction(0), 0, []
    while at < end:
        room = Fraction(1, 4) if at + Fraction(1, 4) <= end and unit == 4 else Fraction(1, 8)
        for length in map(Fraction, chance.choice(FIGURES[room])):
            key = chance.choice([other for other in range(55, 85) if other != key])
            notes.append((at, length, key))
            at += length
    return notes


def fraction(value):
    return f"{value.numerator}/{value.denominator}"


def spelled(key):
    """Any spelling is fine: only the number matters for the sound."""
    return ("C", "C#", "D", "D#", "E", "F", "F#", "G", "G#", "A", "A#", "B")[key % 12] + str(key // 12 - 1)


def passage_file(meter, beat, notes):
    lines = [f"{fraction(at)} {fraction(length)} {spelled(key)} {key}" for at, length, key in notes]
    music = {"meter": meter, "beat": beat, "subdivision": 1, "firstBar": 1, "bars": BARS, "landing": False, "countInBars": 1,
             "breathBeats": 0}
    tempi = {"start": 60000, "target": 96000, "floor": 40000, "step": "bpm", "drop": 4, "climb": 2, "cleanRuns": 5}
    return json.dumps({"v": 1, "pieces": [], "passages": [
        {"id": "5" * 32, "title": {"name": "Slow march"}, "music": music, "tempi": tempi, "notation": lines}]})


def onsets_by_aubio(path):
    said = run("aubioonset", "-i", path, "-r", RATE, "-O", "hfc", "-t", 0.5, "-B", 512, "-H", 128, "-M", 0.040)
    return numpy.array([float(line) for line in said.decode().split()])


def pitches_by_aubio(path):
    said = run("aubiopitch", "-i", path, "-r", RATE, "-p", "yinfast", "-B", 2048, "-H", 256, "-u", "hertz")
    return numpy.array([[float(word) for word in line.split()] for line in said.decode().splitlines()])


def cents_off(pitches, begin, end, key):
    inside = pitches[(pitches[:, 0] > begin + 0.045) & (pitches[:, 0] < end - 0.030) & (pitches[:, 1] > 0)][:, 1]
    if len(inside) == 0:
        return None
    return 1200 * numpy.log2(numpy.median(inside) / (440 * 2 ** ((key - 69) / 12)))


def heard(folder, name, notes, seconds):
    exact = numpy.array([float(at * seconds) for at, _, _ in notes])
    found = onsets_by_aubio(folder / "model.wav")
    if len(found) != len(exact):
        return held(False, f"{name}: aubio found {len(found)} onsets of {len(exact)}")
    late = found - exact
    line = f"{name}: {len(exact)} onsets found, late by {1000 * late.min():.1f} to {1000 * late.max():.1f} ms"
    return held(late.min() >= EARLY and late.max() <= LATE, line)


def in_tune(folder, name, notes, seconds):
    pitches = pitches_by_aubio(folder / "model.wav")
    off = [cents_off(pitches, float(at * seconds), float((at + length * Fraction(7, 8)) * seconds), key)
           for at, length, key in notes]
    reported = [abs(cents) for cents in off if cents is not None]
    return held(len(reported) == len(notes) and max(reported) <= CENTS,
                f"{name}: {len(reported)} of {len(notes)} pitches found, off by {max(reported):.1f} cents at most")


def in_ticks(folder, name, notes):
    rows = [line.split(", ") for line in run("midicsv", folder / "model.mid").decode().splitlines()]
    division = int(next(row[5] for row in rows if row[2] == "Header"))
    found = [(Fraction(int(row[1]), 4 * division), int(row[4])) for row in rows if row[2] == "Note_on_c" and row[3] == "0"]
    ends = [Fraction(int(row[1]), 4 * division) for row in rows if row[2] == "Note_off_c" and row[3] == "0"]
    exact = [(at, key) for at, _, key in notes]
    near = all(abs(end - at - length * Fraction(7, 8)) <= Fraction(1, 4 * division)
               for end, (at, length, _) in zip(ends, notes))
    return held(found == exact and near, f"{name}: {len(found)} notes on their exact ticks, {division} to the quarter")


def check(piolo, passage, chance, folder):
    meter, beat, tempo = passage
    notes = notes_of(meter, chance)
    (folder / "march.piolo.json").write_text(passage_file(meter, beat, notes))
    run(piolo, "import", folder / "march.piolo.json", "--folder", folder / "band")
    for ending in ("wav", "mid"):
        run(piolo, "model", "Slow march", "--folder", folder / "band", "--tempo", tempo, "--no-click", "--count-in", 0, "--rate",
            RATE, "--out", folder / f"model.{ending}")
    seconds = Fraction(60) / Fraction(tempo) / Fraction(beat)  # of a whole note
    name = f"{meter} at {beat} = {tempo}"
    return [heard(folder, name, notes, seconds), in_tune(folder, name, notes, seconds), in_ticks(folder, name, notes)]


def main():
    chance = random.Random(int(sys.argv[2]) if len(sys.argv) > 2 else 20261)
    results = []
    for passage in PASSAGES:
        with tempfile.TemporaryDirectory() as folder:
            results += check(sys.argv[1], passage, chance, pathlib.Path(folder))
    finish(results)


if __name__ == "__main__":
    main()
