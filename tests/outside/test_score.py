# SPDX-License-Identifier: GPL-3.0-or-later
"""The notes read from a score are those that an independent reader plays, note by note in pitch and time.

Debian 12's musicxml2ly 2.24.1 reads the score, LilyPond plays it into a MIDI file, midicsv lists its notes; tied notes are
one there. `piolo bars` prints the same notes. LilyPond has 384 ticks per quarter and rounds: a note may be one tick off.

    test_score.py PIOLO SAMPLE.musicxml [SCORES SEED]
"""
import pathlib
import sys
import tempfile
from fractions import Fraction

import lilypond
import random_score
from program import finish, held, run


def read(piolo, score):
    """The same from `piolo bars`, for all bars."""
    listed = run(piolo, "bars", score).decode().splitlines()
    names = next(line for line in listed if line.startswith("part 1: ")).split(" bars, ")[1].split(",")[0].split(" to ")
    lines = run(piolo, "bars", score, "--from", names[0], "--to", names[1]).decode().splitlines()
    notes = (line.split() for line in lines if line.startswith("  ") and not line.endswith(" tied"))
    return sorted((4 * Fraction(words[0]), int(words[3])) for words in notes)


def main():
    piolo, sample = sys.argv[1:3]
    count, seed = (int(word) for word in (sys.argv[3:5] or ("2", "1")))
    results = []
    print(f"{count} scores from seed {seed}")
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        scores = [pathlib.Path(sample)]
        for one in range(seed, seed + count):
            scores.append(folder / f"seed{one}.musicxml")
            scores[-1].write_text(random_score.score(one), encoding="utf-8")
        for score in scores:
            theirs, division = lilypond.played(score, folder)
            ours = read(piolo, score)
            worst = lilypond.worst(ours, theirs, division)
            results.append(held(worst is not None and worst <= 1, f"{score.stem}: {len(ours)} notes here, {len(theirs)} there, "
                                f"worst place {'none' if worst is None else f'{float(worst):.2f}'} ticks of {division}"))
    finish(results)


main()
