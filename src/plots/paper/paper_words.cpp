// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/paper/paper_words.h"

#include "core/rule/ladder.h"
#include "plots/curve/tempo_curve.h"
#include "text/formatter.h"
#include "text/one_line.h"

#include <QtGlobal>

#include <map>

namespace piolo::plots {

namespace {

QString placeOf(const Passage& passage, const QString& piece) {
    QStringList parts{text::Formatter::bars(passage.music),
                      QString::fromStdString(passage.music.meter.text())};
    if (!piece.isEmpty()) parts.prepend(piece);
    return parts.join(QStringLiteral(" · "));
}

QString tempiOf(const PassageRecord& record) {
    const Music& music = record.passage.music;
    const BeatUnit beat = music.meter.beat();
    const QString subdivision = text::Formatter::subdivision(beat, music.subdivision);
    const QString from = text::Formatter::tempoMark(beat, record.standing.tempo);
    const Tempo target = record.passage.tempi.rule.target;
    return record.standing.tempo < target
               ? qtTrId("sheet.tempi-to-target").arg(from, text::Formatter::tempo(target), subdivision)
               : qtTrId("sheet.tempi").arg(from, subdivision);
}

QStringList ruleOf(const Rule& rule) {
    QStringList lines{qtTrId("sheet.rule").arg(text::Formatter::rule(rule))};
    if (rule.gentle) lines << qtTrId("sheet.gentle");
    return lines;
}

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

PaperLadder paperLadder(const PassageRecord& record, const QString& piece) {
    const Rule& rule = record.passage.tempi.rule;
    PaperLadder ladder;
    ladder.title = text::nameShown(record.passage.title.name);
    ladder.lines = QStringList{placeOf(record.passage, piece), tempiOf(record)} + ruleOf(rule);
    for (const Tempo rung : rungsUp(rule, record.standing.tempo))
        ladder.rungs.push_back({text::Formatter::tempo(rung), rung == rule.target});
    ladder.circles = rule.cleanRuns;
    return ladder;
}

PaperSheet paperSheet(const Notebook& notebook, std::span<const Id> passages, PaperSize paper) {
    std::map<Id, QString> pieces;
    for (const Piece& piece : notebook.pieces(true)) pieces[piece.id] = text::nameShown(piece.name);
    PaperSheet sheet{{}, paperWords(), paper, lightCurveStyle().font};
    for (const Id id : passages)
        if (const PassageRecord* const record = notebook.passage(id))
            sheet.ladders.push_back(paperLadder(*record, pieces[record->passage.title.piece]));
    return sheet;
}

Result<QByteArray> paperBytes(const QString& path, const PaperSheet& sheet) {
    const auto ends = [&](const char* kind) {
        return path.endsWith(QLatin1String(kind), Qt::CaseInsensitive);
    };
    const bool picture = ends(".svg") || ends(".png");
    if (!picture && !ends(".pdf"))
        return Fault{FaultNumber::badFileKind, {}, {path.toStdString(), ".pdf, .svg or .png"}};
    const std::size_t pages = layOutPaper(sheet.ladders, sheet.paper).pages.size();
    if (picture && pages > mostPagesInPicture)
        return Fault{
            FaultNumber::pagesNeedPdf, {}, {std::to_string(pages), std::to_string(mostPagesInPicture)}};
    QByteArray bytes = ends(".pdf") ? paperPdf(sheet) : ends(".svg") ? paperSvg(sheet) : paperPng(sheet);
    if (bytes.isEmpty()) return Fault{FaultNumber::cannotWrite, {}, {}};
    return bytes;
}

} // namespace piolo::plots
