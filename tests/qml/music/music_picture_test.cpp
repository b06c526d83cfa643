// SPDX-License-Identifier: GPL-3.0-or-later
// The picture of the music by mouse and keys: added, framed, shown during the drill, and missing.
#include "../../pictures/test_sheet.h"
#include "../accessible_walk.h"
#include "../screen_shots.h"
#include "models/pictures/music_picture.h"

#include <doctest/doctest.h>

#include <QJSValue>
#include <QRegularExpression>
#include <QTest>

#include <filesystem>

using namespace piolo;
using models::MusicPicture;
using piolo::test::ScreenFixture;

namespace {

struct Pictured {
    explicit Pictured(const QSize& page = {1240, 1754}) {
        REQUIRE(scratch.isValid());
        test::write(file(), test::encoded(test::sheet(page, 10), "png"));
        fixture.room().setScreen("passages");
        fixture.room().editor()->load(QString::fromStdString(fixture.passage().text()));
        fixture.play(0.1);
    }
    ~Pictured() {
        // Qt warns at each place where a missing page was needed.
        const QStringList others = fileGone
                                       ? fixture.warnings().filter(QRegularExpression("^(?!.*Cannot open)"))
                                       : fixture.warnings();
        CHECK(others.join("\n").toStdString() == "");
    }
    [[nodiscard]] std::string file() const { return scratch.filePath("page.png").toStdString(); }
    [[nodiscard]] std::optional<Picture> recorded() {
        return fixture.room().book().notebook().passage(fixture.passage())->picture;
    }
    [[nodiscard]] MusicPicture& form() { return *fixture.room().formPicture(); }
    template <typename Condition>
    void waitFor(Condition condition) {
        REQUIRE(QTest::qWaitFor(condition, 20'000));
        fixture.play(0.05);
    }
    QQuickItem& item(const char* name) {
        QQuickItem* found = fixture.find(QString::fromLatin1(name));
        CAPTURE(std::string(name));
        REQUIRE(found != nullptr);
        return *found;
    }
    void press(const char* name, Qt::Key key = Qt::Key_Space) {
        fixture.press(QString::fromLatin1(name), key);
    }
    void openPicture() {
        if (fixture.find("pictureOpen") == nullptr) press("edit");
        press("pictureOpen");
    }
    void key(int key, Qt::KeyboardModifiers with = {}) {
        QTest::keyClick(&fixture.window(), static_cast<Qt::Key>(key), with);
        fixture.play(0.02);
    }
    /// Adds the picture without the form, cropped to that part.
    void take(const Picture& part) {
        form().taking()->read(QString::fromStdString(file()));
        waitFor([&] { return form().known(); });
        Picture cropped = part;
        cropped.file = recorded()->file;
        fixture.room().book().record(PictureFact{fixture.passage(), cropped});
    }
    void openDrill() {
        fixture.room().openDrill(QString::fromStdString(fixture.passage().text()));
        fixture.play(0.1);
    }
    /// The Image of the page in that part of the window.
    QQuickItem* page(QQuickItem& inside) {
        for (QQuickItem* child : inside.childItems()) {
            if (child->objectName() == "page") return child;
            if (QQuickItem* found = page(*child)) return found;
        }
        return nullptr;
    }
    bool isReady(const char* place) {
        QQuickItem* found = fixture.find(QString::fromLatin1(place));
        QQuickItem* image = found == nullptr ? nullptr : page(*found);
        return image != nullptr && image->property("status").toInt() == 1;
    }
    void shoot(const QString& name) {
        test::shootAll(fixture, name, [] { QTest::qWait(300); }); // the page is read again for another size
    }
    QTemporaryDir scratch;
    ScreenFixture fixture;
    bool fileGone = false;
};

constexpr Picture twoStaves{{}, 400, 2200, 9200, 2000};

QStringList textsShown(const ScreenFixture& fixture) {
    QStringList texts;
    for (QQuickItem* item : fixture.shown())
        if (item->inherits("QQuickText")) texts << item->property("text").toString();
    return texts;
}

} // namespace

TEST_CASE("by keys alone a picture is added, framed, kept, removed and had back") {
    Pictured screen;
    screen.openPicture();
    for (const char letter : screen.file()) QTest::keyClick(&screen.fixture.window(), letter);
    screen.key(Qt::Key_Return);
    screen.waitFor([&] { return screen.form().known(); });
    screen.waitFor([&] { return screen.isReady("pictureCrop"); });
    CHECK(screen.item("pictureCrop").hasActiveFocus());
    screen.key(Qt::Key_Space); // the top edge
    for (int press = 0; press < 4; ++press) screen.key(Qt::Key_Down, Qt::ShiftModifier);
    screen.key(Qt::Key_Up);
    screen.key(Qt::Key_Space, Qt::ShiftModifier); // the whole frame again
    screen.key(Qt::Key_Down);                     // it is at the end of the page already
    CHECK(*screen.recorded() == Picture{screen.recorded()->file});
    screen.press("pictureKeep");
    CHECK(*screen.recorded() == Picture{screen.recorded()->file, 0, 975, 10'000, 9025});
    screen.openPicture();
    screen.press("pictureRemove");
    CHECK_FALSE(screen.recorded());
    screen.press("pictureRestore");
    CHECK(screen.recorded()->top == 975);
    screen.key(Qt::Key_Escape);
    CHECK(screen.fixture.find("pictureCrop") == nullptr);
    CHECK(screen.recorded()->top == 975);
}

TEST_CASE("an edge, a corner and the frame are dragged by mouse, and restored on request") {
    Pictured screen({1754, 900});
    screen.take(Picture{{}, 2000, 2000, 6000, 6000});
    screen.openPicture();
    screen.waitFor([&] { return screen.isReady("pictureCrop"); });
    QQuickItem& paper = *screen.page(screen.item("pictureCrop"));
    const auto at = [&](double x, double y) {
        return paper.mapToScene({x * paper.width(), y * paper.height()}).toPoint();
    };
    const auto drag = [&](QPoint from, QPoint to) {
        QTest::mousePress(&screen.fixture.window(), Qt::LeftButton, {}, from);
        QTest::mouseMove(&screen.fixture.window(), (from + to) / 2);
        QTest::mouseMove(&screen.fixture.window(), to);
        QTest::mouseRelease(&screen.fixture.window(), Qt::LeftButton, {}, to);
        screen.fixture.play(0.02);
    };
    const models::PictureFrame& frame = *screen.form().frame();
    const int pixel = static_cast<int>(10'000 / paper.width()) + 1;
    drag(at(0.2, 0.5), at(0.1, 0.7));
    CHECK(std::abs(frame.left() - 1000) <= pixel);
    CHECK(frame.top() == 2000);
    drag(at(0.8, 0.8), at(0.9, 0.6));
    CHECK(std::abs(frame.right() - 9000) <= pixel);
    CHECK(std::abs(frame.bottom() - 6000) <= pixel);
    const int width = frame.right() - frame.left();
    drag(at(0.5, 0.4), at(0.45, 0.5));
    CHECK(std::abs(frame.left() - 500) <= 2 * pixel);
    CHECK(frame.right() - frame.left() == width);
    drag(at(0.99, 0.99), at(0.5, 0.5)); // outside the frame
    CHECK(frame.right() - frame.left() == width);
    screen.shoot("picture-crop");
    screen.press("pictureLeave");
    CHECK(screen.recorded()->left == 2000);
    CHECK_FALSE(frame.moved());
}

TEST_CASE("the drill shows the part that was kept, its shape as on the page, before the start and while the "
          "click runs") {
    Pictured screen;
    screen.take(twoStaves);
    screen.openDrill();
    screen.waitFor([&] { return screen.isReady("musicReady"); });
    const auto check = [&](const char* name) {
        QQuickItem& page = *screen.page(screen.item(name));
        const QQuickItem& paper = *page.parentItem();
        CHECK(std::abs(paper.width() / paper.height() - 1240 * 0.92 / (1754 * 0.2)) < 0.01);
        CHECK(std::abs(page.x() + 0.04 * page.width()) < 0.5);
        CHECK(std::abs(page.y() + 0.22 * page.height()) < 0.5);
        CHECK(std::abs(page.width() - paper.width() / 0.92) < 0.5);
    };
    check("musicReady");
    CHECK(screen.item("musicReady").width() > screen.fixture.window().width() * 0.6);
    screen.shoot("picture-drill");
    screen.fixture.tap(Qt::Key_Space);
    screen.fixture.play(6);
    check("musicPlaying");
    const QQuickItem& place = screen.item("musicPlaying");
    CHECK(place.width() > screen.fixture.window().width() * 0.6);
    CHECK(std::abs(screen.page(screen.item("musicPlaying"))->parentItem()->width() - place.width()) <= 1);
    screen.shoot("picture-playing");
    screen.fixture.tap(Qt::Key_Space); // a miss: its text is there, too
    screen.fixture.play(0.3);
    screen.shoot("picture-missed");
}

TEST_CASE("with the music, nothing is smaller than a twenty-fifth of the window, and nothing overlaps") {
    Pictured screen;
    screen.take(twoStaves);
    screen.openDrill();
    screen.waitFor([&] { return screen.isReady("musicReady"); });
    screen.fixture.tap(Qt::Key_Space);
    for (const QSize size : {QSize(1280, 800), QSize(1024, 640), QSize(1920, 1080)}) {
        screen.fixture.resize(size.width(), size.height());
        screen.fixture.play(7);
        const QRectF music = screen.item("musicPlaying")
                                 .mapRectToScene(QRectF(0, 0, screen.item("musicPlaying").width(),
                                                        screen.item("musicPlaying").height()));
        int texts = 0;
        for (QQuickItem* item : screen.fixture.shown()) {
            if (!item->inherits("QQuickText") || item->property("text").toString().isEmpty()) continue;
            const QRectF place = item->mapRectToScene(QRectF(0, 0, item->width(), item->height()));
            CAPTURE(item->property("text").toString().toStdString());
            CAPTURE(size.width());
            CHECK(!place.intersects(music));
            if (!QRectF(QPointF(), QSizeF(size)).intersects(place)) continue;
            const int pixels = item->property("fontInfo").value<QJSValue>().property("pixelSize").toInt();
            CHECK(pixels >= size.height() / 25 - 1);
            ++texts;
        }
        CHECK(texts > 4);
    }
}

TEST_CASE("the page is decoded before the click starts, and not again for it") {
    Pictured screen;
    screen.take(twoStaves);
    screen.openDrill();
    screen.waitFor([&] { return screen.isReady("musicReady"); });
    QQuickItem* before = screen.page(screen.item("musicReady"));
    const QVariant size = before->property("sourceSize");
    screen.fixture.tap(Qt::Key_Space);
    // No events are processed in between: a page that had to be read would not be there yet.
    QQuickItem* during = screen.page(screen.item("musicPlaying"));
    CHECK(during->property("status").toInt() == 1);
    CHECK(during->property("sourceSize") == size);
    CHECK(during->property("asynchronous").toBool());
    CHECK(during->property("source") == before->property("source"));
    screen.fixture.play(6);
    CHECK(before->property("sourceSize") == size);
    CHECK(during->property("status").toInt() == 1);
}

TEST_CASE("a picture whose file is gone is one quiet line, and the drill goes on") {
    Pictured screen;
    screen.take(twoStaves);
    screen.fileGone = true;
    // A file that never existed: one that was removed may have been read a moment before.
    const Picture gone{"00000000000000000000000000000000.png"};
    screen.fixture.room().book().record(PictureFact{screen.fixture.passage(), gone});
    screen.fixture.room().editor()->startNew();
    screen.openDrill();
    QQuickItem* part = &screen.item("musicReady");
    screen.waitFor([&] { return part->property("missing").toBool(); });
    CHECK(textsShown(screen.fixture)
              .contains("The picture of the music in the practice folder cannot be read."));
    screen.fixture.tap(Qt::Key_Space);
    screen.fixture.play(6);
    CHECK(screen.fixture.room().drill()->state() == models::DrillModel::State::Playing);
    CHECK(screen.fixture.find("musicPlaying") == nullptr);
    screen.fixture.tap(Qt::Key_Escape);
    screen.fixture.play(0.5);
    screen.shoot("picture-missing");
}

TEST_CASE("every control around the picture has a name, and a refused file is reported where it was typed") {
    Pictured screen;
    test::write(screen.scratch.filePath("notes.txt").toStdString(), "no picture");
    screen.openPicture();
    screen.form().taking()->read(screen.scratch.filePath("notes.txt"));
    screen.waitFor([&] { return !screen.form().taking()->busy(); });
    CHECK(textsShown(screen.fixture).join('\n').contains("this is not a PNG, JPEG or PDF"));
    CHECK(test::walkAccessibly(screen.fixture.window()).nameless.join("\n").toStdString() == "");
    screen.shoot("picture-refused");
    test::write(screen.scratch.filePath("suite.pdf").toStdString(), test::pdf(4));
    screen.form().taking()->read(screen.scratch.filePath("suite.pdf"));
    screen.waitFor([&] { return screen.form().taking()->pages() == 4; });
    CHECK(test::walkAccessibly(screen.fixture.window()).nameless.join("\n").toStdString() == "");
    screen.shoot("picture-pages");
    screen.press("picture-take-page");
    screen.waitFor([&] { return screen.form().known(); });
    screen.waitFor([&] { return screen.isReady("pictureCrop"); });
    CHECK(test::walkAccessibly(screen.fixture.window()).nameless.join("\n").toStdString() == "");
}
