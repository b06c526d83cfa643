# SPDX-License-Identifier: GPL-3.0-or-later
"""The MIDI file of a scale, compared with our own clicks and as played by FluidSynth.

Ticks: every note on its exact part of its beat, at the pitch that `piolo scale` lists, and on the click of `piolo click` at the same
tempo and subdivision, except for the rounding of quarters to microseconds (test_midi.py says how large it may be).
Played: FluidSynth 2.3.1 with the soundfont TimGM6mb; aubio hears the pitch (`yinfast`, windows of 2048 every 128 at 48 kHz). In the
middle of each note it is the one listed, within 6 cents (4.0 was the worst measured). It arrives at most 65 ms after the place
where the note begins (24 to 58 were measured, the most for low notes): aubio's window and the soundfont's own attack, which
neither file nor clicks can shorten.
Sounding numbers: the frequencies of the lowest and highest written notes of four saxophones, computed from
f = 440·2^((n-69)/12), with music21's intervals (music21/instrument.py), to the hundredth of a hertz.
Debian 12's packages midicsv, fluidsynth, timgm6mb-soundfont, aubio-tools.

    test_scale.py PIOLO
"""
import pathlib
import sys
import tempfile

import numpy

import heard
import sound_file
from listed_scale import ListedScale
from program import finish, held, run
from steady_click import SOUNDFONT
from test_midi import RATE, notes_and_quarters, read_holds

TICKS_ONLY = [ListedScale(key, kind, instrument, parts) for parts, (key, kind, instrument) in enumerate((
    ("Eb", "major", "alto saxophone"), ("F#", "harmonic minor", "clarinet in B flat"), ("C", "chromatic", "bassoon"),
    ("Ab", "melodic minor", "flute"), ("B", "blues", "trombone"), ("Gb", "altered", "tenor saxophone"),
    ("D", "whole tone", "oboe")), 1)]
PLAYED = [(ListedScale("Eb", "major", "alto saxophone", 1), "60"), (ListedScale("C", "chromatic", "flute", 3), "62.5"),
          (ListedScale("F#", "harmonic minor", "clarinet in B flat", 2, "whole range"), "83.257")]
TEMPO = "83.257"
CENTS, EARLY, LATE = 6, 0.0, 0.065
# Written B flat 3, F 6 and F sharp 6 as they sound.
SAXOPHONES = {"soprano saxophone": (207.65, 1244.51, 1318.51), "alto saxophone": (138.59, 830.61, 880.00),
              "tenor saxophone": (103.83, 622.25, 659.26), "baritone saxophone": (69.30, 415.30, 440.00)}


def hertz(number):
    return 440 * 2 ** ((number - 69) / 12)


def ticks_hold(piolo, scale, folder):
    """The notes of the file compared with the list and with the clicks."""
    midi = scale.write(piolo, folder / "scale.mid", "--tempo", TEMPO)
    notes = notes_and_quarters(midi)
    listed = [(quarters, key) for _, key, quarters in notes]
    yield held(listed == scale.quarters(), f"{scale.title()}: {len(listed)} notes on their exact ticks")
    clicks = folder / "clicks.wav"
    run(piolo, "click", "--tempo", TEMPO, "--subdivision", scale.notes_per_beat, "--bars", scale.bars + 1, "--rate", RATE, "--voice",
        "impulse", "--out", clicks)
    yield read_holds(notes, heard.impulses(sound_file.read(clicks)[1])[:len(notes)])


def pitches_heard(path):
    said = run("aubiopitch", "-i", path, "-r", RATE, "-p", "yinfast", "-B", 2048, "-H", 128, "-u", "midi")
    return numpy.array([[float(word) for word in line.split()] for line in said.decode().splitlines()])


def played_holds(piolo, scale, tempo, folder):
    midi = scale.write(piolo, folder / "scale.mid", "--tempo", tempo)
    run("fluidsynth", "-ni", "-R", "0", "-C", "0", "-g", "1", "-r", RATE, "-O", "float", "-F", folder / "fluid.wav", SOUNDFONT, midi)
    heard_pitches = pitches_heard(folder / "fluid.wav")
    times, pitches = heard_pitches[:, 0], heard_pitches[:, 1]
    quarter = 60 / float(tempo)
    cents, arrivals, before = [], [], None
    for at, key in scale.quarters():
        begin, length = float(at) * quarter, quarter / scale.notes_per_beat
        middle = pitches[(times > begin + 0.4 * length) & (times < begin + 0.8 * length)]
        cents.append(100 * abs(numpy.median(middle) - key) if len(middle) else numpy.inf)
        if before is not None and before != key:
            there = (times > begin - 0.1) & (numpy.abs(pitches - key) < 0.5)
            arrivals.append(times[there][0] - begin if there.any() else numpy.inf)
        before = key
    yield held(max(cents) <= CENTS, f"{scale.title()}: {len(cents)} pitches in order, {max(cents):.1f} cents off at most")
    yield held(min(arrivals) >= EARLY and max(arrivals) <= LATE,
               f"{scale.title()}: they arrive {1000 * min(arrivals):.0f} to {1000 * max(arrivals):.0f} ms after their place")


def saxophones_hold(piolo):
    """Scales from written B flat 3, F and F sharp: their first or highest notes as listed."""
    for instrument, expected in SAXOPHONES.items():
        numbers = [ListedScale("Bb", "major", instrument, 1).read(piolo).sounding[0]]
        numbers += [max(ListedScale(key, "major", instrument, 1).read(piolo).sounding) for key in ("F", "F#")]
        found = tuple(round(hertz(number), 2) for number in numbers)
        yield held(found == expected, f"{instrument}: {found} Hz")


def main():
    results = list(saxophones_hold(sys.argv[1]))
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        for scale in TICKS_ONLY:
            results += ticks_hold(sys.argv[1], scale.read(sys.argv[1]), folder)
        for scale, tempo in PLAYED:
            results += played_holds(sys.argv[1], scale.read(sys.argv[1]), tempo, folder)
    finish(results)


if __name__ == "__main__":
    main()
