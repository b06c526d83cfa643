// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/staff/staff_layout.h"

#include "plots/staff/staff_breaks.h"
#include "plots/staff/staff_system.h"

#include <algorithm>

namespace piolo::plots {

namespace {

constexpr double betweenSystems = 2; // between the lowest sign of one system and the highest of the next
constexpr double lineWidth = 0.12;
constexpr double barLineWidth = 0.16;
constexpr double thickWidth = 0.5;
constexpr double thickGap = 0.4;
constexpr double numberHeight = 1.1;
constexpr double numberGap = 0.5;

void addBarLine(StaffDraft& draft, double x, double width) {
    draft.add(StaffStroke{StaffPart::barLine, QLineF(x, 0, x, 4), width, noEvent});
}

/// The last bar is drawn only as far as its notes go: a landing note is not filled up with rests.
bool isOpen(const StaffRhythm& rhythm) {
    if (rhythm.events.empty()) return false;
    const StaffEvent& last = rhythm.events.back();
    return last.onset + last.length < rhythm.bars.back().end;
}

class SystemMaker {
public:
    SystemMaker(const StaffScene& scene, const StaffSpacing& spacing, double width)
        : scene_(scene), spacing_(spacing), width_(width), draft_{scene, {}, {}, 0, 0, {}, {}, 0} {}

    StaffSystem make(const StaffBreak& bars, double mostStretch) {
        const bool first = bars.first == 0;
        const double head = headWidth(scene_.music, scene_.glyphs, first);
        placeBars(bars, head, mostStretch);
        addLines(bars);
        addHead(draft_, first);
        addColumns(draft_);
        addStems(draft_);
        addTies(draft_);
        addArticulations(draft_);
        addTuplets(draft_);
        addSlurs(draft_);
        addNumber(scene_.rhythm.bars[bars.first]);
        draft_.system.extent = draft_.sky.all();
        return std::move(draft_.system);
    }

private:
    [[nodiscard]] double sum(const StaffBreak& bars, double stretch) const {
        double all = 0;
        for (std::size_t bar = bars.first; bar < bars.end; ++bar) all += spacing_.widthOf(bar, stretch);
        return all;
    }

    /// The stretch that fills the width, or the largest that looks good.
    [[nodiscard]] double stretchFor(const StaffBreak& bars, double room, double high) const {
        double low = 0;
        if (sum(bars, high) <= room) return high;
        for (int i = 0; i < 40; ++i) {
            const double middle = (low + high) / 2;
            (sum(bars, middle) <= room ? low : high) = middle;
        }
        return low;
    }

    void placeBars(const StaffBreak& bars, double head, double mostStretch) {
        const double stretch = stretchFor(bars, width_ - head, mostStretch);
        draft_.system.stretch = stretch;
        draft_.first = scene_.rhythm.bars[bars.first].first;
        draft_.end = scene_.rhythm.bars[bars.end - 1].endEvent;
        double left = head;
        for (std::size_t bar = bars.first; bar < bars.end; ++bar) {
            for (const double x : spacing_.columnsIn(bar, stretch)) draft_.x.push_back(left + x);
            const double right = left + spacing_.widthOf(bar, stretch);
            draft_.system.bars.push_back({bar, left, right});
            left = right;
        }
        draft_.right = left;
    }

    void addLines(const StaffBreak& bars) {
        for (int line = 0; line < 5; ++line)
            draft_.add(
                StaffStroke{StaffPart::staffLine, QLineF(0, line, draft_.right, line), lineWidth, noEvent});
        for (const StaffBarSpan& place : draft_.system.bars)
            if (place.bar + 1 < scene_.rhythm.bars.size())
                addBarLine(draft_, place.right - barLineWidth / 2, barLineWidth);
        if (bars.end < scene_.rhythm.bars.size()) return;
        if (scene_.music.endsHere) {
            addBarLine(draft_, draft_.right - thickWidth / 2, thickWidth);
            addBarLine(draft_, draft_.right - thickWidth - thickGap, barLineWidth);
        } else if (!isOpen(scene_.rhythm)) {
            addBarLine(draft_, draft_.right - barLineWidth / 2, barLineWidth);
        }
    }

