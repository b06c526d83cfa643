// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/passages/draft_text.h"

#include "core/rule/usual_floor.h"
#include "models/text/click_words.h"
#include "models/text/formatter.h"
#include "practice/log/practice_book.h"
#include "text/passage_title.h"

namespace piolo::models {

DraftText::DraftText(const practice::PracticeBook& book, QObject* parent) : QObject(parent), book_(book) {}

void DraftText::follow(Id id, const Passage& passage) {
    id_ = id;
    passage_ = passage;
    emit changed();
}

QString DraftText::usualTitle() const { return Formatter::bars(passage_.music); }

QString DraftText::usualGroups() const {
    const Meter& meter = passage_.music.meter;
    const auto usual = Meter::make(meter.numerator(), meter.denominator(), meter.beat());
    return usual ? QString::fromStdString(usual->groupsText()) : QString();
}

QString DraftText::usualFloor() const { return Formatter::tempo(piolo::usualFloor(passage_.tempi.start)); }

QString DraftText::clickSentence() const {
    const QString words = clickWords(passage_.click);
    return words.isEmpty() ? qtTrId("form.click.every-beat") : qtTrId("form.click").arg(words);
}

QString DraftText::originText() const {
    const PassageRecord* const record = book_.notebook().passage(id_);
    if (record == nullptr || record->passage.title.origin.isNone()) return {};
    const PassageRecord* const origin = book_.notebook().passage(record->passage.title.origin);
    return origin == nullptr ? qtTrId("form.made-of-another")
                             : qtTrId("form.made-of").arg(text::passageTitle(origin->passage));
}

} // namespace piolo::models
