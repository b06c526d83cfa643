# SPDX-License-Identifier: GPL-3.0-or-later
"""Checks everything that was written against the published schemas, with python3-jsonschema (JSON Schema draft 2020-12).

The sample folder must be valid, line by line. Of the journals that the other tests wrote (many hold damaged lines on purpose),
every line that passes `piolo check` must be valid: what the program reads is what the schema describes.

    test_schema.py PIOLO SOURCE_FOLDER FOLDER_OF_KEPT_FILES
"""
import collections
import json
import pathlib
import re
import subprocess
import sys

import jsonschema

from program import finish, held, stop

LEAST_FILES, LEAST_LINES, LEAST_PASSAGE_FILES = 50, 200, 8
FAULT = re.compile(r"^E\d+: (.*):(\d+): ")


def validator(path):
    """References to the other schema are resolved next to it."""
    schema = json.loads(path.read_text(encoding="utf-8"))
    jsonschema.Draft202012Validator.check_schema(schema)
    resolver = jsonschema.RefResolver(base_uri=path.resolve().as_uri(), referrer=schema)
    return jsonschema.Draft202012Validator(schema, resolver=resolver)


def lines_of(path):
    return enumerate(path.read_bytes().split(b"\n"), 1)


def invalid(schema, line):
    """Why the line does not match the schema, or None."""
    try:
        error = next(schema.iter_errors(json.loads(line)), None)
    except ValueError as unreadable:
        return f"no JSON: {unreadable}"
    return error and error.message[:200]


def at_fault(piolo, paths):
    """{path: the lines in which `piolo check` finds something wrong}, without the files that it cannot read."""
    said = subprocess.run([piolo, "check", *paths], capture_output=True, timeout=250, check=False)
    if said.returncode not in (0, 1):
        stop(f"piolo check ended with {said.returncode}")
    unread = said.stderr.decode(errors="replace")
    faults = {str(path): set() for path in paths if str(path) not in unread}
    for found in map(FAULT.match, said.stdout.decode(errors="replace").splitlines()):
        if found and found[1] in faults:
            faults[found[1]].add(int(found[2]))
    return faults


def sample_holds(schema, folder):
    lines = [(path, number, line) for path in sorted(folder.glob("journal/*.jsonl")) for number, line in lines_of(path) if line]
    wrong = [f"{path.name}:{number}: {why}" for path, number, line in lines if (why := invalid(schema, line))]
    return held(len(lines) > 100 and not wrong, f"the sample folder: {len(lines)} lines valid{', but ' + wrong[0] if wrong else ''}")


class Judged:
    """Every distinct line once."""

    def __init__(self, schema):
        self.schema = schema
        self.kinds = collections.Counter()
        self.wrong = []
        self.seen = set()

    def judge(self, path, faults):
        for number, line in lines_of(path):
            if not line.strip() or line in self.seen:
                continue
            self.seen.add(line)
            if number in faults:
                self.kinds["(at fault)"] += 1
            elif why := invalid(self.schema, line):
                self.wrong.append(f"{path}:{number}: {why}")
            else:
                self.kinds[json.loads(line)["kind"]] += 1


def written_holds(piolo, schema, kept):
    faults = at_fault(piolo, sorted(kept.glob("*.jsonl")))
    judged = Judged(schema)
    for path, lines in faults.items():
        judged.judge(pathlib.Path(path), lines)
    sound = sum(count for kind, count in judged.kinds.items() if kind != "(at fault)")
    print(f"{len(faults)} journals kept by tests; different lines by kind: {dict(judged.kinds)}")
    yield held(len(faults) >= LEAST_FILES and sound >= LEAST_LINES, f"{sound} lines without a fault in {len(faults)} files")
    yield held(not judged.wrong, f"the schema takes every one of them{', but not ' + judged.wrong[0] if judged.wrong else ''}")
    kinds = set(schema.schema["properties"]["kind"]["enum"])
    missing = kinds - set(judged.kinds)
    yield held(not missing, f"all {len(kinds)} kinds of fact are among them{': not ' + ', '.join(missing) if missing else ''}")


def passage_files_hold(schema, samples):
    for path in sorted(samples.rglob("*.piolo.json")):
        why = invalid(schema, path.read_bytes())
        yield held(why is None, f"{path.name}: {why or 'valid'}")


def written_passage_files_hold(piolo, schema, kept):
    """Of the passage files that tests wrote, every one that passes `piolo check` is valid."""
    paths = sorted(kept.glob("*.piolo.json"))
    said = subprocess.run([piolo, "check", *paths], capture_output=True, text=True, errors="replace", timeout=250, check=False)
    reported = said.stdout + said.stderr
    whole = [path for path in paths if str(path) not in reported]
    wrong = [f"{path.name}: {why}" for path in whole if (why := invalid(schema, path.read_bytes()))]
    yield held(len(whole) >= LEAST_PASSAGE_FILES, f"{len(whole)} passage files without a fault, of {len(paths)} kept by tests")
    yield held(not wrong, f"the schema takes every one of them{', but not ' + wrong[0] if wrong else ''}")


def main():
    piolo, source, kept = sys.argv[1], pathlib.Path(sys.argv[2]), pathlib.Path(sys.argv[3])
    schema = validator(source / "docs" / "journal.schema.json")
    results = [sample_holds(schema, source / "samples" / "spring-concert"), *written_holds(piolo, schema, kept)]
    passages = validator(source / "docs" / "passage.schema.json")
    results += passage_files_hold(passages, source / "samples")
    results += written_passage_files_hold(piolo, passages, kept)
    finish(results)


if __name__ == "__main__":
    main()
