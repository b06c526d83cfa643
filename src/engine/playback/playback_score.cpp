// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/playback/playback_score.h"

#include "core/time/fraction_sum.h"
#include "engine/drill/drill_measure.h"

#include <algorithm>
#include <optional>
#include <utility>

namespace piolo::engine {

namespace {

using Wide = unsigned __int128;

/// A length or position as an exact fraction. Nothing here exceeds 2^110: the lengths of a passage are
/// fractions of 31 bits, and a beat is at most three quarters of a whole note and has fewer than 2^24 ticks.
struct Exact {
    Wide above = 0;
    Wide below = 1;

    [[nodiscard]] Exact reduced() const noexcept {
        Wide a = above, b = below;
        while (b != 0) a = std::exchange(b, a % b);
        return {above / a, below / a};
    }
    [[nodiscard]] std::uint64_t whole() const noexcept { return static_cast<std::uint64_t>(above / below); }
    [[nodiscard]] bool isBefore(std::uint64_t other) const noexcept { return above < Wide{other} * below; }
};

Wide wide(std::int32_t value) noexcept { return static_cast<unsigned>(value); }

PlaybackMoment momentOf(Exact beats) noexcept {
    constexpr std::uint32_t finest = (1U << 24U) - 1;
    beats = beats.reduced();
    if (beats.below <= finest)
        return {static_cast<std::uint64_t>(beats.above), static_cast<std::uint32_t>(beats.below)};
    const auto parts = (2 * (beats.above % beats.below) * finest + beats.below) / (2 * beats.below);
    return {beats.whole() * finest + static_cast<std::uint64_t>(parts), finest};
}

/// Maps the written moments of a passage to its playback.
class Layout {
public:
    Layout(const DrillPlan& plan, Fraction beat)
        : measure_(DrillMeasure::of(plan)), beat_(beat),
          waits_(plan.standing.tempo < plan.breaths.below && !measure_.waits.none()),
          last_(measure_.lead + measure_.pickup + measure_.bars + (plan.landing ? measure_.perBeat : 0)) {}

    /// `written` is measured from the first moment of the passage. Nothing if it is not before the end.
    [[nodiscard]] std::optional<PlaybackMoment> onset(Fraction written) const noexcept {
        const auto ticks = ticksTo(written);
        if (!ticks.isBefore(last_)) return std::nullopt;
        return placed(ticks, ticks.whole());
    }
    /// A note that ends where a wait begins ends before the wait.
    [[nodiscard]] PlaybackMoment end(Fraction written) const noexcept {
        auto ticks = ticksTo(written);
        if (!ticks.isBefore(last_)) ticks = {last_, 1};
        const bool onTick = ticks.above % ticks.below == 0 && ticks.above > 0;
        return placed(ticks, ticks.whole() - (onTick ? 1 : 0));
    }

private:
    /// Measured from the beginning of the first bar, including the part before a pick-up. Time is even
    /// between two pulses.
    [[nodiscard]] Exact ticksTo(Fraction written) const noexcept {
        const Wide perBeat = measure_.perBeat;
        const Exact beats = Exact{wide(written.numerator) * wide(beat_.denominator) * perBeat +
                                      Wide{measure_.lead} * wide(written.denominator) * wide(beat_.numerator),
                                  wide(written.denominator) * wide(beat_.numerator) * perBeat}
                                .reduced();
        const auto& parts = measure_.parts;
        if (beats.below == 0) return beats; // never true for a written fraction, whose denominator is not 0
        const auto scaled = beats.above % beats.below * wide(parts.count);
        const auto part = static_cast<std::size_t>(scaled / beats.below);
        const auto from = parts.at[part];
        const auto to = part + 1 < static_cast<std::size_t>(parts.count) ? parts.at[part + 1] : parts.perBeat;
        return Exact{(beats.above / beats.below * perBeat + from) * beats.below +
                         scaled % beats.below * (to - from),
                     beats.below}
            .reduced();
    }
    /// Measured from the beginning of the playback, including the waits up to the tick `waitedTo`.
    [[nodiscard]] PlaybackMoment placed(Exact ticks, std::uint64_t waitedTo) const noexcept {
        const auto before = measure_.countIn - measure_.lead + (waits_ ? measure_.waits.before(waitedTo) : 0);
        return momentOf({ticks.above + Wide{before} * ticks.below, ticks.below * measure_.perBeat});
    }

    DrillMeasure measure_;
    Fraction beat_;
    bool waits_;
    std::uint64_t last_; // the tick at which everything ends
};

/// A note of the passage joined with those tied to it.
struct Joined {
    Note note; // the last of them, with the onset and length of all together
    bool held = false;
};

Fraction endOf(const Note& note) { return sum(note.onset, note.length).value_or(note.onset); }

Joined* heldBefore(std::vector<Joined>& joined, const Note& note) {
    const auto found = std::find_if(joined.rbegin(), joined.rend(), [&](const Joined& before) {
        return before.note.tiedAfter && before.note.sounding == note.sounding &&
               order(endOf(before.note), note.onset) == std::weak_ordering::equivalent;
    });
    return found == joined.rend() ? nullptr : &*found;
}

/// Slurs are followed from note to note: the slur of a chord is on its first note.
std::vector<Joined> joined(const std::vector<Note>& notes) {
    std::vector<Joined> found;
    bool slurred = false;
    for (const Note& note : notes) {
        if (note.articulation.slurEnds) slurred = false;
        if (note.articulation.slurBegins) slurred = true;
        const bool held = slurred || note.articulation.tenuto;
        Joined* const before = note.tiedBefore ? heldBefore(found, note) : nullptr;
        if (before == nullptr) {
            found.push_back({note, held});
            continue;
        }
        Note whole = note;
        whole.onset = before->note.onset;
        whole.length = sum(before->note.length, note.length).value_or(before->note.length);
        whole.articulation.accent = before->note.articulation.accent;
        *before = {whole, held};
    }
    return found;
}

Fraction soundingEnd(const Joined& note) {
    const Fraction share = note.note.articulation.staccato ? staccatoShare
                           : note.held                     ? Fraction{1, 1}
                                                           : tonguedShare;
    const auto length = reducedFraction(std::int64_t{note.note.length.numerator} * share.numerator,
                                        std::int64_t{note.note.length.denominator} * share.denominator);
    return sum(note.note.onset, length.value_or(note.note.length)).value_or(note.note.onset);
}

} // namespace

PlaybackScore playbackOf(const Passage& passage, Tempo tempo) {
    PlaybackScore score;
    score.plan = inRange(planOf(passage, {tempo, 0}, {}));
    if (passage.music.bars == 0) return score;
    const Layout layout(score.plan, fractionOf(passage.music.meter.beat()));
    for (const Joined& note : joined(passage.notes)) {
        if (score.notes.size() == Passage::mostNotes) break;
        const auto onset = layout.onset(note.note.onset);
        if (!onset) continue;
        score.notes.push_back({*onset, layout.end(soundingEnd(note)),
                               static_cast<std::uint8_t>(std::clamp(note.note.sounding, 0, 127)),
                               note.note.articulation.accent});
    }
    return score;
}

} // namespace piolo::engine
