// SPDX-License-Identifier: GPL-3.0-or-later
// Ties and slurs.
#include "plots/staff/staff_pitch.h"
#include "plots/staff/staff_system.h"

#include <algorithm>
#include <cmath>

namespace piolo::plots {

namespace {

constexpr double tieBelow = 0.62; // from a head's middle, so that the tie clears the head
constexpr double offMiddle = 0.35;
constexpr double slurGap = 0.45;
constexpr double shortSlur = 0.9; // how far the flattest slur rises

double pointOf(double a, double b, double c, double d, double t) {
    const double u = 1 - t;
    return u * u * u * a + 3 * u * u * t * b + 3 * u * t * t * c + t * t * t * d;
}

/// `side`: -1 above, 1 below. The curve's control points rise `rise` above its ends.
StaffArc arcOf(StaffPart part, QPointF from, QPointF to, double rise, int side) {
    const QPointF along = to - from;
    const QPointF out(0, side * rise);
    return {part, from, from + along * 0.25 + out, from + along * 0.75 + out, to};
}

QPointF at(const StaffArc& arc, double t) {
    return {pointOf(arc.from.x(), arc.over.x(), arc.back.x(), arc.to.x(), t),
            pointOf(arc.from.y(), arc.over.y(), arc.back.y(), arc.to.y(), t)};
}

void keep(StaffDraft& draft, const StaffArc& arc) {
    constexpr int slices = 12;
    for (int i = 0; i < slices; ++i) {
        const QRectF box(at(arc, i / static_cast<double>(slices)),
                         at(arc, (i + 1) / static_cast<double>(slices)));
        draft.sky.add(box.normalized().adjusted(-0.01, -0.1, 0.01, 0.1));
    }
    draft.system.arcs.push_back(arc);
}

/// For one head: away from the stem; in a chord, the upper half curves up and the lower half down.
int tieSide(const StaffColumn& column, std::size_t head) {
    if (column.heads.size() < 2) return column.stemUp ? 1 : -1;
    return 2 * head < column.heads.size() ? 1 : -1;
}

std::optional<std::size_t> headOf(const StaffColumn& column, std::size_t note) {
    for (std::size_t i = 0; i < column.heads.size(); ++i)
        if (column.heads[i].note == note) return i;
    return std::nullopt;
}

/// Where a tie leaves or reaches a head: between single heads it hangs below or above them, between chords it
/// lies in the gap.
struct TieEnd {
    double x = 0;
    double y = 0;
};

TieEnd tieEnd(const StaffDraft& draft, std::size_t event, std::size_t head, bool leaves, int side) {
    const StaffColumn& column = draft.column(event);
    const double y = staffY(column.heads[head].position);
    const double x = draft.xOf(event);
    if (column.heads.size() > 1)
        return {leaves ? x + column.right + 0.1 : x - column.left - 0.1, y + side * 0.2};
    const double middle = x + column.headWidth / 2;
    return {leaves ? middle + offMiddle : middle - offMiddle, y + side * tieBelow};
}

void addTie(StaffDraft& draft, const TieEnd& from, const TieEnd& to, int side) {
    if (to.x - from.x < 0.5) return;
    const double rise = std::min(1.0, 0.45 + 0.06 * (to.x - from.x));
    keep(draft, arcOf(StaffPart::tie, {from.x, from.y}, {to.x, to.y}, rise, side));
}

/// From the previous event, or from the beginning of the system.
void tieTo(StaffDraft& draft, std::size_t event, std::size_t note) {
    const auto from = tiedFrom(draft.scene.music, draft.scene.rhythm, event, note);
    const auto head = headOf(draft.column(event), note);
    if (!from || !head) return;
    const bool here = draft.holds(event - 1);
    const auto begin = here ? headOf(draft.column(event - 1), *from) : std::nullopt;
    const int side = begin ? tieSide(draft.column(event - 1), *begin) : tieSide(draft.column(event), *head);
    const TieEnd to = tieEnd(draft, event, *head, false, side);
    addTie(draft,
           begin ? tieEnd(draft, event - 1, *begin, true, side)
                 : TieEnd{draft.system.bars.front().left, to.y},
           to, side);
}

/// A tie that continues in the next system.
void tieOut(StaffDraft& draft, std::size_t event) {
    if (event >= draft.scene.rhythm.events.size()) return;
    const StaffColumn& column = draft.column(event - 1);
    for (const std::size_t note : draft.event(event).notes) {
        const auto from = tiedFrom(draft.scene.music, draft.scene.rhythm, event, note);
        const auto head = from ? headOf(column, *from) : std::nullopt;
        if (!head) continue;
        const int side = tieSide(column, *head);
        const TieEnd begin = tieEnd(draft, event - 1, *head, true, side);
        addTie(draft, begin, {std::max(draft.right - 0.1, begin.x + 0.6), begin.y}, side);
    }
}

struct Slur {
    std::size_t from = 0;
    std::size_t to = 0;
};

/// The slurs of the whole music, by events. A slur without an end or a beginning is not drawn.
std::vector<Slur> slursOf(const StaffScene& scene) {
    std::vector<Slur> slurs;
    std::vector<std::size_t> open;
    for (std::size_t i = 0; i < scene.rhythm.events.size(); ++i) {
        const StaffEvent& event = scene.rhythm.events[i];
        bool begins = false;
        bool ends = false;
        for (const std::size_t note : event.notes) {
            begins = begins || (event.begins && scene.music.notes[note].articulation.slurBegins);
            ends = ends || (event.ends && scene.music.notes[note].articulation.slurEnds);
        }
        if (ends && !open.empty()) {
            slurs.push_back({open.back(), i});
            open.pop_back();
        }
        if (begins) open.push_back(i);
    }
    return slurs;
}

/// Below if all stems point up.
int slurSide(const StaffDraft& draft, const Slur& slur) {
    for (std::size_t i = slur.from; i <= slur.to; ++i)
        if (!draft.event(i).isRest() && !draft.column(i).stemUp) return -1;
    return 1;
}

QPointF slurEnd(const StaffDraft& draft, std::size_t event, int side) {
    const double x = draft.middleOf(event);
    const double y = side < 0 ? draft.sky.top(x - 0.4, x + 0.4, 0) : draft.sky.bottom(x - 0.4, x + 0.4, 4);
    return {x, y + side * slurGap};
}

bool isClear(const StaffDraft& draft, const StaffArc& arc, int side) {
    constexpr int steps = 24;
    for (int i = 1; i < steps; ++i) {
        const QPointF point = at(arc, i / static_cast<double>(steps));
        const QPointF next = at(arc, (i + 1) / static_cast<double>(steps));
        const double left = point.x() - 0.2;
        const double right = std::max(next.x(), left + 0.4);
        const double edge = std::min(side * point.y(), side * next.y());
        const double taken =
            side < 0 ? -draft.sky.top(left, right, 100) : draft.sky.bottom(left, right, -100);
        if (edge < taken + 0.25) return false;
    }
    return true;
}

void addSlur(StaffDraft& draft, const Slur& slur) {
    const int side = slurSide(draft, slur);
    const bool begins = draft.holds(slur.from);
    const bool ends = draft.holds(slur.to);
    QPointF from = slurEnd(draft, begins ? slur.from : draft.first, side);
    QPointF to = slurEnd(draft, ends ? slur.to : draft.end - 1, side);
    if (!begins) from.setX(draft.system.bars.front().left + 0.2);
    if (!ends) to.setX(draft.right);
    double rise = std::min(2.5, shortSlur + 0.05 * (to.x() - from.x()));
    StaffArc arc = arcOf(StaffPart::slur, from, to, rise, side);
    // If a slur spans a wide stretch, its ends may have to rise too: beyond a certain bend it no longer looks
    // like a slur.
    for (int i = 0; i < 60 && !isClear(draft, arc, side); ++i) {
        rise += 0.25;
        if (rise > 4) {
            from.ry() += side * 0.25;
            to.ry() += side * 0.25;
        }
        arc = arcOf(StaffPart::slur, from, to, std::min(rise, 4.0), side);
    }
    keep(draft, arc);
}

} // namespace

void addTies(StaffDraft& draft) {
    for (std::size_t event = draft.first; event < draft.end; ++event)
        for (const std::size_t note : draft.event(event).notes) tieTo(draft, event, note);
    if (draft.end > draft.first) tieOut(draft, draft.end);
}

void addSlurs(StaffDraft& draft) {
    if (draft.end == draft.first) return;
    for (const Slur& slur : slursOf(draft.scene))
        if (slur.from < draft.end && slur.to >= draft.first) addSlur(draft, slur);
}

} // namespace piolo::plots
