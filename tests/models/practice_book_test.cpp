// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/practice_book.h"

#include "book_fixture.h"
#include "models/practice_room.h"
#include "virtual_sound.h"

#include <QCoreApplication>
#include <QEventLoop>

#include <atomic>
#include <cerrno>

using namespace piolo;
using namespace piolo::models;
using piolo::test::BookFixture;

namespace {

/// A disk that opens no file until it is told to.
class ShutDisk final : public journal::AppendOpener {
public:
    std::unique_ptr<journal::AppendFile> open(const std::string& path) override {
        if (isOpen) return disk_->open(path);
        errno = ENOSPC;
        return nullptr;
    }
    std::atomic<bool> isOpen{false};

private:
    std::shared_ptr<journal::AppendOpener> disk_ = journal::posixOpener();
};

std::unique_ptr<PracticeBook> bookOn(const BookFixture& fixture, journal::JournalPorts ports) {
    ports.clock = fixture.clock;
    auto opened =
        PracticeBook::open({fixture.path("folder"), BookFixture::device, fixture.path("state")}, ports);
    REQUIRE(opened);
    return std::move(opened).value();
}

template <typename Condition>
void waitUntil(Condition condition) {
    while (!condition()) QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
}

RunFact aRun(Id passage) {
    return {passage, Tempo::bpm(60), Mark::clean, Reason::none, RunKind::run, 8'000, {}};
}

} // namespace

TEST_CASE("marks that are not on disk are counted and told as such, and are saved when the disk has room") {
    BookFixture fixture;
    const Id passage = fixture.addPassage("Letter C");
    REQUIRE(fixture.book->flush(60'000));
    fixture.book.reset();
    journal::JournalPorts ports;
    const auto disk = std::make_shared<ShutDisk>();
    ports.opener = disk;
    ports.pauses = {1, 5, 10};
    auto book = bookOn(fixture, ports);
    book->record(aRun(passage));
    book->record(aRun(passage));
    CHECK(book->unsavedCount() == 2);
    // The fold does not wait for the disk.
    CHECK(book->notebook().passage(passage)->standing.streak == 2);
    waitUntil([&] { return book->trouble().has_value(); });
    CHECK(book->trouble()->number == FaultNumber::diskFull);
    CHECK(book->unsavedCount() == 2);
    disk->isOpen = true;
    waitUntil([&] { return book->unsavedCount() == 0; });
    CHECK_FALSE(book->trouble().has_value());
    book.reset();
    CHECK(bookOn(fixture, {})->notebook().passage(passage)->standing.streak == 2);
}

TEST_CASE("a second window on one folder says so in one line, shows what is there and records nothing") {
    BookFixture fixture;
    const Id passage = fixture.addPassage("Letter C");
    REQUIRE(fixture.book->flush(60'000));
    const auto engine = std::make_shared<engine::DrillEngine>();
    test::VirtualSound sound{engine};
    PracticeRoom room(bookOn(fixture, {}), sound, engine, {}, fixture.path("config"),
                      DrillSession::Reading::byHand);
    CHECK(room.readOnly());
    CHECK(
        room.notice().startsWith("Another window writes to this practice folder: nothing is recorded here;"));
    CHECK(room.passages()->count() == 1);
    const auto before = fixture.book->notebook().factCount();
    room.book().record(aRun(passage));
    room.passages()->remove(BookFixture::text(passage));
    CHECK(room.unsaved() == 0);
    fixture.book.reset();
    CHECK(bookOn(fixture, {})->notebook().factCount() == before);
}
