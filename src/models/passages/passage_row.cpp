// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/passages/passage_row.h"

#include "models/text/formatter.h"
#include "text/one_line.h"
#include "text/passage_title.h"

#include <QStringList>
#include <QtGlobal>

#include <algorithm>
#include <tuple>

namespace piolo::models {

namespace {

double shareOf(const PassageRecord& record) {
    const Tempi& tempi = record.passage.tempi;
    const int way = tempi.rule.target.thousandths() - tempi.start.thousandths();
    const int gone = record.standing.tempo.thousandths() - tempi.start.thousandths();
    if (way <= 0) return gone >= 0 ? 1.0 : 0.0;
    return std::clamp(static_cast<double>(gone) / way, 0.0, 1.0);
}

QString playedWords(const PassageRecord& record, Date today) {
    if (!record.lastDay) return qtTrId("passages.not-played");
    return qtTrId("passages.played").arg(Formatter::daysFrom(*record.lastDay, today));
}

QString standingWords(const PassageRecord& record, const PracticeSettings& settings, Date today) {
    if (record.removed) return qtTrId("passages.removed");
    const int days = record.secureDays();
    if (days >= settings.secureDays) return qtTrId("passages.secure", days);
    if (days == 0) return playedWords(record, today);
    return qtTrId("passages.secure-so-far", settings.secureDays).arg(Formatter::countWord(days));
}

// Pieces with a date first.
auto dueKey(const PassageRow& row) {
    return std::tuple(row.piece.isNone(), !row.due.has_value(), row.due.value_or(Date{}), row.pieceName,
                      row.piece, row.firstBar, row.title, row.id);
}

} // namespace

PassageRow rowOf(const PassageRecord& record, const Piece* piece, const PracticeSettings& settings,
                 Date today) {
    const Passage& passage = record.passage;
    PassageRow row;
    row.id = passage.id;
    row.title = text::passageTitle(passage);
    if (piece != nullptr) {
        row.piece = piece->id;
        row.pieceName = text::nameShown(piece->name);
        row.due = piece->due;
    }
    row.lastDay = record.lastDay;
    row.firstBar = passage.music.firstBar;
    row.bars = Formatter::bars(passage.music);
    row.tempo = Formatter::tempo(record.standing.tempo);
    row.target = Formatter::tempo(passage.tempi.rule.target);
    const BeatUnit beat = passage.music.meter.beat();
    row.subdivision = Formatter::beatSign(beat) + QLatin1Char(' ') +
                      Formatter::subdivision(beat, passage.music.subdivision);
    row.standing = standingWords(record, settings, today);
    row.share = shareOf(record);
    row.streak = record.standing.streak;
    row.cleanRuns = passage.tempi.rule.cleanRuns;
    row.secure = record.secureDays() >= settings.secureDays;
    row.removed = record.removed;
    return row;
}

bool matches(const PassageRow& row, const QString& search) {
    const QString text =
        QStringList{row.title, row.pieceName, row.bars, row.subdivision}.join(QLatin1Char('\n'));
    const QStringList wanted = search.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    return std::all_of(wanted.begin(), wanted.end(),
                       [&](const QString& word) { return text.contains(word, Qt::CaseInsensitive); });
}

bool comesBefore(const PassageRow& a, const PassageRow& b, PassageOrder order) {
    if (order == PassageOrder::notPlayed && a.lastDay != b.lastDay) return a.lastDay < b.lastDay;
    if (order == PassageOrder::farFromTarget && a.share != b.share) return a.share < b.share;
    return dueKey(a) < dueKey(b);
}

} // namespace piolo::models
