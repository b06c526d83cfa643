# SPDX-License-Identifier: GPL-3.0-or-later
"""Waiting for what another program does."""
import time


class Gone(Exception):
    """It did not come, or went away."""


def wait(what, so, seconds=60):
    """Waits until so() is true. Generous: it bounds a hang, it measures nothing."""
    limit = time.monotonic() + seconds
    while time.monotonic() < limit:
        value = so()
        if value:
            return value
        time.sleep(0.05)
    raise Gone(f"{what} did not come within {seconds} s")
