# SPDX-License-Identifier: GPL-3.0-or-later
"""The whole thing: the window under a virtual display, real key presses, a real sound server, the practice log.

`test_window.py HOLD_THREAD PIOLO`. Twice: as it is, and with the window's thread held still for two seconds
while a run sounds."""
import os
import shutil
import signal
import subprocess
import sys
import tempfile
import time

import practice
from drilled import Listener, Music
from private_sound import PrivateSound, RATE, require
from recording import onsets

MUSIC = Music(practice.BEATS, practice.BARS, practice.PARTS, practice.BREATH)
COUNT_IN = len(MUSIC.count_in())
FIRST_RUN = COUNT_IN + len(MUSIC.run())
EXPECTED = [(practice.START, "clean"), (practice.START, "missed"), (practice.START - practice.DROP, "clean")]


class Gone(Exception):
    pass


def wait(what, so, seconds=60):
    """Waits until so() is true. Generous: it bounds a hang, it measures nothing."""
    limit = time.monotonic() + seconds
    while time.monotonic() < limit:
        value = so()
        if value:
            return value
        time.sleep(0.05)
    raise Gone(f"{what} did not come within {seconds} s")


class Display:
    """A virtual screen."""

    def __enter__(self):
        ours, its = os.pipe()
        self.server = subprocess.Popen(["Xvfb", "-displayfd", str(its), "-screen", "0", "1280x800x24", "-nolisten", "tcp"],
                                       pass_fds=[its], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        os.close(its)
        with os.fdopen(ours) as told:
            number = told.readline().strip()
        if not number:
            raise SystemExit("the virtual display did not start")
        self.name = f":{number}"
        return self

    def __exit__(self, *_):
        self.server.terminate()
        self.server.wait()


class Window:
    """piolo in front of a passage, on a folder and settings of its own."""

    def __init__(self, hold_thread, piolo, sound, display):
        self.home = tempfile.mkdtemp(prefix="player-")
        self.folder = os.path.join(self.home, "folder")
        practice.write_folder(self.folder)
        practice.write_settings(os.path.join(self.home, "config"))
        self.sound = sound
        self.env = dict(sound.env, DISPLAY=display.name, QT_QPA_PLATFORM="xcb", QT_QUICK_BACKEND="software",
                        HOME=self.home, XDG_CONFIG_HOME=f"{self.home}/config", XDG_STATE_HOME=f"{self.home}/state",
                        XDG_DATA_HOME=f"{self.home}/data", XDG_CACHE_HOME=f"{self.home}/cache", LC_ALL="C.UTF-8")
        self.log = open(os.path.join(self.home, "log"), "w+", encoding="utf-8")
        self.process = subprocess.Popen([hold_thread, piolo, "--drill", practice.TITLE, "--folder", self.folder],
                                        env=self.env, stdout=self.log, stderr=self.log)
        self.id = None

    def _xdotool(self, *arguments):
        done = subprocess.run(["xdotool", *arguments], env=self.env, capture_output=True, text=True, check=False)
        return done.stdout.split()

    def appear(self):
        def found():
            if self.process.poll() is not None:
                raise Gone(f"the window ended with {self.process.returncode}")
            return self._xdotool("search", "--onlyvisible", "--name", "Piolo")
        self.id = wait("the window", found)[0]
        self._xdotool("windowfocus", "--sync", self.id)
        wait("a device that plays", lambda: len(self.sound.samples()) > RATE)

    def press(self, key):
        self._xdotool("key", key)

    def heard(self):
        return onsets(self.sound.samples())

    def is_silent(self):
        """For longer than from one beat to the next, and than what was rendered ahead."""
        before = len(self.heard())
        time.sleep(1)
        return len(self.heard()) == before

    def runs(self):
        return practice.runs(self.folder)

    def hold(self):
        """Holds the window's thread for two seconds, and is sure of it."""
        self.process.send_signal(signal.SIGUSR1)
        first = self._children()[0]
        wait("the held thread", lambda: self._state(first, first) == "t", 5)
        others = [self._state(first, thread) for thread in os.listdir(f"/proc/{first}/task") if thread != first]
        if not others or "t" in others:
            raise Gone(f"other threads were held too: {others}")
        wait("the end of the hold", lambda: self._state(first, first) != "t", 20)

    def _children(self):
        with open(f"/proc/{self.process.pid}/task/{self.process.pid}/children", encoding="ascii") as file:
            return file.read().split()

    @staticmethod
    def _state(process, thread):
        with open(f"/proc/{process}/task/{thread}/stat", encoding="utf-8") as file:
            return file.read().rsplit(")", 1)[1].split()[0]

    def close(self):
        self.process.terminate()
        try:
            self.process.wait(10)
        except subprocess.TimeoutExpired:
            self.process.kill()
            self.process.wait()
        self.log.seek(0)
        said = self.log.read()
        shutil.rmtree(self.home, ignore_errors=True)
        return said


def drill(window, held):
    """Start, let a run end clean, press at a mistake, let the next run end clean, stop."""
    window.appear()
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
        window = Window(hold_thread, piolo, sound, display)
        try:
            drill(window, held)
            faults = faults_of(window)
        except Gone as gone:
            faults = [str(gone), f"heard {len(window.heard())} onsets; practice log {window.runs()}"]
        said = window.close()
    for fault in faults:
        print(f"  {fault}")
    if faults:
        print("  the window said: " + said[-2000:])
    return not faults


if __name__ == "__main__":
    require("Xvfb", "xdotool", "pulseaudio", "pactl")
    RESULTS = [play(sys.argv[1], sys.argv[2], held) for held in (False, True)]
    sys.exit(0 if all(RESULTS) else 1)
