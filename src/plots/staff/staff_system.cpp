// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/staff/staff_system.h"

#include <algorithm>

namespace piolo::plots {

namespace {

constexpr double ledgerWidth = 0.16;

void addLedgerLines(StaffDraft& draft, std::size_t event) {
    const StaffColumn& column = draft.column(event);
    const auto line = [&](int position, auto reaches) {
        double left = 0;
        double right = 0;
        bool any = false;
        for (const StaffHead& head : column.heads) {
            if (!reaches(head.position)) continue;
            left = any ? std::min(left, head.x) : head.x;
            right = any ? std::max(right, head.x + column.headWidth) : head.x + column.headWidth;
            any = true;
        }
        const double x = draft.xOf(event);
        draft.add(StaffStroke{
            StaffPart::ledger,
            QLineF(x + left - ledgerReach, staffY(position), x + right + ledgerReach, staffY(position)),
            ledgerWidth, event});
    };
    for (int at = 10; at <= column.highest(); at += 2) line(at, [at](int head) { return head >= at; });
    for (int at = -2; at >= column.lowest(); at -= 2) line(at, [at](int head) { return head <= at; });
}

void addHeads(StaffDraft& draft, std::size_t event) {
    const StaffColumn& column = draft.column(event);
    for (const StaffHead& head : column.heads) {
        StaffSign sign;
        sign.event = event;
        sign.note = head.note;
        sign.glyph = column.sign;
        sign.at = {draft.xOf(event) + head.x, staffY(head.position)};
        draft.add(sign);
        if (head.accidental) {
            sign.part = StaffPart::accidental;
            sign.glyph = *head.accidental;
            sign.at.setX(draft.xOf(event) + head.accidentalX);
            draft.add(sign);
        }
    }
}

void addDots(StaffDraft& draft, std::size_t event) {
    const StaffColumn& column = draft.column(event);
    StaffSign sign;
    sign.part = StaffPart::dot;
    sign.glyph = StaffGlyph::dot;
    sign.event = event;
    for (int dot = 0; dot < draft.event(event).value.dots; ++dot) {
        const double x = draft.xOf(event) + column.dotsX + dot * dotStep;
        for (const StaffHead& head : column.heads) {
            sign.at = {x, staffY(head.dotPosition)};
            draft.add(sign);
        }
        if (column.heads.empty()) {
            sign.at = {x, staffY(5)};
            draft.add(sign);
        }
    }
}

/// In the middle of its bar if it is a whole-bar rest.
double restX(const StaffDraft& draft, std::size_t event) {
    if (!draft.event(event).wholeBar) return draft.xOf(event);
    for (const StaffBarSpan& place : draft.system.bars)
        if (place.bar == draft.event(event).bar)
            return (place.left + place.right - draft.column(event).headWidth) / 2;
    return draft.xOf(event);
}

} // namespace

QRectF StaffStroke::box() const {
    const QRectF along = QRectF(line.p1(), line.p2()).normalized();
    const bool upright = along.width() < along.height();
    return along.adjusted(upright ? -width / 2 : 0, upright ? 0 : -width / 2, upright ? width / 2 : 0,
                          upright ? 0 : width / 2);
}

void StaffDraft::add(StaffSign sign) {
    const QRectF shape = scene.glyphs.box(sign.glyph);
    sign.box = shape.translated(sign.at);
    if (sign.turned)
        sign.box =
            QRectF(sign.at.x() + shape.left(), sign.at.y() - shape.bottom(), shape.width(), shape.height());
    sky.add(sign.box);
    system.signs.push_back(sign);
}

void StaffDraft::add(StaffWord word) {
    sky.add(word.box);
    system.words.push_back(std::move(word));
}

void StaffDraft::add(StaffStroke stroke) {
    sky.add(stroke.box());
    system.strokes.push_back(stroke);
}

void addColumns(StaffDraft& draft) {
    for (std::size_t event = draft.first; event < draft.end; ++event) {
        if (draft.event(event).isRest()) {
            StaffSign sign;
            sign.part = StaffPart::rest;
            sign.glyph = draft.column(event).sign;
            sign.event = event;
            sign.at = {restX(draft, event), 2};
            draft.add(sign);
        }
        addHeads(draft, event);
        addLedgerLines(draft, event);
        addDots(draft, event);
    }
}

} // namespace piolo::plots
