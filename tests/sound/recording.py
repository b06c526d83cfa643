# SPDX-License-Identifier: GPL-3.0-or-later
"""What a recording must contain. Exact arithmetic only; each check returns a list of faults, empty if all is well."""
from fractions import Fraction

WRAP = 1 << 20


def counted_faults(samples):
    """Samples that encode their number: from the first sound on, each is one more than the previous one."""
    faults = []
    heard = [(place, round(value * WRAP) - 1) for place, value in enumerate(samples) if value != 0]
    if not heard:
        return ["nothing was heard"]
    for (place, number), (next_place, next_number) in zip(heard, heard[1:]):
        silent = next_place - place - 1
        step = (next_number - number) % WRAP
        if silent:
            faults.append(f"{silent} samples of silence at {place}")
        if step != 1:
            faults.append(f"after sample {number} at {place} came {next_number}")
    if heard[0][1] != 0:
        faults.append(f"the first sample heard was number {heard[0][1]}")
    return faults


def onsets(samples):
    """(position, level) of every sample that is not silent: impulses are single samples."""
    return [(place, value) for place, value in enumerate(samples) if value != 0]


class Origin:
    """All positions at which a grid may begin, given where its pulses were heard: sample = floor(origin + k * period + 1/2)."""

    def __init__(self):
        self.low = None
        self.high = None

    def hear(self, place, offset):
        """A pulse `offset` samples (a Fraction) after the origin was heard at `place`. False if no origin explains it."""
        low = place - Fraction(1, 2) - offset
        high = place + Fraction(1, 2) - offset
        self.low = low if self.low is None else max(self.low, low)
        self.high = high if self.high is None else min(self.high, high)
        return self.low < self.high


def period(tempo, rate, parts=1):
    """Samples from one pulse to the next, exact; the tempo in BPM may be a string such as 72.5."""
    return Fraction(60) * rate / (Fraction(tempo) * parts)