    void addNumber(const StaffBar& bar) {
        if (bar.pickup) return;
        const QString text = QString::number(bar.number);
        const double width = StaffGlyphs::text(text, numberHeight).boundingRect().width();
        const double bottom = draft_.sky.top(0, width + 0.3, 0) - numberGap;
        draft_.add(StaffWord{StaffPart::barNumber, text, numberHeight,
                             QRectF(0, bottom - numberHeight, width, numberHeight)});
    }

    const StaffScene& scene_;
    const StaffSpacing& spacing_;
    double width_;
    StaffDraft draft_;
};

/// The least width, in spaces, at which every bar fits in a system of its own.
double leastWidth(const StaffScene& scene, const StaffSpacing& spacing) {
    double most = 0;
    for (std::size_t bar = 0; bar < scene.rhythm.bars.size(); ++bar)
        most = std::max(most, spacing.widthOf(bar, 0) + headWidth(scene.music, scene.glyphs, bar == 0));
    return most + 2 * StaffLayout::margin + 0.01;
}

/// The widest stretch of the next system; the last one is only a little wider than the one before it.
double mostFor(const StaffLayout& before, bool last) {
    if (!last) return StaffSpacing::most;
    return before.systems.empty() ? StaffSpacing::mostAlone : 1.25 * before.systems.back().stretch;
}

} // namespace

std::size_t StaffLayout::systemOf(std::size_t bar) const {
    for (std::size_t i = 0; i < systems.size(); ++i)
        if (!systems[i].bars.empty() && systems[i].bars.back().bar >= bar) return i;
    return systems.empty() ? 0 : systems.size() - 1;
}

double StaffLayout::unevenness() const {
    double least = StaffSpacing::most;
    double most = 0.01;
    for (const StaffSystem& system : systems) {
        least = std::min(least, std::max(0.01, system.stretch));
        most = std::max(most, system.stretch);
    }
    return systems.empty() ? 1 : most / least;
}

std::optional<std::pair<std::size_t, QRectF>> StaffLayout::headOf(std::size_t note) const {
    for (std::size_t i = 0; i < systems.size(); ++i)
        for (const StaffSign& sign : systems[i].signs)
            if (sign.part == StaffPart::head && sign.note == note) return std::pair(i, sign.box);
    return std::nullopt;
}

StaffLayout layOutStaff(const StaffMusic& music, double width, double space, const StaffGlyphs& glyphs) {
    StaffLayout layout;
    layout.rhythm = rhythmOf(music);
    const std::vector<StaffColumn> columns = columnsOf(music, layout.rhythm, glyphs);
    const StaffScene scene{music, layout.rhythm, columns, glyphs};
    const StaffSpacing spacing(music, layout.rhythm, columns);
    layout.width = std::max(width / space, leastWidth(scene, spacing));
    layout.space = width / layout.width;
    const double room = layout.width - 2 * StaffLayout::margin;
    std::vector<double> widths;
    for (std::size_t bar = 0; bar < layout.rhythm.bars.size(); ++bar)
        widths.push_back(spacing.widthOf(bar, StaffSpacing::usual));
    const std::vector<StaffBreak> breaks =
        breaksOf(widths, headWidth(music, glyphs, true), headWidth(music, glyphs, false), room);
    double bottom = StaffLayout::margin;
    for (const StaffBreak& bars : breaks) {
        StaffSystem system =
            SystemMaker(scene, spacing, room).make(bars, mostFor(layout, bars.end == widths.size()));
        system.staffTop = bottom - system.extent.top();
        bottom = system.staffTop + system.extent.bottom() + betweenSystems;
        layout.systems.push_back(std::move(system));
    }
    layout.height = bottom - betweenSystems + StaffLayout::margin;
    return layout;
}

} // namespace piolo::plots
