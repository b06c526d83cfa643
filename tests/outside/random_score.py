# SPDX-License-Identifier: GPL-3.0-or-later
"""Scores in MusicXML made at random: tuplets, dots, ties, chords, rests, accidentals, transposed parts."""
import random

DIVISIONS = 840  # divisible by 3, 4, 5, 7 and 8
# Ways to fill one quarter beat: (type, dots, actual, normal, how many, divisions of each).
BEATS = [[("quarter", 0, 1, 1, 840)], [("eighth", 0, 1, 1, 420)] * 2, [("16th", 0, 1, 1, 210)] * 4,
         [("eighth", 1, 1, 1, 630), ("16th", 0, 1, 1, 210)], [("16th", 0, 1, 1, 210), ("eighth", 1, 1, 1, 630)],
         [("eighth", 0, 3, 2, 280)] * 3, [("16th", 0, 5, 4, 168)] * 5, [("16th", 0, 6, 4, 140)] * 6,
         [("16th", 0, 7, 4, 120)] * 7, [("32nd", 0, 1, 1, 105)] * 8]
TRANSPOSITIONS = [(0, 0, 0), (-1, -2, 0), (-5, -9, 0), (-1, -2, -1), (-5, -9, -1), (2, 3, 0)]


def pitch(chance, taken=()):
    while True:
        step, octave, alter = chance.choice("ABCDEFG"), chance.randint(3, 5), chance.choice([0, 0, 0, 1, -1])
        if all((step, octave) != one[:2] for one in taken):
            return step, octave, alter


def element(pitched, shape, chord, tuplet, ties):
    kind, dots, actual, normal, duration = shape
    what = "<rest/>" if pitched is None else (
        f"<pitch><step>{pitched[0]}</step><alter>{pitched[2]}</alter><octave>{pitched[1]}</octave></pitch>")
    ratio = "" if actual == 1 else (
        f"<time-modification><actual-notes>{actual}</actual-notes><normal-notes>{normal}</normal-notes></time-modification>")
    notations = "".join(f'<tied type="{tie}"/>' for tie in ties) + (f'<tuplet type="{tuplet}"/>' if tuplet else "")
    return ("<note>" + ("<chord/>" if chord else "") + what + f"<duration>{duration}</duration>"
            + "".join(f'<tie type="{tie}"/>' for tie in ties) + f"<voice>1</voice><type>{kind}</type>" + "<dot/>" * dots
            + ratio + (f"<notations>{notations}</notations>" if notations else "") + "</note>\n")


def beat(chance, held):
    """The notes of one beat, and the pitch that is tied to the next one."""
    shapes = chance.choice(BEATS)
    text = ""
    for i, shape in enumerate(shapes):
        tuplet = None if shape[2] == 1 else "start" if i == 0 else "stop" if i == len(shapes) - 1 else None
        if held is None and chance.random() < 0.1:
            text += element(None, shape, False, tuplet, [])
            continue
        main = held or pitch(chance)
        ties = ["stop"] if held else []
        held = main if i == len(shapes) - 1 and chance.random() < 0.2 else None
        ties += ["start"] if held else []
        text += element(main, shape, False, tuplet, ties)
        if chance.random() < 0.1:
            text += element(pitch(chance, [main]), shape, True, None, [])
    return text, held


def score(seed, bars=8):
    chance = random.Random(seed)
    diatonic, chromatic, octave = chance.choice(TRANSPOSITIONS)
    beats = chance.choice([2, 3, 4, 5])
    pick_up = chance.random() < 0.5
    text, held = "", None
    for bar in range(0 if pick_up else 1, bars + 1):
        text += f'<measure number="{bar}"' + (' implicit="yes">' if bar == 0 else ">")
        if text.count("<measure") == 1:
            text += (f"<attributes><divisions>{DIVISIONS}</divisions><key><fifths>0</fifths></key><time><beats>{beats}</beats>"
                     f"<beat-type>4</beat-type></time><clef><sign>G</sign><line>2</line></clef><transpose><diatonic>{diatonic}"
                     f"</diatonic><chromatic>{chromatic}</chromatic><octave-change>{octave}</octave-change></transpose>"
                     "</attributes>\n")
        for place in range(1 if bar == 0 else beats):
            if bar == bars and place == beats - 1:  # no tie into a note that does not follow
                text += element(held or pitch(chance), BEATS[0][0], False, None, ["stop"] if held else [])
            else:
                more, held = beat(chance, held)
                text += more
        text += "</measure>\n"
    return ('<?xml version="1.0" encoding="UTF-8"?>\n<score-partwise version="4.0"><part-list><score-part id="P1">'
            f'<part-name>Seed {seed}</part-name></score-part></part-list><part id="P1">\n{text}</part></score-partwise>\n')
