# SPDX-License-Identifier: GPL-3.0-or-later
"""What a drill must sound like: every pulse of clean and missed runs at its exact position, from one origin."""
from recording import Origin, period

DOWNBEAT, BEAT, SUBDIVISION = 1.0, 0.75, 0.5


def level(beat, part, beats):
    if part:
        return SUBDIVISION
    return BEAT if beat % beats else DOWNBEAT


class Music:
    """The shape of the passage: bars of `beats`, each with `parts` pulses; it may end on the next downbeat."""

    def __init__(self, beats, bars, parts, breath, gap_seconds=4, landing=True):
        self.beats, self.bars, self.parts, self.breath, self.gap_seconds = beats, bars, parts, breath, gap_seconds
        self.landing = landing

    def length(self):
        """Of a run, in pulses."""
        return (self.bars * self.beats + self.landing) * self.parts

    def count_in(self):
        """(pulses from its first beat, level) of each pulse."""
        return [(beat * self.parts, level(beat, 0, self.beats)) for beat in range(self.beats)]

    def run(self):
        """The same for a run."""
        total = self.bars * self.beats
        pulses = [(beat * self.parts + part, level(beat, part, self.beats))
                  for beat in range(total) for part in range(self.parts)]
        return pulses + [(total * self.parts, DOWNBEAT)] * self.landing


class Listener:
    """Follows the onsets of a recording through the runs of the journal and collects what is wrong."""

    def __init__(self, onsets, music, rate):
        self.onsets, self.music, self.rate = onsets, music, rate
        self.next = 0
        self.origin = Origin()
        self.faults = []

    def _hear(self, pulse, at, what):
        if self.next >= len(self.onsets):
            self.faults.append(f"{what}: the recording ends")
            return False
        place, heard = self.onsets[self.next]
        self.next += 1
        if heard != pulse[1]:
            self.faults.append(f"{what}: level {heard} at {place}, not {pulse[1]}")
        elif not self.origin.hear(place, at):
            self.faults.append(f"{what}: the onset at {place} is not on its place")
        return not self.faults

    def _hear_all(self, pulses, at, step, what):
        for pulse in pulses:
            if not self._hear(pulse, at + pulse[0] * step, what):
                return

    def _is_next(self, at):
        """True if the next onset is where the offset `at` from the origin puts it, within a sample."""
        return self.next < len(self.onsets) and self.origin.low is not None and \
            abs(self.onsets[self.next][0] - (self.origin.low + at)) <= 2

    def follow(self, runs):
        """`runs`: (tempo, mark) as in the journal, then the tempo after the last one, whose count-in may have begun."""
        at = 0
        for number, (tempo, mark) in enumerate(runs, 1):
            step = period(str(tempo), self.rate, self.music.parts)
            what = f"run {number} at {tempo}"
            self._hear_all(self.music.count_in(), at, step, f"count-in of {what}")
            at += self.music.beats * self.music.parts * step
            if self.faults:
                return
            if mark == "clean":
                self._hear_all(self.music.run(), at, step, what)
                at += self.music.length() * step
            else:
                at = self._miss(at, step, what)
            if number < len(runs) and not self.faults:
                at += self._pause(mark, runs[number][0])
        self._tail(at, runs[-1])

    def _miss(self, at, step, what):
        """The pulses up to the miss; returns the position of the next pulse, with which the following section begins."""
        heard = 0
        for heard, pulse in enumerate(self.music.run()):
            if not self._is_next(at + pulse[0] * step):
                break
            if not self._hear(pulse, at + pulse[0] * step, what):
                break
        if heard == 0:
            self.faults.append(f"{what}: nothing was heard of the missed run")
        return at + heard * step

    def _pause(self, mark, tempo):
        beat = period(str(tempo), self.rate)
        if mark == "clean":
            return self.music.breath * beat
        bar = self.music.beats * beat
        bars = -(-self.music.gap_seconds * self.rate // bar)
        return (max(bars, 1) - 1) * bar

    def _tail(self, at, last):
        """What was heard after the last run in the journal: the beginning of the next run, nothing else."""
        if self.faults or self.next == len(self.onsets):
            return
        tempo, mark = last
        at += self._pause(mark, tempo)
        step = period(str(tempo), self.rate, self.music.parts)
        lead = self.music.beats * self.music.parts
        pulses = self.music.count_in() + [(lead + offset, size) for offset, size in self.music.run()]
        rest = len(self.onsets) - self.next
        self._hear_all(pulses[:rest], at, step, "what followed the last run")
        if rest > len(pulses):
            self.faults.append(f"{rest - len(pulses)} onsets more than there should be")
