// SPDX-License-Identifier: GPL-3.0-or-later
// The members of what is packed, each type once. A binding names every member: one that is added but not
// packed does not compile.
#pragma once

#include "core/history/entry.h"
#include "core/history/notebook.h"
#include "journal/checkpoint/packed.h"
#include "journal/folder/known_folder.h"

// In the namespace of the types, because packed() is found by argument-dependent lookup.
namespace piolo {

template <typename P, journal::Either<Date> T>
void packed(P& with, T& date) {
    auto& [year, month, day] = date;
    with(year, month, day);
}
template <typename P, journal::Either<Timestamp> T>
void packed(P& with, T& at) {
    auto& [utcMillis, offsetMinutes] = at;
    with(utcMillis, offsetMinutes);
}
template <typename P, journal::Either<Spot> T>
void packed(P& with, T& spot) {
    auto& [bar, beat, part] = spot;
    with(bar, beat, part);
}
template <typename P, journal::Either<Standing> T>
void packed(P& with, T& standing) {
    auto& [tempo, streak, spared] = standing;
    with(tempo, streak, spared);
}
template <typename P, journal::Either<Secure> T>
void packed(P& with, T& secure) {
    auto& [day, tempo] = secure;
    with(day, tempo);
}
template <typename P, journal::Either<Picture> T>
void packed(P& with, T& picture) {
    auto& [file, left, top, width, height] = picture;
    with(file, left, top, width, height);
}
template <typename P, journal::Either<GroupMarks> T>
void packed(P& with, T& marks) {
    auto& [title, music, tempi, click, manner, notes, scale] = marks;
    with(title, music, tempi, click, manner, notes, scale);
}
template <typename P, journal::Either<Entry> T>
void packed(P& with, T& entry) {
    auto& [id, at, kind, tempo, mark, reason, millis, late, corrected, fullStreak, before, after, spots,
           articulation, rhythm, entered] = entry;
    with(id, at, kind, tempo, mark, reason, millis, late, corrected, fullStreak, before, after, spots,
         articulation, rhythm, entered);
}
/// The passage of a record is packed separately, as the fact that would create it; its entries are made from
/// the facts.
template <typename P, journal::Either<PassageRecord> T>
void packed(P& with, T& record) {
    auto& [passage, removed, editedHere, standing, best, bests, lastFullStreak, lastDay, secures, entries,
           stage, picture, notes] = record;
    with(editedHere, standing, best, bests, lastFullStreak, lastDay, secures, stage, picture, notes);
}
/// The passage of a run is the one under whose facts it is stored; the same for the three below.
template <typename P, journal::Either<RunFact> T>
void packed(P& with, T& run) {
    auto& [passage, tempo, mark, reason, kind, millis, spots, entered] = run;
    with(tempo, mark, reason, kind, millis, spots, entered);
}
template <typename P, journal::Either<TempoFact> T>
void packed(P& with, T& set) {
    auto& [passage, tempo, reason] = set;
    with(tempo, reason);
}
template <typename P, journal::Either<LateMissFact> T>
void packed(P& with, T& late) {
    auto& [passage, run] = late;
    with(run);
}
template <typename P, journal::Either<BackFact> T>
void packed(P& with, T& back) {
    auto& [passage, retracts] = back;
    with(retracts);
}

/// The file of a fault's location is the one under whose faults it is stored.
template <typename P, journal::Either<Fault> T>
void packed(P& with, T& fault) {
    auto& [number, location, arguments] = fault;
    with(number, location.line, arguments);
}

} // namespace piolo

namespace piolo::journal {

template <typename P, Either<ReadExtent> T>
void packed(P& with, T& extent) {
    auto& [bytes, lines, closed, sum] = extent;
    with(bytes, lines, closed, sum);
}
template <typename P, Either<KnownFile> T>
void packed(P& with, T& file) {
    auto& [name, extent, faults] = file;
    with(name, extent, faults);
}
template <typename P, Either<HighestPositions> T>
void packed(P& with, T& highest) {
    auto& [order, ownSeq] = highest;
    with(order, ownSeq);
}

} // namespace piolo::journal
