#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Prints the numbers of the lines of FILE that SCHEMA refuses: invalid_lines.py SCHEMA FILE"""
import json
import sys

import jsonschema

with open(sys.argv[1], encoding="utf-8") as schema_file:
    schema = json.load(schema_file)
jsonschema.Draft202012Validator.check_schema(schema)
validator = jsonschema.Draft202012Validator(schema)
with open(sys.argv[2], encoding="utf-8", newline="\n") as lines:
    for number, line in enumerate(lines, 1):
        if not validator.is_valid(json.loads(line)):
            print(number)
