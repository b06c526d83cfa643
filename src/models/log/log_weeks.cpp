// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/log/log_weeks.h"

#include "models/text/formatter.h"
#include "models/text/id_text.h"
#include "text/passage_title.h"

#include <QLocale>
#include <QStringList>
#include <QVariantMap>
#include <QtGlobal>

namespace piolo::models {

namespace {

QString figuresWords(const practice::WeekFigures& week) {
    const QString time = Formatter::duration(week.millis);
    if (week.runs == 0) return time;
    const double share = static_cast<double>(week.clean) / week.runs;
    return qtTrId("log.week.figures").arg(time, Formatter::runs(week.runs), Formatter::ofHundred(share));
}

QString whyWords(const practice::WorstPassage& worst) {
    const QString share =
        qtTrId("log.worst.clean").arg(QLocale().toString(worst.clean), QLocale().toString(worst.runs));
    return worst.bar ? qtTrId("log.worst.clean-and-bar").arg(share).arg(*worst.bar) : share;
}

} // namespace

QString weekWords(const practice::TwoWeeks& weeks) {
    QStringList parts;
    if (weeks.present.millis > 0) parts << qtTrId("log.week.this").arg(figuresWords(weeks.present));
    if (weeks.last.millis > 0) parts << qtTrId("log.week.last").arg(figuresWords(weeks.last));
    return parts.join(QStringLiteral("  ·  "));
}

QVariantList worstMaps(const Notebook& notebook, const std::vector<practice::WorstPassage>& all) {
    QVariantList maps;
    for (const practice::WorstPassage& worst : all) {
        const QString title = text::passageTitle(notebook.passage(worst.passage)->passage);
        const QString why = whyWords(worst);
        maps.append(QVariantMap{{QStringLiteral("passage"), idText(worst.passage)},
                                {QStringLiteral("title"), title},
                                {QStringLiteral("why"), why},
                                {QStringLiteral("spoken"), qtTrId("log.worst.spoken").arg(title, why)}});
    }
    return maps;
}

} // namespace piolo::models
