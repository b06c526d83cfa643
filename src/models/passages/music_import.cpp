// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/passages/music_import.h"

#include "models/settings/setting_choices.h"
#include "models/text/formatter.h"
#include "models/text/typed_file.h"
#include "practice/faults/fault_text.h"
#include "score/pick/tempo_in_force.h"
#include "score/read/score_file.h"
#include "text/one_line.h"

#include <algorithm>

namespace piolo::models {

namespace {

constexpr int barsPickedAtFirst = 4;

QString shown(const std::string& text) { return text::nameShown(text); }

} // namespace

QString MusicImport::title() const {
    if (file_.isEmpty()) return {};
    const QString title = score_.title.empty() ? qtTrId("score.no-title") : shown(score_.title);
    return score_.composer.empty() ? title
                                   : qtTrId("score.title-composer").arg(title, shown(score_.composer));
}

QVariantList MusicImport::parts() const {
    QVariantList list;
    for (std::size_t place = 0; place < score_.parts.size(); ++place) {
        const QString name = shown(score_.parts[place].name);
        list << choice(static_cast<int>(place),
                       name.isEmpty() ? qtTrId("score.part-number").arg(place + 1) : name);
    }
    return list;
}

QString MusicImport::barsText() const {
    if (file_.isEmpty()) return {};
    return qtTrId("score.bars").arg(shown(chosen().bars.front().number), shown(chosen().bars.back().number));
}

QString MusicImport::summary() const {
    if (!excerpt_) return {};
    const Music& music = excerpt_->music;
    const QString tempo =
        excerpt_->tempo ? Formatter::tempoLine(music, *excerpt_->tempo) : qtTrId("score.no-tempo");
    QString notes = qtTrId("score.notes", static_cast<int>(excerpt_->notes.size()));
    if (!excerpt_->notes.empty() && score::notesKept(*excerpt_).empty())
        notes = qtTrId("score.too-many-notes").arg(notes);
    return qtTrId("score.figures")
        .arg(Formatter::bars(music), QString::fromStdString(music.meter.text()), tempo, notes);
}

void MusicImport::read(const QString& pathOrAddress) {
    close();
    const QString path = typedPath(pathOrAddress);
    if (path.isEmpty()) return;
    auto reading = score::readScoreFile(path.toStdString());
    if (!reading.faults.empty()) {
        fault_ = practice::faultLine(reading.faults.front());
        emit changed();
        return;
    }
    score_ = std::move(reading.score);
    file_ = path;
    from_ = shown(chosen().bars.front().number);
    const std::size_t last = std::min<std::size_t>(chosen().bars.size(), barsPickedAtFirst) - 1;
    to_ = shown(chosen().bars[last].number);
    pick();
}

void MusicImport::close() {
    file_.clear();
    fault_.clear();
    score_ = {};
    excerpt_.reset();
    part_ = 0;
    emit changed();
}

void MusicImport::setPart(int part) {
    if (file_.isEmpty() || part < 0 || part >= static_cast<int>(score_.parts.size())) return;
    part_ = part;
    pick();
}

void MusicImport::setFrom(const QString& bar) {
    from_ = bar;
    if (!file_.isEmpty()) pick();
}

void MusicImport::setTo(const QString& bar) {
    to_ = bar;
    if (!file_.isEmpty()) pick();
}

std::optional<score::Stretch> MusicImport::stretch() {
    const score::Part& part = chosen();
    const std::string from = from_.trimmed().toStdString();
    const std::string to = to_.trimmed().isEmpty() ? from : to_.trimmed().toStdString();
    const auto first = score::barNumbered(part, from);
    const auto last = first ? score::barNumbered(part, to, *first) : std::nullopt;
    if (first && last) return score::Stretch{*first, *last};
    fault_ = practice::faultSentence(
        {FaultNumber::noSuchBar, {}, {first ? to : from, part.bars.front().number, part.bars.back().number}});
    return std::nullopt;
}

void MusicImport::pick() {
    fault_.clear();
    excerpt_.reset();
    if (const auto picked = stretch()) {
        auto made = score::excerpt(score_, static_cast<std::size_t>(part_), *picked);
        if (made)
            excerpt_ = std::move(made).value();
        else
            fault_ = practice::faultSentence(made.fault());
    }
    emit changed();
}

PieceMusic MusicImport::pieceMusic() const {
    const score::TimeSignature& time = chosen().bars.front().time;
    const score::TempoMark* const mark = score::markInForce(score_, 0);
    const auto usual = Meter::parse(time.length().text(), "", "");
    if (!time.counted || !usual) return {};
    PieceMusic music{*usual, {}};
    if (mark == nullptr) return music;
    if (const auto beat = score::printedBeat(*mark))
        if (const auto meter = Meter::make(usual->numerator(), usual->denominator(), *beat))
            music.meter = *meter;
    music.tempo = score::tempoIn(*mark, music.meter.beat());
    return music;
}

void MusicImport::take() {
    if (excerpt_) emit taken();
}

} // namespace piolo::models
