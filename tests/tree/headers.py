#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Headers are self-contained: the compiler reads each one by itself, with the warnings of its room as errors.

headers.py COMPILE_COMMANDS.json: prints the compiler's errors for those that are not; exit 1 if there are any.
A header that its own .cpp includes first, in a room without a precompiled header, was already compiled by itself in the build.
"""
import concurrent.futures
import json
import os
import re
import shlex
import subprocess
import sys

READ_ONLY = ["-fsyntax-only", "-O0"]


FIRST_INCLUDE = re.compile(r'^#include "([^"]+)"', re.MULTILINE)


def stood_alone(entries):
    """The headers, as "room/name.h", that a .cpp of the room includes first."""
    headers = set()
    for entry in entries:
        room = re.search(r"/src/(\w+(?:/\w+)*)/(\w+)\.cpp$", entry["file"])
        if not room or "cmake_pch" in entry["command"]:
            continue
        with open(entry["file"], encoding="utf-8") as file:
            text = file.read()
        first = FIRST_INCLUDE.search(text)
        if first and first.group(1) == "/".join(room.groups()) + ".h" and "#include" not in text[: first.start()]:
            headers.add(first.group(1))
    return headers


def header_of(entry):
    """The header that the generated file includes, as "room/name.h"."""
    with open(entry["file"], encoding="utf-8") as file:
        return re.search(r"#include <([^>]+)>", file.read()).group(1)


def reading(entry):
    """Turns the command that compiles a header by itself into one that only reads it."""
    words = shlex.split(entry["command"])
    output = words.index("-o")
    return words[:output] + words[output + 2:] + READ_ONLY


def fault_of(entry):
    done = subprocess.run(reading(entry), cwd=entry["directory"], capture_output=True, text=True, check=False)
    return done.stderr if done.returncode else ""


def main(path):
    with open(path, encoding="utf-8") as file:
        entries = json.load(file)
    headers = [entry for entry in entries if "_verify_interface_header_sets" in entry["command"]]
    known = stood_alone(entries)
    alone = [entry for entry in headers if header_of(entry) not in known]
    with concurrent.futures.ThreadPoolExecutor(os.cpu_count()) as pool:
        faults = [fault for fault in pool.map(fault_of, alone) if fault]
    print("".join(faults), end="")
    print(f"{len(headers)} headers, {len(alone)} read by themselves now, {len(faults)} do not stand alone")
    return 1 if faults or not alone else 0


sys.exit(main(sys.argv[1]))
