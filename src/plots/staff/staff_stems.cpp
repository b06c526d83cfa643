// SPDX-License-Identifier: GPL-3.0-or-later
// Stems, beams and flags.
#include "plots/staff/staff_system.h"

#include <algorithm>
#include <cmath>

namespace piolo::plots {

namespace {

constexpr double stemLength = 3.5; // an octave
constexpr double beamWidth = 0.5;
constexpr double beamStep = 0.75;
constexpr double mostSlant = 1;
constexpr double slantToWidth = 0.12;
constexpr double hookLength = 1.1;

/// For a group with this many beams: the heads must clear the innermost beam.
double leastStem(int beams) { return 2.4 + beamStep * beams; }

/// Toward the end of the stem: -1 up, 1 down.
double outward(const StaffColumn& column) { return column.stemUp ? -1 : 1; }

/// The y of the head from which the stem length is measured: the one nearest to the stem's end.
double nearHeadY(const StaffColumn& column) {
    return staffY(column.stemUp ? column.highest() : column.lowest());
}

void addStem(StaffDraft& draft, std::size_t event) {
    const StaffColumn& column = draft.column(event);
    const double x = draft.xOf(event) + column.stemX();
    // Slightly off the middle of the far head, where the head is widest on that side.
    const double from = staffY(column.stemUp ? column.lowest() : column.highest()) + 0.16 * outward(column);
    draft.add(StaffStroke{StaffPart::stem, QLineF(x, from, x, draft.stemEnd(event)), stemWidth, event});
}

void addFlag(StaffDraft& draft, std::size_t event) {
    const StaffColumn& column = draft.column(event);
    StaffSign sign;
    sign.part = StaffPart::flag;
    sign.glyph = static_cast<StaffGlyph>(static_cast<int>(StaffGlyph::eighthFlag) +
                                         draft.event(event).value.flags - 3);
    sign.event = event;
    sign.turned = !column.stemUp;
    sign.at = {draft.xOf(event) + column.stemX() - stemWidth / 2, draft.stemEnd(event)};
    draft.add(sign);
}

/// Stems of heads on ledger lines reach the middle line.
double aloneEnd(const StaffColumn& column, int flags, const StaffGlyphs& glyphs) {
    double length = stemLength;
    if (flags > 3) {
        const auto glyph = static_cast<StaffGlyph>(static_cast<int>(StaffGlyph::eighthFlag) + flags - 3);
        length = std::max(length, glyphs.box(glyph).height() + 0.4);
    }
    const double end = nearHeadY(column) + outward(column) * length;
    return column.stemUp ? std::min(end, 2.0) : std::max(end, 2.0);
}

class BeamMaker {
public:
    BeamMaker(StaffDraft& draft, std::size_t beam)
        : draft_(draft), index_(beam), beam_(draft.scene.rhythm.beams[beam]),
          out_(outward(draft.column(beam_.first))) {}

    void make() {
        setLine();
        for (std::size_t event = beam_.first; event <= beam_.last; ++event)
            draft_.stemEnd(event) = yAt(stemX(event));
        for (int level = 1; level <= mostBeams(); ++level) addLevel(level);
    }

private:
    [[nodiscard]] double stemX(std::size_t event) const {
        return draft_.xOf(event) + draft_.column(event).stemX();
    }
    [[nodiscard]] int beamsOf(std::size_t event) const { return draft_.event(event).value.flags - 2; }
    [[nodiscard]] int mostBeams() const {
        int most = 1;
        for (std::size_t i = beam_.first; i <= beam_.last; ++i) most = std::max(most, beamsOf(i));
        return most;
    }
    [[nodiscard]] double headY(std::size_t event) const { return nearHeadY(draft_.column(event)); }
    [[nodiscard]] double yAt(double x) const { return at_ + slope_ * (x - stemX(beam_.first)); }

