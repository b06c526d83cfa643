// SPDX-License-Identifier: GPL-3.0-or-later
#include "random_facts.h"

#include "core/time/fraction_sum.h"

#include <array>
#include <cstdlib>
#include <string_view>

namespace piolo::test {

unsigned seedOfTest() {
    const char* given = std::getenv("PIOLO_SEED");
    return given ? static_cast<unsigned>(std::strtoul(given, nullptr, 10)) : 20'260'301U;
}

std::int64_t RandomFacts::number(std::int64_t least, std::int64_t most) {
    const auto span = static_cast<std::uint64_t>(most - least) + 1;
    return least + static_cast<std::int64_t>(random_() % span);
}

Id RandomFacts::id() { return {random_() | 1U, random_()}; }

std::string RandomFacts::text() {
    constexpr std::array<std::string_view, 14> pieces{"a",  "Bar 12", " ", "é", "ß", "\"",   "\\",
                                                      "\n", "\t",     "/", "♭", "𝄞", "東京", "שלום"};
    std::string made;
    for (auto length = number(0, 12); length > 0; --length)
        made += pieces[static_cast<std::size_t>(number(0, pieces.size() - 1))];
    return made;
}

Tempo RandomFacts::tempo() { return *Tempo::fromThousandths(number(Tempo::least, Tempo::most)); }

RunFact RandomFacts::run() {
    RunFact fact{id(),
                 tempo(),
                 static_cast<Mark>(number(0, 2)),
                 static_cast<Reason>(number(0, 7)),
                 static_cast<RunKind>(number(0, 4)),
                 number(0, 10'000'000),
                 {}};
    for (auto count = number(0, 3); count > 0; --count)
        fact.spots.push_back({small(-1, 10'000), small(1, 32), coin() ? small(0, 999) : 0});
    fact.entered = number(0, 3) == 0;
    return fact;
}

Music RandomFacts::music() {
    struct Choice {
        const char* meter;
        const char* beat;
        const char* groups;
    };
    constexpr std::array<Choice, 9> choices{{{"4/4", "1/4", ""},
                                             {"3/4", "3/4", ""},
                                             {"6/8", "3/8", ""},
                                             {"6/8", "1/8", ""},
                                             {"7/8", "1/8", "2+2+3"},
                                             {"7/8", "1/8", "3+2+2"},
                                             {"5/8", "1/8", ""},
                                             {"2/2", "1/2", ""},
                                             {"12/8", "3/8", ""}}};
    const auto& choice = choices[static_cast<std::size_t>(number(0, choices.size() - 1))];
    Music made;
    made.meter = Meter::parse(choice.meter, choice.beat, choice.groups).value();
    made.subdivision = small(1, 8);
    if (coin()) made.pickup = {small(1, 4), 8};
    made.firstBar = small(0, 9999);
    made.bars = small(0, 999);
    made.landing = coin();
    made.countInBars = small(0, 4);
    made.breathBeats = small(0, 8);
    return made;
}

Tempi RandomFacts::tempi() {
    Tempi made;
    made.rule.floor = *Tempo::fromThousandths(number(Tempo::least, 100'000));
    made.start = *Tempo::fromThousandths(number(100'000, 200'000));
    made.rule.target = *Tempo::fromThousandths(number(200'000, Tempo::most));
    made.rule.step = coin() ? StepKind::bpm : StepKind::notches;
    made.rule.drop = small(1, 100);
    made.rule.climb = small(1, 100);
    made.rule.cleanRuns = small(1, 100);
    made.rule.gentle = coin();
    return made;
}

ClickPattern RandomFacts::click() {
    ClickPattern made;
    made.on = static_cast<ClickOn>(number(0, 3));
    for (auto count = number(0, 4); count > 0; --count)
        made.accents.push_back(static_cast<Accent>(number(0, 3)));
    const auto shorter = small(1, 33);
    if (coin()) made.swing = {small(shorter, 3 * std::int64_t{shorter}), shorter};
    if (coin()) made.swung = SwungNotes::sixteenths;
    made.barsOn = small(1, 99);
    made.barsOff = small(0, 99);
    made.silentBars = small(0, 100);
    made.leftOutBeats = small(0, 100);
    made.seed = small(0, ClickPattern::mostSeed);
    for (std::int32_t bar = small(-1, 9000); coin(); ++bar)
        if (made.breaths.size() < ClickPattern::mostBreaths)
            made.breaths.push_back({bar, small(1, 32), small(1, 8)});
    if (coin()) made.breathBelow = tempo();
    return made;
}

PassageFact RandomFacts::passage() {
    PassageFact fact{id(), {}, {}, {}};
    if (coin()) fact.title = Title{text(), coin() ? id() : Id{}, coin() ? id() : Id{}};
    if (coin()) fact.music = music();
    if (coin()) fact.tempi = tempi();
    if (coin()) fact.click = click();
    if (coin())
        fact.manner = Manner{static_cast<Articulation>(number(0, 7)), static_cast<Rhythm>(number(0, 3)),
                             small(2, 8), text()};
    if (coin()) fact.notes = notes();
    if (coin()) fact.scale = scale();
    fact.imported = coin();
    return fact;
}

PieceFact RandomFacts::piece() {
    PieceFact fact{id(), {}, {}, {}};
    if (coin()) fact.name = text();
    if (coin()) fact.instrument = text();
    if (coin()) fact.due.emplace();
    if (fact.due && coin()) *fact.due = Date::fromDaysSince1970(number(0, 40'000));
    if (coin()) fact.composer = text();
    if (coin()) fact.transposition = small(-36, 36);
    if (coin()) fact.bars = small(0, 9999);
    if (coin()) fact.music = PieceMusic{music().meter, coin() ? std::optional(tempo()) : std::nullopt};
    if (coin()) fact.notes = text();
    return fact;
}

RunThroughFact RandomFacts::runThrough() {
    RunThroughFact fact{id(), {}, number(0, 3'600'000), coin(), {}};
    if (coin()) fact.tempo = tempo();
    for (auto count = number(0, 4); count > 0; --count)
        fact.stops.push_back({small(0, 9999), number(0, 3'600'000)});
    return fact;
}

SettingsFact RandomFacts::settings() {
    return {{small(0, 30'000), coin(), small(0, 100), small(1, 30), static_cast<DayOpening>(number(0, 2)),
             small(0, 1000), scales()}};
}

WrittenPitch RandomFacts::pitch() {
    return {static_cast<char>('A' + number(0, 6)), static_cast<std::int8_t>(number(-3, 3)),
            static_cast<std::int8_t>(number(0, 9))};
}

Scale RandomFacts::scale() {
    return {{static_cast<char>('A' + number(0, 6)), static_cast<std::int8_t>(number(-1, 1))},
            static_cast<ScaleKind>(number(0, scaleKindCount - 1)),
            static_cast<ScaleRange>(number(0, scaleRangeCount - 1)),
            static_cast<ScalePattern>(number(0, scalePatternCount - 1)),
            small(1, Scale::mostNotesPerBeat),
            text()};
}

ScaleSettings RandomFacts::scales() {
    const Scale shown = scale();
    ScaleSettings made;
    made.instrument = text();
    if (coin()) made.lowest = pitch();
    if (coin()) made.highest = pitch();
    made.spelling = SpellingChoice(static_cast<std::uint16_t>(number(0, SpellingChoice::most)));
    made.order = static_cast<KeyOrder>(number(0, keyOrderCount - 1));
    made.seed = small(0, ScaleSettings::mostSeed);
    made.view = {shown.kind, shown.range, shown.pattern};
    return made;
}

std::vector<Note> RandomFacts::notes() {
    std::vector<Note> made;
    Fraction onset;
    for (auto count = number(0, 5); count > 0; --count) {
        const NoteArticulation marks{coin(), coin(), coin(), coin(), coin()};
        const Fraction length = Fraction{small(1, 12), small(1, 96)}.reduced();
        made.push_back({pitch(), small(0, 127), onset, length, coin(), coin(), marks});
        onset = sum(onset, length).value();
    }
    return made;
}

PictureFact RandomFacts::picture() {
    PictureFact fact{id(), std::nullopt};
    const auto left = small(0, 9999);
    const auto top = small(0, 9999);
    if (coin())
        fact.picture = Picture{id().text() + (coin() ? ".png" : ".jpg"), left, top, small(1, 10'000 - left),
                               small(1, 10'000 - top)};
    return fact;
}

FactBody RandomFacts::body(std::size_t index) {
    constexpr std::array reasons{Reason::hand, Reason::newDay, Reason::offer, Reason::named};
    static_assert(kindCount == 16, "a new kind has a case below");
    switch (index) {
    case 0:
        return run();
    case 1:
        return LateMissFact{id(), id()};
    case 2:
        return DoubtFact{id(), {id(), id()}};
    case 3:
        return TempoFact{id(), tempo(), reasons[static_cast<std::size_t>(number(0, 3))]};
    case 4:
        return BackFact{id(), id()};
    case 5:
        return passage();
    case 6:
        return piece();
    case 7:
        return RemovalFact{id(), coin()};
    case 8:
        return settings();
    case 9:
        return StageFact{id(), static_cast<Stage>(number(0, 4))};
    case 10:
        return NoteFact{id(), id(), text()};
    case 11:
        return runThrough();
    case 12:
        return FeltBeatFact{id(), static_cast<BeatUnit>(number(0, 4))};
    case 13:
        return picture();
    case 14:
        return CorrectionFact{id(), id(),
                              coin() ? std::optional(static_cast<Mark>(number(0, 2))) : std::nullopt};
    default:
        return clock();
    }
}

FactBody RandomFacts::clock() {
    const std::int64_t from = number(-719'162, 2'932'896);
    return ClockFact{id().text(), Date::fromDaysSince1970(from),
                     Date::fromDaysSince1970(from + number(0, 400)),
                     static_cast<std::uint64_t>(number(0, 9'007'199'254'740'991)),
                     static_cast<std::int32_t>(number(-3'652'058, 3'652'058))};
}

Fact RandomFacts::fact(std::size_t index) {
    Fact made;
    made.id = id();
    made.device = id().text();
    made.seq = static_cast<std::uint64_t>(number(1, 1'000'000));
    made.order = number(0, 253'402'300'799'999);
    made.at = {number(0, 4'000'000'000'000), static_cast<std::int16_t>(number(-720, 840))};
    made.body = body(index);
    return made;
}

} // namespace piolo::test
