#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""test_lost_display.py PIOLO TIMES: the display goes away while the window is open: the program ends by itself, in order.

Each time a display of its own is started and killed; the program must end with an exit code, not with a signal, within ten
seconds.
"""
import os
import signal
import subprocess
import sys
import tempfile
import time


def display():
    """A display of its own, and its number."""
    reading, writing = os.pipe()
    server = subprocess.Popen(["Xvfb", "-displayfd", str(writing), "-screen", "0", "800x900x24", "-nolisten", "tcp"],
                              pass_fds=[writing], stderr=subprocess.DEVNULL)
    os.close(writing)
    with os.fdopen(reading) as number:
        return server, number.readline().strip()


def windows(number):
    found = subprocess.run(["xdotool", "search", "--onlyvisible", "--name", "Piolo"], capture_output=True, text=True,
                           env=dict(os.environ, DISPLAY=f":{number}"), check=False)
    return found.stdout.split()


def ended(piolo, scratch, turn):
    server, number = display()
    environment = {name: value for name, value in os.environ.items() if not name.startswith(("XDG_", "QT_QPA"))}
    environment.update(HOME=scratch, DISPLAY=f":{number}", QT_QPA_PLATFORM="xcb", XDG_RUNTIME_DIR=scratch)
    screen = ["passages", "log", "settings", "scales"][turn % 4]
    program = subprocess.Popen([piolo, "--folder", f"{scratch}/practice", "--screen", screen], env=environment,
                               stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    try:
        for _ in range(200):
            if windows(number):
                break
            time.sleep(0.1)
        else:
            sys.exit("no window appeared")
        time.sleep(0.2 * (turn % 4))
        server.kill()
        return program.wait(10)
    except subprocess.TimeoutExpired:
        return "still running"
    finally:
        server.kill()
        server.wait()
        if program.poll() is None:
            program.send_signal(signal.SIGKILL)
            program.wait()


def main(piolo, times):
    with tempfile.TemporaryDirectory() as scratch:
        codes = [ended(piolo, scratch, turn) for turn in range(times)]
    print("exit codes:", *codes)
    return 0 if all(isinstance(code, int) and code >= 0 for code in codes) else 1


sys.exit(main(sys.argv[1], int(sys.argv[2])))
