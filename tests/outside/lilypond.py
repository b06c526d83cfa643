# SPDX-License-Identifier: GPL-3.0-or-later
"""A score as LilyPond plays it: Debian 12's musicxml2ly 2.24.1 reads it, LilyPond makes a MIDI file, midicsv lists its notes. Tied notes are one note there. LilyPond has 384 ticks per quarter and rounds."""
import csv
from fractions import Fraction

from program import run, stop


def played(score, folder):
    """[(quarters from the beginning, MIDI number)] of each note, in order, and the ticks per quarter."""
    run("musicxml2ly", "--midi", "--absolute", "--loglevel=ERROR", "-o", folder / f"{score.stem}.ly", score)
    run("lilypond", "--loglevel=ERROR", "-dno-print-pages", "-o", folder / score.stem, folder / f"{score.stem}.ly")
    midi = next(iter(folder.glob(f"{score.stem}.mid*")), None)
    if midi is None:
        stop(f"LilyPond made no MIDI file of {score.name}")
    rows = list(csv.reader(run("midicsv", midi).decode("latin-1").splitlines(), skipinitialspace=True))
    division = next(int(row[5]) for row in rows if row[2] == "Header")
    return sorted((Fraction(int(row[1]), division), int(row[4])) for row in rows
                  if row[2] == "Note_on_c" and int(row[5]) > 0), division


def worst(ours, theirs, division):
    """The largest difference in ticks, or None if the notes differ."""
    if [note for _, note in ours] != [note for _, note in theirs]:
        ours, theirs = sorted(ours, key=lambda n: (round(n[0] * division), n[1])), sorted(
            theirs, key=lambda n: (round(n[0] * division), n[1]))
    if not ours or [note for _, note in ours] != [note for _, note in theirs]:
        return None
    return max(abs(a - b) * division for (a, _), (b, _) in zip(ours, theirs))
