# SPDX-License-Identifier: GPL-3.0-or-later
"""Scores written by `piolo export` and `piolo scale`, played by LilyPond (lilypond.py): every note at its pitch and time, either known before Piolo saw it or listed by Piolo. A note may be one tick off. The tempo is a whole number of quarters: LilyPond cannot read any other as written by musicxml2ly 2.24.1.

    test_written.py PIOLO [PASSAGES SEED]
"""
import pathlib
import sys
import tempfile

import known_passage
import lilypond
from listed_scale import ListedScale
from program import finish, held

SCALES = (("Eb", "major", "alto saxophone", 5), ("F#", "harmonic minor", "clarinet in B flat", 7), ("Cb", "blues", "bassoon", 3),
          ("B", "chromatic", "piccolo", 6))


def agrees(name, ours, score, folder):
    theirs, division = lilypond.played(score, folder)
    worst = lilypond.worst(ours, theirs, division)
    return held(worst is not None and worst <= 1, f"{name}: {len(ours)} notes here, {len(theirs)} there, worst place "
                f"{'none' if worst is None else f'{float(worst):.2f}'} ticks of {division}")


def main():
    piolo = sys.argv[1]
    count, seed = (int(word) for word in (sys.argv[2:4] or ("4", "11")))
    passages = [known_passage.random_passage(seed + place, (seed + place) % 15 - 7) for place in range(count)]
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        results = [agrees(f"{made.name} in {made.meter}", made.quarters(), score, folder)
                   for made, score in zip(passages, known_passage.scores(piolo, passages, folder, 96))]
        for number, words in enumerate(SCALES):
            scale = ListedScale(*words).read(piolo)
            score = scale.write(piolo, folder / f"scale{number}.musicxml")
            results.append(agrees(scale.title(), scale.quarters(), score, folder))
    finish(results)


if __name__ == "__main__":
    main()
