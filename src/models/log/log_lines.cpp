// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/log/log_lines.h"

#include "models/text/formatter.h"
#include "models/text/manner_words.h"
#include "models/text/run_kind_words.h"

#include <QStringList>
#include <QtGlobal>

#include <algorithm>

namespace piolo::models {

namespace {

struct Played {
    const PassageRecord* record = nullptr;
    const Entry* entry = nullptr;
};

std::vector<Played> playedOn(const Notebook& notebook, const practice::LogDay& day,
                             const practice::LogFilter& filter) {
    std::vector<Played> played;
    for (const practice::LogSpan& span : day.spans) {
        const PassageRecord* const record = notebook.passage(span.passage);
        if (record == nullptr) continue;
        const std::size_t end = std::min(span.first + span.count, record->entries.size());
        for (std::size_t index = span.first; index < end; ++index)
            if (filter.takes(record->entries[index].kind))
                played.push_back({record, &record->entries[index]});
    }
    std::stable_sort(played.begin(), played.end(), [](const Played& a, const Played& b) {
        return a.entry->at.utcMillis < b.entry->at.utcMillis;
    });
    return played;
}

bool moved(const Entry& entry) { return entry.fullStreak || entry.after.tempo != entry.tempo; }

bool playedAlike(const Entry& a, const Entry& b) {
    return a.articulation == b.articulation && a.rhythm == b.rhythm && a.entered == b.entered;
}

bool joins(const LogLine& line, const Played& next) {
    if (line.through) return false;
    const Entry& last = *line.entries.back();
    return line.record == next.record && last.kind == next.entry->kind && last.tempo == next.entry->tempo &&
           playedAlike(last, *next.entry) && last.kind != Entry::Kind::tempo &&
           (last.kind != Entry::Kind::run || !moved(last));
}

QString voidWords(Reason reason) {
    switch (reason) {
    case Reason::stopped:
        return qtTrId("log.line.void-stopped");
    case Reason::tempoChanged:
        return qtTrId("log.line.void-tempo");
    case Reason::soundLost:
        return qtTrId("log.line.void-sound");
    default:
        return qtTrId("log.line.void");
    }
}

QString tempoWords(Reason reason) {
    switch (reason) {
    case Reason::newDay:
        return qtTrId("log.line.day-opens");
    case Reason::offer:
        return qtTrId("log.line.offer-taken");
    case Reason::named:
        return qtTrId("log.line.named");
    default:
        return qtTrId("log.line.by-hand");
    }
}

QString apartWords(Entry::Kind kind) { return qtTrId("log.line.moves-nothing").arg(apartWord(kind)); }

QString ruleWords(const Entry& entry) {
    const QString after = Formatter::tempo(entry.after.tempo);
    if (entry.mark == Mark::missed)
        return entry.after.tempo < entry.tempo ? qtTrId("log.line.drops").arg(after)
                                               : qtTrId("log.line.stays").arg(after);
    if (entry.after.tempo > entry.tempo) return qtTrId("log.line.climbs").arg(after);
    if (entry.fullStreak) return qtTrId("log.line.secure");
    return qtTrId("log.line.in-a-row").arg(Formatter::countWord(entry.after.streak));
}

QString runWords(const LogLine& line) {
    const auto counted = std::find_if(line.entries.rbegin(), line.entries.rend(),
                                      [](const Entry* entry) { return entry->mark != Mark::voided; });
    if (counted == line.entries.rend()) return voidWords(line.entries.back()->reason);
    return line.entries.back()->kind == Entry::Kind::run ? ruleWords(**counted)
                                                         : apartWords(line.entries.back()->kind);
}

/// The places of the first misses, as many as a line has room for.
QStringList spotWords(const LogLine& line) {
    constexpr qsizetype most = 2;
    QStringList places;
    for (const Entry* entry : line.entries)
        for (const Spot& spot : entry->spots)
            if (places.size() < most && entry->mark == Mark::missed) places << Formatter::spot(spot);
    return places;
}

std::vector<LogLine> throughsOn(const Notebook& notebook, const practice::LogDay& day) {
    std::vector<LogLine> lines;
    if (day.throughs.empty()) return lines;
    for (const Piece& piece : notebook.pieces(true)) {
        const auto throughs = notebook.runThroughs(piece.id);
        for (const practice::LogThrough& its : day.throughs)
            if (its.piece == piece.id && its.index < throughs.size())
                lines.push_back({nullptr, {}, throughs[its.index], piece.name});
    }
    std::stable_sort(lines.begin(), lines.end(),
                     [](const LogLine& a, const LogLine& b) { return a.at().utcMillis < b.at().utcMillis; });
    return lines;
}

int countOf(const LogLine& line, Mark mark) {
    if (line.through || line.entries.front()->kind == Entry::Kind::tempo) return 0;
    return static_cast<int>(std::count_if(line.entries.begin(), line.entries.end(),
                                          [mark](const Entry* entry) { return entry->mark == mark; }));
}

QChar shapeOf(Mark mark) {
    if (mark == Mark::clean) return u'●';
    return mark == Mark::missed ? u'▼' : u'○';
}

} // namespace

std::vector<LogLine> linesOf(const Notebook& notebook, const practice::LogDay& day,
                             const practice::LogFilter& filter) {
    std::vector<LogLine> lines;
    const std::vector<LogLine> throughs = throughsOn(notebook, day);
    auto through = throughs.begin();
    for (const Played& next : playedOn(notebook, day, filter)) {
        for (; through != throughs.end() && through->at().utcMillis < next.entry->at.utcMillis; ++through)
            lines.push_back(*through);
        if (lines.empty() || !joins(lines.back(), next)) lines.push_back({next.record, {}, {}, {}});
        lines.back().entries.push_back(next.entry);
    }
    lines.insert(lines.end(), through, throughs.end());
    return lines;
}

LogDayFigures figuresOf(const std::vector<LogLine>& lines) {
    LogDayFigures figures;
    for (const LogLine& line : lines) {
        figures.clean += countOf(line, Mark::clean);
        figures.runs += countOf(line, Mark::clean) + countOf(line, Mark::missed);
        for (const Entry* entry : line.entries) figures.millis += entry->millis;
        if (line.through) figures.millis += line.through->played.millis;
    }
    return figures;
}

QString effectWords(const LogLine& line) {
    if (line.entries.front()->kind == Entry::Kind::tempo) return tempoWords(line.entries.front()->reason);
    QStringList parts{runWords(line)};
    const Entry& first = *line.entries.front();
    if (const QString manner = mannerText(first.articulation, first.rhythm); !manner.isEmpty())
        parts << manner;
    if (first.entered) parts << qtTrId("log.line.on-paper");
    return (parts + spotWords(line)).join(QStringLiteral(" · "));
}

QString markWords(const Entry& entry) {
    if (entry.kind == Entry::Kind::tempo) return {};
    if (entry.mark == Mark::voided) return voidWords(entry.reason);
    if (entry.mark == Mark::clean) return qtTrId("log.line.clean");
    return entry.late ? qtTrId("log.line.missed-late") : qtTrId("log.line.missed");
}

QString markShapes(const LogLine& line) {
    constexpr std::size_t most = 10;
    QString shapes;
    if (line.entries.front()->kind == Entry::Kind::tempo) return shapes;
    if (line.entries.size() <= most) {
        for (const Entry* entry : line.entries) shapes += shapeOf(entry->mark);
        return shapes;
    }
    for (const Mark mark : {Mark::clean, Mark::missed, Mark::voided})
        if (const int count = countOf(line, mark); count > 0)
            shapes +=
                QStringLiteral("%1%2 %3").arg(shapes.isEmpty() ? "" : "  ").arg(count).arg(shapeOf(mark));
    return shapes;
}

QString markCounts(const LogLine& line) {
    QStringList counts;
    const auto add = [&](Mark mark, const QString& form) {
        if (const int count = countOf(line, mark); count > 0) counts << form.arg(count);
    };
    add(Mark::clean, qtTrId("log.line.count-clean"));
    add(Mark::missed, qtTrId("log.line.count-missed"));
    add(Mark::voided, qtTrId("log.line.count-void"));
    return counts.join(QStringLiteral(", "));
}

} // namespace piolo::models
