// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/log/log_misses.h"

#include "core/music/note_stretch.h"
#include "models/text/formatter.h"
#include "models/text/typed_values.h"
#include "text/passage_title.h"

#include <QLocale>
#include <QVariantList>
#include <QtGlobal>

#include <algorithm>

namespace piolo::models {

namespace {

constexpr std::int32_t mostBarsByBeat = 8;

QString missWords(int count) { return qtTrId("breaks.misses", count); }

int countAt(const Misses& misses, std::int32_t bar, std::int32_t beat) {
    const auto found = std::find_if(misses.beats.begin(), misses.beats.end(), [&](const MissedBeat& missed) {
        return missed.bar == bar && missed.beat == beat;
    });
    return found == misses.beats.end() ? 0 : found->count;
}

/// How often each column was missed: a bar's beats, or the bar whole.
std::vector<int> columnsOf(const Misses& misses, std::int32_t bar, const Music& music) {
    if (music.bars == 0 || music.bars > mostBarsByBeat) return {misses.inBar(bar)};
    std::vector<int> columns;
    for (int beat = 1; beat <= music.meter.beatsPerBar(); ++beat)
        columns.push_back(countAt(misses, bar, beat));
    return columns;
}

std::vector<std::int32_t> barsOf(const Misses& misses, const Music& music) {
    std::int32_t first = music.firstBar;
    std::int32_t end = music.firstBar + music.bars;
    for (const MissedBeat& missed : misses.beats) {
        first = std::min(first, missed.bar);
        end = std::max(end, missed.bar + 1);
    }
    std::vector<std::int32_t> bars;
    for (std::int32_t bar = first; bar < end; ++bar) bars.push_back(bar);
    return bars;
}

QVariantMap barMap(std::int32_t bar, const std::vector<int>& columns, int most) {
    QVariantList beats;
    int all = 0;
    for (const int count : columns) {
        all += count;
        const bool worst = most > 1 && 2 * count >= most;
        beats.append(
            QVariantMap{{QStringLiteral("share"), most == 0 ? 0.0 : static_cast<double>(count) / most},
                        {QStringLiteral("count"), count},
                        {QStringLiteral("worst"), worst}});
    }
    return {{QStringLiteral("label"), QLocale().toString(bar)},
            {QStringLiteral("beats"), beats},
            {QStringLiteral("spoken"), qtTrId("breaks.bar").arg(Formatter::spot({bar, 0}), missWords(all))}};
}

QString noteWords(const Misses& misses, const Music& music) {
    const int all = misses.placed + misses.elsewhere;
    if (all == 0) return misses.runs == 0 ? qtTrId("breaks.not-played") : qtTrId("breaks.no-miss");
    const QString by = music.bars > mostBarsByBeat || music.bars == 0 ? qtTrId("breaks.by-bar")
                                                                      : qtTrId("breaks.by-bar-and-beat");
    const QString told = qtTrId("breaks.told").arg(missWords(all), Formatter::runs(misses.runs), by);
    return misses.elsewhere == 0 ? told : qtTrId("breaks.told-elsewhere").arg(told).arg(misses.elsewhere);
}

} // namespace

QVariantMap missesMap(const PassageRecord& record, const Misses& misses) {
    const Music& music = record.passage.music;
    const auto numbers = barsOf(misses, music);
    std::vector<std::vector<int>> columns;
    int most = 0;
    for (const std::int32_t bar : numbers) {
        columns.push_back(columnsOf(misses, bar, music));
        most = std::max(most, *std::max_element(columns.back().begin(), columns.back().end()));
    }
    QVariantList bars;
    for (std::size_t i = 0; i < numbers.size(); ++i) bars.append(barMap(numbers[i], columns[i], most));
    const QString name = text::passageTitle(record.passage);
    return {{QStringLiteral("title"), qtTrId("breaks.where").arg(name)},
            {QStringLiteral("note"), noteWords(misses, music)},
            {QStringLiteral("bars"), misses.placed == 0 ? QVariantList() : bars}};
}

Passage passageOfBars(const Passage& whole, const BuildUpPart& part) {
    Passage made = whole;
    made.id = {};
    made.title.origin = whole.id;
    made.music = musicOf(part, whole.music);
    made.notes = notesOf(part, whole.music, whole.notes);
    made.scale.reset(); // some bars of a scale are no scale: they stand in no cell of the grid
    const QString bars = Formatter::bars(made.music);
    const QString name = QString::fromStdString(whole.title.name).left(longestTypedName - bars.size() - 2);
    made.title.name = qtTrId("breaks.bar").arg(name, bars).toStdString();
    return made;
}

std::vector<BuildUpPart> partsFromTheEnd(const Music& whole) {
    if (whole.bars < 2 || whole.bars > mostBarsToBuildUp) return {};
    std::vector<BuildUpPart> parts = lastBarFirst(whole);
    parts.pop_back();
    return parts;
}

std::vector<BuildUpPart> partsThatOverlap(const Music& whole) {
    constexpr std::int32_t mostBars = 4 * mostBarsToBuildUp;
    if (whole.bars < 2 || whole.bars > mostBars) return {};
    const std::int32_t usual = whole.bars > mostBarsToBuildUp ? 4 : 2;
    return overlappingParts(whole, std::min(usual, whole.bars - 1));
}

} // namespace piolo::models
