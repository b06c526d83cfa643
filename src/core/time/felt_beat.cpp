// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/time/felt_beat.h"

#include "core/time/subdivision.h"

#include <algorithm>

namespace piolo {

namespace {

constexpr std::int32_t mostBreathBeats = 8;
constexpr std::int32_t mostStep = 100;

/// `number` times the ratio, if that is a whole number in least…most.
std::optional<std::int32_t> wholeAt(std::int32_t number, SpeedRatio ratio, std::int32_t least,
                                    std::int32_t most) noexcept {
    const std::int64_t product = std::int64_t{number} * ratio.numerator;
    if (product % ratio.denominator != 0) return std::nullopt;
    const std::int64_t whole = product / ratio.denominator;
    if (whole < least || whole > most) return std::nullopt;
    return static_cast<std::int32_t>(whole);
}

/// Converts value by value; remembers the first that cannot be converted.
class Conversion {
public:
    explicit Conversion(SpeedRatio ratio) : ratio_(ratio) {}

    void tempo(const char* key, Tempo& tempo) {
        if (const auto exact = exactlyAt(tempo, ratio_))
            tempo = *exact;
        else
            refuse(key);
    }
    void whole(const char* key, std::int32_t& number, std::int32_t least, std::int32_t most) {
        if (const auto exact = wholeAt(number, ratio_, least, most))
            number = *exact;
        else
            refuse(key);
    }
    void refuse(const char* key) {
        if (!obstacle_) obstacle_ = key;
    }
    [[nodiscard]] SpeedRatio ratio() const { return ratio_; }
    [[nodiscard]] const char* obstacle() const { return obstacle_; }

private:
    SpeedRatio ratio_;
    const char* obstacle_ = nullptr;
};

/// Undivided beats stay undivided; otherwise pulses become those of the new beat.
void convertSubdivision(Conversion& in, std::int32_t& subdivision) {
    if (subdivision == 1 && in.ratio().numerator > in.ratio().denominator) return;
    const SpeedRatio pulses{in.ratio().denominator, in.ratio().numerator};
    if (const auto exact = wholeAt(subdivision, pulses, 1, mostPulsesToTheBeat))
        subdivision = *exact;
    else
        in.refuse("subdivision");
}

void convert(Conversion& in, Music& music, BeatUnit beat) {
    const Meter& from = music.meter;
    const auto meter = Meter::make(from.numerator(), from.denominator(), beat, from.groups());
    if (meter)
        music.meter = *meter;
    else
        in.refuse("meter");
    convertSubdivision(in, music.subdivision);
    const std::int64_t twice = 2 * std::int64_t{music.breathBeats} * in.ratio().numerator;
    const std::int64_t nearest =
        (twice + in.ratio().denominator) / (std::int64_t{2} * in.ratio().denominator);
    music.breathBeats = static_cast<std::int32_t>(std::min<std::int64_t>(nearest, mostBreathBeats));
}

/// True if, from the floor up to the target, each notch leads to the same speed in both beats.
bool sameNotches(const Tempi& from, SpeedRatio ratio) {
    for (Tempo tempo = from.rule.floor; tempo < from.rule.target;) {
        const auto here = exactlyAt(tempo, ratio);
        const Tempo above = stepUp(tempo, StepKind::notches, 1);
        const auto there = exactlyAt(above, ratio);
        if (!here || !there || stepUp(*here, StepKind::notches, 1) != *there) return false;
        tempo = above;
    }
    return true;
}

void convert(Conversion& in, Tempi& tempi) {
    Rule& rule = tempi.rule;
    if (rule.step == StepKind::notches && !sameNotches(tempi, in.ratio())) in.refuse("step");
    in.tempo("start", tempi.start);
    in.tempo("target", rule.target);
    in.tempo("floor", rule.floor);
    if (rule.step == StepKind::notches) return;
    in.whole("drop", rule.drop, 1, mostStep);
    in.whole("climb", rule.climb, 1, mostStep);
}

void convert(Conversion& in, ClickPattern& click) {
    if (!click.accents.empty()) in.refuse("accents");
    if (click.on == ClickOn::backbeats || click.on == ClickOn::offbeats) in.refuse("on");
    for (BreathPlace& place : click.breaths) {
        std::int32_t before = place.beat - 1;
        in.whole("breaths", before, 0, 31);
        place.beat = before + 1;
        in.whole("breaths", place.beats, 1, ClickPattern::mostWait);
    }
    if (!click.breaths.empty()) in.tempo("breathBelow", click.breathBelow);
}

} // namespace

SpeedRatio speedRatio(BeatUnit from, BeatUnit to) noexcept { return ratio(fractionOf(from), fractionOf(to)); }

std::optional<Tempo> exactlyAt(Tempo tempo, SpeedRatio ratio) noexcept {
    const std::int64_t product = std::int64_t{tempo.thousandths()} * ratio.numerator;
    if (product % ratio.denominator != 0) return std::nullopt;
    return Tempo::fromThousandths(product / ratio.denominator);
}

Tempo nearestAt(Tempo tempo, SpeedRatio ratio) noexcept {
    const std::int64_t twice = 2 * std::int64_t{tempo.thousandths()} * ratio.numerator;
    return Tempo::clampedThousandths((twice + ratio.denominator) / (std::int64_t{2} * ratio.denominator));
}

Spot spotAt(Spot spot, SpeedRatio ratio) noexcept {
    const std::int64_t thousandths =
        (std::int64_t{spot.beat - 1} * 1000 + spot.part) * ratio.numerator / ratio.denominator;
    return {spot.bar, static_cast<std::int32_t>(thousandths / 1000 + 1),
            static_cast<std::int32_t>(thousandths % 1000)};
}

Result<FeltPassage> feltIn(const Passage& passage, Tempo present, BeatUnit beat) {
    FeltPassage felt{passage, present};
    Conversion in(speedRatio(passage.music.meter.beat(), beat));
    convert(in, felt.passage.music, beat);
    convert(in, felt.passage.tempi);
    in.tempo("tempo", felt.tempo);
    convert(in, felt.passage.click);
    if (in.obstacle() != nullptr) return Fault{FaultNumber::cannotFeel, {}, {in.obstacle()}};
    return felt;
}

} // namespace piolo
