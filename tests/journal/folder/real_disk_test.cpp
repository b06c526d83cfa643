// SPDX-License-Identifier: GPL-3.0-or-later
// The writer with real system failures, in addition to the simulated ones: a file that may not grow, a full
// disk, a folder that is read-only or gone. Each time, the failure is reported, and the facts are kept and
// saved as soon as possible.
#include "../../files/scratch_folder.h"
#include "journal/folder/journal.h"

#include <algorithm>
#include <condition_variable>
#include <csignal>
#include <doctest/doctest.h>
#include <mutex>
#include <sys/fsuid.h>
#include <sys/mount.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

using namespace piolo;
using namespace piolo::journal;
using piolo::test::contentOf;
using piolo::test::put;
using piolo::test::ScratchFolder;

namespace {

const std::string own(32, 'a');
constexpr int longEnough = 60'000;
constexpr uid_t nobody = 65'534;

FactBody aRun() { return RunFact{{0, 1}, Tempo::bpm(80), Mark::clean, Reason::none, RunKind::run, 4000, {}}; }

/// A journal that writes to the real disk and retries quickly.
class RealFolder {
public:
    explicit RealFolder(std::string folder) : folder_(std::move(folder)) {
        ::chmod(scratch_.path().c_str(), 0777);
    }
    RealFolder() : RealFolder("") { folder_ = scratch_ / "practice"; }

    void open() {
        JournalHearer hearer{[this](Id id) { hear(id); }, [this](const Fault& fault) { hear(fault); }};
        JournalPorts ports;
        ports.pauses = {1, 5, 10};
        auto opened = Journal::open({folder_, own, scratch_ / "state"}, std::move(hearer), std::move(ports));
        REQUIRE(opened.ok());
        journal_ = std::move(opened).value();
    }
    void close() { journal_.reset(); }
    Journal& journal() { return *journal_; }
    [[nodiscard]] const std::string& folder() const { return folder_; }
    [[nodiscard]] std::string ownFile() const {
        return folder_ + "/journal/" + own + "-" + journal_->now().date().text().substr(0, 4) + ".jsonl";
    }

    Fault firstTrouble() {
        std::unique_lock lock(mutex_);
        heard_.wait(lock, [this] { return !troubles_.empty(); });
        return troubles_.front();
    }
    void record(int times) {
        for (int i = 0; i < times; ++i) recorded_.push_back(journal_->record(aRun()));
    }
    /// Opens it, saves two facts and moves the folder away, whose new path this returns.
    std::string moveAwayWithTwo() {
        open();
        record(2);
        REQUIRE(journal_->flush(longEnough));
        std::string away = folder_ + "-away";
        std::filesystem::rename(folder_, away);
        return away;
    }
    /// Everything recorded is on disk once per id and was reported as saved once.
    void holds() {
        CHECK(journal_->flush(longEnough));
        CHECK(journal_->unsaved() == 0);
        auto facts = readFolder(folder_, own)->facts;
        std::sort(facts.begin(), facts.end(), standsBefore);
        facts.erase(std::unique(facts.begin(), facts.end()), facts.end());
        CHECK(facts == recorded_);
        const std::lock_guard lock(mutex_);
        CHECK(saved_ == recorded_.size());
    }

private:
    void hear(Id) {
        const std::lock_guard lock(mutex_);
        ++saved_;
    }
    void hear(const Fault& fault) {
        const std::lock_guard lock(mutex_);
        troubles_.push_back(fault);
        heard_.notify_all();
    }

