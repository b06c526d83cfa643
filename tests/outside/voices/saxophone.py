# SPDX-License-Identifier: GPL-3.0-or-later
"""A line on each saxophone, as FluidSynth plays it: the scale of C major as written, from low C two octaves up and down in
sixteenths at quarter = 96, forte (velocity 100, common practice), from the soundfont TimGM6mb. Programs 64 to 67 counted
from 0 are soprano, alto, tenor and baritone (General MIDI, koo.corpus.cam.ac.uk/info/midicontrollers.html); they sound 2, 9,
14 and 21 semitones lower than written (music21, music21/instrument.py). A sampled instrument, not a player in a room."""
import numpy

import sound_file
from midi_notes import midi_file
from program import run
from steady_click import SOUNDFONT

SAXOPHONES = {"soprano": (64, -2), "alto": (65, -9), "tenor": (66, -14), "baritone": (67, -21)}
FORTE = 100
LOW_C = 60
MAJOR = (0, 2, 4, 5, 7, 9, 11, 12, 14, 16, 17, 19, 21, 23, 24)
TICKS = 120
LEVEL = 0.1


def line(saxophone, rate, folder, rounds=4):
    """Samples, without content below 60 Hz (the recordings in that soundfont have an offset), at an RMS of LEVEL."""
    program, transposed = SAXOPHONES[saxophone]
    steps = (MAJOR + MAJOR[-2:0:-1]) * rounds
    notes = [(TICKS * index, LOW_C + transposed + step) for index, step in enumerate(steps)]
    (folder / "line.mid").write_bytes(midi_file(4 * TICKS, 625_000, notes, 0, TICKS - 6, program, FORTE))
    run("fluidsynth", "-ni", "-R", "0", "-C", "0", "-g", "0.5", "-r", rate, "-O", "float", "-F", folder / "line.wav", SOUNDFONT,
        folder / "line.mid")
    samples = above(sound_file.read(folder / "line.wav")[1][:round(len(steps) * 0.15625 * rate)], rate, 60)
    return samples * LEVEL / numpy.sqrt((samples**2).mean())


def above(samples, rate, lowest):
    spectrum = numpy.fft.rfft(samples)
    spectrum[numpy.fft.rfftfreq(len(samples), 1 / rate) < lowest] = 0
    return numpy.fft.irfft(spectrum, len(samples))
