// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/groups/passage_groups.h"
#include "journal/lines/value_names.h"

namespace piolo::journal {

using Json = nlohmann::ordered_json;

Json groupOf(const Title& title) {
    Json group{{"name", title.name}};
    if (!title.piece.isNone()) group["piece"] = title.piece.text();
    if (!title.origin.isNone()) group["origin"] = title.origin.text();
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
    Json group{{"start", tempi.start.thousandths()},
               {"target", tempi.rule.target.thousandths()},
               {"floor", tempi.rule.floor.thousandths()},
               {"step", wordOf(tempi.rule.step)},
               {"drop", tempi.rule.drop},
               {"climb", tempi.rule.climb},
               {"cleanRuns", tempi.rule.cleanRuns}};
    if (tempi.rule.gentle) group["gentle"] = true;
    return group;
}

Json groupOf(const Manner& manner) {
    Json group{{"articulation", nameOf(manner.articulation)}, {"rhythm", nameOf(manner.rhythm)}};
    if (manner.group != Manner{}.group) group["group"] = manner.group;
    if (!manner.fingering.empty()) group["fingering"] = manner.fingering;
    return group;
}

} // namespace piolo::journal