    ScratchFolder scratch_;
    std::string folder_;
    std::vector<Fact> recorded_;
    std::mutex mutex_;
    std::condition_variable heard_;
    std::size_t saved_ = 0;
    std::vector<Fault> troubles_;
    std::unique_ptr<Journal> journal_; // last: it uses the other members until it is destroyed
};

/// While this exists, no file may grow beyond that many bytes; writes up to there are short, as on a full
/// disk.
class FileSizeLimit {
public:
    explicit FileSizeLimit(rlim_t bytes) {
        std::signal(SIGXFSZ, SIG_IGN);
        getrlimit(RLIMIT_FSIZE, &before_);
        const rlimit limit{bytes, before_.rlim_max};
        REQUIRE(setrlimit(RLIMIT_FSIZE, &limit) == 0);
    }
    FileSizeLimit(const FileSizeLimit&) = delete;
    FileSizeLimit& operator=(const FileSizeLimit&) = delete;
    ~FileSizeLimit() { setrlimit(RLIMIT_FSIZE, &before_); }

private:
    rlimit before_{};
};

/// This thread and those it starts access files as the user nobody; otherwise root may write everywhere.
class AsNobody {
public:
    AsNobody() {
        if (::geteuid() == 0) ::setfsuid(nobody);
    }
    AsNobody(const AsNobody&) = delete;
    AsNobody& operator=(const AsNobody&) = delete;
    ~AsNobody() { ::setfsuid(::geteuid()); }
};

} // namespace

TEST_CASE("a real write that is cut short at any byte is reported as a full disk and made good") {
    for (const rlim_t room : {1U, 2U, 100U, 283U, 284U, 285U, 286U, 290U, 700U}) {
        CAPTURE(room);
        RealFolder real;
        real.open();
        real.record(1);
        REQUIRE(real.journal().flush(longEnough));
        {
            const FileSizeLimit limit(contentOf(real.ownFile()).size() + room);
            real.record(5);
            const Fault fault = real.firstTrouble();
            CHECK((fault.number == FaultNumber::diskFull || fault.number == FaultNumber::cannotWrite));
            CHECK(fault.location == FaultLocation{real.ownFile(), 0});
            CHECK(real.journal().unsaved() > 0);
        }
        real.record(1);
        real.holds();
    }
}

TEST_CASE("a journal folder that is read-only is reported; marks are kept and saved once it can be written") {
    RealFolder real;
    std::filesystem::create_directories(real.folder() + "/journal");
    REQUIRE(::chmod((real.folder() + "/journal").c_str(), 0555) == 0);
    {
        const AsNobody reader;
        real.open();
        CHECK_FALSE(real.journal().readOnly());
        real.record(3);
        CHECK(real.firstTrouble() ==
              Fault{FaultNumber::cannotWrite, {real.ownFile(), 0}, {"Permission denied"}});
        CHECK(real.journal().unsaved() == 3);
    }
    REQUIRE(::chmod((real.folder() + "/journal").c_str(), 0777) == 0);
    real.holds();
}

TEST_CASE(
    "a practice folder that has gone, with a file in its place, is reported; marks are kept and saved") {
    // The folder's name is a symbolic link, which can be redirected in one step.
    const ScratchFolder disk;
    const std::string name = disk / "practice";
    const auto turnTo = [&disk, &name](const char* target) {
        std::filesystem::create_symlink(target, disk / "next");
        std::filesystem::rename(disk / "next", name);
    };
    std::filesystem::create_directory(disk / "folder");
    put(disk / "file", "not a folder");
    turnTo("folder");
    RealFolder real(name);
    real.open();
    real.record(2);
    REQUIRE(real.journal().flush(longEnough));
    turnTo("file");
    real.record(2);
    CHECK(real.firstTrouble() == Fault{FaultNumber::folderGone, {real.folder(), 0}, {}});
    CHECK(real.journal().unsaved() == 2);
    turnTo("folder");
    real.holds();
}

TEST_CASE(
    "a practice folder that is moved away or deleted is not created again; what was marked is saved once "
    "it is back") {
    for (const bool replaced : {false, true}) {
        CAPTURE(replaced);
        RealFolder real;
        const std::string away = real.moveAwayWithTwo();
        if (replaced) std::filesystem::create_directories(real.folder() + "/journal"); // of the same name
        real.record(21);
        CHECK(real.firstTrouble() == Fault{FaultNumber::folderGone, {real.folder(), 0}, {}});
        CHECK(real.journal().unsaved() == 21);
        CHECK(std::filesystem::exists(real.folder()) == replaced);
        if (replaced) {
            CHECK(std::filesystem::is_empty(real.folder() + "/journal"));
            std::filesystem::remove_all(real.folder());
        }
        std::filesystem::rename(away, real.folder());
        real.holds();
    }
}

