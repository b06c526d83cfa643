# SPDX-License-Identifier: GPL-3.0-or-later
"""Everything together: the window under a virtual display, real key presses, a real sound server, the practice log.

`test_window.py HOLD_THREAD PIOLO`. Runs twice: normally, and with the window thread stopped for two seconds while a run sounds."""
import sys

import practice
from drilled import Listener, Music
from player_window import Display, faults_of_walk, Window
from private_sound import PrivateSound, RATE, require
from stalls import until_kept
from waiting import wait

MUSIC = Music(practice.BEATS, practice.BARS, practice.PARTS, practice.BREATH)
COUNT_IN = len(MUSIC.count_in())
FIRST_RUN = COUNT_IN + len(MUSIC.run())
EXPECTED = [(practice.START, "clean"), (practice.START, "missed"), (practice.START - practice.DROP, "clean")]


def drill(window, held):
    """Start, let a run end clean, press after a mistake, let the next run end clean, stop."""
    window.play()
    window.press("space")
    if held:
        wait("the first run", lambda: len(window.heard()) > COUNT_IN + 10)
        window.hold()
    wait("a clean run in the practice log", lambda: len(window.runs()) == 1)
    wait("the second run", lambda: len(window.heard()) > FIRST_RUN + COUNT_IN + 10)
    window.press("space")
    wait("a missed run in the practice log", lambda: len(window.runs()) == 2)
    wait("a third run in the practice log", lambda: len(window.runs()) == 3)
    window.press("Escape")
    wait("silence after Escape", window.is_silent)


def faults_of(window):
    listener = Listener(window.heard(), MUSIC, RATE)
    runs = window.runs()
    faults = [] if runs == EXPECTED else [f"the practice log has {runs}, not {EXPECTED}"]
    if runs:
        listener.follow(runs)
    print(f"  practice log: {runs}; {len(listener.onsets)} onsets heard, {listener.next} of them followed")
    return faults + listener.faults


def play(hold_thread, piolo, held):
    print("with the window's thread held for two seconds" if held else "as it is", flush=True)
    with PrivateSound() as sound, Display() as display:
        window = Window([hold_thread, piolo], sound, display)
        return faults_of_walk(window, lambda played: drill(played, held), faults_of)


if __name__ == "__main__":
    require("Xvfb", "xdotool", "pulseaudio", "pactl")
    RESULTS = [until_kept(lambda: play(sys.argv[1], sys.argv[2], held)) for held in (False, True)]
    sys.exit(1 if any(RESULTS) else 0)
