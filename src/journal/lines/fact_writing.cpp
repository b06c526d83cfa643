// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/groups/click_group.h"
#include "journal/groups/notes_group.h"
#include "journal/groups/passage_groups.h"
#include "journal/groups/scale_group.h"
#include "journal/lines/fact_line.h"
#include "journal/lines/line_sum.h"
#include "journal/lines/value_names.h"

#include <nlohmann/json.hpp>

namespace piolo::journal {

namespace {

using Json = nlohmann::ordered_json;

Json ids(const std::vector<Id>& runs) {
    Json list = Json::array();
    for (const Id run : runs) list.push_back(run.text());
    return list;
}

Json spotsOf(const std::vector<Spot>& spots) {
    Json list = Json::array();
    for (const auto& [bar, beat, part] : spots)
        list.push_back(part == 0 ? Json::array({bar, beat}) : Json::array({bar, beat, part}));
    return list;
}

void put(Json& line, const RunFact& run) {
    line["passage"] = run.passage.text();
    line["tempo"] = run.tempo.thousandths();
    line["mark"] = wordOf(run.mark);
    if (run.reason != Reason::none) line["reason"] = wordOf(run.reason);
    if (run.kind == RunKind::attempt) line["try"] = true;
    if (const auto word = wordOf(run.kind); !word.empty()) line["as"] = word;
    line["ms"] = run.millis;
    if (!run.spots.empty()) line["spots"] = spotsOf(run.spots);
    if (run.entered) line["entered"] = true;
}

void put(Json& line, const LateMissFact& late) {
    line["passage"] = late.passage.text();
    line["run"] = late.run.text();
}

void put(Json& line, const DoubtFact& doubt) {
    line["passage"] = doubt.passage.text();
    line["runs"] = ids(doubt.runs);
}

void put(Json& line, const TempoFact& tempo) {
    line["passage"] = tempo.passage.text();
    line["tempo"] = tempo.tempo.thousandths();
    line["reason"] = wordOf(tempo.reason);
}

void put(Json& line, const BackFact& back) {
    line["passage"] = back.passage.text();
    line["retracts"] = back.retracts.text();
}

void put(Json& line, const PassageFact& edit) {
    line["passage"] = edit.passage.text();
    if (edit.title) line["title"] = groupOf(*edit.title);
    if (edit.music) line["music"] = groupOf(*edit.music);
    if (edit.tempi) line["tempi"] = groupOf(*edit.tempi);
    if (edit.click) line["click"] = groupOf(*edit.click);
    if (edit.manner) line["manner"] = groupOf(*edit.manner);
    if (edit.notes) line["notation"] = groupOf(*edit.notes);
    if (edit.scale) line["scale"] = groupOf(*edit.scale);
    if (edit.imported) line["imported"] = true;
}

void put(Json& line, const PieceFact& edit) {
    line["piece"] = edit.piece.text();
    if (edit.name) line["name"] = *edit.name;
    if (edit.instrument) line["instrument"] = *edit.instrument;
    if (edit.due) line["due"] = *edit.due ? Json((*edit.due)->text()) : Json(nullptr);
    if (edit.composer) line["composer"] = *edit.composer;
    if (edit.transposition) line["transposition"] = *edit.transposition;
    if (edit.bars) line["bars"] = *edit.bars;
    if (edit.music) line["music"] = groupOf(*edit.music);
    if (edit.notes) line["notes"] = *edit.notes;
}

void put(Json& line, const RemovalFact& removal) {
    line["subject"] = removal.subject.text();
    line["removed"] = removal.removed;
}

void put(Json& line, const SettingsFact& fact) {
    line["gapMs"] = fact.settings.gapMillisAfterMiss;
    line["playOn"] = fact.settings.playOn;
    line["pauseAfterRuns"] = fact.settings.pauseAfterRuns;
    line["secureDays"] = fact.settings.secureDays;
    line["dayOpening"] = wordOf(fact.settings.dayOpening);
    line["reactionMs"] = fact.settings.reactionMillis;
    if (fact.settings.scales != ScaleSettings{}) line["scales"] = groupOf(fact.settings.scales);
}

void put(Json& line, const StageFact& said) {
    line["passage"] = said.passage.text();
    line["stage"] = wordOf(said.stage);
}

void put(Json& line, const NoteFact& note) {
    line["passage"] = note.passage.text();
    line["about"] = note.about.text();
    line["text"] = note.text;
}

void put(Json& line, const RunThroughFact& played) {
    line["piece"] = played.piece.text();
    if (played.tempo) line["tempo"] = played.tempo->thousandths();
    line["ms"] = played.millis;
    line["finished"] = played.finished;
    if (played.stops.empty()) return;
    Json stops = Json::array();
    for (const auto& [bar, millis] : played.stops) stops.push_back(Json::array({bar, millis}));
    line["stops"] = std::move(stops);
}

void put(Json& line, const FeltBeatFact& felt) {
    line["passage"] = felt.passage.text();
    line["beat"] = fractionOf(felt.beat).text();
}

void put(Json& line, const PictureFact& shown) {
    line["passage"] = shown.passage.text();
    if (!shown.picture) return;
    line["file"] = shown.picture->file;
    line["left"] = shown.picture->left;
    line["top"] = shown.picture->top;
    line["width"] = shown.picture->width;
    line["height"] = shown.picture->height;
}

} // namespace

std::string toLine(const Fact& fact) {
    Json line;
    line["v"] = formatVersion;
    line["id"] = fact.id.text();
    line["device"] = fact.device;
    line["seq"] = fact.seq;
    line["order"] = fact.order;
    line["at"] = fact.at.text();
    line["kind"] = kindOf(fact.body);
    std::visit([&line](const auto& body) { put(line, body); }, fact.body);
    return withSum(line.dump(-1, ' ', false, Json::error_handler_t::replace));
}

} // namespace piolo::journal
