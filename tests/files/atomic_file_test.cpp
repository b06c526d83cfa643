// SPDX-License-Identifier: GPL-3.0-or-later
#include "files/atomic_file.h"

#include "scratch_folder.h"

#include <doctest/doctest.h>
#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

using namespace piolo;
using namespace piolo::files;
using piolo::test::contentOf;
using piolo::test::put;
using piolo::test::ScratchFolder;

namespace {

std::span<const std::byte> bytes(std::string_view text) { return std::as_bytes(std::span(text)); }

mode_t modeOf(const std::string& path) {
    struct stat found {};
    return ::stat(path.c_str(), &found) == 0 ? found.st_mode & 07777 : 0;
}

} // namespace

TEST_CASE("a file appears only at commit, complete, with nothing left beside it") {
    const ScratchFolder folder;
    auto file = AtomicFile::create(folder / "take.wav");
    REQUIRE(file.ok());
    REQUIRE(file.value().write(bytes("abc")).ok());
    CHECK_FALSE(std::filesystem::exists(folder / "take.wav"));
    REQUIRE(file.value().commit().ok());
    CHECK(contentOf(folder / "take.wav") == "abc");
    CHECK(folder.names() == std::vector<std::string>{"take.wav"});
}

TEST_CASE("what a killed program left of the same file is removed; what is being written, or of another "
          "file, is not") {
    const ScratchFolder folder;
    const auto old = [](const std::string& path) {
        const timespec longAgo{1'000'000, 0};
        const timespec times[]{longAgo, longAgo};
        REQUIRE(::utimensat(AT_FDCWD, path.c_str(), times, 0) == 0);
    };
    for (const char* name : {".take.wav.abcdef.part", ".take.wav.fedcba.part", ".other.wav.abcdef.part",
                             ".take.wav.abc.part", ".take.wav.ABCDEF.part", ".take.wav.ABCDEF.part"}) {
        put(folder / name, "half");
        old(folder / name);
    }
    put(folder / ".take.wav.youngs.part", "just made");
    const int writing = ::open((folder / ".take.wav.fedcba.part").c_str(), O_WRONLY);
    REQUIRE(::flock(writing, LOCK_EX | LOCK_NB) == 0);
    REQUIRE(replaceFile(folder / "take.wav", bytes("abc")).ok());
    CHECK(folder.names() == std::vector<std::string>{".other.wav.abcdef.part", ".take.wav.ABCDEF.part",
                                                     ".take.wav.abc.part", ".take.wav.fedcba.part",
                                                     ".take.wav.youngs.part", "take.wav"});
    ::close(writing);
}

TEST_CASE("while it is written, a hidden temporary file is beside it") {
    const ScratchFolder folder;
    const auto file = AtomicFile::create(folder / "take.wav");
    REQUIRE(file.ok());
    const auto names = folder.names();
    REQUIRE(names.size() == 1);
    CHECK(names[0].starts_with(".take.wav."));
    CHECK(names[0].ends_with(".part"));
}

TEST_CASE("destroyed before commit, it leaves the old file and nothing else") {
    const ScratchFolder folder;
    put(folder / "take.wav", "old");
    {
        auto file = AtomicFile::create(folder / "take.wav");
        REQUIRE(file.ok());
        REQUIRE(file.value().write(bytes("half of the n")).ok());
    }
    CHECK(contentOf(folder / "take.wav") == "old");
    CHECK(folder.names() == std::vector<std::string>{"take.wav"});
}

TEST_CASE("commit replaces the old file and keeps its permissions") {
    const ScratchFolder folder;
    put(folder / "settings.json", "a much longer old text");
    REQUIRE(::chmod((folder / "settings.json").c_str(), 0640) == 0);
    auto file = AtomicFile::create(folder / "settings.json");
    REQUIRE(file.value().write(bytes("new")).ok());
    REQUIRE(file.value().commit().ok());
    CHECK(contentOf(folder / "settings.json") == "new");
    CHECK(modeOf(folder / "settings.json") == 0640);
}

