# SPDX-License-Identifier: GPL-3.0-or-later
"""The whole drill with a single real key, in a real window: start, a miss, two presses to take it back, hold to stop, hold again to open the next passage. `test_pedal.py PIOLO`."""
import json
import os
import sys
import time

import practice
from player_window import Display, Window
from private_sound import PrivateSound, require
from waiting import Gone, wait

KEY = "Next"  # the window system's name for PageDown
OTHER = "March, letter C"


def add_other_passage(folder):
    """Adds a second passage, to be opened after the first."""
    path = os.path.join(folder, "journal", f"{practice.TEACHER}-2026.jsonl")
    with open(path, encoding="utf-8") as file:
        fact = json.loads(file.readline())
    fact.update(id="0000000000000000000000000000d003", passage="0000000000000000000000000000a002", seq=3,
                order=1_772_000_000_002, title={"name": OTHER})
    with open(path, "a", encoding="utf-8") as file:
        file.write(json.dumps(fact, separators=(",", ":")) + "\n")


def bind_one_pedal(config):
    path = os.path.join(config, "piolo", "settings.json")
    with open(path, encoding="utf-8") as file:
        settings = json.load(file)
    settings["keys"] = {"pedal": "PgDown", "mark": "Space"}
    with open(path, "w", encoding="utf-8") as file:
        json.dump(settings, file)


class Pedal:
    def __init__(self, window):
        self.window = window

    def tap(self):
        self.hold(0.08)

    def hold(self, seconds):
        self.window._xdotool("keydown", KEY)
        time.sleep(seconds)
        self.window._xdotool("keyup", KEY)

    def twice(self):
        self.tap()
        time.sleep(0.06)
        self.tap()


def kinds(window):
    return [fact["kind"] for fact in practice.facts(window.folder) if fact["kind"] in ("run", "back")]


def in_a_run(window):
    """Waits for the count-in and a little longer."""
    before = len(window.heard())
    wait("a run", lambda: len(window.heard()) > before + practice.BEATS + 3)


def drill(window):
    pedal = Pedal(window)
    window.play()
    pedal.tap()
    in_a_run(window)
    pedal.tap()
    wait("a missed run", lambda: window.runs() == [(practice.START, "missed")])
    in_a_run(window)
    pedal.twice()  # the first press counts as a miss: both are taken back
    wait("two taken back", lambda: kinds(window).count("back") == 2)
    in_a_run(window)
    pedal.hold(1.2)
    wait("silence after the hold", window.is_silent)
    title = lambda: " ".join(window._xdotool("getwindowname", window.id))
    if OTHER in title():
        raise Gone("the hold that stopped the click opened the next passage, too")
    pedal.hold(1.2)
    wait("the next passage", lambda: OTHER in title(), 5)


def faults_of(window):
    facts = practice.facts(window.folder)
    missed = [fact["id"] for fact in facts if fact["kind"] == "run" and fact["mark"] == "missed"]
    taken = [fact["retracts"] for fact in facts if fact["kind"] == "back"]
    clean = [fact for fact in facts if fact["kind"] == "run" and fact["mark"] == "clean"]
    print(f"  runs {window.runs()}; {len(taken)} taken back")
    faults = []
    if set(missed) - set(taken):
        faults.append(f"missed runs that still count: {set(missed) - set(taken)}")
    if not missed or clean:
        faults.append(f"not the runs that were played: {window.runs()}")
    return faults


def main(piolo):
    with PrivateSound() as sound, Display() as display:
        window = Window([piolo], sound, display, prepare=lambda home, folder: (
            add_other_passage(folder), bind_one_pedal(os.path.join(home, "config"))))
        try:
            drill(window)
            faults = faults_of(window)
        except Gone as gone:
            faults = [str(gone), f"practice log {window.runs()}, {kinds(window)}"]
        said = window.close()
    for fault in faults:
        print(f"  {fault}")
    if faults:
        print("  the window said: " + said[-2000:])
    return 1 if faults else 0


if __name__ == "__main__":
    require("Xvfb", "xdotool", "pulseaudio", "pactl")
    sys.exit(main(sys.argv[1]))
