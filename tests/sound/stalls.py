# SPDX-License-Identifier: GPL-3.0-or-later
"""Whether the machine kept up while sound was played: a thread sleeps briefly and measures by how much it overslept."""
import threading
import time

NAP = 0.005
# Sound is rendered at least this far ahead (docs/sound.md): if the machine stops for longer, the sound has gaps.
AHEAD = 0.04


class Watch:
    """Use as a context manager. `longest`: the largest number of seconds by which it overslept."""

    def __enter__(self):
        self.longest = 0.0
        self._over = threading.Event()
        self._thread = threading.Thread(target=self._nap, daemon=True)
        self._thread.start()
        return self

    def _nap(self):
        while not self._over.is_set():
            before = time.monotonic()
            time.sleep(NAP)
            self.longest = max(self.longest, time.monotonic() - before - NAP)

    def __exit__(self, *_):
        self._over.set()
        self._thread.join()


def until_kept(play, turns=3):
    """play() returns faults. They count unless the machine itself stopped meanwhile: then it plays once more and says so."""
    for turn in range(turns):
        with Watch() as watch:
            faults = play()
        if not faults or watch.longest < AHEAD or turn + 1 == turns:
            return faults
        print(f"  the machine stood still for {watch.longest * 1000:.0f} ms: once more", flush=True)
    return faults
