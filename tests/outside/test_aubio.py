# SPDX-License-Identifier: GPL-3.0-or-later
"""aubio finds every click of every audible voice, at every subdivision, up to 300 BPM: all of them, none twice, and nothing else.

One setting for everything: method `energy`, windows of 256 samples every 64 at 48 kHz, and onsets less than 10 ms apart count as one (`-M 0.010`; eight per beat at 300 BPM are 25 ms apart, so none is hidden). aubio's own delay varies
with the sound's first milliseconds: a click counts as found within 5 ms. Its defaults do not work here (a minimum of 50 ms
in the library, src/onset/onset.c). Debian 12's package aubio-tools 0.4.9.

    test_aubio.py PIOLO [TEMPO...]
"""
import pathlib
import sys
import tempfile
from fractions import Fraction

import numpy

from program import finish, held, run

RATE = 48_000
VOICES = ("wood", "metal", "reed", "dry")
TEMPI = (60, 137, 300)
NEAR = 0.005
GAP = 0.010
BEATS = 7


def bars_at(tempo):
    return max(1, tempo // 100)


def onsets_by_aubio(path):
    said = run("aubioonset", "-i", path, "-r", RATE, "-O", "energy", "-B", 256, "-H", 64, "-M", GAP)
    return numpy.array([float(line) for line in said.decode().split()])


def clicked(piolo, voice, tempo, parts, out):
    run(piolo, "click", "--tempo", tempo, "--meter", "7/8", "--groups", "2+2+3", "--subdivision", parts, "--bars", bars_at(tempo),
        "--count-in", 1, "--rate", RATE, "--voice", voice, "--out", out)


def exact_seconds(tempo, parts):
    """A count-in of beats only, then every part of every beat."""
    beat = Fraction(60, tempo)
    pulses = (bars_at(tempo) * BEATS) * parts
    return numpy.array([float(beat * k) for k in range(BEATS)] +
                       [float(beat * (BEATS + Fraction(k, parts))) for k in range(pulses)])


def lateness(found, exact):
    """For each click, the time at which it was found minus its own; None if they do not match one to one or are too far apart."""
    if len(found) != len(exact):
        return None
    late = found - exact
    return late if numpy.abs(late).max() <= NEAR else None


def tried(piolo, voice, tempo, parts, folder):
    exact = exact_seconds(tempo, parts)
    clicked(piolo, voice, tempo, parts, folder / "click.wav")
    found = onsets_by_aubio(folder / "click.wav")
    late = lateness(found, exact)
    if late is None:
        held(False, f"{voice} at {tempo}, {parts} to the beat: {len(found)} found of {len(exact)}, not one to one")
    return len(exact), late


def check(piolo, voice, tempo, folder):
    tries = [tried(piolo, voice, tempo, parts, folder) for parts in range(1, 9)]
    clicks = sum(count for count, _ in tries)
    if any(late is None for _, late in tries):
        return False
    late = 1000 * numpy.concatenate([late for _, late in tries])
    return held(True, f"{voice:6} {tempo:3} BPM, 1 to 8 to the beat: {clicks:4} of {clicks:4} found; "
                      f"late by {late.mean():5.2f} ms, from {late.min():5.2f} to {late.max():5.2f}")


def main():
    tempi = [int(tempo) for tempo in sys.argv[2:]] or TEMPI
    with tempfile.TemporaryDirectory() as folder:
        finish(check(sys.argv[1], voice, tempo, pathlib.Path(folder)) for voice in VOICES for tempo in tempi)


if __name__ == "__main__":
    main()