TEST_CASE("under a mount point nothing is written while the disk is away") {
    const ScratchFolder place;
    const std::string disk = place / "disk";
    const std::string point = place / "point";
    std::filesystem::create_directory(disk);
    std::filesystem::create_directory(point);
    if (::mount(disk.c_str(), point.c_str(), nullptr, MS_BIND, nullptr) != 0) {
        MESSAGE("not run: mounting needs root; the case above stands in");
        return;
    }
    {
        RealFolder real(point + "/practice");
        real.open();
        real.record(2);
        REQUIRE(real.journal().flush(longEnough));
        REQUIRE(::umount2(point.c_str(), MNT_DETACH) == 0);
        real.record(21);
        CHECK(real.firstTrouble().number == FaultNumber::folderGone);
        CHECK(real.journal().unsaved() == 21);
        CHECK(std::filesystem::is_empty(point));
        REQUIRE(::mount(disk.c_str(), point.c_str(), nullptr, MS_BIND, nullptr) == 0);
        real.holds();
    }
    CHECK(::umount2(point.c_str(), MNT_DETACH) == 0);
}

TEST_CASE("a pipe, a link or a folder with the name of the own file is refused, and left as it is") {
    for (const std::string what : {"pipe", "link", "folder"}) {
        CAPTURE(what);
        const ScratchFolder elsewhere;
        RealFolder real;
        real.open();
        const std::string file = real.ownFile();
        if (what == "pipe") REQUIRE(::mkfifo(file.c_str(), 0666) == 0);
        if (what == "link") {
            put(elsewhere / "other", "other");
            std::filesystem::create_symlink(elsewhere / "other", file);
        }
        if (what == "folder") std::filesystem::create_directory(file);
        real.record(3);
        CHECK(real.firstTrouble() == Fault{FaultNumber::notARegularFile, {file, 0}, {}});
        CHECK(real.journal().unsaved() == 3);
        if (what == "link") CHECK(contentOf(elsewhere / "other") == "other");
        std::filesystem::rename(file, elsewhere / "moved away");
        real.holds();
    }
}

TEST_CASE("what is not saved when the window closes is kept outside the folder and written at the next "
          "start, once") {
    RealFolder real;
    const std::string away = real.moveAwayWithTwo();
    real.record(5);
    static_cast<void>(real.firstTrouble());
    real.close();
    SUBCASE("the folder is back") { std::filesystem::rename(away, real.folder()); }
    SUBCASE("it is back only after a start with another one of that name") {
        real.open();
        CHECK(real.journal().contents().facts.empty());
        real.close();
        std::filesystem::remove_all(real.folder());
        std::filesystem::rename(away, real.folder());
    }
    SUBCASE("a copy of it is back") {
        std::filesystem::copy(away, real.folder(), std::filesystem::copy_options::recursive);
    }
    for (int start = 0; start < 2; ++start) {
        real.open();
        CHECK(real.journal().contents().facts.size() == 7); // once, also at a later start
        CHECK(real.journal().contents().faults.empty());
        real.close();
    }
}

TEST_CASE("a small disk that is really full is reported as full, and once it has room all is saved") {
    const ScratchFolder mount;
    if (::mount("tmpfs", mount.path().c_str(), "tmpfs", 0, "size=16k,mode=0777") != 0) {
        MESSAGE("not run: a file system of one's own needs the right to mount one; the cases above stand in");
        return;
    }
    {
        RealFolder real(mount.path() + "/practice");
        real.open();
        real.record(100);
        CHECK(real.firstTrouble().number == FaultNumber::diskFull);
        CHECK(real.journal().unsaved() > 0);
        REQUIRE(::mount("tmpfs", mount.path().c_str(), "tmpfs", MS_REMOUNT, "size=1m") == 0);
        real.holds();
    }
    CHECK(::umount(mount.path().c_str()) == 0);
}
