// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/groups/passage_groups.h"

#include "core/time/subdivision.h"
#include "journal/lines/value_names.h"

namespace piolo::journal {

namespace {

const char* keyOf(FaultNumber number) {
    if (number == FaultNumber::badMeter) return "meter";
    return number == FaultNumber::badGroups ? "groups" : "beat";
}

Meter meterOf(JsonObject& group) {
    const std::string meter = group.text("meter");
    const std::string beat = group.text("beat");
    const std::string groups = group.has("groups") ? group.text("groups") : std::string{};
    // An empty beat would mean the usual one; in a file, the beat must be explicit.
    const auto read = Meter::parse(meter, beat.empty() ? "0/1" : beat, groups);
    if (!read) group.refuse(keyOf(read.fault().number));
    return read ? *read : Meter{};
}

Fraction pickupOf(JsonObject& group, const Meter& meter) {
    const auto read = Fraction::parse(group.text("pickup"));
    // Zero is zero in any unit: "0/8" is the same fact as no pick-up.
    const Fraction pickup = read && read->numerator != 0 ? *read : Fraction{};
    const bool shorter = std::int64_t{pickup.numerator} * meter.denominator() <
                         std::int64_t{pickup.denominator} * meter.numerator();
    if (!read || !shorter) group.refuse("pickup");
    return pickup;
}

} // namespace

PieceMusic pieceMusicOf(JsonObject group) {
    PieceMusic music;
    music.meter = meterOf(group);
    if (group.has("tempo")) music.tempo = group.tempo("tempo");
    return music;
}

std::int32_t transpositionOf(JsonObject& piece) {
    return piece.small("transposition", -Piece::mostSemitones, Piece::mostSemitones);
}

std::int32_t pieceBarsOf(JsonObject& piece) { return piece.small("bars", 0, Piece::mostBars); }

std::string notesOf(JsonObject& piece) {
    std::string notes = piece.text("notes");
    if (notes.size() > Piece::longestNotes) piece.refuse("notes");
    return notes;
}

Title titleOf(JsonObject group) {
    Title title;
    title.name = group.text("name");
    if (group.has("piece")) title.piece = group.id("piece");
    if (group.has("origin")) title.origin = group.id("origin");
    return title;
}

Music musicOf(JsonObject group) {
    Music music;
    music.meter = meterOf(group);
    music.subdivision = group.small("subdivision", 1, mostPulsesToTheBeat);
    if (group.has("pickup")) music.pickup = pickupOf(group, music.meter);
    music.firstBar = group.small("firstBar", 0, 9999);
    music.bars = group.small("bars", 0, 999);
    music.landing = group.flag("landing");
    music.countInBars = group.small("countInBars", 0, 4);
    music.breathBeats = group.small("breathBeats", 0, 8);
    return music;
}

Tempi tempiOf(JsonObject group) {
    Tempi tempi;
    tempi.start = group.tempo("start");
    tempi.rule.target = group.tempo("target");
    tempi.rule.floor = group.tempo("floor");
    tempi.rule.step = group.choice("step", stepOf);
    tempi.rule.drop = group.small("drop", 1, 100);
    tempi.rule.climb = group.small("climb", 1, 100);
    tempi.rule.cleanRuns = group.small("cleanRuns", 1, 100);
    if (group.has("gentle")) tempi.rule.gentle = group.flag("gentle");
    if (tempi.start > tempi.rule.target) group.refuse("start");
    if (tempi.rule.floor > tempi.start) group.refuse("floor");
    return tempi;
}

Manner mannerOf(JsonObject group) {
    Manner manner;
    manner.articulation = group.choice("articulation", articulationNamed);
    manner.rhythm = group.choice("rhythm", rhythmNamed);
    if (group.has("group")) manner.group = group.small("group", Manner::leastGroup, Manner::mostGroup);
    if (group.has("fingering")) manner.fingering = group.text("fingering");
    if (manner.fingering.size() > Manner::longestFingering) group.refuse("fingering");
    return manner;
}

} // namespace piolo::journal
