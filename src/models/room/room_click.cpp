// SPDX-License-Identifier: GPL-3.0-or-later
// Just a click, and how it goes with everything else that sounds.
#include "models/room/practice_room.h"

#include "models/text/formatter.h"
#include "models/text/typed_values.h"

namespace piolo::models {

void PracticeRoom::connectClick() {
    using Drill = practice::DrillControl;
    connect(&dispatch_, &KeyDispatch::clickWanted, this, &PracticeRoom::openClick);
    // A drill that pauses goes on waiting for its answer; the engine ends the click when it resumes.
    connect(&clickControl_, &practice::ClickControl::starting, this, [this] {
        if (control_.state() == Drill::State::playing || control_.hearing()) control_.stop();
    });
    connect(&runThroughControl_, &practice::RunThroughControl::stateChanged, this, [this] {
        if (runThroughControl_.state() == practice::RunThroughControl::State::playing) clickControl_.stop();
    });
    underWay_.watch(QStringLiteral("click"), [this] { return UnderWay::State{click_.nowText(), true}; });
    connect(&click_, &ClickModel::changed, &underWay_, &UnderWay::refresh);
}

void PracticeRoom::openClick() {
    const PassageRecord* const record = control_.record();
    if (screen_ == QLatin1String("drill") && record != nullptr)
        click_.takeOver(record->passage.music, control_.standing().tempo);
    show(QStringLiteral("click"));
}

void PracticeRoom::keepClick() {
    const Tempo tempo = clickControl_.tempo();
    const Meter& meter = clickControl_.meter();
    editor_.startNew();
    if (meter.beatsPerBar() > 1) {
        editor_.set(QStringLiteral("meter"), QString::fromStdString(meter.text()));
        editor_.set(QStringLiteral("beat"), QString::fromStdString(fractionOf(meter.beat()).text()));
        editor_.set(QStringLiteral("groups"), QString::fromStdString(meter.groupsText()));
    }
    editor_.set(QStringLiteral("subdivision"), clickControl_.subdivision());
    editor_.set(QStringLiteral("start"), Formatter::tempo(tempo));
    const auto target = readTempo(editor_.draft()[QStringLiteral("target")].toString());
    if (!target || *target < tempo) editor_.set(QStringLiteral("target"), Formatter::tempo(tempo));
    if (noPassageYet()) return show(QStringLiteral("welcome"));
    show(QStringLiteral("passages"));
    emit besideWanted(QStringLiteral("form"));
}

} // namespace piolo::models
