// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/passages/draft_check.h"

#include "core/rule/usual_floor.h"
#include "models/passages/click_draft.h"
#include "models/passages/draft_reader.h"
#include "models/passages/passage_draft.h"
#include "models/text/formatter.h"
#include "models/text/typed_values.h"

#include <algorithm>

namespace piolo::models {

namespace {

Meter meterOf(DraftReader& reader) {
    const std::string meter = reader.text("meter").toStdString();
    const std::string beat = reader.text("beat").toStdString();
    const std::string groups = reader.text("groups").remove(QLatin1Char(' ')).toStdString();
    const auto whole = Meter::parse(meter, beat, groups);
    if (whole) return *whole;
    switch (whole.fault().number) {
    case FaultNumber::badGroups:
        reader.refuse("groups", qtTrId("form.fault.groups"));
        break;
    case FaultNumber::badBeat:
    case FaultNumber::beatDoesNotDivide:
        reader.refuse("beat", qtTrId("form.fault.beat"));
        break;
    default:
        reader.refuse("meter", qtTrId("form.fault.meter"));
    }
    const auto plain = Meter::parse(meter, beat, "");
    return plain ? *plain : Meter{};
}

Fraction pickupOf(DraftReader& reader, const Meter& meter) {
    const QString text = reader.text("pickup");
    if (text.isEmpty() || text == QLatin1String("0") || text == qtTrId("form.none")) return {};
    const auto read = Fraction::parse(text.toStdString());
    if (!read) {
        reader.refuse("pickup", qtTrId("form.fault.pick-up"));
        return {};
    }
    const bool shorter = std::int64_t{read->numerator} * meter.denominator() <
                         std::int64_t{read->denominator} * meter.numerator();
    if (!shorter) reader.refuse("pickup", qtTrId("form.fault.pick-up-too-long"));
    return shorter ? *read : Fraction{};
}

Music musicOf(DraftReader& reader) {
    const Music usual;
    Music music;
    music.meter = meterOf(reader);
    music.subdivision = reader.count("subdivision", 1, 8, usual.subdivision);
    music.pickup = pickupOf(reader, music.meter);
    music.firstBar = reader.count("firstBar", 0, 9999, usual.firstBar);
    music.bars = reader.flag("openEnded") ? 0 : reader.count("bars", 1, 999, usual.bars);
    music.landing = reader.flag("landing");
    music.countInBars = reader.count("countIn", 0, 4, usual.countInBars);
    music.breathBeats = reader.count("breath", 0, 8, usual.breathBeats);
    return music;
}

Tempo floorOf(DraftReader& reader, Tempo start) {
    const Tempo usual = usualFloor(start);
    return reader.text("floor").isEmpty() ? usual : reader.tempo("floor", usual);
}

// While typing, values may be out of order; the passage shown meanwhile must not be.
void putInOrder(Tempi& tempi) {
    tempi.rule.target = std::max(tempi.rule.target, tempi.start);
    tempi.rule.floor = std::min(tempi.rule.floor, tempi.start);
}

Tempi tempiOf(DraftReader& reader) {
    const Tempi usual = freshPassage().tempi;
    Tempi tempi;
    tempi.start = reader.tempo("start", usual.start);
    Rule& rule = tempi.rule;
    rule.target = reader.tempo("target", usual.rule.target);
    rule.floor = floorOf(reader, tempi.start);
    rule.gentle = reader.flag("gentle");
    rule.step = reader.flag("notches") ? StepKind::notches : StepKind::bpm;
    rule.drop = reader.count("drop", 1, 100, usual.rule.drop);
    rule.climb = reader.count("climb", 1, 100, usual.rule.climb);
    rule.cleanRuns = reader.count("cleanRuns", 1, 100, usual.rule.cleanRuns);
    if (reader.good("start") && reader.good("target") && tempi.start > rule.target)
        reader.refuse("target", qtTrId("form.fault.below-start").arg(Formatter::tempo(tempi.start)));
    if (reader.good("start") && reader.good("floor") && rule.floor > tempi.start)
        reader.refuse("floor", qtTrId("form.fault.above-start").arg(Formatter::tempo(tempi.start)));
    putInOrder(tempi);
    return tempi;
}

Manner mannerOf(DraftReader& reader) {
    Manner manner;
    manner.articulation = static_cast<Articulation>(
        reader.count("articulation", 0, static_cast<int>(articulationCount) - 1, 0));
    manner.rhythm = static_cast<Rhythm>(reader.count("rhythm", 0, static_cast<int>(Rhythm::groups), 0));
    manner.group = reader.count("group", Manner::leastGroup, Manner::mostGroup, manner.group);
    manner.fingering = reader.text("fingering").toStdString();
    if (manner.fingering.size() > Manner::longestFingering)
        reader.refuse("fingering", qtTrId("form.fault.too-long"));
    return manner;
}

} // namespace

DraftCheck checkDraft(const QVariantMap& draft) {
    DraftReader reader(draft);
    DraftCheck check;
    check.passage.music = musicOf(reader);
    check.passage.tempi = tempiOf(reader);
    check.passage.manner = mannerOf(reader);
    check.passage.click = clickOf(reader, check.passage.music);
    const QString title = reader.text("title");
    // A passage without a name is named after its bars.
    check.passage.title.name = (title.isEmpty() ? Formatter::bars(check.passage.music) : title).toStdString();
    if (title.size() > longestTypedName)
        reader.refuse("title", qtTrId("form.fault.letters").arg(longestTypedName));
    check.faults = reader.faults();
    return check;
}

} // namespace piolo::models
