// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/set/set_model.h"

#include "models/text/formatter.h"
#include "models/text/sitting_words.h"
#include "text/passage_title.h"

#include <algorithm>

namespace piolo::models {

SetModel::SetModel(practice::PracticeBook& book, practice::SetControl& control, QObject* parent)
    : QObject(parent), book_(book), control_(control), picks_(book) {
    connect(&picks_, &SetPicks::changed, this, &SetModel::readyChanged);
    connect(&control_, &practice::SetControl::changed, this, &SetModel::turnChanged);
    connect(&control_, &practice::SetControl::figuresChanged, this, &SetModel::resultsChanged);
}

void SetModel::setByMinutes(bool minutes) {
    if (minutes == byMinutes()) return;
    length_.by = minutes ? practice::TurnLength::By::minutes : practice::TurnLength::By::runs;
    emit lengthChanged();
}

void SetModel::setAmount(int amount) {
    std::int32_t& present = byMinutes() ? length_.minutes : length_.runs;
    const std::int32_t wanted = std::clamp(amount, practice::TurnLength::least, practice::TurnLength::most);
    if (wanted == present) return;
    present = wanted;
    emit lengthChanged();
}

QString SetModel::amountText() const {
    return byMinutes() ? qtTrId("set.minutes-each", length_.minutes) : qtTrId("set.runs-each", length_.runs);
}

bool SetModel::isReady() const { return picks_.ids().size() >= practice::SetControl::fewest; }

QString SetModel::titleAt(std::size_t place) const {
    const PassageRecord* const record = book_.notebook().passage(control_.parts()[place].passage);
    return record == nullptr ? QString() : text::passageTitle(record->passage);
}

QString SetModel::placeText() const {
    return qtTrId("set.place").arg(control_.place() + 1).arg(control_.parts().size());
}

QString SetModel::turnText() const {
    if (!control_.playing()) return {};
    return qtTrId("set.turn").arg(placeText(), titleAt(control_.nextPlace()));
}

QString SetModel::announcedPlace() const { return control_.announcing() ? placeText() : QString(); }

QString SetModel::announcedTitle() const {
    return control_.announcing() ? titleAt(control_.place()) : QString();
}

QString SetModel::resultOf(const practice::SetPart& part) const {
    const PassageRecord* const record = book_.notebook().passage(part.passage);
    if (record == nullptr || part.figures.runs() == 0) return qtTrId("set.no-run");
    return qtTrId("set.result").arg(sittingWords(part.figures), Formatter::tempo(record->standing.tempo));
}

QVariantList SetModel::results() const {
    QVariantList lines;
    if (control_.playing()) return lines;
    for (std::size_t place = 0; place < control_.parts().size(); ++place)
        lines << QVariantMap{{QStringLiteral("title"), titleAt(place)},
                             {QStringLiteral("text"), resultOf(control_.parts()[place])}};
    return lines;
}

bool SetModel::start() { return control_.start(picks_.ids(), length_); }

} // namespace piolo::models
