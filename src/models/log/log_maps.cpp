// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/log/log_maps.h"

#include "models/text/formatter.h"
#include "models/text/id_text.h"
#include "text/number_words.h"
#include "text/one_line.h"
#include "text/passage_title.h"

#include <QLocale>
#include <QStringList>
#include <QVariantList>
#include <QtGlobal>

namespace piolo::models {

namespace {

QString titleOf(const practice::LogLine& line) {
    if (line.through) return qtTrId("log.line.run-through").arg(text::nameShown(line.pieceName));
    const QString title = text::passageTitle(line.record->passage);
    return line.record->removed ? qtTrId("log.line.removed").arg(title) : title;
}

QString stopWords(const RunThroughFact& played) {
    const auto count = static_cast<int>(played.stops.size());
    return count == 0 && !played.finished ? qtTrId("log.line.given-up") : text::stopsWord(count);
}

/// "bars 31 and 58"; if there are many, only the first ones.
QString stopPlaces(const RunThroughFact& played) {
    constexpr qsizetype most = 3;
    QStringList bars;
    qsizetype known = 0;
    for (const Stop& stop : played.stops) {
        if (stop.bar == 0) continue; // unknown
        if (++known <= most) bars << QString::number(stop.bar);
    }
    const QString length = Formatter::duration(played.millis);
    if (bars.isEmpty())
        return played.stops.empty() ? length
                                    : qtTrId("log.line.figures").arg(length, qtTrId("log.line.bars-unknown"));
    const QString places = bars.size() == 1 ? qtTrId("log.line.bar").arg(bars.first())
                                            : qtTrId("log.line.bars").arg(bars.join(QStringLiteral(", ")));
    return qtTrId("log.line.figures")
        .arg(length, known > most ? qtTrId("log.line.more").arg(places) : places);
}

QString noteOf(const PassageRecord& record, Id entry) {
    const auto found = record.notes.find(entry);
    return found == record.notes.end() ? QString() : QString::fromStdString(found->second);
}

QString notesOf(const practice::LogLine& line) {
    constexpr qsizetype most = 5;
    QStringList notes;
    for (const Entry* entry : line.entries)
        if (const QString note = noteOf(*line.record, entry->id); !note.isEmpty() && notes.size() < most)
            notes << note;
    return notes.join(QStringLiteral(" · "));
}

QString tempoOf(const practice::LogLine& line) {
    if (!line.through) return Formatter::tempo(line.entries.front()->tempo);
    return line.through->played.tempo ? Formatter::tempo(*line.through->played.tempo) : QString();
}

/// When it was played; the time is unknown for runs ticked on paper.
QString timeOf(const practice::LogLine& line) {
    const bool onPaper = !line.through && line.entries.front()->entered;
    return onPaper ? qtTrId("log.line.paper") : Formatter::timeOfDay(line.at());
}

/// "run 2 of 5 at 18:02, missed": what the buttons of this entry are about.
QString spokenEntry(const practice::LogLine& line, std::size_t index) {
    const Entry& entry = *line.entries[index];
    const QString time = timeOf({line.record, {&entry}, {}, {}});
    if (entry.kind == Entry::Kind::tempo)
        return qtTrId("log.entry.tempo").arg(Formatter::tempo(entry.tempo), time);
    if (line.entries.size() == 1) return qtTrId("log.entry.run").arg(time, markWords(entry));
    return qtTrId("log.entry.run-of")
        .arg(QLocale().toString(static_cast<qulonglong>(index + 1)),
             QLocale().toString(static_cast<qulonglong>(line.entries.size())), time, markWords(entry));
}

QVariantMap entryMap(const practice::LogLine& line, std::size_t index) {
    const PassageRecord& record = *line.record;
    const Entry& entry = *line.entries[index];
    const practice::LogLine alone{&record, {&entry}, {}, {}};
    const bool isRun = entry.kind != Entry::Kind::tempo;
    return {{QStringLiteral("entry"), idText(entry.id)},
            {QStringLiteral("passage"), idText(record.passage.id)},
            {QStringLiteral("time"), timeOf(alone)},
            {QStringLiteral("marks"), markShapes(alone)},
            {QStringLiteral("mark"), markWords(entry)},
            {QStringLiteral("detail"), entry.mark == Mark::voided ? QString() : effectWords(alone)},
            {QStringLiteral("note"), noteOf(record, entry.id)},
            {QStringLiteral("spoken"), spokenEntry(line, index)},
            {QStringLiteral("canBeClean"), isRun && entry.mark != Mark::clean},
            {QStringLiteral("canBeMissed"), isRun && entry.mark != Mark::missed},
            {QStringLiteral("canNote"), true}};
}

QVariantMap throughMap(const RunThrough& through) {
    return {{QStringLiteral("entry"), idText(through.id)},
            {QStringLiteral("passage"), idText(through.played.piece)},
            {QStringLiteral("time"), Formatter::timeOfDay(through.at)},
            {QStringLiteral("marks"), QString()},
            {QStringLiteral("mark"), stopWords(through.played)},
            {QStringLiteral("detail"), stopPlaces(through.played)},
            {QStringLiteral("note"), QString()},
            {QStringLiteral("spoken"), qtTrId("log.entry.run-through").arg(Formatter::timeOfDay(through.at))},
            {QStringLiteral("canBeClean"), false},
            {QStringLiteral("canBeMissed"), false},
            {QStringLiteral("canNote"), false}};
}

} // namespace

QVariantMap lineMap(const practice::LogLine& line) {
    const QString time = timeOf(line);
    const QString title = titleOf(line);
    const QString tempo = tempoOf(line);
    const QString marks = line.through ? stopWords(line.through->played) : markShapes(line);
    const QString counts = line.through ? marks : markCounts(line);
    const QString effect = line.through ? stopPlaces(line.through->played) : effectWords(line);
    const QString note = notesOf(line);
    QStringList spoken{time, title};
    if (!tempo.isEmpty()) spoken << qtTrId("log.line.at-tempo").arg(tempo);
    for (const QString& part : {counts, effect, note})
        if (!part.isEmpty()) spoken << part;
    return {{QStringLiteral("time"), time},
            {QStringLiteral("title"), title},
            {QStringLiteral("tempo"), tempo},
            {QStringLiteral("marks"), marks},
            {QStringLiteral("effect"), effect},
            {QStringLiteral("note"), note},
            {QStringLiteral("spoken"), spoken.join(QStringLiteral(", "))}};
}

QVariantList entryMaps(const practice::LogLine& line, int most) {
    QVariantList maps;
    if (line.through) maps.append(throughMap(*line.through));
    for (std::size_t index = 0; index < line.entries.size() && maps.size() < most; ++index)
        maps.append(entryMap(line, index));
    return maps;
}

} // namespace piolo::models
