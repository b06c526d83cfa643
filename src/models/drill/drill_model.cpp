// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/drill/drill_model.h"

#include "models/text/click_words.h"
#include "models/text/formatter.h"
#include "models/text/manner_words.h"
#include "models/text/run_kind_words.h"
#include "text/passage_title.h"

#include <QStringList>

namespace piolo::models {

namespace {

constexpr int tickMillis = 8;

QString countInWords(int bars) {
    if (bars == 0) return qtTrId("drill.no-count-in");
    if (bars == 1) return qtTrId("drill.one-bar-count-in");
    return qtTrId("drill.count-in").arg(Formatter::countWord(bars));
}

} // namespace

DrillModel::DrillModel(practice::PracticeBook& book, practice::SoundPort& sound,
                       practice::DrillSession& session, QObject* parent)
    : QObject(parent), book_(book), sound_(sound), session_(session), playedAs_(book) {
    timer_.setTimerType(Qt::PreciseTimer);
    timer_.setInterval(tickMillis);
    connect(&timer_, &QTimer::timeout, this, &DrillModel::tick);
    connect(&session_, &practice::DrillSession::noted, this, &DrillModel::take);
    connect(&session_, &practice::DrillSession::withdrawn, this, &DrillModel::withdrawn);
    connect(&book_, &practice::PracticeBook::changed, this, &DrillModel::refresh);
    connect(&playedAs_, &PlayedAs::felt, this, [this] { hand_.reset(); });
}

const PassageRecord* DrillModel::record() const {
    const PassageRecord* found = passage_.isNone() ? nullptr : book_.notebook().passage(passage_);
    return found != nullptr && !found->removed ? found : nullptr;
}

void DrillModel::open(const QString& passage) {
    const auto id = Id::parse(passage.toStdString());
    if (!id || *id == passage_) return;
    stop();
    passage_ = *id;
    hand_.reset();
    setFeedback(Feedback::None);
    if (const PassageRecord* known = record()) beats_.show(known->passage.music, known->passage.click);
    refresh();
}

// A new date opens at its own tempo; also without that its streak begins at 0.
Standing DrillModel::natural() const {
    const PassageRecord* known = record();
    if (known == nullptr) return {};
    if (const auto opening = book_.notebook().opening(passage_, book_.today())) return handSet(*opening);
    Standing standing = known->standing;
    if (known->lastDay && *known->lastDay < book_.today()) standing.streak = 0;
    return standing;
}

Standing DrillModel::standingToStart() const { return hand_ ? handSet(*hand_) : natural(); }

void DrillModel::refresh() {
    const PassageRecord* known = record();
    if (known != nullptr) {
        if (state_ == State::Stopped) {
            beats_.show(known->passage.music, known->passage.click);
            shown_ = standingToStart();
        }
        const PracticeSettings& settings = book_.notebook().settings();
        const auto articulation = static_cast<std::size_t>(known->passage.manner.articulation);
        ladder_.show(known->passage.tempi, shown_.tempo, known->bests[articulation]);
        today_.show(*known, book_.notebook().day(book_.today(), passage_), settings.secureDays);
        playedAs_.show(*known, shown_.tempo, state_ == State::Stopped);
        stages_.show(known->stage, nextStep(*known, runThroughs(), settings));
    }
    staff_.show(known == nullptr ? std::nullopt : std::optional(staffOf(known->passage)));
    emit changed();
}

std::vector<RunThrough> DrillModel::runThroughs() const {
    return book_.notebook().runThroughs(record()->passage.title.piece);
}

QString DrillModel::passageText() const {
    return passage_.isNone() ? QString() : QString::fromStdString(passage_.text());
}

QString DrillModel::title() const {
    const PassageRecord* known = record();
    return known == nullptr ? QString() : text::passageTitle(known->passage);
}

QString DrillModel::about() const {
    const PassageRecord* known = record();
    if (known == nullptr) return {};
    const Music& music = known->passage.music;
    const QString line =
        qtTrId("drill.summary")
            .arg(QString::fromStdString(music.meter.text()), Formatter::bars(music),
                 countInWords(music.countInBars), Formatter::rule(known->passage.tempi.rule));
    QStringList parts{line};
    // A passage named by its bars alone is known by its piece.
    const auto piece = book_.notebook().piece(known->passage.title.piece);
    if (piece && !title().contains(QString::fromStdString(piece->name)))
        parts.prepend(QString::fromStdString(piece->name));
    for (const QString& part : {mannerText(known->passage.manner), clickWords(known->passage.click)})
        if (!part.isEmpty()) parts << part;
    return parts.join(QStringLiteral(" · "));
}

QString DrillModel::tempoText() const { return Formatter::tempo(shown_.tempo); }

QString DrillModel::tempoLine() const {
    const PassageRecord* known = record();
    return known == nullptr ? QString() : Formatter::tempoLine(known->passage.music, shown_.tempo);
}

QString DrillModel::targetText() const {
    const PassageRecord* known = record();
    return known == nullptr ? QString() : Formatter::tempo(known->passage.tempi.rule.target);
}

int DrillModel::cleanRuns() const {
    const PassageRecord* known = record();
    return known == nullptr ? 0 : known->passage.tempi.rule.cleanRuns;
}

QString DrillModel::streakText() const { return Formatter::streak(shown_.streak, cleanRuns()); }

QString DrillModel::openingText() const {
    const PassageRecord* known = record();
    if (known == nullptr || state_ != State::Stopped) return {};
    if (hand_) return qtTrId("drill.by-hand");
    if (!book_.notebook().opening(passage_, book_.today())) return {};
    return qtTrId("drill.new-day").arg(Formatter::tempo(known->standing.tempo));
}

QString DrillModel::apartText() const { return apartLine(kind_); }

bool DrillModel::openEnded() const {
    const PassageRecord* known = record();
    return known != nullptr && known->passage.music.bars == 0;
}

bool DrillModel::canHear() const {
    const PassageRecord* known = record();
    return known != nullptr && known->passage.music.bars > 0 && !known->passage.notes.empty();
}

std::optional<TempoSearch> DrillModel::search() const {
    const PassageRecord* known = record();
    return known == nullptr ? std::nullopt : searchOn(*known, book_.today());
}

QString DrillModel::searchText() const {
    const auto latest = search();
    if (!latest) return {};
    const QString named = Formatter::tempo(latest->named);
    if (latest->found) return qtTrId("drill.found").arg(Formatter::tempo(*latest->found), named);
    return latest->over ? QString() : qtTrId("drill.finding").arg(named);
}

Tempo DrillModel::halfOf(Tempo tempo) {
    const std::int64_t halfBpm = tempo.thousandths() / 2 / 1000;
    return Tempo::clampedThousandths(halfBpm * 1000);
}

QString DrillModel::halfTempoText() const { return Formatter::tempo(halfTempo()); }

QString DrillModel::feedbackText() const {
    switch (feedback_) {
    case Feedback::None:
        return {};
    case Feedback::Clean:
        return qtTrId("drill.verdict.clean");
    case Feedback::Climbed:
        return qtTrId("drill.verdict.clean-up").arg(tempoText());
    case Feedback::Secure:
        return qtTrId("drill.verdict.secure").arg(targetText());
    case Feedback::Missed:
        return qtTrId("drill.verdict.missed");
    case Feedback::Found:
        return qtTrId("drill.verdict.found").arg(tempoText());
    case Feedback::TakenBack:
        return qtTrId("drill.verdict.taken-back");
    case Feedback::NothingToTakeBack:
        return qtTrId("drill.verdict.nothing");
    }
    return {};
}

bool DrillModel::restDue() const { return state_ != State::Playing && rest_.due(sound_.nowNanos()); }

void DrillModel::setFeedback(Feedback feedback) {
    feedback_ = feedback;
    feedbackSince_ = sound_.nowNanos();
    emit feedbackChanged();
}

} // namespace piolo::models
