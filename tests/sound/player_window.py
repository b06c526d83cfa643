# SPDX-License-Identifier: GPL-3.0-or-later
"""The window on a virtual display, with real key presses and a folder and settings of its own."""
import os
import shutil
import signal
import subprocess
import tempfile
import time

import practice
from private_sound import RATE
from recording import onsets
from waiting import Gone, wait


class Display:
    """A virtual screen."""

    def __init__(self, size="1280x800", *options):
        """`options`: further options for the display server."""
        self.size, self.options = size, options

    def __enter__(self):
        ours, its = os.pipe()
        self.server = subprocess.Popen(["Xvfb", "-displayfd", str(its), "-screen", "0", f"{self.size}x24", "-nolisten", "tcp",
                                        *self.options],
                                       pass_fds=[its], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        os.close(its)
        with os.fdopen(ours) as reported:
            number = reported.readline().strip()
        if not number:
            raise SystemExit("the virtual display did not start")
        self.name = f":{number}"
        return self

    def __exit__(self, *_):
        self.server.terminate()
        self.server.wait()


def window_env(sound, display, home):
    """The environment for a window whose settings, caches and folders are below `home`."""
    return dict(sound.env, DISPLAY=display.name, QT_QPA_PLATFORM="xcb", QT_QUICK_BACKEND="software", HOME=home,
                XDG_CONFIG_HOME=f"{home}/config", XDG_STATE_HOME=f"{home}/state", XDG_DATA_HOME=f"{home}/data",
                XDG_CACHE_HOME=f"{home}/cache", LC_ALL="C.UTF-8")


class Window:
    """piolo with a folder and settings of its own, showing a passage or an empty folder."""

    def __init__(self, command, sound, display, pauses=True, empty=False, prepare=None):
        """`command`: the program, with any program that runs it before. `pauses`: whether the drill pauses after runs without a
        key.
        `prepare`: called with the home and practice folders before the program starts."""
        self.home = tempfile.mkdtemp(prefix="player-")
        self.folder = os.path.join(self.home, "folder")
        if not empty:
            practice.write_folder(self.folder)
        if not pauses:
            practice.never_pause(self.folder)
        practice.write_settings(os.path.join(self.home, "config"))
        if prepare:
            prepare(self.home, self.folder)
        self.sound = sound
        self.env = window_env(sound, display, self.home)
        self.log = open(os.path.join(self.home, "log"), "w+", encoding="utf-8")
        where = ["--size", display.size] if empty else ["--drill", practice.TITLE]
        self.process = subprocess.Popen([*command, *where, "--folder", self.folder],
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
        self._xdotool("mousemove", "4000", "4000")

    def play(self):
        """Waits until the window appears and a device plays."""
        self.appear()
        wait("a device that plays", lambda: len(self.sound.samples()) > RATE)

    def press(self, key, times=1):
        for _ in range(times):
            self._xdotool("key", key)
            if times > 1:
                time.sleep(0.08)  # otherwise it would look like a repeating key

    def heard(self):
        return onsets(self.sound.samples())

    def is_silent(self):
        """Checks for silence longer than a beat and longer than what is rendered ahead."""
        before = len(self.heard())
        time.sleep(1)
        return len(self.heard()) == before

    def runs(self):
        return practice.runs(self.folder)

    def hold(self):
        """Stops the window thread for two seconds, and makes sure that it did."""
        self.process.send_signal(signal.SIGUSR1)
        first = self.children()[0]
        wait("the held thread", lambda: self._state(first, first) == "t", 5)
        others = [self._state(first, thread) for thread in os.listdir(f"/proc/{first}/task") if thread != first]
        if not others or "t" in others:
            raise Gone(f"other threads were held too: {others}")
        wait("the end of the hold", lambda: self._state(first, first) != "t", 20)

    def children(self):
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
        practice.keep_written(self.folder)
        shutil.rmtree(self.home, ignore_errors=True)
        return said


def faults_of_walk(window, walk, faults_of):
    """Runs walk(window), closes the window, and returns what faults_of(window) or the walk itself found wrong, after printing
    it."""
    try:
        walk(window)
        faults = faults_of(window)
    except Gone as gone:
        faults = [str(gone), f"heard {len(window.heard())} onsets; practice log {window.runs()}"]
    said = window.close()
    for fault in faults:
        print(f"  {fault}")
    if faults:
        print("  the window said: " + said[-2000:])
    return faults
