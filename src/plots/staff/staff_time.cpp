// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/staff/staff_time.h"

#include <algorithm>
#include <array>

namespace piolo::plots {

namespace {

using Moments = std::vector<StaffTicks>;

constexpr StaffTicks quarter = ticksToWhole / 4;
constexpr StaffTicks sixtyFourth = ticksToWhole / 64;

/// The flags for 1/2ⁿ of a whole note; nothing for other lengths.
std::optional<int> flagsOf(StaffTicks ticks) noexcept {
    for (int flags = 0; flags <= NoteValue::shortest; ++flags)
        if (ticks << flags == ticksToWhole) return flags;
    return std::nullopt;
}

/// The number that a tuplet of `count` is set against: the next lower number of the beat's own parts (common
/// practice: 3:2, 5:4, 6:4, 7:4, 9:8; in dotted beats 2:3, 4:3, 5:3, 7:6, 8:6, 9:6).
int againstOf(int count, bool plain) noexcept {
    int against = plain ? 2 : 3;
    while (against * 2 < count) against *= 2;
    return against;
}

Moments inside(const StaffCell& cell, const Moments& moments) {
    Moments found;
    for (const StaffTicks moment : moments)
        if (moment > cell.start && moment < cell.end()) found.push_back(moment - cell.start);
    return found;
}

bool allOn(const Moments& moments, StaffTicks unit) {
    return std::all_of(moments.begin(), moments.end(), [unit](StaffTicks at) { return at % unit == 0; });
}

/// The cell split into `count` notes, and each of those into `parts`; nothing if that cannot be written.
std::optional<StaffCell> cut(StaffCell cell, int count, int parts, const Moments& moments) {
    if (cell.length % (StaffTicks{count} * parts) != 0) return std::nullopt;
    const int against = againstOf(count, cell.isPlain());
    const auto flags = cell.length % against == 0 ? flagsOf(cell.length / against) : std::nullopt;
    const int finer = parts == 4 ? 2 : parts - 1;
    cell.unit = cell.length / (count * parts);
    if (!flags || *flags + finer > NoteValue::shortest || !allOn(moments, cell.unit)) return std::nullopt;
    cell.tuplet = count;
    cell.against = against;
    cell.unitFlags = *flags + finer;
    return cell;
}

StaffCell withoutTuplet(StaffCell cell, bool fits) {
    cell.unit = sixtyFourth;
    cell.unitFlags = 6;
    cell.fits = fits;
    return cell;
}

/// With the simplest tuplet that holds all its notes.
StaffCell fitted(const StaffCell& cell, const Moments& moments) {
    if (moments.empty()) return withoutTuplet(cell, true);
    if (!cell.isPlain())
        for (const int count : {2, 4, 8})
            if (const auto made = cut(cell, count, 1, moments)) return *made;
    if (allOn(moments, sixtyFourth)) return withoutTuplet(cell, true);
    for (const int parts : {1, 2, 4})
        for (const int count : {3, 5, 6, 7, 9})
            if (count != 3 || (parts == 1 && cell.isPlain()))
                if (const auto made = cut(cell, count, parts, moments)) return *made;
    return withoutTuplet(cell, false);
}

void appendGroup(std::vector<StaffTicks>& lengths, int group, StaffTicks unit) {
    // There are no note values for five and seven: 3 + 2, 2 + 2 + 3.
    while (group > 4 && group != 6) {
        const int part = group == 5 ? 3 : 2;
        lengths.push_back(part * unit);
        group -= part;
    }
    lengths.push_back(group * unit);
}

std::vector<StaffTicks> lengthsOf(const Meter& meter) {
    std::vector<StaffTicks> lengths;
    const StaffTicks unit = ticksToWhole / meter.denominator();
    const StaffTicks bar = meter.numerator() * unit;
    for (const int group : meter.groups()) appendGroup(lengths, group, unit);
    if (!lengths.empty()) return lengths;
    StaffTicks beat = ticksOf(fractionOf(meter.beat())).ticks;
    if (beat < quarter && bar % quarter == 0 && meter.denominator() <= 4) beat = quarter;
    return std::vector<StaffTicks>(static_cast<std::size_t>(bar / beat), beat);
}

/// The cell split into parts of that length; nothing if their notes cannot be written or a tuplet would be
/// split.
std::vector<StaffCell> partsOf(const StaffCell& whole, StaffTicks length, const Moments& moments) {
    const Moments all = inside(whole, moments);
    std::vector<StaffCell> parts;
    if (whole.length % length != 0 || whole.length == length) return parts;
    for (StaffTicks start = whole.start; start < whole.end(); start += length) {
        StaffCell part;
        part.start = start;
        part.length = length;
        parts.push_back(fitted(part, inside(part, moments)));
        const bool cutHere =
            start == whole.start || std::find(all.begin(), all.end(), start - whole.start) != all.end();
        const bool crossed = !cutHere && parts.back().tuplet + parts.rbegin()[1].tuplet > 0;
        if (!parts.back().fits || crossed) return {};
    }
    return parts;
}

/// A longer cell split into quarters if shorter notes need it, or into beats if nothing else can be written;
/// nothing if the cell is better left whole.
std::vector<StaffCell> cutOf(const StaffCell& whole, StaffTicks beat, const Moments& moments) {
    const bool inTwos = whole.tuplet != 0 && !whole.isPlain() && whole.tuplet % 2 == 0;
    if (!inTwos && !allOn(inside(whole, moments), quarter / 2)) {
        std::vector<StaffCell> quarters = partsOf(whole, quarter, moments);
        if (!quarters.empty()) return quarters;
    }
    return whole.fits ? std::vector<StaffCell>() : partsOf(whole, beat, moments);
}

} // namespace

StaffMoment ticksOf(Fraction time) noexcept {
    const StaffTicks scaled = StaffTicks{time.numerator} * ticksToWhole;
    return {(scaled + time.denominator / 2) / time.denominator, scaled % time.denominator == 0};
}

StaffTicks ticksOf(NoteValue value) noexcept {
    const StaffTicks plain = ticksToWhole >> value.flags;
    return value.dots == 0 ? plain : plain + plain / 2;
}

std::optional<NoteValue> valueOf(StaffTicks ticks) noexcept {
    for (int flags = 0; flags <= NoteValue::shortest; ++flags)
        for (int dots = 0; dots <= (flags < NoteValue::shortest ? 1 : 0); ++dots)
            if (const NoteValue value{flags, dots}; ticksOf(value) == ticks) return value;
    return std::nullopt;
}

bool StaffCell::isPlain() const noexcept { return flagsOf(length).has_value(); }

std::vector<StaffCell> cellsOf(const Meter& meter, const std::vector<StaffTicks>& moments) {
    std::vector<StaffCell> cells;
    StaffCell cell;
    for (const StaffTicks length : lengthsOf(meter)) {
        cell.length = length;
        const StaffCell whole = fitted(cell, inside(cell, moments));
        const std::vector<StaffCell> parts = cutOf(whole, ticksOf(fractionOf(meter.beat())).ticks, moments);
        if (parts.empty())
            cells.push_back(whole);
        else
            cells.insert(cells.end(), parts.begin(), parts.end());
        cell.start += length;
    }
    return cells;
}

} // namespace piolo::plots
