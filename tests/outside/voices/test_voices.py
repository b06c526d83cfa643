# SPDX-License-Identifier: GPL-3.0-or-later
"""The voices as a player hears them: measured one stroke at a time, and against a saxophone's line.

Levels are in dB re full scale: they compare voices with each other and say nothing about loudness in a room. The line is at an RMS of a tenth of full scale, the clicks at full level, so the last table is for comparison, too. The audible difference of levels (about 1 dB) and an interval (3 semitones, far more than needed) are common practice.

    test_voices.py PIOLO
"""
import math
import pathlib
import sys
import tempfile

import numpy

sys.path.append(str(pathlib.Path(__file__).resolve().parents[1]))  # the modules shared by tests/outside

import critical_bands
import saxophone
import stroke
from masking import Line
from program import finish, held

DEFAULT = "wood"
NEARLY = 1  # dB
ORDER = ("downbeat", "group", "beat", "subdivision")


def table(voices):
    print("voice  stroke          length attack   peak  level  crest centroid partials (Hz)")
    for voice, strokes in voices.items():
        for name, sound in strokes.items():
            print(f"{voice:6} {name:15} {1000 * len(sound) / stroke.RATE:3.0f} ms {stroke.attack_ms(sound):3.1f} ms "
                  f"{numpy.abs(sound).max():6.2f} {stroke.level(sound):6.1f} {stroke.crest(sound):6.1f} "
                  f"{stroke.centroid(sound):8.0f} {', '.join(f'{hertz:.0f}' for hertz in stroke.partials(sound))}")


def clean(voice, strokes):
    """No stroke has an audible fault."""
    sounds = list(strokes.values())
    worst = {name: max(measure(sound) for sound in sounds) for name, measure in FAULTS.items()}
    for name, most in MOST.items():
        yield held(worst[name] <= most, f"{voice}: {name} {worst[name]:.5f}, {most} at most")


FAULTS = {"seconds long": lambda sound: len(sound) / stroke.RATE, "ms of attack": stroke.attack_ms,
          "off zero, of the peak": stroke.steady_part, "last sample, of the peak": stroke.ends,
          "rising again, of the peak": stroke.second_blow, "peak": lambda sound: numpy.abs(sound).max()}
MOST = {"seconds long": stroke.MOST_SECONDS, "ms of attack": 4.0, "off zero, of the peak": 0.005, "last sample, of the peak": 0.001,
        "rising again, of the peak": 0.25, "peak": 0.9}


def told_apart(voice, strokes):
    for strong, weak in zip(ORDER, ORDER[1:]):
        louder = 20 * math.log10(numpy.abs(strokes[strong]).max() / numpy.abs(strokes[weak]).max())
        higher = 12 * math.log2(stroke.partials(strokes[strong])[0] / stroke.partials(strokes[weak])[0])
        yield held(louder >= 1 and higher >= 3, f"{voice}: {strong} is {louder:.1f} dB stronger than {weak}, and {higher:.1f} "
                                                "semitones higher")


def heard_through(voices, folder):
    """{(voice, stroke): the dB that nine moments in ten reach, averaged over the saxophones}."""
    lines = {name: Line(saxophone.line(name, stroke.RATE, folder), stroke.RATE) for name in saxophone.SAXOPHONES}
    reached = {}
    print("\ndB over the line in the band where the click stands out most: in the middle of all moments / what nine in ten reach")
    print(f"{'':18}" + "".join(f"{name:>28}" for name in lines))
    for voice, strokes in voices.items():
        for name in ORDER:
            found = [line.stands_out(strokes[name]) for line in lines.values()]
            edges = critical_bands.EDGES
            cells = [f"{middle:.1f} / {most:.1f} ({edges[band]}-{edges[band + 1]} Hz)" for band, middle, most in found]
            print(f"{voice:6} {name:11}" + "".join(f"{cell:>28}" for cell in cells))
            reached[voice, name] = float(numpy.mean([most for _, _, most in found]))
    return reached


def best_heard(reached):
    strong = ORDER[:3]
    means = {voice: numpy.mean([reached[voice, name] for name in strong]) for voice in stroke.VOICES}
    order = sorted(means, key=lambda voice: -means[voice])
    reported = ", ".join(f"{voice} {means[voice]:.1f}" for voice in order)
    yield held(order[0] == DEFAULT, f"nine in ten reach, over the four saxophones and {', '.join(strong)}: {reported} dB; the "
                                    f"default is {DEFAULT}")
    for name in strong:
        most = max(reached[voice, name] for voice in stroke.VOICES)
        yield held(reached[DEFAULT, name] >= most - NEARLY, f"{name}: {DEFAULT} {reached[DEFAULT, name]:.1f}, the best {most:.1f}")


def main():
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        voices = {voice: stroke.strokes(sys.argv[1], voice, folder / "strokes.wav") for voice in stroke.VOICES}
        table(voices)
        results = [result for voice, strokes in voices.items() for check in (clean, told_apart) for result in check(voice, strokes)]
        finish(results + list(best_heard(heard_through(voices, folder))))


if __name__ == "__main__":
    main()
