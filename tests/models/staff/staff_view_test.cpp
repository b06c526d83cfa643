// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/staff/staff_view.h"

#include "models/staff/staff_item.h"

#include <QImage>
#include <QPainter>
#include <QSignalSpy>

#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::models;

namespace {

constexpr int firstBar = 41;

/// Eighths in 4/4 from bar 41 on, with a quarter before them.
StaffMusic eighths(int bars) {
    StaffMusic music;
    music.fifths = -2;
    music.music.bars = bars;
    music.music.firstBar = firstBar;
    music.music.pickup = {1, 4};
    for (int i = 0; i < 8 * bars + 2; ++i) {
        Note note;
        note.written = {"CDEFGA"[i % 6], 0, 5};
        note.onset = Fraction{i, 8}.reduced();
        note.length = {1, 8};
        music.notes.push_back(note);
    }
    music.notes[1].written = {'B', -1, 3};
    return music;
}

QImage drawn(StaffItem& item) {
    QImage image(QSizeF(item.width(), item.height()).toSize(), QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    item.paint(&painter);
    return image;
}

struct Shown {
    explicit Shown(int bars, double room = 2000) {
        view.show(eighths(bars));
        item.setView(&view);
        item.setProperty("span", 700.0);
        item.setProperty("room", room);
        item.setSize({700, 400});
    }
    StaffView view;
    StaffItem item;
};

} // namespace

TEST_CASE("the words of a staff say its bars, notes, range, signature and clef") {
    StaffView view;
    CHECK(view.words() == "");
    view.show(eighths(2));
    CHECK(view.words() == "Staff: bars 41–42, 18 notes from B flat 3 to A 5, 2 flats, treble clef");
}

TEST_CASE("every accidental that a note can have is said") {
    StaffView view;
    StaffMusic music = eighths(1);
    music.notes.resize(1);
    for (const auto& [alter, words] : {std::pair{-3, "B flat double flat 3"},
                                       {-2, "B double flat 3"},
                                       {-1, "B flat 3"},
                                       {0, "B 3"},
                                       {1, "B sharp 3"},
                                       {2, "B double sharp 3"},
                                       {3, "B sharp double sharp 3"}}) {
        music.notes[0].written = {'B', static_cast<std::int8_t>(alter), 3};
        view.show(music);
        CHECK(view.words().contains(QStringLiteral(" from %1 to ").arg(QLatin1String(words))));
    }
}

TEST_CASE("music without notes counts as unknown, and showing the same music again is not a change") {
    StaffView view;
    QSignalSpy changed(&view, &StaffView::changed);
    view.show(StaffMusic{});
    CHECK_FALSE(view.known());
    CHECK(changed.isEmpty());
    view.show(eighths(2));
    view.show(eighths(2));
    CHECK(view.known());
    CHECK(changed.size() == 1);
}

TEST_CASE("the note at a pulse is the one that sounds there, even in the pick-up") {
    StaffView view;
    StaffMusic music = eighths(2);
    music.notes.erase(music.notes.begin() + 4); // silence on the second beat of bar 41
    view.show(music);
    // The pick-up is the last beat of the bar before.
    CHECK(view.noteAt(firstBar - 1, 3, 0, 2) == 0);
    CHECK(view.noteAt(firstBar - 1, 3, 1, 2) == 1);
    CHECK(view.noteAt(firstBar - 1, 2, 0, 2) == -1);
    CHECK(view.noteAt(firstBar, 0, 0, 2) == 2);
    CHECK(view.noteAt(firstBar, 0, 3, 4) == 3);
    CHECK(view.noteAt(firstBar, 1, 0, 2) == -1);
    CHECK(view.noteAt(firstBar, 1, 1, 2) == 4);
    CHECK(view.noteAt(-1, 0, 0, 1) == -1);
    CHECK(view.noteAt(firstBar + 2, 0, 0, 1) == -1);
}

TEST_CASE("a staff is as large as its space allows for all of it, between the two sizes") {
    Shown roomy(8);
    CHECK(roomy.item.space() <= 14);
    CHECK(roomy.item.space() > 10); // a little smaller if that makes the systems alike
    CHECK(roomy.item.shown() == roomy.item.systems());
    const double wanted = roomy.item.wantedHeight();
    Shown less(8, wanted * 0.7);
    CHECK(less.item.space() < 14);
    CHECK(less.item.space() >= 8);
    CHECK(less.item.shown() == less.item.systems());
    CHECK(less.item.wantedHeight() <= wanted * 0.7);
}

TEST_CASE("where there is no room for all, the system being played comes first") {
    Shown small(24, 340);
    CHECK(small.item.space() >= 8);
    CHECK(small.item.shown() >= 3);
    REQUIRE(small.item.shown() < small.item.systems());
    CHECK(small.item.firstShown() == 0);
    small.item.setProperty("bar", firstBar + 23);
    CHECK(small.item.firstShown() == small.item.systems() - 1);
    small.item.setProperty("bar", firstBar);
    CHECK(small.item.firstShown() == 0);
    CHECK(small.item.shown() >= 1);
}

TEST_CASE("the bar that is played and the note that sounds are marked, in both themes") {
    for (const bool dark : {false, true}) {
        Shown one(2);
        one.item.setProperty("dark", dark);
        const QImage plain = drawn(one.item);
        one.item.setProperty("bar", firstBar);
        const QImage first = drawn(one.item);
        one.item.setProperty("bar", firstBar + 1);
        const QImage second = drawn(one.item);
        one.item.setProperty("lit", 5);
        CHECK(plain != first);
        CHECK(first != second);
        CHECK(second != drawn(one.item));
    }
}

TEST_CASE("a window without a size yet draws nothing and does not wait forever") {
    Shown none(2, 0);
    none.item.setProperty("leastSpace", 0.0);
    CHECK(none.item.space() == doctest::Approx(2));
    none.item.setProperty("mostSpace", 0.0);
    CHECK(none.item.systems() == 0);
}

TEST_CASE("a staff without its music draws nothing") {
    Shown one(2);
    one.view.show(std::nullopt);
    CHECK(one.item.systems() == 0);
    CHECK(one.item.wantedHeight() == 0);
    QImage empty = drawn(one.item);
    QImage blank(empty.size(), empty.format());
    blank.fill(Qt::transparent);
    CHECK(empty == blank);
}
