#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Opens every screen and runs the verbs on folders of extreme but valid facts.

extreme.py PIOLO PIOLO_EXTREME SEED...: each must end by itself, without a signal, within a minute and half a gigabyte of
memory. An ordinary folder takes a second and a tenth of that; a picture, list or sum that costs by the span of bars or
dates, not by what was played, takes far more.
"""
import os
import pathlib
import re
import resource
import subprocess
import sys
import tempfile

SECONDS = 60
MOST_KILOBYTES = 500_000


def limited():
    resource.setrlimit(resource.RLIMIT_CPU, (SECONDS, SECONDS))


def cost(command, environment):
    """Its exit code and its peak memory in kB; nothing if it was stopped."""
    process = subprocess.Popen(command, env=environment, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL,
                               preexec_fn=limited)
    _, status, used = os.wait4(process.pid, 0)
    return os.waitstatus_to_exitcode(status), used.ru_maxrss


def commands(piolo, folder, out, screens, passages):
    for screen in screens:
        yield [piolo, "--folder", folder, "--screen", screen, "--shot", f"{out}/shot.png"]
    for passage in passages:
        yield [piolo, "--folder", folder, "--drill", passage, "--shot", f"{out}/drill.png"]
        for verb, file in [("curve", "a.svg"), ("curve", "a.csv"), ("sheet", "a.pdf"), ("staff", "b.svg"),
                           ("model", "a.wav"), ("export", "a.piolo.json")]:
            yield [piolo, verb, passage, "--folder", folder, "--out", f"{out}/{file}"]
    yield [piolo, "check", folder]


def main(piolo, extreme, seeds):
    helped = subprocess.run([piolo, "--help"], capture_output=True, text=True, check=True).stdout
    screens = re.findall(r"\w+", re.search(r"--screen NAME +opens (.*)", helped)[1].replace(" or ", " "))
    failed = 0
    with tempfile.TemporaryDirectory() as scratch:
        environment = dict(os.environ, QT_QPA_PLATFORM="offscreen", XDG_RUNTIME_DIR=scratch, HOME=scratch)
        for name in ("CONFIG", "STATE", "CACHE", "DATA"):
            environment[f"XDG_{name}_HOME"] = f"{scratch}/{name}"
        for number, seed in enumerate(seeds):
            folder = f"{scratch}/{seed}"
            one_day = number % 2 == 1
            words = ["30000", "day"] if one_day else ["2263"]
            subprocess.run([extreme, folder, seed, *words], check=True)
            passages = ["Letter 0"] if one_day else ["Letter 0", "Letter 5"]
            for command in commands(piolo, folder, scratch, screens, passages):
                code, kilobytes = cost(command, environment)
                if code not in (0, 1) or kilobytes > MOST_KILOBYTES:
                    print(f"seed {seed}: {' '.join(command[1:])}: exit code {code}, {kilobytes} kB")
                    failed += 1
    print(f"{len(screens)} screens: {', '.join(screens)}")
    return 1 if failed or len(screens) < 5 else 0


if __name__ == "__main__":
    sys.exit(main(str(pathlib.Path(sys.argv[1]).resolve()), sys.argv[2], sys.argv[3:]))