    /// If an inner head is closer to the beam than both outer ones, the beam is flat.
    [[nodiscard]] bool bulges() const {
        const double outer = std::max(out_ * headY(beam_.first), out_ * headY(beam_.last));
        for (std::size_t i = beam_.first + 1; i < beam_.last; ++i)
            if (out_ * headY(i) > outer) return true;
        return false;
    }

    void setLine() {
        const double width = stemX(beam_.last) - stemX(beam_.first);
        const double most = std::min(mostSlant, slantToWidth * width);
        const double slant = bulges() ? 0 : std::clamp(headY(beam_.last) - headY(beam_.first), -most, most);
        slope_ = slant / width;
        at_ = headY(beam_.first) + out_ * stemLength;
        const double least = leastStem(mostBeams());
        double push = 0;
        for (std::size_t i = beam_.first; i <= beam_.last; ++i) {
            const double wanted = out_ * headY(i) + least;
            const double middle = out_ * 2;
            push = std::max(push, std::max(wanted, middle) - out_ * yAt(stemX(i)));
        }
        at_ += out_ * push;
    }

    void addShape(double left, double right, int level) {
        const double inward = -out_ * (beamStep * (level - 1));
        const double thick = -out_ * beamWidth;
        QPolygonF shape;
        shape << QPointF(left, yAt(left) + inward) << QPointF(right, yAt(right) + inward)
              << QPointF(right, yAt(right) + inward + thick) << QPointF(left, yAt(left) + inward + thick);
        constexpr int slices = 8; // the bounding box of a slanting beam would claim free space
        for (int i = 0; i < slices; ++i) {
            const double from = left + (right - left) * i / slices;
            const double to = left + (right - left) * (i + 1) / slices;
            const double high = std::min(yAt(from), yAt(to)) + inward + std::min(0.0, thick);
            const double low = std::max(yAt(from), yAt(to)) + inward + std::max(0.0, thick);
            draft_.sky.add(QRectF(from, high, to - from, low - high));
        }
        draft_.system.beams.push_back({shape, index_});
    }

    /// A partial beam points to the neighbour with which it can share the most beams.
    void addHook(std::size_t event, int level) {
        const bool before =
            event == beam_.last || (event > beam_.first && beamsOf(event - 1) >= beamsOf(event + 1));
        const double x = stemX(event);
        const double neighbour = stemX(before ? event - 1 : event + 1);
        const double length = std::min(hookLength, std::abs(neighbour - x) * 0.6);
        if (before)
            addShape(x - length, x + stemWidth / 2, level);
        else
            addShape(x - stemWidth / 2, x + length, level);
    }

    void addLevel(int level) {
        for (std::size_t from = beam_.first; from <= beam_.last;) {
            std::size_t to = from;
            while (to <= beam_.last && beamsOf(to) >= level) ++to;
            if (to == from + 1)
                addHook(from, level);
            else if (to > from)
                addShape(stemX(from) - stemWidth / 2, stemX(to - 1) + stemWidth / 2, level);
            from = std::max(to, from + 1);
        }
    }

    StaffDraft& draft_;
    std::size_t index_;
    StaffBeam beam_;
    double out_;
    double at_ = 0;
    double slope_ = 0;
};

} // namespace

void addStems(StaffDraft& draft) {
    draft.stemEnds.assign(draft.end - draft.first, 0);
    for (std::size_t event = draft.first; event < draft.end; ++event)
        draft.stemEnd(event) =
            aloneEnd(draft.column(event), draft.event(event).value.flags, draft.scene.glyphs);
    for (std::size_t beam = 0; beam < draft.scene.rhythm.beams.size(); ++beam)
        if (draft.holds(draft.scene.rhythm.beams[beam].first)) BeamMaker(draft, beam).make();
    for (std::size_t event = draft.first; event < draft.end; ++event) {
        if (!draft.column(event).hasStem) continue;
        addStem(draft, event);
        if (draft.column(event).hasFlag) addFlag(draft, event);
    }
}

} // namespace piolo::plots
