// SPDX-License-Identifier: GPL-3.0-or-later
#include "full_lines.h"

#include "bare_line.h"
#include "core/history/fact.h"

namespace piolo::test {

using nlohmann::json;

namespace {

Fact factOf(const FactBody& body) { return {{0, 9}, "0123456789abcdef0123456789abcdef", 1, 1, {}, body}; }

} // namespace

std::vector<Fact> fullFacts() {
    Music music;
    music.meter = Meter::parse("7/8", "1/8", "2+2+3").value();
    music.pickup = {1, 8};
    ClickPattern click;
    click.accents = {Accent::strong};
    click.swing = {2, 1};
    click.breaths = {{3, 1, 2}};
    Tempi gentle;
    gentle.rule.gentle = true;
    const std::vector<Note> notes{
        {{'C', 1, 5}, 73, {3, 8}, {1, 16}, false, true, {true, false, false, true, false}}};
    const Scale scale{{'E', -1}, ScaleKind::major, ScaleRange::twoOctaves, ScalePattern::thirds,
                      5,         "alto saxophone"};
    PracticeSettings settings;
    settings.scales.instrument = "alto saxophone";
    settings.scales.lowest = WrittenPitch{'B', -1, 3};
    settings.scales.highest = WrittenPitch{'F', 1, 6};
    const Manner manner{Articulation::slurred, Rhythm::groups, 3, "side B flat"};
    const std::vector<FactBody> bodies{
        RunFact{{0, 1}, Tempo::bpm(60), Mark::voided, Reason::stopped, RunKind::silent, 5, {{1, 1, 1}}, true},
        LateMissFact{{0, 1}, {0, 2}},
        DoubtFact{{0, 1}, {{0, 2}}},
        TempoFact{{0, 1}, Tempo::bpm(60), Reason::hand},
        BackFact{{0, 1}, {0, 2}},
        PassageFact{{0, 1}, Title{"Trio", {0, 5}, {0, 6}}, music, gentle, click, manner, notes, scale},
        PieceFact{{0, 1},
                  "March",
                  "Oboe",
                  std::optional<Date>{Date{2026, 5, 30}},
                  "Ada Finch",
                  -2,
                  148,
                  PieceMusic{music.meter, Tempo::bpm(132)},
                  "Key signature changes at D"},
        RemovalFact{{0, 1}, true},
        SettingsFact{settings},
        StageFact{{0, 1}, Stage::inContext},
        NoteFact{{0, 1}, {0, 2}, "Reed too hard"},
        RunThroughFact{{0, 1}, Tempo::bpm(96), 180'000, true, {{31, 44'000}}},
        FeltBeatFact{{0, 1}, BeatUnit::eighth},
        PictureFact{{0, 1}, Picture{"0123456789abcdef0123456789abcdef.png", 100, 200, 3000, 4000}},
        CorrectionFact{{0, 1}, {0, 2}, Mark::missed},
        ClockFact{"fedcba9876543210fedcba9876543210", {2126, 2, 27}, {2126, 3, 1}, 40, -36'500}};
    std::vector<Fact> facts;
    for (const auto& body : bodies) facts.push_back(factOf(body));
    return facts;
}

std::vector<Fact> sparseFacts() {
    const std::vector<FactBody> bodies{
        RunFact{{0, 1}, Tempo::bpm(60), Mark::clean, Reason::none, RunKind::run, 0, {}},
        LateMissFact{{0, 1}, {0, 2}},
        DoubtFact{{0, 1}, {}},
        TempoFact{{0, 1}, Tempo::bpm(60), Reason::newDay},
        BackFact{{0, 1}, {0, 2}},
        PassageFact{{0, 1}, {}, {}, {}},
        PassageFact{{0, 1},
                    Title{"", {}, {}},
                    Music{},
                    Tempi{},
                    ClickPattern{},
                    Manner{},
                    std::vector<Note>{},
                    Scale{}},
        PieceFact{{0, 1}, {}, {}, {}},
        PieceFact{{0, 1}, "", "", std::optional<Date>{}, "", 0, 0, PieceMusic{}, ""},
        RemovalFact{{0, 1}, false},
        SettingsFact{},
        StageFact{{0, 1}, Stage::slow},
        NoteFact{{0, 1}, {0, 2}, ""},
        RunThroughFact{{0, 1}, {}, 0, false, {}},
        FeltBeatFact{{0, 1}, BeatUnit::quarter},
        PictureFact{{0, 1}, {}},
        CorrectionFact{{0, 1}, {0, 2}, {}},
        ClockFact{"fedcba9876543210fedcba9876543210", {2126, 2, 27}, {2126, 2, 27}, 0, 0}};
    std::vector<Fact> facts;
    for (const auto& body : bodies) facts.push_back(factOf(body));
    return facts;
}

std::vector<json> fullLines() {
    std::vector<json> lines;
    for (const Fact& fact : fullFacts()) lines.push_back(json::parse(bareLine(fact)));
    return lines;
}

} // namespace piolo::test
