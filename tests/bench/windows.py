# SPDX-License-Identifier: GPL-3.0-or-later
"""From the start of the program to its first frame, on a virtual display; Qt itself reports when a frame was rendered."""
import os
import shutil
import subprocess
import time

from journals import RUNS
from page import table
from picture import Panel
from place import SOURCE, told
from ratios import Ratio, take_turns

from player_window import Display

FRAME = "Frame rendered"
EMPTY_QT, EMPTY, SAMPLE = "an empty Qt Quick window", "Piolo, no practice yet", "Piolo, the sample folder"


class Desk:
    """Settings and caches of its own, kept from start to start as on a player's machine."""

    def __init__(self, where, display):
        home = where.path("home")
        os.makedirs(f"{home}/run", mode=0o700, exist_ok=True)
        self.env = dict(os.environ, DISPLAY=display.name, QT_QPA_PLATFORM="xcb", QT_QUICK_BACKEND="software", HOME=home,
                        XDG_CONFIG_HOME=f"{home}/config", XDG_STATE_HOME=f"{home}/state", XDG_DATA_HOME=f"{home}/data",
                        XDG_CACHE_HOME=f"{home}/cache", XDG_RUNTIME_DIR=f"{home}/run", LC_ALL="C.UTF-8",
                        PULSE_SERVER=f"unix:{home}/nobody", QT_LOGGING_RULES="qt.scenegraph.time.renderloop=true")

    def first_frame(self, words):
        """Seconds until Qt reports the first frame."""
        begin = time.monotonic()
        with subprocess.Popen(words, env=self.env, stdout=subprocess.DEVNULL, stderr=subprocess.PIPE, text=True) as process:
            said = []
            for line in process.stderr:
                said.append(line)
                if FRAME in line:
                    break
            seconds = time.monotonic() - begin
            process.kill()
        if not said or FRAME not in said[-1]:
            raise SystemExit(f"{words[0]} never rendered a frame: {''.join(said)[-300:]}")
        return seconds


def ten_years(where, runs):
    folder = where.path(f"years-{runs}")
    told([os.path.join(where.build, "tests/durability/piolo_ten_years"), folder, "--runs", runs])
    return folder


def folders(where):
    sample = where.path("sample")
    shutil.copytree(os.path.join(SOURCE, "samples", "spring-concert"), sample, dirs_exist_ok=True)
    found = {EMPTY: where.new_folder(), SAMPLE: sample}
    found.update({f"Piolo, {runs:,} runs": ten_years(where, runs) for runs in RUNS})
    return found


def measure(where):
    piolo = where.program("piolo")
    words = {EMPTY_QT: [where.program("empty_window")]}
    words.update({name: [piolo, "--folder", folder] for name, folder in folders(where).items()})
    with Display() as display:
        desk = Desk(where, display)
        took = take_turns({name: lambda line=line: desk.first_frame(line) for name, line in words.items()}, where.rounds)
    rows = [[name, str(Ratio(times, took[EMPTY_QT])), str(Ratio(times, took[EMPTY]))] for name, times in took.items()]
    text = table(["start to first frame", "as a multiple of the empty Qt Quick window", "as a multiple of Piolo with no practice yet"],
                 rows)
    return text, [panel_of(took)]


def panel_of(took):
    base = took[EMPTY]
    level = {name: Ratio(took[name], base).median for name in took}
    return Panel("Start to first frame", "runs in the practice log", {
        "Piolo": [(runs, level[f"Piolo, {runs:,} runs"]) for runs in RUNS],
        "Piolo, empty": [(runs, level[EMPTY]) for runs in RUNS],
        "empty Qt window": [(runs, level[EMPTY_QT]) for runs in RUNS]})
