#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Kills a program that makes marks, again and again on one folder, and checks what is left.

kill.py PROGRAM TIMES SEED. After each kill: every id reported as saved is in the folder exactly once; no id and no seq
occurs twice; every readable line has a correct checksum (zlib's CRC-32); there are no more bad lines than kills so far.
Python's json and zlib read the lines, nothing from the project."""
import glob
import json
import os
import random
import re
import subprocess
import sys
import shutil
import tempfile
import time
import zlib

SUM = re.compile(rb'^(.*),"sum":"([0-9a-f]{8})"\}$', re.DOTALL)


class Left:
    """What a folder contains."""

    def __init__(self, folder):
        self.ids, self.seqs, self.bad, self.torn = [], [], 0, False
        for path in sorted(glob.glob(folder + "/journal/*.jsonl")):
            with open(path, "rb") as file:
                content = file.read()
            self.torn = self.torn or not (content == b"" or content.endswith(b"\n"))
            for line in filter(None, content.split(b"\n")):
                self.take(line)

    def take(self, line):
        try:
            fact = json.loads(line)
        except ValueError:
            self.bad += 1
            return
        summed = SUM.match(line)
        if not summed or int(summed[2], 16) != zlib.crc32(summed[1]):
            raise SystemExit(f"a line with a wrong sum: {line!r}")
        self.ids.append(fact["id"])
        self.seqs.append(fact["seq"])


def keep_written(folder):
    """Saves the journal if PIOLO_KEPT names a folder for it: a later test checks it against the schema."""
    kept = os.environ.get("PIOLO_KEPT")
    if kept:
        shutil.copytree(folder + "/journal", kept, dirs_exist_ok=True)


def killed_once(program, folder, state, log, seed, early, pause):
    """Kills `pause` seconds after the start if `early`, otherwise after the first fact was reported as saved."""
    start = os.path.getsize(log) if os.path.exists(log) else 0
    with open(log, "ab") as out:
        with subprocess.Popen([program, folder, state, str(seed)], stdout=out) as marks:
            while not early and marks.poll() is None and b"saved" not in written_since(log, start):
                time.sleep(0.001)
            time.sleep(pause)
            if marks.poll() is not None:
                raise SystemExit(f"the program ended by itself with {marks.returncode}")
            marks.kill()


def written_since(log, start):
    with open(log, "rb") as file:
        file.seek(start)
        return file.read()


def reported(log):
    """The ids reported as saved; a truncated line of the log reported nothing."""
    with open(log, "rb") as file:
        lines = file.read().split(b"\n")[:-1]
    return [line.split()[1].decode() for line in lines if line.startswith(b"saved ")]


def hold(left, saved, kills):
    missing = set(saved) - set(left.ids)
    if missing:
        raise SystemExit(f"reported as saved and not there: {sorted(missing)[:3]}")
    if len(set(saved)) != len(saved) or len(set(left.ids)) != len(left.ids) or len(set(left.seqs)) != len(left.seqs):
        raise SystemExit("an id or a seq is there twice, or was reported twice")
    if left.bad > kills:
        raise SystemExit(f"{left.bad} bad lines after {kills} kills")


def main():
    program, times, seed = sys.argv[1], int(sys.argv[2]), int(sys.argv[3])
    chance = random.Random(seed)
    print(f"{times} kills, seed {seed}")
    torn = nothing = 0
    with tempfile.TemporaryDirectory() as scratch:
        folder, state, log = (os.path.join(scratch, name) for name in ("practice", "state", "log"))
        os.mkdir(folder)
        saved = []
        for kill in range(1, times + 1):
            # Most kills hit while marks are made, some while the folder is still being read.
            early = kill % 5 == 0
            killed_once(program, folder, state, log, chance.getrandbits(32), early, chance.uniform(0.0, 0.04))
            kept, saved = len(saved), reported(log)
            left = Left(folder)
            hold(left, saved, kill)
            torn += left.torn
            nothing += len(saved) == kept
        keep_written(folder)
    print(f"{len(saved)} facts reported as saved, all there; {len(left.ids)} on disk; {torn} kills left a torn line, "
          f"{nothing} came before anything new was reported as saved")
    if not saved:
        raise SystemExit("nothing was ever reported as saved: nothing was tested")


main()
