# SPDX-License-Identifier: GPL-3.0-or-later
"""A running play_counted, and what it reports of its device."""
import subprocess
import threading

from recording import WRAP
from waiting import wait


class CountedPlayer:
    """Use as a context manager: it plays until the end."""

    def __init__(self, program, sound):
        self.program, self.sound = program, sound

    def __enter__(self):
        self.states = []  # [kind, rate, breaks], in the order reported
        self.process = subprocess.Popen([self.program, "900"], env=self.sound.env, stdout=subprocess.PIPE,
                                        stderr=subprocess.DEVNULL, text=True)
        self._reader = threading.Thread(target=self._read, daemon=True)
        self._reader.start()
        return self

    def _read(self):
        for line in self.process.stdout:
            word, *rest = line.split()
            if word == "state":
                self.states.append((rest[1], int(rest[2]), int(rest[3])))

    def kinds(self, since=0):
        return [kind for kind, _, _ in self.states[since:]]

    def is_now(self, kind):
        return bool(self.states) and self.states[-1][0] == kind

    def heard(self):
        """(position, number) of every sample that was heard."""
        return [(place, round(value * WRAP) - 1) for place, value in enumerate(self.sound.samples()) if value != 0]

    def plays(self, seconds=1):
        """Waits until it plays, and then for more sound."""
        wait("a device that plays", lambda: self.is_now("playing"))
        before = len(self.sound.samples())
        wait("sound", lambda: len(self.sound.samples()) > before + seconds * 44_100)

    def __exit__(self, *_):
        self.process.kill()
        self.process.wait()
        self._reader.join()
