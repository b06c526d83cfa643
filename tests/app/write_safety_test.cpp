// SPDX-License-Identifier: GPL-3.0-or-later
#include "command.h"

#include <csignal>
#include <doctest/doctest.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

using namespace piolo::test;

namespace {

Args click(const std::string& path, const std::string& bars) {
    return {"click",  "--tempo", "60",      "--bars", bars, "--rate",
            "192000", "--voice", "impulse", "--out",  path};
}

// Waits until the running program has a file in the folder.
bool hasBegun(const Scratch& scratch, std::size_t names) {
    for (int i = 0; i < 3000; ++i) {
        if (scratch.names().size() > names) return true;
        ::usleep(10'000);
    }
    return false;
}

} // namespace

TEST_CASE("an output that cannot be written is reported, and nothing is left behind") {
    const Scratch scratch;
    const std::string path = scratch.path("missing/x.wav");
    const Ended end = runPiolo(click(path, "1"));
    CHECK(end.code == 1);
    CHECK(end.err ==
          "piolo: E302: " + path +
              ": cannot be written (No such file or directory); check the folder and its permissions\n");
    CHECK(scratch.names().empty());
}

TEST_CASE("an output with the name of a folder leaves the folder alone") {
    const Scratch scratch;
    ::mkdir(scratch.path("x.wav").c_str(), 0700);
    const Ended end = runPiolo(click(scratch.path("x.wav"), "1"));
    CHECK(end.code == 1);
    CHECK(end.err.starts_with("piolo: E302: " + scratch.path("x.wav") + ": cannot be written ("));
    CHECK(scratch.names() == std::vector<std::string>{"x.wav"});
}

TEST_CASE("an old file is replaced by a complete new one, and untouched after a fault") {
    const Scratch scratch;
    const std::string path = scratch.put("x.wav", "old");
    CHECK(runPiolo(click(path, "1399")).code == 1);
    CHECK(bytesOf(path) == "old");
    CHECK(runPiolo(click(path, "1")).code == 0);
    CHECK(bytesOf(path).size() == 58 + 4 * 4 * 192'000);
}

TEST_CASE("a write that fails halfway leaves the old file and nothing else") {
    const Scratch scratch;
    const std::string path = scratch.put("x.wav", "old");
    struct rlimit before {};
    ::getrlimit(RLIMIT_FSIZE, &before);
    const struct rlimit small { 1'000'000, before.rlim_max };
    std::signal(SIGXFSZ, SIG_IGN); // inherited: the write fails instead
    ::setrlimit(RLIMIT_FSIZE, &small);
    const Ended end = runPiolo(click(path, "1"));
    ::setrlimit(RLIMIT_FSIZE, &before);
    std::signal(SIGXFSZ, SIG_DFL);
    CHECK(end.code == 1);
    CHECK(end.err == "piolo: E302: " + path +
                         ": cannot be written (File too large); check the folder and its permissions\n");
    CHECK(bytesOf(path) == "old");
    CHECK(scratch.names() == std::vector<std::string>{"x.wav"});
}

TEST_CASE("an interrupt while writing a click leaves no trace") {
    const Scratch scratch;
    const std::string path = scratch.put("x.wav", "old");
    const int process = beginPiolo(click(path, "1300"));
    CHECK(hasBegun(scratch, 1));
    ::kill(process, SIGINT);
    CHECK(endOf(process).signal == SIGINT);
    CHECK(scratch.names() == std::vector<std::string>{"x.wav"});
    CHECK(bytesOf(path) == "old");
}
