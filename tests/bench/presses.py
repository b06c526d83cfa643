# SPDX-License-Identifier: GPL-3.0-or-later
"""From a key press to changed sound, beyond the device's buffer: exactly, in virtual time, for blocks of many sizes, and in
the real window on a virtual display, up to the moment at which the changed sound is handed over to the sound server."""
import os
import statistics
import subprocess
import time

from page import table
from picture import Panel
from workspace import printed
from ratios import short

from player_window import Display, Window, wait
from private_sound import PrivateSound, RATE

BLOCKS = (64, 240, 480, 960, 1920, 4096)
PRESSES, SEED = 2000, 1851
REAL_PRESSES = 24
QUIET = 0.7  # seconds of silence after Esc, longer than any beat, so that the next sound belongs to the next start
QT_BLOCK = 960  # docs/sound.md: the device pulls 20 ms at a time


def in_blocks(where):
    rows, points = [], []
    for block in BLOCKS:
        mean, longest, late, pulse = printed([where.program("press_in_blocks"), block, PRESSES, SEED])[0].split()
        rows.append([str(block), f"{float(mean) / block:.2f}", f"{int(longest) / block:.3f}", f"{late} of {PRESSES}", pulse])
        points.append((block, float(mean)))
    head = ["samples in a block", "press to first click: mean, in blocks", "longest, in blocks",
            "misses that did not take hold at the next pulse of the grid", "longest wait for that pulse, in samples"]
    mean = {block: wait for block, wait in points}
    return table(head, rows), Panel("Press to changed sound, virtual time", "samples in a block", {
        "mean wait": [(block, mean[block] / BLOCKS[0]) for block in BLOCKS],
        "one block": [(block, block / BLOCKS[0]) for block in BLOCKS]})


class Keys:
    """One xdotool that is already running when a key is pressed."""

    def __init__(self, env):
        self.process = subprocess.Popen(["xdotool", "-"], env=env, stdin=subprocess.PIPE, text=True)

    def press(self, key):
        """Returns the monotonic nanoseconds just before the press."""
        now = time.monotonic_ns()
        self.process.stdin.write(f"key {key}\n")
        self.process.stdin.flush()
        return now

    def close(self):
        self.process.stdin.close()
        self.process.wait()


def handed(path):
    """(nanoseconds, frames, first sounding frame) of every block that contains sound."""
    if not os.path.exists(path):
        return []
    with open(path, encoding="ascii") as file:
        return [tuple(int(word) for word in line.split()) for line in file.read().splitlines() if line.count(" ") == 2]


def one_press(window, keys, path):
    """Blocks of QT_BLOCK from the press that starts the drill to the position of its first click in what was handed over."""
    seen = len(handed(path))
    pressed = keys.press("space")
    wait("a click", lambda: len(handed(path)) > seen)
    keys.press("Escape")
    wait("silence", lambda: time.monotonic_ns() - handed(path)[-1][0] > QUIET * 1e9)
    nanos, _, first = handed(path)[seen]
    return (nanos - pressed) / 1e9 * RATE / QT_BLOCK, first


def in_the_window(where):
    path = where.path("handed-over")
    shim = os.path.join(where.build, "tests/bench/libhanded_over.so")
    with PrivateSound() as sound, Display() as display:
        sound.env.update(LD_PRELOAD=shim, HANDED_OVER=path)
        window = Window([where.program("piolo")], sound, display)
        try:
            window.play()
            env = {name: value for name, value in window.env.items() if name != "LD_PRELOAD"}
            keys = Keys(env)
            waits = [one_press(window, keys, path) for _ in range(REAL_PRESSES)]
            keys.close()
        finally:
            window.close()
    return sorted(blocks for blocks, _ in waits), [first for _, first in waits]


def measure(where):
    exact, panel = in_blocks(where)
    waits, firsts = in_the_window(where)
    tenths = statistics.quantiles(waits, n=10)
    real = table(["real key presses in the window", "blocks of 20 ms from the press until the click is handed to the sound server"],
                 [["median", short(statistics.median(waits))], ["nine in ten", f"below {short(tenths[-1])}"],
                  ["shortest and longest", f"{short(waits[0])} and {short(waits[-1])}"],
                  ["the click's place in its block", f"sample {min(firsts)} to {max(firsts)}"]])
    return exact + "\n" + real, [panel]
