// SPDX-License-Identifier: GPL-3.0-or-later
// Articulations and tuplet numbers.
#include "plots/staff/staff_system.h"

#include <algorithm>

namespace piolo::plots {

namespace {

constexpr double tupletHeight = 1.05;
constexpr double tupletGap = 0.45;
constexpr double hook = 0.6;
constexpr double tenutoWidth = 0.16;

NoteArticulation articulationOf(const StaffDraft& draft, std::size_t index) {
    const StaffEvent& event = draft.event(index);
    NoteArticulation all;
    for (const std::size_t note : event.notes) {
        const NoteArticulation& one = draft.scene.music.notes[note].articulation;
        all.staccato = all.staccato || one.staccato;
        all.tenuto = all.tenuto || one.tenuto;
        all.accent = all.accent || one.accent;
    }
    return all;
}

/// Marks go on the side of the heads, one after the other outward, in spaces; the accent is outside the
/// staff.
class MarkColumn {
public:
    MarkColumn(StaffDraft& draft, std::size_t event)
        : draft_(draft), event_(event), column_(draft.column(event)), down_(column_.stemUp),
          position_(down_ ? column_.lowest() : column_.highest()) {}

    void addStaccato() {
        StaffSign sign;
        sign.part = StaffPart::articulation;
        sign.glyph = StaffGlyph::dot;
        sign.event = event_;
        sign.at = {middle() - draft_.scene.glyphs.width(StaffGlyph::dot) / 2, nextPlace()};
        draft_.add(sign);
    }
    void addTenuto() {
        const double y = nextPlace();
        draft_.add(StaffStroke{StaffPart::articulation, QLineF(middle() - 0.6, y, middle() + 0.6, y),
                               tenutoWidth, event_});
    }
    void addAccent() {
        const QRectF box = draft_.scene.glyphs.box(StaffGlyph::accent);
        const double left = middle() - box.width() / 2;
        const double right = middle() + box.width() / 2;
        const double half = box.height() / 2 + 0.3;
        StaffSign sign;
        sign.part = StaffPart::articulation;
        sign.glyph = StaffGlyph::accent;
        sign.event = event_;
        sign.at = {left, down_ ? draft_.sky.bottom(left, right, 4.2) + half
                               : draft_.sky.top(left, right, -0.2) - half};
        draft_.add(sign);
    }

private:
    [[nodiscard]] double middle() const { return draft_.middleOf(event_); }
    /// The next free space outward from the head or the previous mark, never on a line.
    double nextPlace() {
        const int step = down_ ? -1 : 1;
        position_ += position_ % 2 == 0 ? 3 * step : 2 * step;
        return staffY(position_);
    }

    StaffDraft& draft_;
    std::size_t event_;
    const StaffColumn& column_;
    bool down_;
    int position_;
};

struct TupletSpan {
    double left = 0;
    double right = 0;
    bool above = true;
};

TupletSpan placeOf(const StaffDraft& draft, const StaffTuplet& tuplet) {
    const StaffColumn& last = draft.column(tuplet.last);
    TupletSpan place;
    place.left = draft.xOf(tuplet.first);
    place.right = draft.xOf(tuplet.last) + std::max(last.headWidth, 1.0);
    int up = 0;
    int down = 0;
    for (std::size_t i = tuplet.first; i <= tuplet.last; ++i)
        if (!draft.event(i).isRest()) ++(draft.column(i).stemUp ? up : down);
    place.above = up >= down;
    return place;
}

void addNumber(StaffDraft& draft, const StaffTuplet& tuplet, double middle, double top) {
    const QString text = QString::number(tuplet.number);
    const double width = StaffGlyphs::text(text, tupletHeight).boundingRect().width();
    draft.add(StaffWord{StaffPart::tupletNumber, text, tupletHeight,
                        QRectF(middle - width / 2, top, width, tupletHeight)});
}

/// Beside the middle of the beam.
void addBesideBeam(StaffDraft& draft, const StaffTuplet& tuplet, const TupletSpan& place) {
    const double left = draft.xOf(tuplet.first) + draft.column(tuplet.first).stemX();
    const double right = draft.xOf(tuplet.last) + draft.column(tuplet.last).stemX();
    const double middle = (left + right) / 2;
    const double reach = 0.45;
    const double top = place.above
                           ? draft.sky.top(middle - reach, middle + reach, 2) - tupletGap - tupletHeight
                           : draft.sky.bottom(middle - reach, middle + reach, 2) + tupletGap;
    addNumber(draft, tuplet, middle, top);
}

void addBracket(StaffDraft& draft, const StaffTuplet& tuplet, const TupletSpan& place) {
    const double side = place.above ? -1 : 1;
    const double edge = place.above ? draft.sky.top(place.left, place.right, -0.4)
                                    : draft.sky.bottom(place.left, place.right, 4.4);
    const double y = edge + side * (tupletGap + hook);
    const double middle = (place.left + place.right) / 2;
    addNumber(draft, tuplet, middle, y - tupletHeight / 2);
    const double gapHalf = 0.75;
    const auto line = [&](double x1, double y1, double x2, double y2) {
        draft.add(StaffStroke{StaffPart::bracket, QLineF(x1, y1, x2, y2), 0.12, noEvent});
    };
    line(place.left, y, middle - gapHalf, y);
    line(middle + gapHalf, y, place.right, y);
    line(place.left, y, place.left, y - side * hook);
    line(place.right, y, place.right, y - side * hook);
}

} // namespace

void addArticulations(StaffDraft& draft) {
    for (std::size_t event = draft.first; event < draft.end; ++event) {
        if (draft.event(event).isRest() || !draft.event(event).begins) continue;
        const NoteArticulation marks = articulationOf(draft, event);
        MarkColumn column(draft, event);
        if (marks.staccato) column.addStaccato();
        if (marks.tenuto) column.addTenuto();
        if (marks.accent) column.addAccent();
    }
}

void addTuplets(StaffDraft& draft) {
    for (const StaffTuplet& tuplet : draft.scene.rhythm.tuplets) {
        if (!draft.holds(tuplet.first)) continue;
        const TupletSpan place = placeOf(draft, tuplet);
        if (tuplet.bracket)
            addBracket(draft, tuplet, place);
        else
            addBesideBeam(draft, tuplet, place);
    }
}

} // namespace piolo::plots
