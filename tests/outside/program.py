# SPDX-License-Identifier: GPL-3.0-or-later
"""Other programs, run as any user would run them; a missing one is a failure with one clear line."""
import shutil
import subprocess
import sys


def stop(line):
    sys.exit(f"FAILED: {line}")


def run(*words, given=b""):
    """Runs a program to its end and returns its standard output; a missing or failing program ends the test."""
    words = [str(word) for word in words]
    if shutil.which(words[0]) is None:
        stop(f"{words[0]} is not installed: see the line `test` of .ci/packages")
    ended = subprocess.run(words, input=given, capture_output=True, timeout=300, check=False)
    if ended.returncode != 0:
        stop(f"{' '.join(words)} ended with {ended.returncode}: {ended.stderr.decode(errors='replace')[-500:]}")
    return ended.stdout


def held(holds, line):
    """Reports whether a promise holds, and returns `holds`."""
    print(f"{'ok    ' if holds else 'BROKEN'} {line}")
    return holds


def finish(results):
    """Ends the test: 0 if there was at least one promise and every promise held."""
    results = list(results)
    if not results or not all(results):
        stop(f"{results.count(False)} of {len(results)} promises broken")
    print(f"all {len(results)} promises held")
