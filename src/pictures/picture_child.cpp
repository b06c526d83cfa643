// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/picture_child.h"

#include "files/descriptor.h"
#include "files/file_fault.h"
#include "files/plugin.h"
#include "pictures/picture_limits.h"

#include <array>
#include <cerrno>
#include <charconv>
#include <chrono>
#include <csignal>
#include <fcntl.h>
#include <optional>
#include <poll.h>
#include <span>
#include <spawn.h>
#include <sys/mman.h>
#include <sys/wait.h>
#include <unistd.h>

namespace piolo::pictures {

namespace {

using Clock = std::chrono::steady_clock;

constexpr int lookEveryMillis = 50;

/// Ends with this object if it has not ended before.
class Child {
public:
    Child() = default;
    Child(const Child&) = delete;
    Child& operator=(const Child&) = delete;
    ~Child() {
        if (pid_ > 0) end();
    }

    /// 0 or an errno value.
    int start(const std::string& program, int input, int output, const char* task, int number) {
        posix_spawn_file_actions_t streams{};
        ::posix_spawn_file_actions_init(&streams);
        ::posix_spawn_file_actions_adddup2(&streams, input, STDIN_FILENO);
        ::posix_spawn_file_actions_adddup2(&streams, output, STDOUT_FILENO);
        ::posix_spawn_file_actions_addopen(&streams, STDERR_FILENO, "/dev/null", O_WRONLY, 0);
        std::string name = program;
        std::string what = task;
        std::string page = std::to_string(number);
        std::array<char*, 4> words{name.data(), what.data(), page.data(), nullptr};
        const int error = ::posix_spawn(&pid_, program.c_str(), &streams, nullptr, words.data(), environ);
        ::posix_spawn_file_actions_destroy(&streams);
        if (error != 0) pid_ = 0;
        return error;
    }
    /// Its exit code; nothing if a signal ended it.
    std::optional<int> end() {
        ::kill(pid_, SIGKILL); // it has closed its output: it ends, or hangs
        int status = 0;
        while (::waitpid(pid_, &status, 0) < 0 && errno == EINTR) {
        }
        pid_ = 0;
        return WIFEXITED(status) ? std::optional(WEXITSTATUS(status)) : std::nullopt;
    }
    /// The same, but leaves it a moment to end by itself.
    std::optional<int> wait() {
        for (int looks = 0; looks < 40; ++looks) {
            int status = 0;
            if (::waitpid(pid_, &status, WNOHANG) == pid_) {
                pid_ = 0;
                return WIFEXITED(status) ? std::optional(WEXITSTATUS(status)) : std::nullopt;
            }
            ::poll(nullptr, 0, lookEveryMillis);
        }
        return end();
    }

private:
    pid_t pid_ = 0;
};

/// A file in memory with these bytes, to be read from its beginning.
files::Descriptor inMemory(const std::string& bytes) {
    files::Descriptor file(::memfd_create("picture", MFD_CLOEXEC));
    if (file.isOpen() && (files::writeAll(file.number(), std::as_bytes(std::span(bytes))) != 0 ||
                          ::lseek(file.number(), 0, SEEK_SET) != 0))
        return {};
    return file;
}

enum class Ending : std::uint8_t { whole, tooLong, timeIsUp };

Ending readAll(int pipe, std::string& text, const GiveUp& giveUp) {
    const auto deadline = Clock::now() + std::chrono::milliseconds(mostChildMillis);
    std::array<char, 65'536> block{};
    for (;;) {
        pollfd look{pipe, POLLIN, 0};
        if (Clock::now() > deadline || giveUp()) return Ending::timeIsUp;
        if (::poll(&look, 1, lookEveryMillis) <= 0) continue;
        const auto count = ::read(pipe, block.data(), block.size());
        if (count == 0) return Ending::whole;
        if (count > 0) text.append(block.data(), static_cast<std::size_t>(count));
        if (count < 0 && errno != EINTR) return Ending::whole;
        if (text.size() > mostBytes) return Ending::tooLong;
    }
}

/// A fault as the child writes it; nothing if it is none.
std::optional<Fault> faultIn(std::string_view text, const std::string& path) {
    int number = 0;
    const auto line = text.find('\n');
    if (line == std::string_view::npos) return std::nullopt;
    const auto read = std::from_chars(text.data(), text.data() + line, number);
    constexpr std::array known{FaultNumber::brokenPicture, FaultNumber::pictureTooLarge,
                               FaultNumber::pdfLocked, FaultNumber::noSuchPage};
    const auto which = std::find(known.begin(), known.end(), static_cast<FaultNumber>(number));
    if (read.ec != std::errc() || which == known.end()) return std::nullopt;
    Fault fault{*which, {path, 0}, {}};
    for (text.remove_prefix(line + 1); !text.empty() && fault.arguments.size() < 3;) {
        const auto end = std::min(text.find('\n'), text.size());
        fault.arguments.emplace_back(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return fault;
}

} // namespace

Result<std::string> workInChild(const PictureFile& file, const char* task, int number, const GiveUp& giveUp) {
    const std::string program = files::pluginProgram("piolo_pictures");
    if (program.empty()) return files::readFault("piolo_pictures", ENOENT);
    const files::Descriptor input = inMemory(file.bytes);
    std::array<int, 2> pipe{};
    if (!input.isOpen() || ::pipe2(pipe.data(), O_CLOEXEC) != 0) return files::readFault(file.path, errno);
    const files::Descriptor reading(pipe[0]);
    files::Descriptor writing(pipe[1]);
    Child child;
    if (const int error = child.start(program, input.number(), writing.number(), task, number))
        return files::readFault(program, error);
    writing = {};
    std::string text;
    switch (readAll(reading.number(), text, giveUp)) {
    case Ending::timeIsUp:
        return Fault{FaultNumber::pageTooSlow, {file.path, 0}, {std::to_string(number)}};
    case Ending::tooLong:
        return Fault{FaultNumber::pictureTooHeavy, {file.path, 0}, {}};
    case Ending::whole:
        break;
    }
    const auto code = child.wait();
    if (code == 0) return text;
    if (code == childFault)
        if (auto fault = faultIn(text, file.path)) return *std::move(fault);
    return Fault{FaultNumber::pictureTooHeavy, {file.path, 0}, {}};
}

} // namespace piolo::pictures
