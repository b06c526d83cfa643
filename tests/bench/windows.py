# SPDX-License-Identifier: GPL-3.0-or-later
"""From the start of the program to its first frame, on a virtual display; Qt itself reports when a frame was rendered."""
import glob
import os
import shutil
import subprocess
import time
import typing

from journals import RUNS
from page import table
from picture import Panel
from workspace import SOURCE, printed
from ratios import Ratio, take_turns

from player_window import Display

FRAME = "Frame rendered"
BEFORE = "the earlier build"
SETTLE, MEMORY_ROUNDS = 2, 3
EMPTY_QT, EMPTY, SAMPLE = "an empty Qt Quick window", "Piolo, no practice yet", "Piolo, the sample folder"
MANY = [f"Piolo, {runs:,} runs" for runs in RUNS]
LONGEST_WAIT = 120  # seconds


class Start(typing.NamedTuple):
    seconds: float  # wall-clock time until the first frame
    processor: float  # processor seconds of all threads, including the kernel's work for them
    resident: int  # in bytes, once the window has settled


class PlayerHome:
    """Settings and caches of its own, kept from start to start as on a player's machine."""

    def __init__(self, where, display, name="home"):
        home = where.path(name)
        os.makedirs(f"{home}/run", mode=0o700, exist_ok=True)
        self.env = dict(os.environ, DISPLAY=display.name, QT_QPA_PLATFORM="xcb", QT_QUICK_BACKEND="software", HOME=home,
                        XDG_CONFIG_HOME=f"{home}/config", XDG_STATE_HOME=f"{home}/state", XDG_DATA_HOME=f"{home}/data",
                        XDG_CACHE_HOME=f"{home}/cache", XDG_RUNTIME_DIR=f"{home}/run", LC_ALL="C.UTF-8",
                        PULSE_SERVER=f"unix:{home}/nobody", QT_LOGGING_RULES="qt.scenegraph.time.renderloop=true")

    def checkpoints(self):
        return set(glob.glob(f"{self.env['XDG_CACHE_HOME']}/piolo/*.checkpoint"))

    def keep_checkpoint(self, words):
        """Lets the window write the checkpoint of its folder, as it does some seconds after it has opened."""
        before = self.checkpoints()
        with subprocess.Popen(words, env=self.env, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL) as process:
            begin = time.monotonic()
            while self.checkpoints() == before:
                if time.monotonic() - begin > LONGEST_WAIT or process.poll() is not None:
                    raise SystemExit(f"{words} wrote no checkpoint")
                time.sleep(0.1)
            process.kill()

    def start(self, words, settle=0):
        """A start until Qt reports the first frame, and `settle` seconds more."""
        begin = time.monotonic()
        process = subprocess.Popen(words, env=self.env, stdout=subprocess.DEVNULL, stderr=subprocess.PIPE, text=True)
        said = []
        for line in process.stderr:
            said.append(line)
            if FRAME in line:
                break
        seconds = time.monotonic() - begin
        if settle:
            time.sleep(settle)
        bytes_resident = resident(process.pid) if settle else 0
        process.kill()
        process.stderr.close()
        _, _, used = os.wait4(process.pid, 0)
        process.returncode = 0
        if not said or FRAME not in said[-1]:
            raise SystemExit(f"{words[0]} never rendered a frame: {''.join(said)[-300:]}")
        return Start(seconds, used.ru_utime + used.ru_stime, bytes_resident)


def resident(pid):
    """Bytes of the process in memory, those of shared libraries included."""
    with open(f"/proc/{pid}/statm", encoding="ascii") as file:
        return int(file.read().split()[1]) * os.sysconf("SC_PAGESIZE")


def ten_years(where, runs, name="years"):
    folder = where.path(f"{name}-{runs}")
    printed([os.path.join(where.build, "tests/durability/piolo_ten_years"), folder, "--runs", runs])
    return folder


def folders(where):
    sample = where.path("sample")
    shutil.copytree(os.path.join(SOURCE, "samples", "spring-concert"), sample, dirs_exist_ok=True)
    found = {EMPTY: where.new_folder(), SAMPLE: sample}
    found.update({name: ten_years(where, runs) for name, runs in zip(MANY, RUNS)})
    # Each start ends before the window would write one.
    found[f"{MANY[-1]}, no checkpoint yet"] = ten_years(where, RUNS[-1], "first")
    return found


def contenders(where):
    """{name: command line}; Piolo twice when there is an earlier build to compare with."""
    found = {EMPTY_QT: [where.program("empty_window")]}
    for name, folder in folders(where).items():
        found[name] = [where.program("piolo"), "--folder", folder]
        if where.before:
            found[f"{name}, {BEFORE}"] = [os.path.join(where.before, "piolo"), "--folder", folder]
    return found


def measure(where):
    with Display() as display:
        home = PlayerHome(where, display)
        # Two builds in one home would discard each other's compiled screens at every start.
        earlier = PlayerHome(where, display, "earlier")
        words = contenders(where)

        def start(name, settle=0):
            return (earlier if name.endswith(BEFORE) else home).start(words[name], settle)
        for name in MANY:
            home.keep_checkpoint(words[name])
        starts = take_turns({name: lambda name=name: start(name) for name in words}, where.rounds)
        settled = take_turns({name: lambda name=name: start(name, SETTLE) for name in words}, MEMORY_ROUNDS)
    took = {name: [start.seconds for start in found] for name, found in starts.items()}
    rows = [row(name, starts, settled) for name in words]
    text = table(["as a multiple of the empty Qt Quick window", "start to first frame", "processor time until then",
                  "memory once it has settled"], rows)
    return text, [panel_of(took)]


def row(name, starts, settled):
    def ratio(part, found):
        return str(Ratio([getattr(start, part) for start in found[name]], [getattr(start, part) for start in found[EMPTY_QT]]))
    return [name, ratio("seconds", starts), ratio("processor", starts), ratio("resident", settled)]


def panel_of(took):
    base = took[EMPTY]
    level = {name: Ratio(took[name], base).median for name in took}
    return Panel("Start to first frame", "runs in the practice log", {
        "Piolo": [(runs, level[name]) for name, runs in zip(MANY, RUNS)],
        "Piolo, empty": [(runs, level[EMPTY]) for runs in RUNS],
        "empty Qt window": [(runs, level[EMPTY_QT]) for runs in RUNS]})
