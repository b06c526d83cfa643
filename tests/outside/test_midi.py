# SPDX-License-Identifier: GPL-3.0-or-later
"""The MIDI file of a track matches its WAV file, as read by midicsv and as played by FluidSynth and by TiMidity.

Read: ticks and tempi become exact times (Standard MIDI File: FF 51 03 is microseconds per quarter, stored copy at
docs.rs/midi_file). Rounding to whole microseconds may be off by half a microsecond per quarter; no other deviation is allowed.
Played: each player has a fixed delay for each sound, which is subtracted. The rest is the player's own precision, measured for
these versions with an exact file: FluidSynth 2.3.1 starts notes in blocks of 64 samples (worst seen 102), TiMidity 2.14 is
one sample off and drifts by up to 7.8 samples per minute if a tempo is a whole number of microseconds.
Debian 12's packages midicsv, fluidsynth, timidity, timgm6mb-soundfont.

    test_midi.py PIOLO
"""
import csv
import math
import pathlib
import sys
import tempfile
from fractions import Fraction

import numpy

import heard
import sound_file
from program import finish, held, run
from steady_click import SOUNDFONT

RATE = 48_000
TRACKS = {
    "60 to 96 by 9 in sixteenths": ["--start", "60", "--target", "96", "--climb", "9", "--bars", "2", "--runs", "2",
                                    "--subdivision", "4"],
    "6/8 in dotted quarters, 51 to 83 by 16, septuplets": ["--start", "51", "--target", "83", "--climb", "16", "--bars", "3",
                                                           "--runs", "2", "--meter", "6/8", "--subdivision", "7"],
    "7/8 as 2+2+3 in eighths, 137 to 190 by 53": ["--start", "137", "--target", "190", "--climb", "53", "--bars", "4",
                                                  "--runs", "3", "--meter", "7/8", "--groups", "2+2+3"],
}
FLUIDSYNTH_WORST = 102
TIMIDITY_A_MINUTE = 7.8


def notes_and_quarters(path):
    """[(exact seconds, key)] of the file's notes, and the quarters up to each."""
    rows = [[cell.strip() for cell in row] for row in csv.reader(run("midicsv", path).decode().splitlines())]
    division = next(int(row[5]) for row in rows if row[2] == "Header")
    tempi = [(int(row[1]), int(row[3])) for row in rows if row[2] == "Tempo"]
    notes = [(int(row[1]), int(row[4])) for row in rows if row[2] == "Note_on_c" and int(row[5]) > 0]
    return [(seconds_at(tick, tempi, division), key, Fraction(tick, division)) for tick, key in notes]


def seconds_at(tick, tempi, division):
    total = Fraction(0)
    for (begin, micros), end in zip(tempi, [at for at, _ in tempi[1:]] + [tick]):
        total += Fraction(max(0, min(end, tick) - begin) * micros, division * 1_000_000)
    return total


def read_holds(notes, places):
    """Every note is at the sample of the WAV file, except for the rounding to microseconds."""
    worst = 0.0
    fits = len(notes) == len(places)
    for (seconds, _, quarters), place in zip(notes, places):
        off = abs(seconds * RATE - int(place))
        worst = max(worst, float(off))
        fits = fits and off <= Fraction(1, 2) + quarters * Fraction(RATE, 2_000_000)
    return held(fits, f"read: {len(notes)} notes, {len(places)} clicks, worst {worst:.2f} samples, "
                      "half a sample and half a microsecond a quarter allowed")


def rises(samples, places):
    """Where each sound first reaches a quarter of its own peak."""
    samples = numpy.abs(numpy.concatenate([samples, numpy.zeros(2000)]))
    found = []
    for place in places:
        begin = max(0, place - 300)
        window = samples[begin:place + 1500]
        found.append(begin + int(numpy.argmax(window > 0.25 * window.max())))
    return numpy.array(found)


def played_errors(samples, notes, places):
    """Samples from the click in the WAV file to the played one, minus the delay of each key."""
    errors = rises(samples, places).astype(float) - places
    keys = numpy.array([key for _, key, _ in notes])
    for key in set(keys):
        own = errors[keys == key]
        errors[keys == key] = own - (own.max() + own.min()) / 2
    return numpy.abs(errors)


def played(name, errors, allowed):
    return held(errors.max() <= allowed, f"{name}: mean {errors.mean():.2f}, worst {errors.max():.2f} samples, "
                                         f"{allowed:.1f} allowed")


def compare(words, piolo, folder):
    wav, mid = folder / "track.wav", folder / "track.mid"
    for out in (wav, mid):
        run(piolo, "track", *words, "--rate", RATE, "--voice", "impulse", "--out", out)
    places = heard.impulses(sound_file.read(wav)[1])
    notes = notes_and_quarters(mid)
    yield read_holds(notes, places)
    run("fluidsynth", "-ni", "-R", "0", "-C", "0", "-g", "1", "-r", RATE, "-O", "float", "-F", folder / "fluid.wav",
        SOUNDFONT, mid)
    run("timidity", "-c", "/dev/null", "-x", f"soundfont {SOUNDFONT}", "-EFreverb=0", "-EFchorus=0", "-EFns=0", "-Ow",
        "--output-mono", "--output-16bit", "-s", RATE, "-o", folder / "timidity.wav", mid)
    minutes = math.ceil(places[-1] / RATE) / 60
    for name, allowed in (("fluid", FLUIDSYNTH_WORST), ("timidity", 1 + TIMIDITY_A_MINUTE * minutes)):
        samples = sound_file.read(folder / f"{name}.wav")[1]
        yield played(name, played_errors(samples, notes, places), allowed)


def main():
    results = []
    with tempfile.TemporaryDirectory() as folder:
        for name, words in TRACKS.items():
            print(f"\n{name}")
            results += compare(words, sys.argv[1], pathlib.Path(folder))
    finish(results)


if __name__ == "__main__":
    main()
