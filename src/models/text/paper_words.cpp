// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/text/paper_words.h"

#include "core/rule/ladder.h"
#include "models/text/fault_text.h"
#include "models/text/formatter.h"
#include "plots/curve/tempo_curve.h"

#include <QtGlobal>

#include <map>

namespace piolo::models {

namespace {

QString placeOf(const Passage& passage, const QString& piece) {
    QStringList parts{Formatter::bars(passage.music), QString::fromStdString(passage.music.meter.text())};
    if (!piece.isEmpty()) parts.prepend(piece);
    return parts.join(QStringLiteral(" · "));
}

QString tempiOf(const PassageRecord& record) {
    const Music& music = record.passage.music;
    const BeatUnit beat = music.meter.beat();
    const QString subdivision = Formatter::subdivision(beat, music.subdivision);
    const QString from = Formatter::tempoMark(beat, record.standing.tempo);
    const Tempo target = record.passage.tempi.rule.target;
    return record.standing.tempo < target
               ? qtTrId("sheet.tempi-to-target").arg(from, Formatter::tempo(target), subdivision)
               : qtTrId("sheet.tempi").arg(from, subdivision);
}

QStringList ruleOf(const Rule& rule) {
    QStringList lines{qtTrId("sheet.rule").arg(Formatter::rule(rule))};
    if (rule.gentle) lines << qtTrId("sheet.gentle");
    return lines;
}

using plots::PaperWords;

PaperWords paperWords() {
    PaperWords made;
    made.day = qtTrId("sheet.day");
    made.misses = qtTrId("sheet.misses");
    made.target = qtTrId("sheet.target");
    made.notes = qtTrId("sheet.notes");
    made.howTo = qtTrId("sheet.how-to");
    made.continued = qtTrId("sheet.continued");
    made.page = qtTrId("sheet.page");
    return made;
}

} // namespace

plots::PaperLadder paperLadder(const PassageRecord& record, const QString& piece) {
    const Rule& rule = record.passage.tempi.rule;
    plots::PaperLadder ladder;
    ladder.title = onOneLine(record.passage.title.name);
    ladder.lines = QStringList{placeOf(record.passage, piece), tempiOf(record)} + ruleOf(rule);
    for (const Tempo rung : rungsUp(rule, record.standing.tempo))
        ladder.rungs.push_back({Formatter::tempo(rung), rung == rule.target});
    ladder.circles = rule.cleanRuns;
    return ladder;
}

plots::PaperSheet paperSheet(const Notebook& notebook, std::span<const Id> passages, plots::PaperSize paper) {
    std::map<Id, QString> pieces;
    for (const Piece& piece : notebook.pieces(true)) pieces[piece.id] = onOneLine(piece.name);
    plots::PaperSheet sheet{{}, paperWords(), paper, plots::lightCurveStyle().font};
    for (const Id id : passages)
        if (const PassageRecord* const record = notebook.passage(id))
            sheet.ladders.push_back(paperLadder(*record, pieces[record->passage.title.piece]));
    return sheet;
}

Result<QByteArray> paperBytes(const QString& path, const plots::PaperSheet& sheet) {
    const auto ends = [&](const char* kind) {
        return path.endsWith(QLatin1String(kind), Qt::CaseInsensitive);
    };
    const bool picture = ends(".svg") || ends(".png");
    if (!picture && !ends(".pdf"))
        return Fault{FaultNumber::badFileKind, {}, {path.toStdString(), ".pdf, .svg or .png"}};
    const std::size_t pages = plots::layOutPaper(sheet.ladders, sheet.paper).pages.size();
    if (picture && pages > plots::mostPagesInPicture)
        return Fault{FaultNumber::pagesNeedPdf,
                     {},
                     {std::to_string(pages), std::to_string(plots::mostPagesInPicture)}};
    QByteArray bytes = ends(".pdf")   ? plots::paperPdf(sheet)
                       : ends(".svg") ? plots::paperSvg(sheet)
                                      : plots::paperPng(sheet);
    if (bytes.isEmpty()) return Fault{FaultNumber::cannotWrite, {}, {}};
    return bytes;
}

} // namespace piolo::models
