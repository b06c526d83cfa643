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

QString tempoWords(const Entry& entry) {
    switch (entry.reason) {
    case Reason::newDay:
        return qtTrId("log.line.new-day").arg(Formatter::tempo(entry.before.tempo));
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

QString runWords(const practice::LogLine& line) {
    const auto counted = std::find_if(line.entries.rbegin(), line.entries.rend(),
                                      [](const Entry* entry) { return entry->mark != Mark::voided; });
    if (counted == line.entries.rend()) return voidWords(line.entries.back()->reason);
    return line.entries.back()->kind == Entry::Kind::run ? ruleWords(**counted)
                                                         : apartWords(line.entries.back()->kind);
}

/// The places of the first misses, as many as fit in a line.
QStringList spotWords(const practice::LogLine& line) {
    constexpr qsizetype most = 2;
    QStringList places;
    for (const Entry* entry : line.entries)
        for (const Spot& spot : entry->spots)
            if (places.size() < most && entry->mark == Mark::missed) places << Formatter::spot(spot);
    return places;
}

QString recordedWords(const Entry& entry) {
    if (entry.mark == Mark::voided) return voidWords(entry.reason);
    if (entry.mark == Mark::clean) return qtTrId("log.line.clean");
    return entry.late ? qtTrId("log.line.missed-late") : qtTrId("log.line.missed");
}

QChar shapeOf(Mark mark) {
    if (mark == Mark::clean) return u'●';
    return mark == Mark::missed ? u'▼' : u'○';
}

} // namespace

QString effectWords(const practice::LogLine& line) {
    if (line.entries.front()->kind == Entry::Kind::tempo) return tempoWords(*line.entries.front());
    QStringList parts{runWords(line)};
    const Entry& first = *line.entries.front();
    if (const QString manner = mannerText(first.articulation, first.rhythm); !manner.isEmpty())
        parts << manner;
    if (first.entered) parts << qtTrId("log.line.on-paper");
    return (parts + spotWords(line)).join(QStringLiteral(" · "));
}

QString markWords(const Entry& entry) {
    if (entry.kind == Entry::Kind::tempo) return {};
    const QString words = recordedWords(entry);
    return entry.corrected ? qtTrId("log.line.corrected").arg(words) : words;
}

QString markShapes(const practice::LogLine& line) {
    constexpr std::size_t most = 10;
    QString shapes;
    if (line.entries.front()->kind == Entry::Kind::tempo) return shapes;
    if (line.entries.size() <= most) {
        for (const Entry* entry : line.entries) shapes += shapeOf(entry->mark);
        return shapes;
    }
    for (const Mark mark : {Mark::clean, Mark::missed, Mark::voided})
        if (const int count = line.count(mark); count > 0)
            shapes +=
                QStringLiteral("%1%2 %3").arg(shapes.isEmpty() ? "" : "  ").arg(count).arg(shapeOf(mark));
    return shapes;
}

QString markCounts(const practice::LogLine& line) {
    QStringList counts;
    const auto add = [&](Mark mark, const QString& form) {
        if (const int count = line.count(mark); count > 0) counts << form.arg(count);
    };
    add(Mark::clean, qtTrId("log.line.count-clean"));
    add(Mark::missed, qtTrId("log.line.count-missed"));
    add(Mark::voided, qtTrId("log.line.count-void"));
    return counts.join(QStringLiteral(", "));
}

} // namespace piolo::models
