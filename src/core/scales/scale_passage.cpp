// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/scales/scale_passage.h"

#include "core/rule/usual_floor.h"

namespace piolo {

Player playerOf(const ScaleSettings& settings) {
    const Instrument* instrument = instrumentNamed(settings.instrument);
    if (instrument == nullptr) instrument = &instruments().front();
    return {instrument,
            {settings.lowest.value_or(instrument->range.lowest),
             settings.highest.value_or(instrument->range.highest)}};
}

Passage scalePassage(Id id, const Scale& scale, const ScalePart& part, const StartProposal& tempi) {
    Passage passage;
    passage.id = id;
    passage.title.name = textOf(scale);
    passage.music = part.music;
    passage.tempi.start = tempi.start;
    passage.tempi.rule.target = tempi.target;
    passage.tempi.rule.floor = usualFloor(tempi.start);
    passage.notes = part.notes;
    passage.scale = scale;
    return passage;
}

} // namespace piolo
