// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/paper/practice_sheet.h"

#include "models/files/file_kind.h"
#include "models/text/formatter.h"
#include "models/text/typed_file.h"
#include "plots/paper/paper_words.h"
#include "practice/faults/fault_text.h"

#include <QLocale>

namespace piolo::models {

PracticeSheet::PracticeSheet(practice::PracticeBook& book, PassagePicks& picks, QObject* parent)
    : QObject(parent), book_(book), picks_(picks) {
    const bool metric = QLocale().measurementSystem() == QLocale::MetricSystem;
    paper_ = metric ? plots::PaperSize::a4 : plots::PaperSize::letter;
    connect(&picks, &PassagePicks::changed, this, &PracticeSheet::changed);
    connect(&book, &practice::PracticeBook::changed, this, &PracticeSheet::changed);
}

QString PracticeSheet::paper() const {
    return paper_ == plots::PaperSize::a4 ? QStringLiteral("a4") : QStringLiteral("letter");
}

void PracticeSheet::setPaper(const QString& paper) {
    if (paper != QLatin1String("a4") && paper != QLatin1String("letter")) return;
    paper_ = paper == QLatin1String("a4") ? plots::PaperSize::a4 : plots::PaperSize::letter;
    emit changed();
}

bool PracticeSheet::ready() const {
    return picks_.picked() > 0 && std::cmp_less_equal(picks_.picked(), plots::mostOnPaper);
}

QString PracticeSheet::summary() const {
    if (picks_.picked() == 0) return qtTrId("paper.print.tick");
    if (!ready()) return qtTrId("paper.print.most").arg(plots::mostOnPaper);
    const auto sheet = plots::paperSheet(book_.notebook(), picks_.ids(), paper_);
    const auto pages = static_cast<int>(plots::layOutPaper(sheet.ladders, paper_).pages.size());
    const QString passages = Formatter::passages(picks_.picked());
    return pages == 1 ? qtTrId("paper.print.one-page").arg(passages)
                      : qtTrId("paper.print.pages").arg(passages).arg(pages);
}

QString PracticeSheet::save(const QString& typed) const {
    if (!ready()) return summary();
    const QString path = typedPath(typed, usualEnding(FileKind::sheet));
    const auto bytes = plots::paperBytes(path, plots::paperSheet(book_.notebook(), picks_.ids(), paper_));
    return bytes ? saveBytes(path, *bytes) : practice::faultSentence(bytes.fault());
}

} // namespace piolo::models
