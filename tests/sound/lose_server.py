# SPDX-License-Identifier: GPL-3.0-or-later
"""What play_counted says while its sound server is killed and comes back: `lose_server.py PLAY_COUNTED`. A measurement
to be read; no test, as one kill in dozens leaves the sound system hanging."""
import os
import subprocess
import sys
import time

from private_sound import PrivateSound


def lose(program, away):
    with PrivateSound() as sound:
        player = subprocess.Popen([program, "18"], env=sound.env, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True)
        time.sleep(4)
        sound.stop_server(kill=True)
        killed = time.monotonic_ns()
        time.sleep(away)
        os.unlink(os.path.join(sound.folder, "native"))
        sound.start_server()
        said, _ = player.communicate(timeout=60)
    print(f"away for {away} s; the player ended with {player.returncode}")
    for line in said.splitlines():
        word, *rest = line.split(" ")
        if word == "state":
            print(f"  {(int(rest[0]) - killed) / 1e9:6.2f} s after the kill: {rest[1]}")


if __name__ == "__main__":
    for AWAY in (1, 8):
        lose(sys.argv[1], AWAY)
