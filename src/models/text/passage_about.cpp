// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/text/passage_about.h"

#include "models/text/click_words.h"
#include "models/text/formatter.h"
#include "models/text/manner_words.h"
#include "text/one_line.h"
#include "text/passage_title.h"

#include <QStringList>

namespace piolo::models {

namespace {

QString countInWords(int bars) {
    if (bars == 0) return qtTrId("drill.no-count-in");
    if (bars == 1) return qtTrId("drill.one-bar-count-in");
    return qtTrId("drill.count-in").arg(Formatter::countWord(bars));
}

} // namespace

QString aboutPassage(const Notebook& notebook, const Passage& passage) {
    const Music& music = passage.music;
    const QString line = qtTrId("drill.summary")
                             .arg(QString::fromStdString(music.meter.text()), Formatter::bars(music),
                                  countInWords(music.countInBars), Formatter::rule(passage.tempi.rule));
    QStringList parts{line};
    // A passage titled only by its bars is identified by its piece.
    const auto piece = notebook.piece(passage.title.piece);
    if (piece && !text::passageTitle(passage).contains(text::nameShown(piece->name)))
        parts.prepend(text::nameShown(piece->name));
    for (const QString& part : {mannerText(passage.manner), clickWords(passage.click)})
        if (!part.isEmpty()) parts << part;
    return parts.join(QStringLiteral(" · "));
}

} // namespace piolo::models
