// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/click/click_control.h"

namespace piolo::practice {

namespace {

constexpr std::int64_t thousand = 1'000;

} // namespace

ClickControl::ClickControl(SoundPort& sound, DrillSession& session, QObject* parent)
    : QObject(parent), sound_(sound), session_(session) {
    connect(&session_, &DrillSession::noted, this, &ClickControl::take);
}

engine::ClickPlan ClickControl::plan() const { return engine::clickPlanOf(meter_, subdivision_, tempo_); }

void ClickControl::start() {
    if (sounds()) return;
    emit starting();
    coming_.clear();
    began_ = false;
    number_ = session_.beginClick(plan());
    emit soundsChanged();
}

void ClickControl::stop() {
    if (!sounds()) return;
    session_.endClick(number_);
    finish();
}

void ClickControl::finish() {
    number_ = 0;
    coming_.clear();
    emit fellSilent();
    emit soundsChanged();
}

void ClickControl::pedal(const PedalAct& act) {
    if (act.kind == PedalAct::Kind::held) return stop();
    sounds() ? tap(act.nanos) : start();
}

void ClickControl::change() {
    if (sounds()) session_.changeClick(number_, plan());
    emit changed();
}

void ClickControl::setTempo(Tempo tempo) {
    taps_.forget();
    tempo_ = tempo;
    change();
}

Tempo ClickControl::nudged(Tempo tempo, int by) {
    const std::int64_t from = tempo.thousandths();
    const std::int64_t whole = by > 0 ? from / thousand : (from + thousand - 1) / thousand;
    return Tempo::clampedThousandths((whole + by) * thousand);
}

void ClickControl::tap(std::int64_t nanos) {
    taps_.tap(nanos);
    if (const auto tapped = taps_.tempo()) tempo_ = *tapped;
    change();
}

void ClickControl::setMeter(const Meter& meter) {
    meter_ = meter;
    change();
}

void ClickControl::setSubdivision(int pulses) {
    if (pulses < 1 || pulses > mostPulsesToTheBeat) return;
    subdivision_ = pulses;
    change();
}

void ClickControl::take(const DrillNote& note) {
    using Kind = engine::Event::Kind;
    const engine::Event& event = note.event;
    if (!sounds()) return;
    if (event.kind == Kind::clickBegan) began_ = event.run == number_;
    if (event.kind == Kind::clickEnded && event.run == number_) return finish();
    if (began_) coming_.push_back(event);
}

void ClickControl::tick() {
    session_.catchUp();
    const std::uint64_t audible = sound_.audibleAt(sound_.nowNanos());
    while (!coming_.empty() && coming_.front().sample <= audible) {
        const engine::Event event = coming_.front();
        coming_.pop_front();
        hear(event);
    }
}

void ClickControl::hear(const engine::Event& event) {
    using Kind = engine::Event::Kind;
    if (event.kind == Kind::clickBegan || event.kind == Kind::clickChanged) emit turned(event.click);
    if (event.kind == Kind::pulse) emit pulsed(event);
}

} // namespace piolo::practice
