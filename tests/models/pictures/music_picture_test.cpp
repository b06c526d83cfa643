// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/pictures/music_picture.h"

#include "../../pictures/test_sheet.h"
#include "../../practice/book_fixture.h"
#include "files/whole_file.h"
#include "models/passages/passage_editor.h"

#include <doctest/doctest.h>

#include <QSignalSpy>
#include <QTest>
#include <QUrl>

#include <filesystem>

using namespace piolo;
using models::MusicPicture;
using models::PictureFrame;
using test::BookFixture;

namespace fs = std::filesystem;

namespace {

struct Shown {
    explicit Shown(BookFixture& from) : fixture(from) {
        piece = fixture.addPiece("Marsh Dances");
        passage = fixture.addPassage("the rising figure", piece);
        picture.setPassage(BookFixture::text(passage));
    }
    std::string file(const char* name, const std::string& bytes) const {
        test::write(fixture.path(name), bytes);
        return fixture.path(name);
    }
    /// Reads the file and waits until reading has finished.
    void read(const std::string& path) {
        picture.taking()->read(QString::fromStdString(path));
        settle();
    }
    void settle() {
        REQUIRE(QTest::qWaitFor([&] { return !picture.taking()->busy(); }, 60'000));
    }
    [[nodiscard]] std::optional<Picture> recorded(Id of) const {
        return fixture.book->notebook().passage(of)->picture;
    }
    [[nodiscard]] std::size_t kept() const {
        if (!fs::exists(fixture.path("folder/pictures"))) return 0;
        return static_cast<std::size_t>(
            std::distance(fs::directory_iterator(fixture.path("folder/pictures")), {}));
    }
    BookFixture& fixture;
    Id piece, passage;
    MusicPicture picture{*fixture.book};
};

const std::string png() { return test::encoded(test::sheet({600, 800}), "png"); }

} // namespace

TEST_CASE("a picture is taken in once, as it is, and shown whole at first") {
    BookFixture fixture;
    Shown shown(fixture);
    CHECK(shown.picture.isOpen());
    CHECK_FALSE(shown.picture.known());
    CHECK(shown.picture.url().isEmpty());
    shown.read(shown.file("page one.png", png()));
    CHECK(shown.picture.taking()->fault() == "");
    REQUIRE(shown.picture.known());
    CHECK(files::wholeFile(shown.picture.url().toLocalFile().toStdString()).value() == png());
    CHECK(*shown.recorded(shown.passage) == Picture{shown.recorded(shown.passage)->file});
    const auto facts = fixture.book->notebook().factCount();
    shown.read(
        QUrl::fromLocalFile(QString::fromStdString(fixture.path("page one.png"))).toString().toStdString());
    CHECK(fixture.book->notebook().factCount() == facts);
    CHECK(shown.kept() == 1);
}

TEST_CASE("the part that is kept is exactly the frame, and a new folder's reader finds it") {
    BookFixture fixture;
    Shown shown(fixture);
    shown.read(shown.file("page.jpg", test::encoded(test::sheet({600, 800}), "jpeg")));
    REQUIRE(shown.picture.known());
    PictureFrame& frame = *shown.picture.frame();
    frame.move(PictureFrame::Left, 617, 0);
    frame.move(PictureFrame::Bottom, 0, -7001);
    CHECK(shown.picture.width() == 1.0); // nothing is recorded until it is saved
    shown.picture.keepFrame();
    const Picture kept = *shown.recorded(shown.passage);
    CHECK(kept == Picture{kept.file, 617, 0, 9383, 2999});
    CHECK(kept.file.ends_with(".jpg"));
    CHECK(shown.picture.left() == 0.0617);
    CHECK(shown.picture.height() == 0.2999);
    const auto facts = fixture.book->notebook().factCount();
    shown.picture.keepFrame();
    CHECK(fixture.book->notebook().factCount() == facts);
    REQUIRE(fixture.book->flush(10'000));
    const auto read = journal::readFolder(fixture.path("folder"), BookFixture::device);
    CHECK(fold(read->facts).passage(shown.passage)->picture == kept);
}

TEST_CASE("a picture is removed from its passage, and its file stays for others") {
    BookFixture fixture;
    Shown shown(fixture);
    shown.read(shown.file("page.png", png()));
    shown.picture.remove();
    CHECK_FALSE(shown.picture.known());
    CHECK(shown.picture.url().isEmpty());
    CHECK_FALSE(shown.recorded(shown.passage));
    CHECK(shown.kept() == 1);
    shown.read(fixture.path("page.png"));
    CHECK(shown.picture.known());
}

TEST_CASE("a picture that was removed comes back with its frame while its passage is shown") {
    BookFixture fixture;
    Shown shown(fixture);
    CHECK_FALSE(shown.picture.removedNow());
    shown.picture.restore();
    CHECK_FALSE(shown.picture.known());
    shown.read(shown.file("page.png", png()));
    shown.picture.frame()->move(PictureFrame::Top, 0, 5000);
    shown.picture.keepFrame();
    const Picture before = *shown.recorded(shown.passage);
    shown.picture.remove();
    CHECK(shown.picture.removedNow());
    shown.picture.restore();
    CHECK(*shown.recorded(shown.passage) == before);
    CHECK_FALSE(shown.picture.removedNow());
    shown.picture.remove();
    shown.picture.setPassage("");
    shown.picture.setPassage(BookFixture::text(shown.passage));
    CHECK_FALSE(shown.picture.removedNow());
}

TEST_CASE("a PDF of one page is added at once, of several pages the chosen one") {
    BookFixture fixture;
    Shown shown(fixture);
    shown.read(shown.file("suite.pdf", test::pdf(3)));
    CHECK(shown.picture.taking()->pages() == 3);
    CHECK_FALSE(shown.picture.known());
    shown.picture.taking()->setPage(99);
    CHECK(shown.picture.taking()->page() == 3);
    shown.picture.taking()->setPage(2);
    shown.picture.taking()->takePage();
    CHECK(shown.picture.taking()->busy());
    shown.settle();
    REQUIRE(shown.picture.known());
    const std::string second = shown.recorded(shown.passage)->file;
    shown.read(shown.file("one.pdf", test::pdf(1)));
    CHECK(shown.picture.taking()->pages() == 0);
    CHECK(shown.recorded(shown.passage)->file != second);
    CHECK(shown.kept() == 2);
}

TEST_CASE("another passage of the piece is offered the page and has its own frame") {
    BookFixture fixture;
    Shown shown(fixture);
    shown.read(shown.file("page.png", png()));
    shown.picture.frame()->move(PictureFrame::Top, 0, 5000);
    shown.picture.keepFrame();
    const std::string page = shown.recorded(shown.passage)->file;
    const Id other = fixture.addPassage("the answer", shown.piece, 9);
    const Id stranger = fixture.addPassage("a scale");
    shown.picture.setPassage(BookFixture::text(stranger));
    CHECK(shown.picture.offers().isEmpty());
    shown.picture.takeOffered(QString::fromStdString(page));
    CHECK_FALSE(shown.recorded(stranger));
    shown.picture.setPassage(BookFixture::text(other));
    REQUIRE(shown.picture.offers().size() == 1);
    const QVariantMap offer = shown.picture.offers().front().toMap();
    CHECK(offer["text"] == "the page of “the rising figure”");
    shown.picture.takeOffered("../../elsewhere.png");
    CHECK_FALSE(shown.picture.known());
    shown.picture.takeOffered(offer["value"].toString());
    CHECK(*shown.recorded(other) == Picture{page});
    CHECK(shown.recorded(shown.passage)->top == 5000);
    CHECK(shown.kept() == 1);
}

TEST_CASE("a file that is refused is one line that names it, and takes nothing from the picture there is") {
    BookFixture fixture;
    Shown shown(fixture);
    shown.read(shown.file("page.png", png()));
    const Picture before = *shown.recorded(shown.passage);
    const std::string whole = png();
    for (const auto& [name, bytes] :
         {std::pair{"cut.png", whole.substr(0, whole.size() / 2)},
          std::pair{"text.png", std::string("notes")}, std::pair{"empty.pdf", std::string("%PDF-1.7\n")},
          std::pair{"none.jpg", std::string()}}) {
        CAPTURE(name);
        shown.read(shown.file(name, bytes));
        CHECK(shown.picture.taking()->fault().contains(QString::fromUtf8(name)));
        CHECK(shown.picture.taking()->fault().count('\n') == 0);
        CHECK(*shown.recorded(shown.passage) == before);
    }
    shown.read(fixture.path("nowhere.png"));
    CHECK(shown.picture.taking()->fault().startsWith("E301: "));
    CHECK(shown.kept() == 1);
}

TEST_CASE("an unwritable folder is one line, and the passage has no picture") {
    BookFixture fixture;
    Shown shown(fixture);
    test::write(fixture.path("folder/pictures"), "in the way");
    shown.read(shown.file("page.png", png()));
    CHECK(shown.picture.taking()->fault().startsWith("E303: "));
    CHECK_FALSE(shown.picture.known());
}

TEST_CASE(
    "a passage that is not recorded yet, and a folder that another window writes to, accept no picture") {
    BookFixture fixture;
    Shown shown(fixture);
    const std::string page = shown.file("page.png", png());
    shown.picture.setPassage("");
    CHECK_FALSE(shown.picture.isOpen());
    CHECK_FALSE(shown.picture.readOnly());
    auto second =
        practice::PracticeBook::open({fixture.path("folder"), BookFixture::device, fixture.path("state")});
    REQUIRE(second);
    REQUIRE((*second)->readOnly());
    MusicPicture picture(**second);
    picture.setPassage(BookFixture::text(shown.passage));
    CHECK_FALSE(picture.isOpen());
    CHECK(picture.readOnly()); // which is said instead of “once the passage is saved”
    picture.taking()->read(QString::fromStdString(page));
    CHECK_FALSE(picture.taking()->busy());
    CHECK(shown.kept() == 0);
}

TEST_CASE("a picture being added to one passage never ends up on another") {
    BookFixture fixture;
    Shown shown(fixture);
    const Id other = fixture.addPassage("the answer", shown.piece, 9);
    shown.picture.taking()->read(QString::fromStdString(shown.file("suite.pdf", test::pdf(1))));
    shown.picture.setPassage(BookFixture::text(other));
    shown.settle();
    CHECK_FALSE(shown.recorded(other));
    CHECK_FALSE(shown.recorded(shown.passage));
    CHECK(shown.picture.taking()->fault() == "");
}
