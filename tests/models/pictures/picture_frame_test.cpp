// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/pictures/picture_frame.h"

#include <doctest/doctest.h>

#include <QSignalSpy>

#include <random>

using namespace piolo;
using models::PictureFrame;

namespace {

const std::string name = "0123456789abcdef0123456789abcdef.png";

Picture part(int left, int top, int width, int height) { return {name, left, top, width, height}; }

} // namespace

TEST_CASE("an edge moves by exactly the given amount, the others stay") {
    PictureFrame frame;
    frame.show(part(1000, 2000, 6000, 3000));
    frame.move(PictureFrame::Left, 50, 999);
    CHECK(frame.cropped(part(0, 0, 1, 1)) == part(1050, 2000, 5950, 3000));
    frame.move(PictureFrame::Bottom, 999, -7);
    CHECK(frame.cropped(part(0, 0, 1, 1)) == part(1050, 2000, 5950, 2993));
    frame.move(PictureFrame::Right | PictureFrame::Top, 13, -11);
    CHECK(frame.cropped(part(0, 0, 1, 1)) == part(1050, 1989, 5963, 3004));
    CHECK(frame.moved());
}

TEST_CASE("the whole frame moves without changing its size, up to the end of the page") {
    PictureFrame frame;
    frame.show(part(1000, 2000, 6000, 3000));
    frame.move(PictureFrame::All, -5000, 5000);
    CHECK(frame.cropped(part(0, 0, 1, 1)) == part(0, 7000 - 5000 + 5000, 6000, 3000));
    CHECK(frame.left() == 0);
    CHECK(frame.bottom() == 10'000);
}

TEST_CASE("a drag counts from where it began, so that it comes back to where it was") {
    PictureFrame frame;
    frame.show(part(1000, 2000, 6000, 3000));
    frame.hold();
    frame.dragTo(PictureFrame::All, 9000, 9000);
    frame.dragTo(PictureFrame::All, 0, 0);
    CHECK_FALSE(frame.moved());
    frame.dragTo(PictureFrame::Right, -9000, 0);
    CHECK(frame.right() == 1000 + PictureFrame::least);
    frame.dragTo(PictureFrame::Right, 100, 0);
    CHECK(frame.right() == 7100);
}

TEST_CASE("however it is moved, the frame stays on the page, is never too small, and can be recorded") {
    std::mt19937 random(20260302);
    PictureFrame frame;
    frame.show(part(4000, 4000, 30, 20)); // smaller than the smallest frame here
    for (int turn = 0; turn < 20'000; ++turn) {
        const int edges = static_cast<int>(random() % 18);
        const int across = static_cast<int>(random() % 30'001) - 15'000;
        const int down = turn % 100 == 0 ? (turn % 200 == 0 ? 2'147'483'647 : -2'147'483'647 - 1)
                                         : static_cast<int>(random() % 4001) - 2000;
        if (turn % 7 == 0) frame.hold();
        if (turn % 2 == 0)
            frame.move(edges, across, down);
        else
            frame.dragTo(edges, across, down);
        REQUIRE(isPicture(frame.cropped(part(0, 0, 1, 1))));
    }
    CHECK(frame.right() - frame.left() >= PictureFrame::least);
    CHECK(frame.bottom() - frame.top() >= PictureFrame::least);
}

TEST_CASE("a moved frame is reported, and only then") {
    PictureFrame frame;
    frame.show(part(1000, 2000, 6000, 3000));
    const QSignalSpy changed(&frame, &PictureFrame::changed);
    frame.move(PictureFrame::Left, 0, 5);
    CHECK(changed.count() == 0);
    frame.widen();
    CHECK(changed.count() == 1);
    CHECK(frame.cropped(part(0, 0, 1, 1)) == part(0, 0, 10'000, 10'000));
    frame.revert();
    CHECK_FALSE(frame.moved());
    CHECK(frame.sentence() == "10.0 to 70.0% across, 20.0 to 50.0% down");
}
