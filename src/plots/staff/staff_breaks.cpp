// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/staff/staff_breaks.h"

#include "plots/staff/staff_pitch.h"

#include <algorithm>
#include <cmath>

namespace piolo::plots {

namespace {

constexpr double gap = 0.45;      // between the signs of two consecutive moments
constexpr double tieGap = 1.2;    // so that a tie is visible
constexpr double lead = 0.7;      // after a bar line
constexpr double tail = 0.7;      // before a bar line
constexpr double finalTail = 1.6; // before the final bar line
constexpr double wholeRest = 4;   // a bar without notes

std::vector<StaffBreak> filled(const std::vector<double>& widths, double firstHead, double head,
                               double width) {
    std::vector<StaffBreak> breaks;
    double used = 0;
    for (std::size_t bar = 0; bar < widths.size(); ++bar) {
        if (breaks.empty() || used + widths[bar] > width) {
            used = breaks.empty() ? firstHead : head;
            breaks.push_back({bar, bar});
        }
        used += widths[bar];
        breaks.back().end = bar + 1;
    }
    return breaks;
}

} // namespace

StaffSpacing::StaffSpacing(const StaffMusic& music, const StaffRhythm& rhythm,
                           const std::vector<StaffColumn>& columns)
    : rhythm_(rhythm), columns_(columns), endsHere_(music.endsHere), tied_(rhythm.events.size(), false) {
    for (std::size_t i = 0; i < rhythm.events.size(); ++i)
        for (const std::size_t note : rhythm.events[i].notes)
            tied_[i] = tied_[i] || tiedFrom(music, rhythm, i, note).has_value();
}

/// Doubling the duration adds about half as much room again (common practice), so that even notes are evenly
/// spaced.
double StaffSpacing::wished(std::size_t event, double stretch) const {
    const StaffEvent& of = rhythm_.events[event];
    if (of.wholeBar) return std::max(wholeRest, stretch);
    constexpr double quarter = ticksToWhole / 4;
    return stretch * std::pow(static_cast<double>(of.length) / quarter, 0.6);
}

std::vector<double> StaffSpacing::columnsIn(std::size_t bar, double stretch) const {
    const StaffBar& of = rhythm_.bars[bar];
    std::vector<double> places;
    double at = lead;
    for (std::size_t i = of.first; i < of.endEvent; ++i) {
        if (i == of.first)
            at += columns_[i].left + (tied_[i] ? tieGap - gap : 0);
        else
            at += std::max(wished(i - 1, stretch),
                           columns_[i - 1].right + (tied_[i] ? tieGap : gap) + columns_[i].left);
        places.push_back(at);
    }
    return places;
}

double StaffSpacing::widthOf(std::size_t bar, double stretch) const {
    const StaffBar& of = rhythm_.bars[bar];
    if (of.first == of.endEvent) return wholeRest;
    const std::size_t last = of.endEvent - 1;
    const double end = endsHere_ && bar + 1 == rhythm_.bars.size() ? finalTail : tail;
    return columnsIn(bar, stretch).back() + std::max(wished(last, stretch), columns_[last].right + end);
}

std::vector<StaffBreak> breaksOf(const std::vector<double>& widths, double firstHead, double head,
                                 double width) {
    std::vector<StaffBreak> best = filled(widths, firstHead, head, width);
    double low = 0;
    double high = width;
    for (int i = 0; i < 24; ++i) {
        const double middle = (low + high) / 2;
        std::vector<StaffBreak> tried = filled(widths, firstHead, head, middle);
        if (tried.size() > best.size()) {
            low = middle;
        } else {
            high = middle;
            best = std::move(tried);
        }
    }
    return best;
}

} // namespace piolo::plots
