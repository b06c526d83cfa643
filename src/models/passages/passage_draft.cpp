// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/passages/passage_draft.h"

#include "models/passages/click_draft.h"
#include "models/text/formatter.h"

namespace piolo::models {

namespace {

QString usualGroups(const Meter& meter) {
    const auto usual = Meter::make(meter.numerator(), meter.denominator(), meter.beat());
    return usual ? QString::fromStdString(usual->groupsText()) : QString();
}

} // namespace

Passage freshPassage() {
    Passage passage;
    passage.tempi.rule.target = Tempo::bpm(96);
    return passage;
}

QVariantMap draftOf(const Passage& passage) {
    const Music& music = passage.music;
    const Rule& rule = passage.tempi.rule;
    const QString groups = QString::fromStdString(music.meter.groupsText());
    const QString meter = QString::fromStdString(music.meter.text());
    const QString beat = QString::fromStdString(fractionOf(music.meter.beat()).text());
    const bool open = music.bars == 0;
    QVariantMap draft{
        {"title", QString::fromStdString(passage.title.name)},
        {"openEnded", open},
        {"firstBar", QString::number(music.firstBar)},
        {"bars", open ? QString() : QString::number(music.bars)},
        {"pickup", music.pickup.isZero() ? QString() : QString::fromStdString(music.pickup.text())},
        {"meter", meter},
        {"groups", groups == usualGroups(music.meter) ? QString() : groups},
        {"beat", beat == usualBeat(meter) ? QString() : beat},
        {"subdivision", music.subdivision},
        {"landing", music.landing},
        {"countIn", QString::number(music.countInBars)},
        {"breath", QString::number(music.breathBeats)},
        {"start", Formatter::tempo(passage.tempi.start)},
        {"target", Formatter::tempo(rule.target)},
        {"floor", Formatter::tempo(rule.floor)},
        {"drop", QString::number(rule.drop)},
        {"climb", QString::number(rule.climb)},
        {"cleanRuns", QString::number(rule.cleanRuns)},
        {"notches", rule.step == StepKind::notches},
        {"gentle", rule.gentle},
        {"articulation", static_cast<int>(passage.manner.articulation)},
        {"rhythm", static_cast<int>(passage.manner.rhythm)},
        {"group", QString::number(passage.manner.group)},
        {"fingering", QString::fromStdString(passage.manner.fingering)}};
    draft.insert(clickDraftOf(passage.click));
    return draft;
}

QString usualBeat(const QString& meter) {
    const auto usual = Meter::parse(meter.trimmed().toStdString(), "", "");
    return usual ? QString::fromStdString(fractionOf(usual->beat()).text()) : QString();
}

} // namespace piolo::models
