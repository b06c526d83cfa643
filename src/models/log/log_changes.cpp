// SPDX-License-Identifier: GPL-3.0-or-later
// What the player changes in the log: each change is a fact.
#include "models/log/log_model.h"
#include "models/text/id_text.h"
#include "models/text/taken_back_words.h"
#include "practice/log/practice_book.h"

#include <algorithm>

namespace piolo::models {

namespace {

/// In UTF-8, cut before the first character that does not fit.
std::string shortened(QString text, std::size_t longest) {
    while (static_cast<std::size_t>(text.toUtf8().size()) > longest)
        text.chop(text.back().isLowSurrogate() ? 2 : 1);
    return text.toStdString();
}

} // namespace

void LogModel::takeBack(const QString& passage, const QString& entry) {
    const Id subject = idOf(passage);
    const Id wanted = idOf(entry);
    if (!counts(subject, wanted)) return;
    takeBacks_.take(subject, wanted);
    emit takenBackChanged();
}

void LogModel::putBack() {
    if (takeBacks_.putBack()) emit takenBackChanged();
}

QString LogModel::takenBack() const {
    return takeBacks_.last() == nullptr ? QString() : takenBackWords(*takeBacks_.last());
}

void LogModel::setClean(const QString& passage, const QString& entry, bool clean) {
    const Id subject = idOf(passage);
    const Id wanted = idOf(entry);
    const Mark mark = clean ? Mark::clean : Mark::missed;
    const PassageRecord* const record = book_.notebook().passage(subject);
    if (record == nullptr || book_.readOnly()) return;
    const bool changes = std::any_of(record->entries.begin(), record->entries.end(), [&](const Entry& its) {
        return its.id == wanted && its.kind != Entry::Kind::tempo && its.mark != mark;
    });
    if (changes) book_.record(CorrectionFact{subject, wanted, mark});
}

void LogModel::setNote(const QString& passage, const QString& entry, const QString& text) {
    const Id subject = idOf(passage);
    const Id about = idOf(entry);
    const PassageRecord* const record = book_.notebook().passage(subject);
    if (record == nullptr || book_.readOnly() || !counts(subject, about)) return;
    const std::string note = shortened(text.simplified(), NoteFact::longest);
    const auto before = record->notes.find(about);
    if (note != (before == record->notes.end() ? std::string() : before->second))
        book_.record(NoteFact{subject, about, note});
}

bool LogModel::counts(Id subject, Id wanted) const {
    const auto isIt = [wanted](const auto& its) { return its.id == wanted; };
    if (const PassageRecord* const record = book_.notebook().passage(subject))
        return std::any_of(record->entries.begin(), record->entries.end(), isIt);
    const auto throughs = book_.notebook().runThroughs(subject);
    return std::any_of(throughs.begin(), throughs.end(), isIt);
}

} // namespace piolo::models
