# SPDX-License-Identifier: GPL-3.0-or-later
"""Where the bench works, and how it runs programs."""
import os
import shutil
import subprocess
import sys
import tempfile
import time

HERE = os.path.dirname(os.path.abspath(__file__))
SOURCE = os.path.dirname(os.path.dirname(HERE))
for neighbour in ("outside", "sound"):
    sys.path.append(os.path.join(os.path.dirname(HERE), neighbour))


class Workspace:
    """A folder on the same disk as the build, deleted at the end."""

    def __init__(self, build, rounds, before=None):
        """`before`: another build folder, to be measured beside this one."""
        self.build, self.rounds = os.path.abspath(build), rounds
        self.before = os.path.abspath(before) if before else None
        self.folder = tempfile.mkdtemp(prefix="bench-", dir=self.build)

    def program(self, name):
        path = os.path.join(self.build, "piolo" if name == "piolo" else f"tests/bench/{name}")
        if not os.path.exists(path):
            sys.exit(f"{path} is missing: bash tests/bench/run builds it")
        return path

    def path(self, name):
        return os.path.join(self.folder, name)

    def new_folder(self):
        return tempfile.mkdtemp(dir=self.folder)

    def clear(self):
        shutil.rmtree(self.folder, ignore_errors=True)


def processor_seconds(words):
    """Runs a program to its end and returns its processor time, including the system's on its behalf. Other load on the machine
    hardly matters."""
    process = subprocess.Popen([str(word) for word in words], stdin=subprocess.DEVNULL, stdout=subprocess.DEVNULL,
                               stderr=subprocess.DEVNULL)
    _, status, used = os.wait4(process.pid, 0)
    process.returncode = os.waitstatus_to_exitcode(status)
    if process.returncode != 0:
        sys.exit(f"{words[0]} ended with {process.returncode}")
    return used.ru_utime + used.ru_stime


def printed(words):
    """The lines that a program prints."""
    ended = subprocess.run([str(word) for word in words], capture_output=True, text=True, check=False)
    if ended.returncode != 0:
        sys.exit(f"{words[0]} ended with {ended.returncode}: {ended.stderr[-300:]}")
    return ended.stdout.splitlines()


def printed_seconds(words):
    """For a program that times itself: its first line is "AMOUNT NANOSECONDS"."""
    return int(printed(words)[0].split()[1]) / 1e9


def wall_seconds(work):
    begin = time.monotonic()
    work()
    return time.monotonic() - begin
