// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/click/click_model.h"

#include "models/keys/event_moment.h"
#include "models/settings/setting_choices.h"
#include "models/text/formatter.h"
#include "models/text/typed_values.h"

namespace piolo::models {

namespace {

constexpr int lookMillis = 8;
constexpr const char* withoutBars = "1/4";
constexpr std::array usualMeters{withoutBars, "2/4", "3/4", "4/4", "5/4", "6/4", "2/2",
                                 "3/2",       "3/8", "5/8", "6/8", "7/8", "9/8", "12/8"};

Meter meterOr(const Result<Meter>& made) { return made ? *made : Meter(); }
Meter usualMeter(const char* text) { return meterOr(Meter::parse(text, "", "")); }

/// "7/8", with the groups and the beat if they are not the usual ones.
QString meterText(const Meter& meter) {
    QString shown = QString::fromStdString(meter.text());
    const auto usual = Meter::parse(meter.text(), "", "");
    if (usual && *usual == meter) return shown;
    if (!meter.groups().empty()) shown += QLatin1Char(' ') + QString::fromStdString(meter.groupsText());
    return shown + QLatin1Char(' ') + Formatter::beatSign(meter.beat());
}

/// A bar that looks like the plan's: only the number of beats and their groups are known.
Music barsOf(const engine::ClickPlan& plan) {
    std::vector<int> groups;
    for (int beat = 0; beat < plan.beatsPerBar; ++beat) {
        const bool begins = ((plan.groupStarts >> static_cast<unsigned>(beat)) & 1U) != 0;
        if (begins || groups.empty()) groups.push_back(0);
        ++groups.back();
    }
    Music music;
    music.meter = meterOr(Meter::make(plan.beatsPerBar, 4, BeatUnit::quarter, groups));
    music.subdivision = plan.subdivision;
    return music;
}

} // namespace

ClickModel::ClickModel(practice::ClickControl& control, QObject* parent)
    : QObject(parent), control_(control) {
    timer_.setTimerType(Qt::PreciseTimer);
    timer_.setInterval(lookMillis);
    connect(&timer_, &QTimer::timeout, this, &ClickModel::tick);
    connect(&control_, &practice::ClickControl::soundsChanged, this, &ClickModel::showState);
    connect(&control_, &practice::ClickControl::changed, this, &ClickModel::showSet);
    connect(&control_, &practice::ClickControl::turned, this,
            [this](const engine::ClickPlan& plan) { beats_.show(barsOf(plan), {}); });
    connect(&control_, &practice::ClickControl::pulsed, this, [this](engine::Event pulse) {
        pulse.bar = engine::noBar; // the bars of a click have no numbers
        beats_.sound(pulse);
    });
    connect(&control_, &practice::ClickControl::fellSilent, &beats_, &BeatView::rest);
    showSet();
}

void ClickModel::showState() {
    sounds() ? timer_.start() : timer_.stop();
    emit soundsChanged();
    showSet();
}

// While it sounds, the bar follows what is audible.
void ClickModel::showSet() {
    if (!sounds()) {
        Music music;
        music.meter = control_.meter();
        music.subdivision = control_.subdivision();
        beats_.show(music, {});
    }
    emit changed();
}

QString ClickModel::tempo() const { return Formatter::tempo(control_.tempo()); }

QString ClickModel::beatSign() const { return Formatter::beatSign(control_.meter().beat()); }

QString ClickModel::tempoLine() const {
    Music music;
    music.meter = control_.meter();
    music.subdivision = control_.subdivision();
    return Formatter::tempoLine(music, control_.tempo());
}

QString ClickModel::nowText() const {
    return sounds() ? qtTrId("click.now").arg(Formatter::tempoMark(control_.meter().beat(), control_.tempo()))
                    : QString();
}

QVariantList ClickModel::meters() const {
    QVariantList list;
    bool listed = false;
    for (const char* const text : usualMeters) {
        list << choice(QString::fromLatin1(text),
                       text == withoutBars ? qtTrId("click.without-bars") : QString::fromLatin1(text));
        listed = listed || usualMeter(text) == control_.meter();
    }
    if (!listed) list.prepend(choice(meter(), meter()));
    return list;
}

QString ClickModel::meter() const { return meterText(control_.meter()); }

void ClickModel::setMeter(const QString& meter) {
    for (const char* const text : usualMeters)
        if (meter == QLatin1String(text)) control_.setMeter(usualMeter(text));
}

QVariantList ClickModel::subdivisions() const {
    QVariantList list;
    for (int pulses = 1; pulses <= mostPulsesToTheBeat; ++pulses)
        list << choice(pulses, Formatter::subdivision(control_.meter().beat(), pulses));
    return list;
}

QString ClickModel::nudged(int by) const {
    return Formatter::tempo(practice::ClickControl::nudged(control_.tempo(), by));
}

void ClickModel::tapAt(quint64 stamp) { control_.tap(eventMoment(stamp, control_.nowNanos())); }

bool ClickModel::type(const QString& tempo) {
    const auto typed = readTempo(tempo);
    if (typed) control_.setTempo(*typed);
    return typed.has_value();
}

void ClickModel::takeOver(const Music& music, Tempo tempo) {
    if (sounds()) return;
    control_.setMeter(music.meter);
    control_.setSubdivision(music.subdivision);
    control_.setTempo(tempo);
}

} // namespace piolo::models
