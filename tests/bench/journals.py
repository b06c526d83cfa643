# SPDX-License-Identifier: GPL-3.0-or-later
"""The practice log compared with SQLite: saving runs durably one by one, and opening ten years."""
import os
import subprocess

from page import table
from picture import Panel
from workspace import printed, printed_seconds
from ratios import Ratio, short, take_turns

COUNTS = (100, 300, 1000, 3000)
COUNTED = 100
APPENDERS = {"Piolo": "journal", "SQLite, WAL": "wal", "SQLite, rollback journal": "delete", "write and fdatasync": "bare"}
OPENERS = {"Piolo": "journal", "Piolo, from its checkpoint": "checkpoint", "SQLite": "sqlite", "reading the bytes": "bytes"}
RUNS = (36_500, 121_667, 365_000)  # a tenth, a third and all of ten years
APPEND_ROUNDS = 3  # a round of 3000 is slow


def append(where, how, count):
    return [where.program("append_runs"), how, count, where.new_folder()]


def syncs(where, how):
    """Calls of fsync and fdatasync for COUNTED runs, as counted by strace."""
    trace = where.path("trace")
    subprocess.run(["strace", "-f", "-e", "trace=fsync,fdatasync", "-o", trace, *map(str, append(where, how, COUNTED))],
                   stdout=subprocess.DEVNULL, check=True)
    with open(trace, encoding="utf-8") as file:
        return sum("sync(" in line for line in file)


def appends(where):
    rounds = min(where.rounds, APPEND_ROUNDS)
    took = take_turns({(name, count): lambda how=how, count=count: printed_seconds(append(where, how, count))
                       for count in COUNTS for name, how in APPENDERS.items()}, rounds)
    most, least = COUNTS[-1], COUNTS[0]
    rows = [[name, str(Ratio(took[name, most], took["Piolo", most])), f"{syncs(where, how)}",
             short(Ratio(took[name, most], took[name, least]).median)] for name, how in APPENDERS.items()]
    head = [f"{most:,} runs, each durable before the next", "time as a multiple of Piolo's", f"syncs for {COUNTED} runs",
            f"{most:,} runs as a multiple of {least:,}"]
    base = took["Piolo", least]
    return table(head, rows), Panel("Runs made durable one by one", "runs", {
        name: [(count, Ratio(took[name, count], base).median) for count in COUNTS] for name in APPENDERS})


class Log:
    """A folder with this many runs, and the same facts in SQLite."""

    def __init__(self, where, runs):
        self.opener = where.program("open_journal")
        self.folder, self.base = where.path(f"log-{runs}"), where.path(f"log-{runs}.sqlite")
        self.checkpoint = where.path(f"log-{runs}.checkpoint")
        printed([os.path.join(where.build, "tests/durability/piolo_ten_years"), self.folder, "--runs", runs])
        printed([self.opener, "fill", self.folder, self.base])
        printed([self.opener, "keep", self.folder, self.checkpoint])
        if len({self.entries(how) for how in ("journal", "sqlite", "checkpoint")}) > 1:
            raise SystemExit("they do not hold the same: nothing to compare")

    def words(self, how):
        return [self.opener, how, self.folder, self.checkpoint if how == "checkpoint" else self.base]

    def entries(self, how):
        return printed(self.words(how))[1]


def openings(where):
    logs = {runs: Log(where, runs) for runs in RUNS}
    took = take_turns({(name, runs): lambda log=log, how=how: printed_seconds(log.words(how))
                       for runs, log in logs.items() for name, how in OPENERS.items()}, where.rounds)
    rows = [[name, *(str(Ratio(took[name, runs], took["Piolo", runs])) for runs in RUNS),
             short(Ratio(took[name, RUNS[-1]], took[name, RUNS[0]]).median)] for name in OPENERS]
    head = ["opened and folded, time as a multiple of Piolo's", *(f"{runs:,} runs" for runs in RUNS), "ten times the runs took"]
    base = took["Piolo", RUNS[0]]
    return table(head, rows), Panel("Opening the practice log", "runs", {
        name: [(runs, Ratio(took[name, runs], base).median) for runs in RUNS] for name in OPENERS})


def measure(where):
    appended, append_panel = appends(where)
    opened, open_panel = openings(where)
    return appended + "\n" + opened, [append_panel, open_panel]
