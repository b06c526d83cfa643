// SPDX-License-Identifier: GPL-3.0-or-later
#include "files/process_start.h"

#include "files/atomic_file.h"
#include "scratch_folder.h"

#include <cerrno>
#include <csignal>
#include <doctest/doctest.h>
#include <fcntl.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

using namespace piolo;
using piolo::test::ScratchFolder;

namespace {

/// The exit code of a child that runs `work`; -1 if a signal ended it.
template <typename Work>
int inChild(Work work) {
    const pid_t child = ::fork();
    if (child == 0) ::_exit(work());
    int status = 0;
    REQUIRE(::waitpid(child, &status, 0) == child);
    return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

} // namespace

TEST_CASE("a file opened after the start never gets the number of a standard stream that was closed") {
    for (const bool started : {true, false}) {
        const int got = inChild([started] {
            for (int stream = 0; stream <= 2; ++stream) ::close(stream);
            if (started) files::startProcess();
            return ::open("/dev/null", O_RDONLY);
        });
        CHECK((got > 2) == started);
    }
}

TEST_CASE("a file that may not grow is a fault of the write, and nothing is left beside it") {
    const ScratchFolder folder;
    const int code = inChild([&folder] {
        files::startProcess();
        const rlimit limit{1000, 1000};
        if (::setrlimit(RLIMIT_FSIZE, &limit) != 0) return 9;
        const std::string text(5000, 'x');
        const auto written = files::replaceFile(folder / "take.wav", std::as_bytes(std::span(text)));
        return written ? 1 : static_cast<int>(written.fault().number) % 100;
    });
    CHECK(code == static_cast<int>(FaultNumber::cannotWrite) % 100);
    CHECK(folder.names().empty());
}
