// SPDX-License-Identifier: GPL-3.0-or-later
// What Tonal says of scales. Standard input: [{"tonic", "octave", "scale" or "chord", "mode", "instead": {interval: interval},
// "notes": [note names]}]. Standard output, one for each: "intervals" of the scale or chord; "notes" on the tonic, those of "instead"
// in place of Tonal's own; "distances" from the tonic to each of the given notes; "midi" of the given notes; "semitones" of
// "instead", pair by pair; "fifths", the signature of the major or minor key, or of the mode.
"use strict";
const { Chord, Interval, Key, Mode, Note, Scale } = require("tonal");

function fifthsOf(mode, tonic) {
    if (mode === "minor") return Key.minorKey(tonic).alteration;
    return Key.majorKey(mode === "major" ? tonic : Mode.relativeTonic("ionian", mode, tonic)).alteration;
}

function answer({ tonic, octave, scale, chord, mode, instead, notes }) {
    const intervals = (scale ? Scale.get(`C ${scale}`) : Chord.getChord(chord, "C")).intervals;
    const from = tonic + octave;
    return {
        intervals,
        notes: intervals.map((one) => Note.transpose(from, instead[one] || one)),
        distances: notes.map((one) => Interval.distance(from, one)),
        midi: notes.map((one) => Note.midi(one)),
        semitones: Object.entries(instead).map((pair) => pair.map(Interval.semitones)),
        fifths: mode ? fifthsOf(mode, tonic) : null,
    };
}

process.stdout.write(JSON.stringify(JSON.parse(require("fs").readFileSync(0, "utf8")).map(answer)));
