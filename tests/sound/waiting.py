# SPDX-License-Identifier: GPL-3.0-or-later
"""Waiting for something that another program does."""
import time


class Gone(Exception):
    """It did not happen, or the program ended."""


def wait(what, so, seconds=60):
    """Waits until so() is true. The limit is generous: it catches a hang and measures nothing."""
    limit = time.monotonic() + seconds
    while time.monotonic() < limit:
        value = so()
        if value:
            return value
        time.sleep(0.05)
    raise Gone(f"{what} did not come within {seconds} s")
