#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Prints the numbers of the lines of FILE that do not match SCHEMA: invalid_lines.py SCHEMA FILE

A schema may refer to other schemas in its folder.
"""
import json
import pathlib
import sys
import warnings

import jsonschema

with open(sys.argv[1], encoding="utf-8") as schema_file:
    schema = json.load(schema_file)
jsonschema.Draft202012Validator.check_schema(schema)
warnings.simplefilter("ignore", DeprecationWarning)  # newer versions have another way; Debian 12's has this one
resolver = jsonschema.RefResolver(pathlib.Path(sys.argv[1]).resolve().as_uri(), schema)
validator = jsonschema.Draft202012Validator(schema, resolver=resolver)
with open(sys.argv[2], encoding="utf-8", newline="\n") as lines:
    for number, line in enumerate(lines, 1):
        if not validator.is_valid(json.loads(line)):
            print(number)
