// SPDX-License-Identifier: GPL-3.0-or-later
#include "score/read/bar_reader.h"

#include "core/time/fraction_sum.h"
#include "score/read/encoding.h"
#include "score/read/limits.h"
#include "score/read/time_reader.h"

#include <algorithm>
#include <compare>
#include <string_view>

namespace piolo::score {

namespace {

constexpr Whole tupletRange{1, 999};
constexpr int mostMidi = 127;
constexpr std::size_t longestNumber = 20;
constexpr std::size_t mostVoices = 99;

bool hasTie(pugi::xml_node note, std::string_view type) {
    return std::ranges::any_of(note.children("tie"), [&](const pugi::xml_node& tie) {
        return type == tie.attribute("type").value();
    });
}

NoteArticulation articulationOf(pugi::xml_node note) {
    NoteArticulation read;
    for (const auto notations : note.children("notations")) {
        for (const auto marks : notations.children("articulations")) {
            read.staccato |= static_cast<bool>(marks.child("staccato"));
            read.accent |= static_cast<bool>(marks.child("accent"));
            read.tenuto |= static_cast<bool>(marks.child("tenuto"));
        }
        for (const auto slur : notations.children("slur")) {
            const std::string_view type = slur.attribute("type").value();
            read.slurBegins |= type == "start";
            read.slurEnds |= type == "stop";
        }
    }
    return read;
}

} // namespace

void BarReader::read(pugi::xml_node measure) {
    part_.bars.emplace_back();
    at_ = lastOnset_ = {};
    bar().number = cutText(measure.attribute("number").value(), longestNumber);
    if (bar().number.empty()) bar().number = std::to_string(part_.bars.size());
    bar().implicit = std::string_view(measure.attribute("implicit").value()) == "yes";
    bar().time = time_;
    bar().fifths = fifths_;
    bar().transposition = transposition_;
    for (const auto element : measure.children()) {
        if (source_.isFull()) return;
        readElement(element);
    }
}

void BarReader::readElement(pugi::xml_node element) {
    const std::string_view name = element.name();
    if (name == "attributes")
        readAttributes(element);
    else if (name == "note")
        readNote(element);
    else if (name == "backup")
        readBack(element);
    else if (name == "forward")
        moveOn(element, length(element).value_or(Fraction{}));
    else if (name == "direction" || name == "sound" || name == "barline") {
        readTempo(element);
        readSigns(element);
    }
}

void BarReader::readAttributes(pugi::xml_node attributes) {
    if (const auto divisions = attributes.child("divisions")) {
        const auto amount = source_.amount(divisions);
        if (amount && amount->isZero()) source_.wrong(divisions, textOf(divisions));
        if (amount && !amount->isZero()) divisions_ = amount;
    }
    if (const auto time = attributes.child("time")) time_ = readTime(source_, time);
    if (const auto key = attributes.child("key")) fifths_ = source_.wholeOr(key, "fifths", {-11, 11}, 0);
    if (const auto transpose = attributes.child("transpose")) readTranspose(transpose);
    if (!at_.isZero()) return;
    bar().time = time_;
    bar().fifths = fifths_;
    bar().transposition = transposition_;
}

void BarReader::readTranspose(pugi::xml_node transpose) {
    if (!transpose.child("chromatic")) source_.missing(transpose, "chromatic");
    transposition_.chromatic = source_.wholeOr(transpose, "chromatic", {-60, 60}, 0);
    transposition_.diatonic = source_.wholeOr(transpose, "diatonic", {-60, 60}, 0);
    transposition_.octaveChange = source_.wholeOr(transpose, "octave-change", {-10, 10}, 0);
}

void BarReader::readNote(pugi::xml_node note) {
    if (notesLeft_ == 0) return;
    if (--notesLeft_ == 0) {
        source_.add(note, FaultNumber::scoreTooLarge, {"200000 notes"});
        return;
    }
    ScoreNote read;
    read.grace = static_cast<bool>(note.child("grace"));
    read.chord = static_cast<bool>(note.child("chord"));
    placeNote(note, read);
    if (note.child("cue")) return;
    readPitch(note, read);
    const auto ratio = note.child("time-modification");
    if (ratio) read.actual = source_.wholeOr(ratio, "actual-notes", tupletRange, 1);
    if (ratio) read.normal = source_.wholeOr(ratio, "normal-notes", tupletRange, 1);
    read.voice = voiceOf(note);
    read.staff = source_.wholeOr(note, "staff", {1, 99}, 1);
    read.tiedBefore = hasTie(note, "stop");
    read.tiedAfter = hasTie(note, "start");
    read.articulation = articulationOf(note);
    bar().notes.push_back(read);
}

void BarReader::placeNote(pugi::xml_node note, ScoreNote& into) {
    into.length = into.grace ? Fraction{} : length(note).value_or(Fraction{});
    into.onset = into.chord ? lastOnset_ : at_;
    if (into.chord) return;
    lastOnset_ = at_;
    moveOn(note, into.length);
}

void BarReader::readPitch(pugi::xml_node note, ScoreNote& into) {
    const auto pitch = note.child("pitch");
    if (!pitch) {
        if (!note.child("rest") && !note.child("unpitched")) source_.missing(note, "pitch");
        return;
    }
    const std::string step = textOf(pitch.child("step"));
    if (step.size() != 1 || step[0] < 'A' || step[0] > 'G') {
        source_.wrong(pitch.child("step") ? pitch.child("step") : pitch, step);
        return;
    }
    if (!pitch.child("octave")) source_.missing(pitch, "octave");
    WrittenPitch written{step[0]};
    written.alter = static_cast<std::int8_t>(source_.wholeOr(pitch, "alter", {-3, 3}, 0));
    written.octave = static_cast<std::int8_t>(source_.wholeOr(pitch, "octave", {0, 9}, 4));
    into.sounding = midiNumber(written) + transposition_.semitones();
    if (into.sounding < 0 || into.sounding > mostMidi)
        source_.wrong(pitch, std::to_string(into.sounding));
    else
        into.written = written;
}

void BarReader::readBack(pugi::xml_node backup) {
    const auto back = length(backup);
    if (!back) return;
    const auto before = difference(at_, *back);
    if (!before) source_.wrong(backup, textOf(backup.child("duration")));
    at_ = before.value_or(Fraction{});
}

void BarReader::moveOn(pugi::xml_node element, Fraction length) {
    const auto after = sum(at_, length);
    if (!after) source_.wrong(element, textOf(element.child("duration")));
    at_ = after.value_or(at_);
    if (std::is_lt(order(bar().length, at_))) bar().length = at_;
}

void BarReader::readTempo(pugi::xml_node element) {
    auto mark = readTempoMark(source_, element);
    if (!mark) return;
    mark->bar = part_.bars.size() - 1;
    mark->onset = at_;
    tempi_.push_back(std::move(*mark));
}

void BarReader::readSigns(pugi::xml_node element) {
    const auto signs = score::readSigns(element);
    bar().signs.insert(bar().signs.end(), signs.begin(), signs.end());
}

std::optional<Fraction> BarReader::length(pugi::xml_node element) {
    const auto duration = element.child("duration");
    if (!duration) {
        source_.missing(element, "duration");
        return std::nullopt;
    }
    if (!divisions_) {
        source_.missing(element, "divisions");
        divisions_ = Fraction{1, 1};
    }
    const auto amount = source_.amount(duration);
    if (!amount) return std::nullopt;
    const auto length = reducedFraction(std::int64_t{amount->numerator} * divisions_->denominator,
                                        std::int64_t{amount->denominator} * divisions_->numerator * 4);
    if (!length) source_.wrong(duration, textOf(duration));
    return length;
}

std::int32_t BarReader::voiceOf(pugi::xml_node note) {
    const auto voice = note.child("voice");
    const std::string name = voice ? textOf(voice) : "1";
    const auto found = std::ranges::find(part_.voices, name);
    const auto place = static_cast<std::int32_t>(found - part_.voices.begin());
    if (found != part_.voices.end()) return place;
    if (part_.voices.size() < mostVoices) {
        part_.voices.push_back(name);
        return place;
    }
    source_.wrong(voice, name);
    return 0;
}

} // namespace piolo::score
