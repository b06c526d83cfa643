# SPDX-License-Identifier: GPL-3.0-or-later
"""Independent readers from the npm registry: the exact versions and checksums in npm/package-lock.json, fetched once by npm into the build folder. If the registry cannot be reached, the tests that need them are skipped and say so: each exits with SKIPPED.

    registry.py FOLDER
"""
import hashlib
import pathlib
import shutil
import subprocess
import sys

from program import run, stop

SKIPPED = 77
TRIES = 3
LISTS = pathlib.Path(__file__).resolve().parent / "npm"
MARK = "whole"  # written last, with what it was made from


def made_of():
    return hashlib.sha256(b"".join((LISTS / name).read_bytes() for name in ("package.json", "package-lock.json"))).hexdigest()


def skip(line):
    print(f"SKIP: {line}")
    sys.exit(SKIPPED)


def is_there(folder):
    mark = folder / MARK
    return mark.exists() and mark.read_text(encoding="ascii") == made_of()


def needed(folder):
    """The folder with the packages; without them, the test is skipped."""
    folder = pathlib.Path(folder)
    if not is_there(folder):
        skip("the packages of the npm registry are not there; outside_registry says why")
    return folder / "node_modules"


def node(script, folder, given):
    """The output of a script next to this one, which finds the packages in `folder`."""
    if shutil.which("node") is None:
        skip("node is not installed: Debian's package nodejs has it")
    return run("env", f"NODE_PATH={folder}", "node", pathlib.Path(__file__).resolve().parent / script, given=given)


def fetch(folder):
    if shutil.which("npm") is None:
        skip("npm is not installed: Debian's package npm has it")
    shutil.rmtree(folder, ignore_errors=True)
    folder.mkdir(parents=True)
    for name in ("package.json", "package-lock.json"):
        shutil.copy(LISTS / name, folder)
    words = ["npm", "ci", "--ignore-scripts", "--no-audit", "--no-fund", "--no-update-notifier", "--fetch-retries=1",
             "--fetch-timeout=60000"]
    for _ in range(TRIES):
        ended = subprocess.run(words, cwd=folder, capture_output=True, text=True, errors="replace", timeout=200, check=False)
        if ended.returncode == 0:
            (folder / MARK).write_text(made_of(), encoding="ascii")
            return
        if "EINTEGRITY" in ended.stderr:
            stop(f"a package is not what npm/package-lock.json says: {ended.stderr[-500:]}")
    why = [line for line in ended.stderr.splitlines() if " code " in line]
    skip(f"npm cannot fetch the packages ({why[0] if why else 'it says no more'})")


def main():
    folder = pathlib.Path(sys.argv[1])
    if not is_there(folder):
        fetch(folder)
    print(f"the packages of npm/package-lock.json are in {folder}")


if __name__ == "__main__":
    main()
