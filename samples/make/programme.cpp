// SPDX-License-Identifier: GPL-3.0-or-later
#include "programme.h"

namespace piolo::samples {

namespace {

constexpr Date concert{2026, 5, 9};
constexpr const char* clarinet = "Clarinet in B♭";
constexpr std::int32_t clarinetSounds = -2; // semitones

Meter meter(const char* text, const char* beat, const char* groups) {
    return Meter::parse(text, beat, groups).value();
}

Tempi tempi(int start, int target, int drop, int climb, int cleanRuns) {
    return {Tempo::bpm(start), {StepKind::bpm, drop, climb, cleanRuns, Tempo::bpm(40), Tempo::bpm(target)}};
}

/// Sixteenths with a pick-up: the hardest passage, with a long plateau.
Lot ferrywake(Seeded& random, Id piece) {
    Lot lot;
    lot.passage = {random.id(), {"Ferrywake Suite, II: bars 41–44", piece}, {}, tempi(60, 96, 4, 2, 5)};
    lot.passage.music.subdivision = 4;
    lot.passage.music.pickup = {1, 8};
    lot.passage.music.firstBar = 41;
    lot.difficulty = {74'000, 3'400, 101'000, 50, 450, Days{{2026, 3, 27}, {2026, 4, 5}}, {43, 3}};
    lot.begins = {2026, 3, 15};
    lot.runs = 30;
    return lot;
}

/// The passage that becomes secure.
Lot trio(Seeded& random, Id piece) {
    Lot lot;
    lot.passage = {
        random.id(), {"Tallow Bridge March, trio: bars 65–72", piece}, {}, tempi(92, 112, 4, 4, 5)};
    lot.passage.music.meter = meter("2/4", "", "");
    lot.passage.music.subdivision = 2;
    lot.passage.music.firstBar = 65;
    lot.passage.music.bars = 8;
    lot.difficulty = {109'000, 4'000, 130'000, 60, 500, {}, {70, 2}};
    lot.furthest = Stage::withoutClick;
    lot.begins = {2026, 3, 15};
    lot.everyDays = 2;
    lot.runs = 22;
    return lot;
}

/// Nearly at its target from the first day: through all stages by the end.
Lot marchBegins(Seeded& random, Id piece) {
    Lot lot;
    lot.passage = {random.id(), {"Tallow Bridge March: bars 1–8", piece}, {}, tempi(96, 112, 4, 4, 5)};
    lot.passage.music.meter = meter("2/4", "", "");
    lot.passage.music.subdivision = 4;
    lot.passage.music.bars = 8;
    lot.passage.tempi.rule.gentle = true;
    lot.difficulty = {124'000, 4'000, 140'000, 60, 500, {}, {5, 2}};
    lot.begins = {2026, 3, 16};
    lot.everyDays = 2;
    lot.runs = 16;
    return lot;
}

/// A slow movement: lightly tongued, played in context by the end.
Lot secondDance(Seeded& random, Id piece) {
    Lot lot;
    lot.passage = {
        random.id(), {"Three Quill Hollow Dances, II: bars 5–12", piece}, {}, tempi(48, 60, 2, 2, 5)};
    lot.passage.music.meter = meter("3/4", "", "");
    lot.passage.music.subdivision = 2;
    lot.passage.music.firstBar = 5;
    lot.passage.music.bars = 8;
    lot.passage.manner.articulation = Articulation::staccato;
    lot.passage.manner.fingering = "long B natural in bar 9, right hand";
    lot.difficulty = {66'000, 2'600, 78'000, 60, 500, {}, {9, 1}};
    lot.furthest = Stage::inContext;
    lot.begins = {2026, 3, 18};
    lot.everyDays = 2;
    lot.runs = 20;
    return lot;
}

/// 6/8, felt in dotted quarters.
Lot firstDance(Seeded& random, Id piece) {
    Lot lot;
    lot.passage = {
        random.id(), {"Three Quill Hollow Dances, I: bars 17–24", piece}, {}, tempi(60, 92, 2, 2, 5)};
    lot.passage.music.meter = meter("6/8", "3/8", "");
    lot.passage.music.subdivision = 3;
    lot.passage.music.firstBar = 17;
    lot.passage.music.bars = 8;
    lot.difficulty = {71'000, 4'000, 100'000, 60, 500, {}, {22, 1}};
    lot.begins = {2026, 3, 17};
    lot.everyDays = 2;
    lot.runs = 24;
    return lot;
}

Lot thirdDance(Seeded& random, Id piece) {
    Lot lot;
    lot.passage = {
        random.id(), {"Three Quill Hollow Dances, III: bars 9–12", piece}, {}, tempi(152, 224, 8, 4, 5)};
    lot.passage.music.meter = meter("7/8", "1/8", "2+2+3");
    lot.passage.music.firstBar = 9;
    lot.difficulty = {186'000, 9'000, 246'000, 160, 1'200, {}, {11, 5}};
    lot.begins = {2026, 3, 20};
    lot.everyDays = 2;
    lot.runs = 26;
    return lot;
}

/// Twelve bars: the rule asks for three clean runs instead of five.
Lot lanternsLong(Seeded& random, Id piece) {
    Lot lot;
    lot.passage = {random.id(), {"Lanterns over Osterby: bars 23–34", piece}, {}, tempi(76, 104, 4, 4, 3)};
    lot.passage.music.subdivision = 2;
    lot.passage.music.firstBar = 23;
    lot.passage.music.bars = 12;
    lot.difficulty = {101'000, 4'500, 128'000, 180, 700, {}, {31, 2}};
    lot.furthest = Stage::secure;
    lot.begins = {2026, 3, 19};
    lot.everyDays = 2;
    lot.runs = 12;
    return lot;
}

/// The passage that was only just begun.
Lot lanternsEnd(Seeded& random, Id piece) {
    Lot lot;
    lot.passage = {random.id(), {"Lanterns over Osterby: bars 88–91", piece}, {}, tempi(66, 104, 4, 2, 5)};
    lot.passage.music.meter = meter("3/4", "", "");
    lot.passage.music.subdivision = 3;
    lot.passage.music.firstBar = 88;
    lot.difficulty = {84'000, 4'000, 112'000, 60, 500, {}, {90, 3}};
    lot.begins = {2026, 4, 16};
    return lot;
}

/// A separate exercise, with steps on the metronome scale.
Lot thirds(Seeded& random) {
    Lot lot;
    lot.passage = {random.id(), {"Thirds in the low register, E to B♭", {}}, {}, {}};
    lot.passage.music.subdivision = 4;
    lot.passage.tempi = {Tempo::bpm(60), {StepKind::notches, 1, 1, 5, Tempo::bpm(40), Tempo::bpm(120)}};
    lot.difficulty = {78'000, 4'500, 118'000, 70, 500, {}, {2, 4}};
    lot.begins = {2026, 3, 16};
    lot.everyDays = 2;
    lot.runs = 20;
    return lot;
}

} // namespace

Programme springConcert(Seeded& random) {
    Programme made;
    for (const char* name :
         {"Ferrywake Suite", "Tallow Bridge March", "Three Quill Hollow Dances", "Lanterns over Osterby"})
        made.pieces.push_back({random.id(), name, clarinet, concert, {}, clarinetSounds});
    Piece& march = made.pieces[1];
    march.composer = "Odo Brandlick";
    march.bars = 96;
    march.music = {meter("2/4", "", ""), Tempo::bpm(112)};
    march.notes = "Repeats as in the band's edition; trio twice, second time soft.";
    const auto& pieces = made.pieces;
    made.lots.push_back(ferrywake(random, pieces[0].id));
    made.lots.push_back(trio(random, pieces[1].id));
    made.lots.push_back(firstDance(random, pieces[2].id));
    made.lots.push_back(thirdDance(random, pieces[2].id));
    made.lots.push_back(lanternsLong(random, pieces[3].id));
    made.lots.push_back(lanternsEnd(random, pieces[3].id));
    made.lots.push_back(thirds(random));
    made.lots.push_back(marchBegins(random, pieces[1].id));
    made.lots.push_back(secondDance(random, pieces[2].id));
    made.rehearsals = {{2026, 3, 29}, {2026, 4, 3},  {2026, 4, 6},
                       {2026, 4, 11}, {2026, 4, 15}, {2026, 4, 18}};
    made.season = {{2026, 3, 15}, {2026, 4, 18}};
    made.missedDays = {{2026, 4, 2}};
    made.badDays = {{2026, 3, 24}, {2026, 4, 9}, {2026, 4, 13}};
    return made;
}

} // namespace piolo::samples
