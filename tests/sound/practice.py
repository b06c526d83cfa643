# SPDX-License-Identifier: GPL-3.0-or-later
"""A practice folder with one passage, and the journal that the window writes beside it."""
import glob
import json
import os
import shutil

PASSAGE = "0000000000000000000000000000a001"
TEACHER = "0000000000000000000000000000b001"
PLAYER = "0000000000000000000000000000c001"
TITLE = "March, letter B"

BEATS, BARS, PARTS, BREATH = 4, 2, 7, 2
START, DROP = 125, 5  # at 48 kHz a beat is 23040 samples, then 24000; a septuplet 3291 3/7, then 3428 4/7


def write_folder(folder):
    """Writes the passage as another device would."""
    os.makedirs(os.path.join(folder, "journal"))
    fact = {
        "v": 1, "id": "0000000000000000000000000000d001", "device": TEACHER, "seq": 1, "order": 1_772_000_000_000,
        "at": "2026-02-25T06:13:20.000+00:00", "kind": "passage", "passage": PASSAGE,
        "title": {"name": TITLE},
        "music": {"meter": f"{BEATS}/4", "beat": "1/4", "subdivision": PARTS, "firstBar": 1, "bars": BARS,
                  "landing": True, "countInBars": 1, "breathBeats": BREATH},
        "tempi": {"start": START * 1000, "target": 140_000, "floor": 100_000, "step": "bpm", "drop": DROP, "climb": 5,
                  "cleanRuns": 5}}
    with open(os.path.join(folder, "journal", f"{TEACHER}-2026.jsonl"), "w", encoding="utf-8") as file:
        file.write(json.dumps(fact, separators=(",", ":")) + "\n")


def never_pause(folder):
    """A drill in this folder never pauses to ask whether runs without a key were clean."""
    fact = {"v": 1, "id": "0000000000000000000000000000d002", "device": TEACHER, "seq": 2, "order": 1_772_000_000_001,
            "at": "2026-02-25T06:13:21.000+00:00", "kind": "settings", "gapMs": 4000, "playOn": False,
            "pauseAfterRuns": 0, "secureDays": 3, "dayOpening": "start"}
    with open(os.path.join(folder, "journal", f"{TEACHER}-2026.jsonl"), "a", encoding="utf-8") as file:
        file.write(json.dumps(fact, separators=(",", ":")) + "\n")


def write_settings(config):
    """Sets the voice for measurement, at full level."""
    os.makedirs(os.path.join(config, "piolo"))
    with open(os.path.join(config, "piolo", "settings.json"), "w", encoding="utf-8") as file:
        json.dump({"device": PLAYER, "voice": "impulse", "levels": {"whole": 1.0}, "welcomed": True}, file)


def facts(folder):
    """All complete facts that the player's device wrote, in order."""
    found = []
    for path in sorted(glob.glob(os.path.join(folder, "journal", f"{PLAYER}-*.jsonl"))):
        with open(path, encoding="utf-8") as file:
            found += [json.loads(line) for line in file.read().splitlines() if line.endswith("}")]
    return found


def runs(folder):
    """(tempo in BPM, mark) of every run."""
    return [(fact["tempo"] / 1000, fact["mark"]) for fact in facts(folder) if fact["kind"] == "run"]


def keep_written(folder):
    """Saves the journals if PIOLO_KEPT names a folder for them: a later test checks them against the schema."""
    kept = os.environ.get("PIOLO_KEPT")
    if kept:
        os.makedirs(kept, exist_ok=True)
        for path in glob.glob(os.path.join(folder, "journal", f"{PLAYER}-*.jsonl")):
            shutil.copy(path, os.path.join(kept, f"{os.getpid()}-{os.path.basename(os.path.dirname(folder))}-{os.path.basename(path)}"))
