# SPDX-License-Identifier: GPL-3.0-or-later
"""One steady click, n per beat for a minute, as input for other programs, and its exact positions."""
from fractions import Fraction

from midi_notes import midi_file

SOUNDFONT = "/usr/share/sounds/sf2/TimGM6mb.sf2"
SHORT_KEY = 33  # of the soundfont's percussion bank: its shortest sound


class SteadyClick:
    def __init__(self, tempo, parts, rate, seconds=60):
        self.tempo, self.parts, self.rate, self.seconds = tempo, parts, rate, seconds
        self.count = int(Fraction(tempo) * parts * seconds / 60)

    def __str__(self):
        return f"{self.tempo} BPM, {self.parts} to the beat, {self.rate} Hz"

    def seconds_of(self, pulse):
        return pulse * Fraction(60) / (Fraction(self.tempo) * self.parts)

    def place_of(self, pulse):
        """In samples, as a fraction."""
        return self.seconds_of(pulse) * self.rate

    def piolo(self, piolo, voice, out):
        """The arguments for writing it as a WAV file: bars of one beat each."""
        beats = self.count // self.parts
        return [piolo, "click", "--tempo", self.tempo, "--meter", "1/4", "--subdivision", self.parts, "--bars", beats,
                "--rate", self.rate, "--voice", voice, "--out", out]

    def csound_score(self):
        events = "\n".join(f"i1 {float(self.seconds_of(pulse)):.15f} 0.01" for pulse in range(self.count))
        return ("<CsoundSynthesizer>\n<CsOptions>\n</CsOptions>\n<CsInstruments>\n"
                f"sr = {self.rate}\nksmps = 64\nnchnls = 1\n0dbfs = 1\ninstr 1\n a1 mpulse 1, 0\n out a1\nendin\n"
                f"</CsInstruments>\n<CsScore>\n{events}\ne {self.seconds}\n</CsScore>\n</CsoundSynthesizer>\n")

    def midi(self):
        """A Standard MIDI File whose ticks are exactly at those positions: quarters of 6 s, of which one pulse is 10 ticks or,
        for
        half a beat per minute, 20."""
        pulses_in_a_minute = Fraction(self.tempo) * self.parts
        ticks = 10 * pulses_in_a_minute.denominator
        division = int(pulses_in_a_minute * ticks / 10)
        return midi_file(division, 6_000_000, [(pulse * ticks, SHORT_KEY) for pulse in range(self.count)], 9)
