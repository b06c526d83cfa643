# SPDX-License-Identifier: GPL-3.0-or-later
"""Scales in a real window with real keys: from an empty folder to the alto saxophone, to E flat major in quintuplets, up two rungs; the practice log shows it, and the recording has five exact clicks per beat.

`test_scales.py PIOLO [OUT]`. Pictures of the steps are saved in OUT."""
import os
import pathlib
import sys
import time

import practice
from drilled import Listener, Music
from player_window import faults_of_walk, Window
from private_sound import PrivateSound, RATE, require
from screen_pixels import Screen
from stalls import until_kept
from waiting import wait

SIZE = "1280x800"
NOTES = 5
MUSIC = Music(beats=4, bars=2, parts=NOTES, breath=2, landing=False)
STREAK, CLIMB = 5, 2  # the usual rule
PROPOSED, CHOSEN = 48, 84  # no neighbour was played; the tempo is raised by hand for the test
EXPECTED = [(CHOSEN, "clean")] * STREAK + [(CHOSEN + CLIMB, "clean")] * STREAK
E_FLAT, QUINTUPLETS = 3, 4  # columns by fourths, and rows, both counted from 0


class Album:
    """Pictures of the steps, if requested."""

    def __init__(self, screen, out):
        self.screen, self.out = screen, out

    def take(self, name):
        time.sleep(0.7)
        if self.out:
            os.makedirs(self.out, exist_ok=True)
            pathlib.Path(self.out, f"{name}.png").write_bytes(self.screen.png())


def scales(window):
    """What the journal contains about scales: the instrument, and the passages that are scales."""
    reported = practice.facts(window.folder)
    chosen = [fact["scales"].get("instrument") for fact in reported if fact["kind"] == "settings" and "scales" in fact]
    return chosen[-1:], [fact["scale"] for fact in reported if fact["kind"] == "passage" and "scale" in fact]


def choose_instrument(window):
    """From the first screen to the scales, which ask for an instrument; typing a part of its name finds it."""
    window.press("shift+Tab", 2)
    window.press("Right")
    window.press("Return")
    time.sleep(0.5)
    for letter in "alto":
        window.press(letter)
    window.press("Return")
    wait("the alto saxophone in the practice log", lambda: scales(window)[0] == ["alto saxophone"])


def drill(window, album):
    window.play()
    choose_instrument(window)
    window.press("Right", E_FLAT)
    window.press("Down", QUINTUPLETS)
    album.take("scales-empty")
    window.press("Return")
    wait("the scale in the practice log", lambda: scales(window)[1])
    window.press("Up", CHOSEN - PROPOSED)
    album.take("scale-drill")
    window.press("space")
    wait("the first run", lambda: len(window.heard()) > 14)
    album.take("scale-playing")
    wait("two full streaks", lambda: len(window.runs()) == len(EXPECTED), 240)
    window.press("Escape")
    wait("silence after Escape", window.is_silent)
    window.press("alt+Left")
    album.take("scales-filled")


def faults_of(window):
    faults = []
    expected = [{"tonic": "Eb", "kind": "major", "range": "two octaves", "pattern": "in order", "notes": NOTES,
                 "instrument": "alto saxophone"}]
    if scales(window)[1] != expected:
        faults.append(f"the practice log has the scales {scales(window)[1]}")
    runs = window.runs()
    if runs != EXPECTED:
        faults.append(f"the practice log has {runs}, not {EXPECTED}")
    listener = Listener(window.heard(), MUSIC, RATE)
    listener.follow(runs)
    print(f"  practice log: {runs}; {len(listener.onsets)} onsets heard, {listener.next} of them followed")
    return faults + listener.faults


def walk(piolo, out):
    with PrivateSound() as sound, Screen(SIZE) as screen:
        window = Window([piolo], sound, screen, empty=True)
        return faults_of_walk(window, lambda played: drill(played, Album(screen, out)), faults_of)


if __name__ == "__main__":
    require("Xvfb", "xdotool", "pulseaudio", "pactl")
    OUT = sys.argv[2] if len(sys.argv) > 2 else None
    sys.exit(1 if until_kept(lambda: walk(sys.argv[1], OUT)) else 0)
