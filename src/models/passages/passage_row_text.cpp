// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/passages/passage_row_text.h"

#include "models/text/formatter.h"
#include "models/text/id_text.h"

#include <QtGlobal>

namespace piolo::models {

QString sectionOf(const PassageRow& row, PassageOrder order) {
    if (order != PassageOrder::due) return {};
    return row.piece.isNone() ? QStringLiteral("own") : idText(row.piece);
}

QString sectionTitle(const PassageRow& row) {
    return row.piece.isNone() ? qtTrId("passages.on-its-own") : row.pieceName;
}

QString sectionDue(const PassageRow& row, Date today) {
    if (!row.due) return {};
    return qtTrId("passages.date-days").arg(dueText(row, today), Formatter::daysFrom(*row.due, today));
}

QString dueText(const PassageRow& row, Date today) {
    return row.due ? Formatter::date(*row.due, today) : QString();
}

QString spokenText(const PassageRow& row) {
    const QString piece = row.piece.isNone() ? qtTrId("passages.on-its-own.inline") : row.pieceName;
    return qtTrId("passages.spoken")
        .arg(row.title, piece, row.bars, row.tempo, row.target, Formatter::streak(row.streak, row.cleanRuns),
             row.standing);
}

} // namespace piolo::models
