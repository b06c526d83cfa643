// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/log/log_choices.h"

#include "models/log/log_lines.h"
#include "models/settings/setting_choices.h"
#include "models/text/run_kind_words.h"
#include "models/text/table_text.h"
#include "text/one_line.h"
#include "text/passage_title.h"

#include <QVariantMap>
#include <QtGlobal>

#include <algorithm>
#include <array>
#include <utility>

namespace piolo::models {

namespace {

/// Every kind of entry in the log, runs first.
constexpr auto entryKinds = [] {
    std::array<Entry::Kind, runKindTable.size() + 1> kinds{};
    std::ranges::transform(runKindTable, kinds.begin(),
                           [](const RunKindInfo& info) { return entryKind(info.kind); });
    kinds.back() = Entry::Kind::tempo;
    return kinds;
}();

QString nameFor(Entry::Kind kind) { return tableText(nameOf(kind)); }

constexpr const char* runThroughs = "runThrough";

struct Stretch {
    const char* word;
    const char* text;
    int days;
};
constexpr std::array stretches{
    Stretch{"1w", QT_TRID_NOOP("log.filter.week"), 7},
    Stretch{"4w", QT_TRID_NOOP("log.filter.weeks"), 28},
    Stretch{"3m", QT_TRID_NOOP("log.filter.months"), 91},
    Stretch{"1y", QT_TRID_NOOP("log.filter.year"), 365},
};

} // namespace

QVariantList pieceChoices(const Notebook& notebook) {
    QVariantList choices{choice(QString(), qtTrId("log.filter.every-piece"))};
    for (const Piece& piece : notebook.pieces())
        choices.append(choice(QString::fromStdString(piece.id.text()), text::nameShown(piece.name)));
    return choices;
}

QVariantList passageChoices(const Notebook& notebook, Id piece) {
    QVariantList choices{choice(QString(), qtTrId("log.filter.every-passage"))};
    for (const Id id : notebook.passages()) {
        const PassageRecord* const record = notebook.passage(id);
        if (record == nullptr || (!piece.isNone() && record->passage.title.piece != piece)) continue;
        choices.append(choice(QString::fromStdString(id.text()), text::passageTitle(record->passage)));
    }
    return choices;
}

QVariantList kindChoices() {
    QVariantList choices{choice(QString(), qtTrId("log.filter.everything"))};
    for (const Entry::Kind kind : entryKinds) choices.append(choice(nameFor(kind), kindWord(kind)));
    choices.append(choice(QLatin1String(runThroughs), qtTrId("log.filter.run-through")));
    return choices;
}

QVariantList stretchChoices() {
    QVariantList choices{choice(QString(), qtTrId("log.filter.first-day"))};
    for (const Stretch& stretch : stretches)
        choices.append(choice(QLatin1String(stretch.word), qtTrId(stretch.text)));
    return choices;
}

QString kindIn(const practice::LogFilter& filter) {
    if (filter.runThroughsOnly) return QLatin1String(runThroughs);
    return filter.kind ? nameFor(*filter.kind) : QString();
}

void setKindOf(practice::LogFilter& filter, const QString& word) {
    const auto* const found =
        std::ranges::find_if(entryKinds, [&](Entry::Kind kind) { return word == nameFor(kind); });
    filter.kind = found == entryKinds.end() ? std::nullopt : std::optional(*found);
    filter.runThroughsOnly = word == QLatin1String(runThroughs);
}

std::optional<Date> firstDay(const QString& stretch, Date today) {
    const auto* found = std::find_if(stretches.begin(), stretches.end(),
                                     [&](const Stretch& s) { return stretch == QLatin1String(s.word); });
    if (found == stretches.end()) return std::nullopt;
    return Date::fromDaysSince1970(today.daysSince1970() - found->days + 1);
}

} // namespace piolo::models
