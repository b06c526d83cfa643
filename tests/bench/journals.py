# SPDX-License-Identifier: GPL-3.0-or-later
"""The practice log beside SQLite: runs made durable one by one, and ten years opened."""
import os
import subprocess

from page import table
from picture import Panel
from place import told, told_seconds
from ratios import Ratio, short, take_turns

COUNTS = (100, 300, 1000, 3000)
COUNTED = 100
APPENDERS = {"Piolo": "journal", "SQLite, WAL": "wal", "SQLite, rollback journal": "delete", "write and fdatasync": "bare"}
TEN_YEARS = 365_000
RUNS = (TEN_YEARS // 10, TEN_YEARS // 3, TEN_YEARS)
APPEND_ROUNDS = 3  # a round of 3000 takes its time


def append(where, how, count):
    return [where.program("append_runs"), how, count, where.new_folder()]


def syncs(where, how):
    """Calls of fsync and fdatasync for COUNTED runs, counted by strace."""
    trace = where.path("trace")
    subprocess.run(["strace", "-f", "-e", "trace=fsync,fdatasync", "-o", trace, *map(str, append(where, how, COUNTED))],
                   stdout=subprocess.DEVNULL, check=True)
    with open(trace, encoding="utf-8") as file:
        return sum("sync(" in line for line in file)


def appends(where):
    rounds = min(where.rounds, APPEND_ROUNDS)
    took = {count: take_turns({name: lambda how=how, count=count: told_seconds(append(where, how, count))
                               for name, how in APPENDERS.items()}, rounds) for count in COUNTS}
    most, least = COUNTS[-1], COUNTS[0]
    rows = [[name, str(Ratio(took[most][name], took[most]["Piolo"])), f"{syncs(where, how)}",
             short(Ratio(took[most][name], took[least][name]).median)] for name, how in APPENDERS.items()]
    head = [f"{most:,} runs, each durable before the next", "time as a multiple of Piolo's", f"syncs for {COUNTED} runs",
            f"{most:,} runs as a multiple of {least:,}"]
    base = took[least]["Piolo"]
    return table(head, rows), Panel("Runs made durable one by one", "runs", {
        name: [(count, Ratio(took[count][name], base).median) for count in COUNTS] for name in APPENDERS})


class Log:
    """A folder of so many runs, and the same facts in SQLite."""

    def __init__(self, where, runs):
        self.opener = where.program("open_journal")
        self.folder, self.base = where.path(f"log-{runs}"), where.path(f"log-{runs}.sqlite")
        told([os.path.join(where.build, "tests/durability/piolo_ten_years"), self.folder, "--runs", runs])
        told([self.opener, "fill", self.folder, self.base])
        if self.entries("journal") != self.entries("sqlite"):
            raise SystemExit("both do not hold the same: nothing to compare")

    def words(self, how):
        return [self.opener, how, self.folder, self.base]

    def entries(self, how):
        return told(self.words(how))[1]

    def turns(self, rounds):
        names = {"Piolo": "journal", "SQLite": "sqlite", "reading the bytes": "bytes"}
        return take_turns({name: lambda how=how: told_seconds(self.words(how)) for name, how in names.items()}, rounds)


def openings(where):
    took = {runs: Log(where, runs).turns(where.rounds) for runs in RUNS}
    rows = [[name, *(str(Ratio(took[runs][name], took[runs]["Piolo"])) for runs in RUNS),
             short(Ratio(took[RUNS[-1]][name], took[RUNS[0]][name]).median)] for name in took[TEN_YEARS]]
    head = ["opened and folded, time as a multiple of Piolo's", *(f"{runs:,} runs" for runs in RUNS), "ten times the runs took"]
    base = took[RUNS[0]]["Piolo"]
    return table(head, rows), Panel("Opening the practice log", "runs", {
        name: [(runs, Ratio(took[runs][name], base).median) for runs in RUNS] for name in took[TEN_YEARS]})


def measure(where):
    appended, append_panel = appends(where)
    opened, open_panel = openings(where)
    return appended + "\n" + opened, [append_panel, open_panel]
