// SPDX-License-Identifier: GPL-3.0-or-later
#include "scale_hour.h"

#include "core/scales/scale_passage.h"
#include "core/time/metronome_scale.h"
#include "sitting.h"

#include <algorithm>

namespace piolo::samples {

namespace {

constexpr int cellsADay = 4;
constexpr int runsOfCell = 9;

/// How much harder a key is than C, in thousandths: the more accidentals in its signature, the harder.
std::int64_t harder(int key) {
    constexpr std::array<std::int64_t, keyCount> thousandths{0,   120, 40, 60, 100, 15,
                                                             160, 15,  90, 70, 30,  130};
    return thousandths.at(static_cast<std::size_t>(key));
}

/// The tempo at which half the runs of the first day are clean, by notes per beat, in thousandths of a BPM.
std::int64_t evenFor(std::int32_t notesPerBeat, int key) {
    constexpr std::array<std::int64_t, Scale::mostNotesPerBeat> inC{150'000, 142'000, 118'000, 100'000,
                                                                    78'000,  74'000,  62'000};
    const std::int64_t even = inC.at(static_cast<std::size_t>(notesPerBeat - 1));
    return even - even * harder(key) / 1'000;
}

ScaleSettings clarinettist() {
    ScaleSettings settings;
    settings.instrument = "clarinet in B flat";
    return settings;
}

} // namespace

void ScaleHour::choose() {
    PracticeSettings settings;
    settings.scales = clarinettist();
    diary_.record(SettingsFact{settings});
}

void ScaleHour::play(std::int64_t form) {
    for (int cell = 0; cell < cellsADay; ++cell) {
        const ScaleSettings settings = clarinettist();
        const ScaleGrid grid = gridOf(diary_.notebook(), settings.view, settings.instrument);
        const CellProposal next = nextCell(grid, keysInOrder(settings.order, 0), clock_.today());
        const bool fancies = random_.chance(330);
        const auto notes = fancies ? static_cast<std::int32_t>(random_.between(2, 7)) : next.notesPerBeat;
        playCell(notes, fancies ? static_cast<int>(random_.below(keyCount)) : next.key, form);
        clock_.pass(random_.between(20'000, 60'000));
    }
}

void ScaleHour::slept(Date date) {
    for (Practised& one : practised_) one.learner.slept(date);
}

void ScaleHour::playCell(std::int32_t notesPerBeat, int key, std::int64_t form) {
    const auto found = std::ranges::find_if(practised_, [&](const Practised& one) {
        const Scale& scale = *one.lot.passage.scale;
        return scale.notesPerBeat == notesPerBeat && pitchClass(scale.tonic) == key;
    });
    Practised& practised = found != practised_.end() ? *found : make(notesPerBeat, key);
    Sitting(practised.lot, practised.learner, diary_, clock_, random_, form).play();
}

ScaleHour::Practised& ScaleHour::make(std::int32_t notesPerBeat, int key) {
    const ScaleSettings settings = clarinettist();
    const ScaleGrid grid = gridOf(diary_.notebook(), settings.view, settings.instrument);
    const Tonic tonic = settings.spelling.tonic(key, settings.view.kind);
    const Scale scale{tonic,        settings.view.kind, settings.view.range, settings.view.pattern,
                      notesPerBeat, settings.instrument};
    const Player player = playerOf(settings);
    const ScalePart part = scalePart(scale, player.instrument->transposition, player.range).value();
    const std::int64_t even = evenFor(notesPerBeat, key);
    StartProposal tempi = startFor(grid, notesPerBeat, key);
    // This player knows scales and begins where they are easy.
    tempi.start = std::min(tempi.target, notchBelow(Tempo::clampedThousandths(even * 84 / 100)));
    Lot lot;
    lot.passage = scalePassage(random_.id(), scale, part, tempi);
    lot.difficulty = {even, even / 24, even * 5 / 4, 60, 500, {}, {part.music.bars, 1}};
    lot.runs = runsOfCell;
    PassageFact fact{lot.passage.id, lot.passage.title, lot.passage.music, lot.passage.tempi};
    fact.notes = lot.passage.notes;
    fact.scale = scale;
    diary_.record(fact);
    practised_.push_back({lot, Learner(lot.difficulty)});
    return practised_.back();
}

} // namespace piolo::samples
