#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Prints the numbers of the lines of FILE whose checksum differs from zlib's, then the number of lines: wrong_sums.py FILE"""
import re
import sys
import zlib

SUM = re.compile(rb'(.*),"sum":"([0-9a-f]{8})"\}', re.DOTALL)

count = 0
with open(sys.argv[1], "rb") as file:
    for count, line in enumerate(file.read().split(b"\n")[:-1], 1):
        summed = SUM.fullmatch(line)
        if not summed or zlib.crc32(summed[1]) != int(summed[2], 16):
            print("wrong", count)
print(count, "lines")
