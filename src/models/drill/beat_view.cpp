// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/drill/beat_view.h"

#include <QLocale>

namespace piolo::models {

int BeatView::barNumber() const {
    return phase_ != engine::Phase::run || bar_ == engine::noBar ? -1 : music_.firstBar + bar_;
}

QString BeatView::barText() const {
    if (phase_ != engine::Phase::run || bar_ == engine::noBar) return {};
    return QLocale::c().toString(barNumber());
}

QString BeatView::placeText() const {
    if (counting()) return qtTrId("drill.beat.count-in");
    if (!barText().isEmpty()) return barPlace();
    return phase_ == engine::Phase::gap ? qtTrId("drill.beat.breathe") : QString();
}

// The bars are counted where the passage has a known number of them, as long as they last.
QString BeatView::barPlace() const {
    if (bar_ < 0) return qtTrId("drill.beat.pick-up");
    if (bar_ >= music_.bars) return qtTrId("drill.beat.bar").arg(barText());
    const QString count = qtTrId("drill.beat.of").arg(bar_ + 1).arg(music_.bars);
    const QString place = music_.firstBar == 1 ? count : qtTrId("drill.beat.counted").arg(barText(), count);
    return qtTrId("drill.beat.bar").arg(place);
}

bool BeatView::groupStarts(int beat) const {
    return beat >= 0 && beat < 32 && ((music_.meter.groupStarts() >> static_cast<unsigned>(beat)) & 1U) != 0;
}

int BeatView::parts() const { return pulsesToTheBeat(click_, music_.meter.beat(), music_.subdivision); }

void BeatView::show(const Music& music, const ClickPattern& click) {
    music_ = music;
    click_ = click;
    emit barChanged();
    rest();
}

void BeatView::sound(const engine::Event& pulse) {
    phase_ = pulse.phase;
    bar_ = pulse.bar;
    beat_ = pulse.beat;
    part_ = pulse.part;
    emit sounded();
}

void BeatView::breathe() { fallSilent(engine::Phase::gap); }

void BeatView::rest() { fallSilent(engine::Phase::idle); }

void BeatView::fallSilent(engine::Phase phase) {
    phase_ = phase;
    bar_ = engine::noBar;
    beat_ = -1;
    part_ = 0;
    emit sounded();
}

} // namespace piolo::models
