#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""quiet.py PIOLO: opens the window on an empty folder, without XDG_RUNTIME_DIR: nothing is printed, and it ends well."""
import os
import subprocess
import sys
import tempfile

with tempfile.TemporaryDirectory() as scratch:
    environment = {name: value for name, value in os.environ.items() if not name.startswith("XDG_")}
    environment.update(HOME=scratch, QT_QPA_PLATFORM="offscreen")
    ended = subprocess.run([sys.argv[1], "--folder", f"{scratch}/practice", "--shot", f"{scratch}/shot.png"],
                           env=environment, capture_output=True, text=True, check=False)
    if ended.returncode != 0 or ended.stdout or ended.stderr or not os.path.getsize(f"{scratch}/shot.png"):
        sys.exit(f"exit code {ended.returncode}: {ended.stdout}{ended.stderr}")
