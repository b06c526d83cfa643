// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/staff/staff_item.h"

#include "plots/staff/staff_drawing.h"

#include <QPainter>

#include <algorithm>
#include <utility>

namespace piolo::models {

namespace {

/// Between two systems, in staff spaces.
constexpr double gap = 0.8;
/// A window without a size yet would ask for less.
constexpr double smallest = 2;

constexpr std::size_t all = static_cast<std::size_t>(Music::mostBars) + 2;
/// The system being played and those that the eye reads next.
constexpr std::size_t inSight = 3;
constexpr double mostUneven = 1.6;

double smaller(double space, double least) { return std::max(least, 0.94 * space); }

double heightOf(const plots::StaffLayout& layout, std::size_t first, std::size_t count) {
    double height = 0;
    for (std::size_t i = first; i < std::min(layout.systems.size(), first + count); ++i)
        height += plots::heightOf(layout, i) + gap * layout.space;
    return height;
}

double heightOf(const plots::StaffLayout& layout) { return heightOf(layout, 0, all); }

} // namespace

StaffItem::StaffItem(QQuickItem* parent) : QQuickPaintedItem(parent) {
    setAntialiasing(true);
    connect(this, &StaffItem::looksChanged, this, [this] { update(); });
    connect(this, &StaffItem::sizesChanged, this, &StaffItem::fit);
    connect(this, &StaffItem::placeChanged, this, &StaffItem::follow);
}

void StaffItem::setView(StaffView* view) {
    if (view == view_) return;
    if (view_ != nullptr) disconnect(view_, nullptr, this, nullptr);
    view_ = view;
    if (view_ != nullptr) connect(view_, &StaffView::changed, this, &StaffItem::fit);
    emit viewChanged();
    fit();
}

plots::StaffLayout StaffItem::laidOut(double space) const {
    return plots::layOutStaff(view_->music(), span_, space, plots::StaffGlyphs::usual());
}

/// The largest size at which that many systems fit; otherwise the smallest.
double StaffItem::layOut(double least, std::size_t systems) {
    double space = mostSpace_;
    layout_ = laidOut(space);
    while (heightOf(*layout_, 0, systems) > room_ && space > least)
        layout_ = laidOut(space = smaller(space, least));
    return space;
}

/// As large as all of it fits, or slightly smaller if its systems are then alike. If not all fits, as large
/// as some systems fit.
void StaffItem::fit() {
    layout_.reset();
    if (canDraw() && mostSpace_ >= smallest) {
        const double least = std::clamp(leastSpace_, smallest, mostSpace_);
        double space = layOut(least, all);
        if (heightOf(*layout_) > room_) space = layOut(least, inSight);
        const double enough = std::max(least, 0.72 * space);
        while (layout_->unevenness() > mostUneven && space > enough) {
            plots::StaffLayout tried = laidOut(space = smaller(space, enough));
            if (tried.unevenness() < layout_->unevenness()) layout_ = std::move(tried);
        }
    }
    const double wanted = layout_ ? std::min(room_, heightOf(*layout_)) : 0;
    if (wanted != wantedHeight_) {
        wantedHeight_ = wanted;
        emit wantedHeightChanged();
    }
    choose();
    emit shownChanged();
    update();
}

std::optional<std::size_t> StaffItem::present() const {
    if (!layout_ || bar_ < 0) return std::nullopt;
    const auto& bars = layout_->rhythm.bars;
    const auto found = std::find_if(bars.begin(), bars.end(),
                                    [this](const plots::StaffBar& bar) { return bar.number == bar_; });
    return found == bars.end() ? std::nullopt : std::optional(static_cast<std::size_t>(found - bars.begin()));
}

/// The eye reads ahead: if not all systems fit, the one being played comes first and the next below it.
void StaffItem::choose() {
    first_ = 0;
    count_ = 0;
    if (layout_) {
        const auto bar = present();
        if (bar && heightOf(*layout_) > room_) first_ = layout_->systemOf(*bar);
        while (first_ + count_ < layout_->systems.size() &&
               (count_ == 0 || heightOf(*layout_, first_, count_ + 1) <= room_))
            ++count_;
    }
}

/// Another bar or note: the layout stays, and usually the systems, too.
void StaffItem::follow() {
    const auto before = std::pair(first_, count_);
    choose();
    if (std::pair(first_, count_) != before) emit shownChanged();
    update();
}

void StaffItem::paint(QPainter* painter) {
    if (!layout_) return;
    plots::StaffStyle style = dark_ ? plots::darkStaffStyle() : plots::lightStaffStyle();
    style.paper = Qt::transparent;
    plots::StaffMarks marks;
    marks.bar = present();
    if (lit_ >= 0) marks.note = static_cast<std::size_t>(lit_);
    const double room = heightOf(*layout_, first_, count_);
    painter->translate(0, std::max(0.0, (height() - room) / 2));
    for (std::size_t i = first_; i < first_ + count_; ++i) {
        plots::drawStaffSystem(*painter, *layout_, i, plots::StaffGlyphs::usual(), style, marks);
        painter->translate(0, plots::heightOf(*layout_, i) + gap * layout_->space);
    }
}

} // namespace piolo::models
