// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/fact_bodies.h"

#include "journal/click_group.h"
#include "journal/fact_bounds.h"
#include "journal/json_list.h"
#include "journal/line_head.h"
#include "journal/passage_groups.h"
#include "journal/words.h"

#include <array>
#include <utility>

namespace piolo::journal {

namespace {

using nlohmann::json;

std::optional<Spot> spotOf(const json& pair) {
    if (!pair.is_array() || pair.size() != 2) return std::nullopt;
    const auto bar = integerIn(pair[0], leastSpotBar, mostSpotBar);
    const auto beat = integerIn(pair[1], 1, mostSpotBeat);
    if (!bar || !beat) return std::nullopt;
    return Spot{static_cast<std::int32_t>(*bar), static_cast<std::int32_t>(*beat)};
}

std::optional<Id> runOf(const json& text) {
    if (!text.is_string()) return std::nullopt;
    const auto id = Id::parse(text.get_ref<const std::string&>());
    return id && !id->isNone() ? id : std::nullopt;
}

RunKind runKind(JsonObject& line) {
    const bool isTry = line.has("try") && line.flag("try");
    if (!line.has("as")) return isTry ? RunKind::attempt : RunKind::run;
    const RunKind kind = line.choice("as", runKindOf);
    if (isTry) line.refuse("as");
    return kind;
}

FactBody run(JsonObject& line) {
    RunFact fact;
    fact.passage = line.id("passage");
    fact.tempo = line.tempo("tempo");
    fact.mark = line.choice("mark", markOf);
    if (line.has("reason")) fact.reason = line.choice("reason", reasonOf);
    fact.kind = runKind(line);
    fact.millis = line.integer("ms", 0, mostOrder);
    if (line.has("spots")) fact.spots = listOf<Spot>(line, "spots", spotOf);
    return fact;
}

FactBody late(JsonObject& line) { return LateMissFact{line.id("passage"), line.id("run")}; }

FactBody doubt(JsonObject& line) { return DoubtFact{line.id("passage"), listOf<Id>(line, "runs", runOf)}; }

FactBody tempo(JsonObject& line) {
    TempoFact fact{line.id("passage"), line.tempo("tempo"), line.choice("reason", reasonOf)};
    if (!setsTempo(fact.reason)) line.refuse("reason");
    return fact;
}

FactBody back(JsonObject& line) { return BackFact{line.id("passage"), line.id("retracts")}; }

FactBody passage(JsonObject& line) {
    PassageFact fact;
    fact.passage = line.id("passage");
    if (line.has("imported")) fact.imported = line.flag("imported");
    if (line.has("title")) fact.title = titleOf(line.object("title"));
    if (line.has("music")) fact.music = musicOf(line.object("music"));
    if (line.has("tempi")) fact.tempi = tempiOf(line.object("tempi"));
    if (line.has("click")) fact.click = clickOf(line.object("click"));
    return fact;
}

std::optional<Date> dueOf(JsonObject& line) {
    if (line.value("due").is_null()) return std::nullopt;
    const auto due = Date::parse(line.text("due"));
    if (!due) line.refuse("due");
    return due;
}

FactBody piece(JsonObject& line) {
    PieceFact fact;
    fact.piece = line.id("piece");
    if (line.has("name")) fact.name = line.text("name");
    if (line.has("instrument")) fact.instrument = line.text("instrument");
    if (line.has("due")) fact.due = dueOf(line);
    if (line.has("composer")) fact.composer = line.text("composer");
    if (line.has("transposition")) fact.transposition = transpositionOf(line);
    if (line.has("bars")) fact.bars = pieceBarsOf(line);
    if (line.has("music")) fact.music = pieceMusicOf(line.object("music"));
    if (line.has("notes")) fact.notes = notesOf(line);
    return fact;
}

FactBody removal(JsonObject& line) { return RemovalFact{line.id("subject"), line.flag("removed")}; }

FactBody settings(JsonObject& line) {
    PracticeSettings read;
    read.gapMillisAfterMiss = static_cast<std::int32_t>(line.integer("gapMs", 0, 30'000));
    read.playOn = line.flag("playOn");
    read.pauseAfterRuns = static_cast<std::int32_t>(line.integer("pauseAfterRuns", 0, 9999));
    read.secureDays = static_cast<std::int32_t>(line.integer("secureDays", 1, 999));
    read.dayOpening = line.choice("dayOpening", openingOf);
    return SettingsFact{read};
}

// In the order of FactBody.
constexpr std::array<FactBody (*)(JsonObject&), std::variant_size_v<FactBody>> readers{
    run, late, doubt, tempo, back, passage, piece, removal, settings};

} // namespace

FactBody bodyOf(std::size_t index, JsonObject& line) { return readers[index](line); }

} // namespace piolo::journal
