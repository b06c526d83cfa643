// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/paper/paper_layout.h"

#include <algorithm>

namespace piolo::plots {

namespace {

constexpr double margin = 57; // 15 mm
constexpr double footer = 20;
constexpr double titleHeight = 44;
constexpr double lineHeight = 22;
constexpr double headingGap = 14;
constexpr double notesHeight = 84;
constexpr double blockGap = 20;
constexpr double columnGap = 24;
constexpr double tempoWidth = 78;
constexpr double circle = 22; // 6 mm: large enough to tick in pencil
constexpr double circlePitch = 27;
constexpr double linePitch = 30;
constexpr double rowPadding = 10;
constexpr double leastMisses = 84;
constexpr double cellGap = 12;
constexpr std::size_t rungsInOneColumn = 8;

/// How the rungs of one ladder are arranged on pages of that width.
struct Setting {
    std::size_t columns = 1;
    double columnWidth = 0;
    int circlesToLine = 1;
    double rowHeight = 0;
    double headingHeight = 0;
};

Setting settingOf(const PaperLadder& ladder, double width) {
    Setting made;
    const double half = (width - columnGap) / 2;
    const double narrow = tempoWidth + ladder.circles * circlePitch + cellGap + leastMisses;
    made.columns = ladder.rungs.size() > rungsInOneColumn && narrow <= half ? 2 : 1;
    made.columnWidth = made.columns == 2 ? half : width;
    const double room = made.columnWidth - tempoWidth - cellGap - leastMisses;
    made.circlesToLine = std::max(1, static_cast<int>(room / circlePitch));
    const int lines = (ladder.circles + made.circlesToLine - 1) / made.circlesToLine;
    // The instructions for filling in the sheet go below the passage's own lines.
    made.headingHeight =
        titleHeight + (static_cast<double>(ladder.lines.size()) + 1) * lineHeight + headingGap;
    made.rowHeight = std::max(1, lines) * linePitch + rowPadding;
    return made;
}

std::size_t rowsFor(std::size_t rungs, std::size_t columns) { return (rungs + columns - 1) / columns; }

PaperRow rowOf(std::size_t rung, const QRectF& box, int circles, const Setting& setting) {
    PaperRow row{rung, box, {box.left(), box.top(), tempoWidth - cellGap, box.height()}, {}, {}};
    const double left = box.left() + tempoWidth;
    const double top = box.top() + rowPadding / 2 + (linePitch - circle) / 2;
    for (int place = 0; place < circles; ++place)
        row.circles.emplace_back(left + place % setting.circlesToLine * circlePitch,
                                 top + place / setting.circlesToLine * linePitch, circle, circle);
    const double used = std::min(circles, setting.circlesToLine) * circlePitch;
    row.misses = QRectF(QPointF(left + used + cellGap, box.top() + rowPadding / 2 + 1),
                        QPointF(box.right(), box.bottom() - rowPadding / 2 - 1));
    return row;
}

/// Puts ladders on pages from the top down.
class Press {
public:
    explicit Press(PaperSize paper) {
        made_.size = pixelsOf(paper);
        made_.content = QRectF({0, 0}, QSizeF(made_.size)).adjusted(margin, margin, -margin, -margin);
        made_.content.setBottom(made_.content.bottom() - footer);
    }
    void set(std::size_t place, const PaperLadder& ladder) {
        const Setting setting = settingOf(ladder, made_.content.width());
        const std::size_t all = ladder.rungs.size();
        if (heightOf(rowsFor(all, setting.columns), setting) > room()) turnPage();
        for (std::size_t first = 0; first < all;) {
            if (first > 0) turnPage();
            const double free = room() - setting.headingHeight - notesHeight;
            const auto most = std::max<std::size_t>(1, static_cast<std::size_t>(free / setting.rowHeight));
            const std::size_t here = std::min(all - first, most * setting.columns);
            made_.pages.back().blocks.push_back(blockOf(place, ladder, first, here, setting));
            first += here;
        }
    }
    [[nodiscard]] PaperLayout layout() && { return std::move(made_); }

private:
    static double heightOf(std::size_t rows, const Setting& setting) {
        return setting.headingHeight + static_cast<double>(rows) * setting.rowHeight + notesHeight;
    }
    [[nodiscard]] double room() const { return made_.pages.empty() ? 0 : made_.content.bottom() - top_; }
    void turnPage() {
        // A page that is still empty will do.
        if (!made_.pages.empty() && made_.pages.back().blocks.empty()) return;
        made_.pages.emplace_back();
        top_ = made_.content.top();
    }
    PaperBlock blockOf(std::size_t place, const PaperLadder& ladder, std::size_t first, std::size_t count,
                       const Setting& setting) {
        PaperBlock block{place, first > 0, {}, {}, {}, {}};
        const double left = made_.content.left();
        block.heading = QRectF(left, top_, made_.content.width(), setting.headingHeight);
        const std::size_t rows = rowsFor(count, setting.columns);
        const double height = static_cast<double>(rows) * setting.rowHeight;
        for (std::size_t column = 0; column * rows < count; ++column)
            block.columns.emplace_back(left + static_cast<double>(column) * (setting.columnWidth + columnGap),
                                       block.heading.bottom(), setting.columnWidth, height);
        for (std::size_t index = 0; index < count; ++index) {
            const QRectF& column = block.columns[index / rows];
            const double bottom = column.bottom() - static_cast<double>(index % rows) * setting.rowHeight;
            const QRectF box(column.left(), bottom - setting.rowHeight, column.width(), setting.rowHeight);
            block.rows.push_back(rowOf(first + index, box, ladder.circles, setting));
        }
        block.notes = QRectF(left, block.heading.bottom() + height, made_.content.width(), notesHeight);
        top_ = block.notes.bottom() + blockGap;
        return block;
    }

    PaperLayout made_;
    double top_ = 0;
};

} // namespace

QSize pixelsOf(PaperSize paper) { return paper == PaperSize::a4 ? QSize(794, 1123) : QSize(816, 1056); }

PaperLayout layOutPaper(std::span<const PaperLadder> ladders, PaperSize paper) {
    Press press(paper);
    for (std::size_t place = 0; place < ladders.size(); ++place) press.set(place, ladders[place]);
    return std::move(press).layout();
}

} // namespace piolo::plots
