// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/log/practice_book.h"

#include "../book_fixture.h"

#include <QCoreApplication>
#include <QEventLoop>

#include <atomic>
#include <cerrno>

using namespace piolo;
using namespace piolo::practice;
using piolo::test::BookFixture;

namespace {

/// A disk that opens no file until it is allowed to.
class ShutDisk final : public journal::AppendOpener {
public:
    int stayIn(const std::string& folder) override { return disk_->stayIn(folder); }
    std::unique_ptr<journal::AppendFile> open(const std::string& path) override {
        if (isOpen) return disk_->open(path);
        errno = ENOSPC;
        return nullptr;
    }
    std::atomic<bool> isOpen{false};

private:
    std::shared_ptr<journal::AppendOpener> disk_ = journal::posixOpener();
};

template <typename Condition>
void waitUntil(Condition condition) {
    while (!condition()) QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
}

RunFact aRun(Id passage) {
    return {passage, Tempo::bpm(60), Mark::clean, Reason::none, RunKind::run, 8'000, {}};
}

} // namespace

TEST_CASE("unsaved marks are counted and reported, and are saved once the disk has room") {
    BookFixture fixture;
    const Id passage = fixture.addPassage("Letter C");
    REQUIRE(fixture.book->flush(60'000));
    fixture.book.reset();
    journal::JournalPorts ports;
    const auto disk = std::make_shared<ShutDisk>();
    ports.opener = disk;
    ports.pauses = {1, 5, 10};
    auto book = fixture.anotherBook(ports);
    book->record(aRun(passage));
    book->record(aRun(passage));
    CHECK(book->unsavedCount() == 2);
    // Folding does not wait for the disk.
    CHECK(book->notebook().passage(passage)->standing.streak == 2);
    waitUntil([&] { return book->trouble().has_value(); });
    CHECK(book->trouble()->number == FaultNumber::diskFull);
    CHECK(book->unsavedCount() == 2);
    disk->isOpen = true;
    waitUntil([&] { return book->unsavedCount() == 0; });
    CHECK_FALSE(book->trouble().has_value());
    book.reset();
    CHECK(fixture.anotherBook()->notebook().passage(passage)->standing.streak == 2);
}
