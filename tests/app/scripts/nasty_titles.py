#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""nasty_titles.py PIOLO: whatever stands in a title, every output that is XML is well-formed.

The titles stand in a journal as JSON (RFC 8259, section 7, allows every escape); the outputs are parsed by expat, of Python's
standard library, which is strict about XML 1.0. A lone surrogate is no text: its line is one fault.
"""
import json
import os
import subprocess
import sys
import tempfile
import xml.etree.ElementTree

TITLES = ["plain", "<&>\"'", "]]>", "\u0001\u0008\u001b[31m", "\u007f\u0085\u009f", "\ufffe\uffff", "\ufdd0\ufdef",
          "\U0001ffff\U0010fffe", "\u202eturned\u202c", "\u2066isolated", "\u2069\u2069", "\u05e9\u05dc\u05d5\u05dd",
          "tab\tnew\nline", "\u2028\u2029", "<!-- -- -->", "&#1;", "x" * 300, "\u0000"]
DEVICE = "a" * 32


def line(seq, title):
    number = f"{seq:032x}"
    passage = {"v": 1, "id": number, "device": DEVICE, "seq": seq, "order": seq, "at": "2026-03-01T18:00:00.000+01:00",
               "kind": "passage", "passage": number, "title": {"name": title},
               "tempi": {"start": 60000, "target": 96000, "floor": 40000, "step": "bpm", "drop": 4, "climb": 2, "cleanRuns": 5},
               "notation": ["0/1 1/4 C5 72", "1/4 1/4 D5 74"]}
    return json.dumps(passage) + "\n"


def main(piolo):
    with tempfile.TemporaryDirectory() as scratch:
        environment = dict(os.environ, QT_QPA_PLATFORM="offscreen", HOME=scratch)
        os.makedirs(f"{scratch}/folder/journal")
        with open(f"{scratch}/folder/journal/{DEVICE}-2026.jsonl", "w", encoding="utf-8") as journal:
            journal.writelines(line(seq, title) for seq, title in enumerate(TITLES, 1))
            journal.write(line(99, "lone").replace("lone", "\\ud800"))
        checked = subprocess.run([piolo, "check", f"{scratch}/folder"], capture_output=True, text=True, env=environment,
                                 check=False)
        assert checked.stdout.count("\n") == 1 and f":{len(TITLES) + 1}: " in checked.stdout, checked.stdout
        for seq, title in enumerate(TITLES, 1):
            for verb in ("curve", "sheet", "staff"):
                out = f"{scratch}/{verb}.svg"
                subprocess.run([piolo, verb, f"{seq:032x}", "--folder", f"{scratch}/folder", "--out", out], check=True,
                               env=environment, capture_output=True)
                try:
                    xml.etree.ElementTree.parse(out)
                except xml.etree.ElementTree.ParseError as fault:
                    sys.exit(f"{verb} of {title!r}: {fault}")
    print(f"{len(TITLES)} titles")


main(sys.argv[1])
