# SPDX-License-Identifier: GPL-3.0-or-later
"""Sound output through a real sound server: no sample lost or repeated, even with the window thread blocked."""
import statistics
import subprocess
import sys
import time

from private_sound import PrivateSound, RATE
from recording import counted_faults, WRAP


def reported(text):
    """The output of play_counted: {"audible": [(nanos, sample)], "state": [...]}."""
    lines = {"audible": [], "state": []}
    for line in text.splitlines():
        word, *rest = line.split(" ")
        lines.setdefault(word, []).append(rest)
    return lines


def audible_error(sound, lines):
    """By how many milliseconds play_counted's estimate of the audible sample was ahead of the server's own pace. The server
    writes a block as soon as its first sample is due."""
    samples = sound.samples()
    first = next(place for place, value in enumerate(samples) if value != 0)
    arrivals = [(nanos, count // 4 - first) for nanos, count in sound.arrivals]
    errors = []
    for nanos, sample in ((int(a), int(b)) for a, b in lines["audible"]):
        after = next((i for i, (when, _) in enumerate(arrivals) if when > nanos), 0)
        if after < 2 or sample == 0 or arrivals[after - 1][1] <= 0:
            continue
        when, heard = arrivals[after - 1][0], arrivals[after - 2][1]
        errors.append((sample - heard) * 1000 / RATE - (nanos - when) / 1e6)
    return errors


def play(program, seconds, *arguments):
    with PrivateSound() as sound:
        done = subprocess.run([program, str(seconds), *arguments], env=sound.env, capture_output=True, text=True,
                              timeout=60 + 2 * seconds, check=False)
        time.sleep(0.5)
        samples = sound.samples()
        faults = counted_faults(samples)
        lines = reported(done.stdout)
        heard = sum(1 for value in samples if value != 0)
        if done.returncode != 0:
            faults.append(f"play_counted ended with {done.returncode}: {done.stderr[-500:]}")
        if heard < (seconds - 1) * RATE:
            faults.append(f"only {heard} samples were heard in {seconds} s")
        if not any(state[1] == "playing" for state in lines["state"]):
            faults.append(f"it never said that it plays: {lines['state']}")
        errors = audible_error(sound, lines)
    print(f"{seconds} s {' '.join(arguments)}: {heard} samples heard, {len(faults)} faults; states {lines['state']}")
    if errors:
        settled = errors[50:] or errors
        print(f"  audible against what left the server: first {errors[0]:.1f} ms, then mean {statistics.mean(settled):.2f},"
              f" sd {statistics.pstdev(settled):.2f}, {min(settled):.1f} to {max(settled):.1f} ms")
    for fault in faults:
        print(f"  {fault}")
    return not faults


if __name__ == "__main__":
    PROGRAM = sys.argv[1]
    RESULTS = [play(PROGRAM, 8), play(PROGRAM, 12, "2000")]
    sys.exit(0 if all(RESULTS) else 1)
