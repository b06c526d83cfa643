// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/lines/fact_bodies.h"

#include "journal/groups/click_group.h"
#include "journal/groups/notes_group.h"
#include "journal/groups/passage_groups.h"
#include "journal/groups/scale_group.h"
#include "journal/json/json_list.h"
#include "journal/lines/fact_bounds.h"
#include "journal/lines/line_head.h"
#include "journal/lines/value_names.h"

#include <array>
#include <utility>

namespace piolo::journal {

namespace {

using nlohmann::json;

std::optional<Spot> spotOf(const json& place) {
    if (!place.is_array() || place.size() < 2 || place.size() > 3) return std::nullopt;
    const auto bar = integerIn(place[0], leastSpotBar, mostSpotBar);
    const auto beat = integerIn(place[1], 1, mostSpotBeat);
    const auto part = place.size() == 3 ? integerIn(place[2], 0, mostSpotPart) : 0;
    if (!bar || !beat || !part) return std::nullopt;
    return Spot{static_cast<std::int32_t>(*bar), static_cast<std::int32_t>(*beat),
                static_cast<std::int32_t>(*part)};
}

std::optional<Stop> stopOf(const json& pair) {
    if (!pair.is_array() || pair.size() != 2) return std::nullopt;
    const auto bar = integerIn(pair[0], 0, Piece::mostBars);
    const auto millis = integerIn(pair[1], 0, mostOrder);
    if (!bar || !millis) return std::nullopt;
    return Stop{static_cast<std::int32_t>(*bar), *millis};
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
    if (line.has("entered")) fact.entered = line.flag("entered");
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
    if (line.has("manner")) fact.manner = mannerOf(line.object("manner"));
    if (line.has("notation")) fact.notes = notesIn(line);
    if (line.has("scale")) fact.scale = scaleOf(line.object("scale"));
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
    if (line.has("reactionMs"))
        read.reactionMillis =
            static_cast<std::int32_t>(line.integer("reactionMs", 0, PracticeSettings::mostReactionMillis));
    if (line.has("scales")) read.scales = scaleSettingsOf(line.object("scales"));
    return SettingsFact{read};
}

FactBody stage(JsonObject& line) { return StageFact{line.id("passage"), line.choice("stage", stageOf)}; }

FactBody note(JsonObject& line) {
    NoteFact fact{line.id("passage"), line.id("about"), line.text("text")};
    if (fact.text.size() > NoteFact::longest) line.refuse("text");
    return fact;
}

FactBody runThrough(JsonObject& line) {
    RunThroughFact fact;
    fact.piece = line.id("piece");
    if (line.has("tempo")) fact.tempo = line.tempo("tempo");
    fact.millis = line.integer("ms", 0, mostOrder);
    fact.finished = line.flag("finished");
    if (line.has("stops")) fact.stops = listOf<Stop>(line, "stops", stopOf);
    if (fact.stops.size() > RunThroughFact::mostStops) line.refuse("stops");
    return fact;
}

FactBody feltBeat(JsonObject& line) {
    FeltBeatFact fact{line.id("passage"), BeatUnit::quarter};
    const std::string text = line.text("beat");
    if (const auto beat = parseBeatUnit(text))
        fact.beat = *beat;
    else
        line.refuse("beat");
    return fact;
}

FactBody picture(JsonObject& line) {
    PictureFact fact{line.id("passage"), std::nullopt};
    if (!line.has("file")) return fact;
    Picture shown;
    shown.file = line.text("file");
    if (!isPictureName(shown.file)) line.refuse("file");
    shown.left = line.small("left", 0, Picture::whole - 1);
    shown.top = line.small("top", 0, Picture::whole - 1);
    shown.width = line.small("width", 1, Picture::whole);
    shown.height = line.small("height", 1, Picture::whole);
    if (shown.left + shown.width > Picture::whole) line.refuse("width");
    if (shown.top + shown.height > Picture::whole) line.refuse("height");
    fact.picture = shown;
    return fact;
}

// In the order of FactBody.
constexpr std::array<FactBody (*)(JsonObject&), std::variant_size_v<FactBody>> readers{
    run,     late,     doubt, tempo, back,       passage,  piece,
    removal, settings, stage, note,  runThrough, feltBeat, picture};

} // namespace

FactBody bodyOf(std::size_t index, JsonObject& line) { return readers[index](line); }

} // namespace piolo::journal
