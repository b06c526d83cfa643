// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/passage_groups.h"
#include "journal/words.h"

namespace piolo::journal {

using Json = nlohmann::ordered_json;

Json groupOf(const Title& title) {
    Json group{{"name", title.name}};
    if (!title.piece.isNone()) group["piece"] = title.piece.text();
    return group;
}

Json groupOf(const PieceMusic& music) {
    Json group{{"meter", music.meter.text()}, {"beat", fractionOf(music.meter.beat()).text()}};
    if (!music.meter.groups().empty()) group["groups"] = music.meter.groupsText();
    if (music.tempo) group["tempo"] = music.tempo->thousandths();
    return group;
}

Json groupOf(const Music& music) {
    Json group{{"meter", music.meter.text()}, {"beat", fractionOf(music.meter.beat()).text()}};
    if (!music.meter.groups().empty()) group["groups"] = music.meter.groupsText();
    group["subdivision"] = music.subdivision;
    if (!music.pickup.isZero()) group["pickup"] = music.pickup.text();
    group["firstBar"] = music.firstBar;
    group["bars"] = music.bars;
    group["landing"] = music.landing;
    group["countInBars"] = music.countInBars;
    group["breathBeats"] = music.breathBeats;
    return group;
}

Json groupOf(const Tempi& tempi) {
    return {{"start", tempi.start.thousandths()},
            {"target", tempi.rule.target.thousandths()},
            {"floor", tempi.rule.floor.thousandths()},
            {"step", wordOf(tempi.rule.step)},
            {"drop", tempi.rule.drop},
            {"climb", tempi.rule.climb},
            {"cleanRuns", tempi.rule.cleanRuns}};
}

} // namespace piolo::journal
