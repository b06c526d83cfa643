# SPDX-License-Identifier: GPL-3.0-or-later
"""How long the window takes to respond, screen by screen, compared with the budget in docs/performance.md."""
import json
import os
import shutil

from journals import RUNS
from page import table
from workspace import SOURCE, printed
from windows import ten_years

OPENING, FRAME = 200, 33  # milliseconds
PASSAGES = 2_000
SAMPLE, MANY, YEARS = "the sample folder", f"{PASSAGES:,} passages", f"{RUNS[-1]:,} runs"


def many_passages(where):
    folder = where.path("many-passages")
    device = f"{0xb0:032x}"
    os.makedirs(os.path.join(folder, "journal"))
    with open(os.path.join(folder, "journal", f"{device}-2026.jsonl"), "w", encoding="utf-8") as file:
        for number in range(PASSAGES):
            file.write(json.dumps({
                "v": 1, "id": f"{number + 1:032x}", "device": device, "seq": number + 1, "order": 1_772_000_000_000 + number,
                "at": "2026-02-25T06:13:20.000+00:00", "kind": "passage", "passage": f"{0xa0000 + number:032x}",
                "title": {"name": f"Study {number % 40 + 1}: line {number // 40 + 1}"},
                "music": {"meter": "4/4", "beat": "1/4", "subdivision": 4, "firstBar": number % 900 + 1, "bars": 4,
                          "landing": True, "countInBars": 1, "breathBeats": 2},
                "tempi": {"start": 60_000 + number, "target": 120_000, "floor": 40_000, "step": "bpm", "drop": 4, "climb": 2,
                          "cleanRuns": 5}}, separators=(",", ":")) + "\n")
    return folder


def answers(where, folder):
    """{what: (median, worst)} in milliseconds."""
    rows = [line.split(",") for line in printed([where.program("frames"), folder, where.rounds])]
    return {what: (float(median), float(worst)) for what, median, worst in rows}


def budget(what):
    return OPENING if what.startswith(("open ", "choose ")) else FRAME


def measure(where):
    sample = where.path("frames-sample")
    shutil.copytree(os.path.join(SOURCE, "samples", "spring-concert"), sample)
    took = {name: answers(where, folder) for name, folder in
            ((SAMPLE, sample), (MANY, many_passages(where)), (YEARS, ten_years(where, RUNS[-1])))}
    rows = [[what, str(budget(what))] + [f"{took[name][what][0]:.1f} ({took[name][what][1]:.1f})" for name in took]
            for what in took[SAMPLE]]
    over = [f"{what}, {name}" for name in took for what in took[name] if took[name][what][0] > budget(what)]
    text = table(["ms until the answer is drawn", "budget", *took], rows)
    return text + f"\nMedians over the budget: {'; '.join(over) if over else 'none'}.\n", []
