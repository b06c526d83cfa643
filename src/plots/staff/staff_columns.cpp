// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/staff/staff_columns.h"

#include "plots/staff/staff_pitch.h"

#include <algorithm>
#include <set>

namespace piolo::plots {

namespace {

constexpr double accidentalGap = 0.2;
constexpr double dotGap = 0.3;

StaffGlyph accidentalOf(int alter) {
    constexpr StaffGlyph signs[] = {StaffGlyph::doubleFlat, StaffGlyph::flat, StaffGlyph::natural,
                                    StaffGlyph::sharp, StaffGlyph::doubleSharp};
    return signs[std::clamp(alter, -2, 2) + 2];
}

StaffGlyph headOf(NoteValue value) {
    return value.flags == 0 ? StaffGlyph::wholeHead
                            : (value.flags == 1 ? StaffGlyph::halfHead : StaffGlyph::blackHead);
}

StaffGlyph restOf(NoteValue value) {
    return static_cast<StaffGlyph>(static_cast<int>(StaffGlyph::wholeRest) + value.flags);
}

/// Down if the outermost head is above the middle line, or if the heads extend as far above it as below.
bool pointsUp(int lowest, int highest) { return 4 - lowest > highest - 4; }

/// Heads a step apart go on opposite sides of the stem.
void spreadHeads(StaffColumn& column) {
    const double side = (column.stemUp ? 1 : -1) * (column.headWidth - stemWidth);
    const auto place = [&](auto from, auto to) {
        std::vector<int> last; // the last position taken in each column of heads
        for (auto head = from; head != to; ++head) {
            std::size_t at = 0;
            while (at < last.size() && std::abs(head->position - last[at]) < 2) ++at;
            if (at == last.size()) last.push_back(0);
            last[at] = head->position;
            head->x = static_cast<double>(at) * side;
        }
    };
    if (column.stemUp)
        place(column.heads.begin(), column.heads.end());
    else
        place(column.heads.rbegin(), column.heads.rend());
}

bool hasLedger(const StaffHead& head) { return head.position > 9 || head.position < -1; }

double headsLeft(const StaffColumn& column) {
    double left = 0;
    for (const StaffHead& head : column.heads) left = std::min(left, head.x);
    return left;
}

double headsRight(const StaffColumn& column) {
    double right = column.headWidth;
    for (const StaffHead& head : column.heads) right = std::max(right, head.x + column.headWidth);
    return right;
}

/// The highest first, each as close to the heads as the others allow.
void placeAccidentals(StaffColumn& column, const StaffGlyphs& glyphs) {
    const bool ledger = std::any_of(column.heads.begin(), column.heads.end(), hasLedger);
    const double edge = headsLeft(column) - (ledger ? ledgerReach + 0.1 : accidentalGap);
    std::vector<QRectF> taken;
    for (auto head = column.heads.rbegin(); head != column.heads.rend(); ++head) {
        if (!head->accidental) continue;
        const QRectF shape = glyphs.box(*head->accidental);
        QRectF box = shape.translated(edge - shape.width(), -head->position / 2.0);
        for (bool moved = true; moved;) {
            moved = false;
            for (const QRectF& other : taken)
                if (other.adjusted(-0.1, 0, 0.1, 0).intersects(box)) {
                    box.moveRight(other.left() - 0.12);
                    moved = true;
                }
        }
        taken.push_back(box);
        head->accidentalX = box.left();
        column.left = std::max(column.left, -box.left());
    }
}

void placeDots(StaffColumn& column, int dots, const StaffGlyphs& glyphs) {
    const bool ledger = std::any_of(column.heads.begin(), column.heads.end(), hasLedger);
    const double reach = ledger ? ledgerReach : 0;
    column.right = headsRight(column) + reach;
    if (column.hasFlag && column.stemUp)
        column.right = std::max(column.right, column.headWidth + glyphs.width(StaffGlyph::eighthFlag));
    if (dots == 0) return;
    column.dotsX = column.right + dotGap - reach / 2;
    column.right = column.dotsX + (dots - 1) * dotStep + glyphs.width(StaffGlyph::dot);
    std::set<int> taken;
    for (auto head = column.heads.rbegin(); head != column.heads.rend(); ++head) {
        int position = head->position % 2 == 0 ? head->position + 1 : head->position;
        while (taken.contains(position)) position -= 2;
        taken.insert(position);
        head->dotPosition = position;
    }
}

class ColumnMaker {
public:
    ColumnMaker(const StaffMusic& music, const StaffRhythm& rhythm, const StaffGlyphs& glyphs)
        : music_(music), rhythm_(rhythm), glyphs_(glyphs), shown_(accidentalsOf(music, rhythm)) {}

    std::vector<StaffColumn> make() {
        std::vector<StaffColumn> columns;
        for (std::size_t i = 0; i < rhythm_.events.size(); ++i) columns.push_back(headsOf(i));
        for (const StaffBeam& beam : rhythm_.beams) pointOneWay(columns, beam);
        for (std::size_t i = 0; i < columns.size(); ++i) place(columns[i], rhythm_.events[i]);
        return columns;
    }

private:
    [[nodiscard]] StaffColumn headsOf(std::size_t index) const {
        const StaffEvent& event = rhythm_.events[index];
        StaffColumn column;
        column.sign = event.isRest() ? restOf(event.value) : headOf(event.value);
        for (std::size_t i = 0; i < event.notes.size(); ++i) {
            StaffHead head;
            const WrittenPitch written = music_.notes[event.notes[i]].written;
            head.note = event.notes[i];
            head.position = staffPosition(written, music_.clef);
            if (shown_[index][i]) head.accidental = accidentalOf(written.alter);
            column.heads.push_back(head);
        }
        std::stable_sort(column.heads.begin(), column.heads.end(),
                         [](const StaffHead& a, const StaffHead& b) { return a.position < b.position; });
        column.headWidth = glyphs_.width(column.sign);
        column.hasStem = !event.isRest() && event.value.flags > 0;
        column.hasFlag = column.hasStem && event.value.flags > 2;
        column.stemUp = pointsUp(column.lowest(), column.highest());
        return column;
    }

    static void pointOneWay(std::vector<StaffColumn>& columns, const StaffBeam& beam) {
        int lowest = columns[beam.first].lowest();
        int highest = columns[beam.first].highest();
        for (std::size_t i = beam.first; i <= beam.last; ++i) {
            lowest = std::min(lowest, columns[i].lowest());
            highest = std::max(highest, columns[i].highest());
        }
        for (std::size_t i = beam.first; i <= beam.last; ++i) {
            columns[i].stemUp = pointsUp(lowest, highest);
            columns[i].hasFlag = false;
        }
    }

    void place(StaffColumn& column, const StaffEvent& event) const {
        spreadHeads(column);
        const bool ledger = std::any_of(column.heads.begin(), column.heads.end(), hasLedger);
        column.left = (ledger ? ledgerReach : 0) - headsLeft(column);
        placeAccidentals(column, glyphs_);
        placeDots(column, event.value.dots, glyphs_);
    }

    const StaffMusic& music_;
    const StaffRhythm& rhythm_;
    const StaffGlyphs& glyphs_;
    std::vector<std::vector<bool>> shown_;
};

} // namespace

double StaffColumn::stemX() const { return stemUp ? headWidth - stemWidth / 2 : stemWidth / 2; }

std::vector<StaffColumn> columnsOf(const StaffMusic& music, const StaffRhythm& rhythm,
                                   const StaffGlyphs& glyphs) {
    return ColumnMaker(music, rhythm, glyphs).make();
}

} // namespace piolo::plots
