# SPDX-License-Identifier: GPL-3.0-or-later
"""The same click by Piolo, Csound and TiMidity, onset by onset against the exact places.

The reference is the definition: pulse k, with n per beat, is at k * 60 * rate / (tempo * n) samples, a fraction. No program
can place a sample nearer than half a sample at the worst. A synthesizer's sound begins a fixed time after its note: that delay is subtracted, first in the whole samples that favour the program most ("as placed"), then in the fraction of a sample that favours its mean and its worst most ("delay chosen freely").

Sources: Csound 6.18 (manual, `--sample-accurate`), TiMidity 2.14 (timidity(1)), Debian 12's packages csound and timidity.

    test_nearest.py PIOLO [COUNT SEED]    COUNT random clicks instead of the fixed ones
"""
import math
import pathlib
import random
import sys
import tempfile

import numpy

import heard
import sound_file
from program import finish, held, run
from steady_click import SOUNDFONT, SteadyClick

CLICKS = [SteadyClick("137", 7, 48_000), SteadyClick("137", 7, 44_100), SteadyClick("72.5", 5, 48_000, 48),
          SteadyClick("208", 3, 96_000, 30), SteadyClick("298", 8, 44_100, 30)]
TIE = 1e-9


def by_piolo(click, piolo, folder):
    run(*click.piolo(piolo, "impulse", folder / "piolo.wav"))
    return heard.impulses(sound_file.read(folder / "piolo.wav")[1])


def by_csound(click, folder):
    (folder / "click.csd").write_text(click.csound_score())
    run("csound", "-d", "--sample-accurate", "-W", "-f", "-o", folder / "csound.wav", folder / "click.csd")
    return heard.impulses(sound_file.read(folder / "csound.wav")[1])


def by_timidity(click, folder):
    (folder / "click.mid").write_bytes(click.midi())
    run("timidity", "-c", "/dev/null", "-x", f"soundfont {SOUNDFONT}", "-EFreverb=0", "-EFchorus=0", "-EFns=0", "-Ow",
        "--output-mono", "--output-16bit", "-s", click.rate, "-o", folder / "timidity.wav", folder / "click.mid")
    samples = sound_file.read(folder / "timidity.wav")[1]
    return heard.alike(samples, [float(click.place_of(pulse)) for pulse in range(click.count)])


class Errors:
    def __init__(self, places, exact, delayed):
        raw = numpy.array([float(int(place) - at) for place, at in zip(places, exact)])
        around = math.floor(numpy.median(raw))
        delay = min(range(around - 2, around + 3), key=lambda d: numpy.abs(raw - d).mean()) if delayed else 0
        self.placed = numpy.abs(raw - delay)
        self.mean, self.worst = self.placed.mean(), self.placed.max()
        self.free_mean = numpy.abs(raw - numpy.median(raw)).mean()
        self.free_worst = (raw.max() - raw.min()) / 2

    def row(self, name, ours):
        if ours is self:
            against = ""
        else:
            nearer = int((ours.placed < self.placed - TIE).sum())
            farther = int((ours.placed > self.placed + TIE).sum())
            against = f"{nearer:6} {len(self.placed) - nearer - farther:6} {farther:6}"
        return (f"{name:10} {len(self.placed):6} {self.mean:8.4f} {self.worst:8.4f} {self.free_mean:10.4f} "
                f"{self.free_worst:8.4f}  {against}")


def compare(click, piolo, folder):
    exact = [click.place_of(pulse) for pulse in range(click.count)]
    rendered = {"piolo": by_piolo(click, piolo, folder), "csound": by_csound(click, folder),
                "timidity": by_timidity(click, folder)}
    print(f"\n{click}: errors in samples")
    for name, places in rendered.items():
        if not held(len(places) == click.count, f"{name} renders all {click.count} clicks"):
            return [False]
    ours = Errors(rendered["piolo"], exact, delayed=False)
    others = {name: Errors(rendered[name], exact, delayed=True) for name in ("csound", "timidity")}
    print("                   as placed         delay chosen freely  Piolo is")
    print("           onsets     mean    worst       mean    worst  nearer  equal farther")
    for name, errors in {"piolo": ours, **others}.items():
        print(errors.row(name, ours))
    return [held(test, f"{line} ({name})") for name, errors in others.items() for test, line in promises(ours, errors)]


def promises(ours, other):
    return [((ours.placed <= other.placed + TIE).all(), "no onset of Piolo's is farther from its exact place"),
            (ours.mean < other.mean, "Piolo's mean is the smaller"),
            (ours.worst < other.worst, "Piolo's worst is the smaller"),
            (ours.worst <= 0.5 + TIE, "Piolo's worst is half a sample at most"),
            (ours.free_mean <= other.free_mean + TIE and ours.free_worst <= other.free_worst + TIE,
             "with the delay chosen freely Piolo is at least as near")]


def drawn(count, seed):
    """Clicks whose positions are spread evenly between samples; otherwise another program could be equally close."""
    draw = random.Random(seed)
    clicks = []
    while len(clicks) < count:
        click = SteadyClick(str(draw.randint(20, 300)), draw.randint(1, 8), draw.choice((44_100, 48_000, 96_000)))
        if click.place_of(1).denominator > 10:
            clicks.append(click)
    return clicks


def main():
    clicks = drawn(int(sys.argv[2]), int(sys.argv[3])) if len(sys.argv) > 3 else CLICKS
    with tempfile.TemporaryDirectory() as folder:
        finish([result for click in clicks for result in compare(click, sys.argv[1], pathlib.Path(folder))])


if __name__ == "__main__":
    main()
