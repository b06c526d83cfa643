// SPDX-License-Identifier: GPL-3.0-or-later
#include "records.h"

#include <QGuiApplication>

namespace piolo::plots {

namespace {

Timestamp noonOf(int day) {
    const Date date{2026, 4, static_cast<std::int8_t>(day)};
    return {date.daysSince1970() * 86'400'000 + 43'200'000, 0};
}

Mark markOf(char word) {
    if (word == 'm' || word == 'u') return Mark::missed;
    return word == 'v' ? Mark::voided : Mark::clean;
}

} // namespace

PassageRecord freshRecord() {
    PassageRecord record;
    record.passage.tempi.start = Tempo::bpm(60);
    record.passage.tempi.rule = {StepKind::bpm, 4, 2, 2, Tempo::bpm(40), Tempo::bpm(96)};
    record.standing = {Tempo::bpm(60), 0};
    return record;
}

void play(PassageRecord& record, int day, std::string_view marks) {
    for (const char word : marks) {
        const bool isTry = word == 't' || word == 'u';
        const Rule& rule = record.passage.tempi.rule;
        Entry entry;
        entry.id = {0, record.entries.size() + 1};
        entry.at = noonOf(day);
        entry.kind = isTry ? Entry::Kind::attempt : Entry::Kind::run;
        entry.tempo = isTry ? rule.target : record.standing.tempo;
        entry.mark = markOf(word);
        entry.before = record.standing;
        entry.after =
            isTry ? record.standing : afterRun(record.standing, entry.tempo, entry.mark, rule).after;
        record.standing = entry.after;
        record.entries.push_back(entry);
    }
}

void set(PassageRecord& record, int day, Tempo tempo) {
    Entry entry;
    entry.at = noonOf(day);
    entry.kind = Entry::Kind::tempo;
    entry.tempo = tempo;
    entry.before = record.standing;
    entry.after = handSet(tempo);
    record.standing = entry.after;
    record.entries.push_back(entry);
}

void needFonts() {
    static int argc = 1;
    static char name[] = "test_plots";
    static char* argv[] = {name, nullptr};
    qputenv("QT_QPA_PLATFORM", "offscreen");
    static const QGuiApplication application(argc, argv);
}

} // namespace piolo::plots