TEST_CASE("a link stays a link, and its target is replaced") {
    const ScratchFolder folder;
    put(folder / "real/list.csv", "old");
    std::filesystem::create_symlink("real/list.csv", folder / "link.csv");
    auto file = AtomicFile::create(folder / "link.csv");
    REQUIRE(file.value().write(bytes("new")).ok());
    REQUIRE(file.value().commit().ok());
    CHECK(std::filesystem::is_symlink(folder / "link.csv"));
    CHECK(contentOf(folder / "real/list.csv") == "new");
}

TEST_CASE("moving a file leaves one temporary file, owned by the new object") {
    const ScratchFolder folder;
    auto first = AtomicFile::create(folder / "x");
    AtomicFile second = std::move(first).value();
    REQUIRE(second.write(bytes("moved")).ok());
    REQUIRE(second.commit().ok());
    CHECK(contentOf(folder / "x") == "moved");
}

TEST_CASE("an unwritable folder is reported with the path and the system's message") {
    const ScratchFolder folder;
    put(folder / "file", "");
    const std::string path = folder / "file/x.wav";
    const auto file = AtomicFile::create(path);
    REQUIRE_FALSE(file.ok());
    CHECK(file.fault() == Fault{FaultNumber::cannotWrite, {path, 0}, {"Not a directory"}});
    const auto missing = AtomicFile::create(folder / "none/x.wav");
    REQUIRE_FALSE(missing.ok());
    CHECK(missing.fault().arguments == std::vector<std::string>{"No such file or directory"});
}

TEST_CASE("a folder with the file's name is reported and left alone") {
    const ScratchFolder folder;
    std::filesystem::create_directory(folder / "x.wav");
    const auto file = AtomicFile::create(folder / "x.wav");
    REQUIRE_FALSE(file.ok());
    CHECK(file.fault().number == FaultNumber::cannotWrite);
    CHECK(std::filesystem::is_directory(folder / "x.wav"));
}

TEST_CASE("a file without write permission is not replaced") {
    if (::geteuid() == 0) return; // root may write everywhere
    const ScratchFolder folder;
    put(folder / "kept", "old");
    REQUIRE(::chmod((folder / "kept").c_str(), 0444) == 0);
    CHECK_FALSE(AtomicFile::create(folder / "kept").ok());
    CHECK(contentOf(folder / "kept") == "old");
}

TEST_CASE("anything but a regular file is written directly: a full device says that it is full") {
    auto file = AtomicFile::create("/dev/full");
    REQUIRE(file.ok());
    const auto written = file.value().write(bytes("x"));
    REQUIRE_FALSE(written.ok());
    CHECK(written.fault() == Fault{FaultNumber::diskFull, {"/dev/full", 0}, {"No space left on device"}});
    CHECK(std::filesystem::is_character_file("/dev/full"));
}

TEST_CASE("a pipe gets the bytes themselves") {
    const ScratchFolder folder;
    REQUIRE(::mkfifo((folder / "pipe").c_str(), 0600) == 0);
    const int reader = ::open((folder / "pipe").c_str(), O_RDONLY | O_NONBLOCK);
    REQUIRE(reader >= 0);
    auto file = AtomicFile::create(folder / "pipe");
    REQUIRE(file.ok());
    REQUIRE(file.value().write(bytes("tone")).ok());
    REQUIRE(file.value().commit().ok());
    std::string got(8, ' ');
    CHECK(::read(reader, got.data(), got.size()) == 4);
    CHECK(got.starts_with("tone"));
    ::close(reader);
    CHECK(folder.names() == std::vector<std::string>{"pipe"});
}

TEST_CASE("the longest allowed file name can still be written") {
    const ScratchFolder folder;
    const std::string name(255, 'n');
    auto file = AtomicFile::create(folder / name);
    REQUIRE(file.ok());
    REQUIRE(file.value().commit().ok());
    CHECK(folder.names() == std::vector<std::string>{name});
}

TEST_CASE("a new file in /dev/shm appears complete, as anywhere else") {
    const std::string path = "/dev/shm/piolo-test-" + std::to_string(::getpid());
    {
        auto file = AtomicFile::create(path);
        REQUIRE(file.ok());
        REQUIRE(file.value().write(bytes("whole")).ok());
        CHECK_FALSE(std::filesystem::exists(path));
        REQUIRE(file.value().commit().ok());
    }
    CHECK(contentOf(path) == "whole");
    std::filesystem::remove(path);
}
