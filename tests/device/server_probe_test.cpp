// SPDX-License-Identifier: GPL-3.0-or-later
#include "device/sound/server_probe.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <map>
#include <thread>

#include <sys/socket.h>
#include <sys/un.h>
#include <unistd.h>

using namespace piolo::device;

namespace {

namespace fs = std::filesystem;

/// A folder that is removed after the test.
struct Folder {
    Folder() {
        std::string name = (fs::temp_directory_path() / "door-XXXXXX").string();
        path = mkdtemp(name.data());
    }
    ~Folder() { fs::remove_all(path); }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    fs::path path;
};

/// Listens on a socket and, while `awake`, reads what callers send. Leaves the socket file behind, like a
/// killed server.
class Listener {
public:
    Listener(const fs::path& path, bool awake) : line_{::socket(AF_UNIX, SOCK_STREAM, 0)} {
        sockaddr_un address{};
        address.sun_family = AF_UNIX;
        const auto text = path.string();
        std::copy(text.begin(), text.end(), address.sun_path);
        REQUIRE(::bind(line_, reinterpret_cast<const sockaddr*>(&address), sizeof address) == 0);
        REQUIRE(::listen(line_, 1) == 0);
        if (awake) reader_ = std::thread{[this] { read(); }};
    }
    ~Listener() {
        ::shutdown(line_, SHUT_RDWR); // wakes the reading thread
        if (reader_.joinable()) reader_.join();
        ::close(line_);
    }
    Listener(const Listener&) = delete;
    Listener& operator=(const Listener&) = delete;

private:
    void read() const {
        for (;;) {
            const int caller = ::accept(line_, nullptr, nullptr);
            if (caller < 0) return;
            char said = 0;
            (void)!::read(caller, &said, 1);
            ::close(caller);
        }
    }
    int line_;
    std::thread reader_;
};

ServerProbe doorWith(const std::map<std::string, std::string>& values,
                     const std::vector<std::string>& configurations = {}) {
    return {[&values](const char* name) {
                const auto found = values.find(name);
                return found == values.end() ? std::string{} : found->second;
            },
            configurations};
}

} // namespace

TEST_CASE("a server answers while it accepts connections, not before or after") {
    const Folder folder;
    fs::create_directory(folder.path / "pulse");
    const auto door = doorWith({{"XDG_RUNTIME_DIR", folder.path.string()}});
    CHECK_FALSE(door.answers());
    {
        const Listener listener{folder.path / "pulse" / "native", true};
        for (int call = 0; call < 8; ++call) CHECK(door.answers());
    }
    CHECK(fs::exists(folder.path / "pulse" / "native"));
    CHECK_FALSE(door.answers());
}

TEST_CASE("a socket that accepts no connections does not answer") {
    const Folder folder;
    const auto socket = (folder.path / "native").string();
    const auto door = doorWith({{"PULSE_SERVER", socket}});
    const Listener listener{socket, false};
    for (int call = 0; call < 4; ++call) CHECK_FALSE(door.answers());
}

TEST_CASE("a named server takes precedence over the usual paths") {
    const auto named =
        doorWith({{"PULSE_SERVER", "{0123}unix:/run/a /run/b"}, {"XDG_RUNTIME_DIR", "/run/user/1"}});
    CHECK(named.sockets() == std::vector<std::string>{"/run/a", "/run/b"});
    const auto own = doorWith({{"PULSE_RUNTIME_PATH", "/run/own"}, {"XDG_RUNTIME_DIR", "/run/user/1"}});
    CHECK(own.sockets().front() == "/run/own/native");
    const auto usual = doorWith({{"XDG_RUNTIME_DIR", "/run/user/1"}});
    CHECK(usual.sockets() == std::vector<std::string>{"/run/user/1/pulse/native", "/run/pulse/native"});
}

TEST_CASE("if nothing is known, the server counts as present, so that Qt is asked") {
    CHECK(doorWith({}).answers());
    CHECK(doorWith({{"PULSE_SERVER", "tcp:hall.example:4713"}}).answers());
    CHECK(doorWith({{"PULSE_SERVER", "unix:/run/a tcp:hall.example"}}).answers());
    const std::string tooLong(200, 'x');
    CHECK(doorWith({{"PULSE_SERVER", "/" + tooLong}}).answers());
}

TEST_CASE("a configuration that names a server, or starts one on demand, leaves it to Qt") {
    const Folder folder;
    const std::map<std::string, std::string> values{{"XDG_RUNTIME_DIR", folder.path.string()}};
    const auto file = (folder.path / "client.conf").string();
    const auto answersWith = [&](const std::string& line) {
        std::ofstream{file} << "; a comment\n" << line << '\n';
        return doorWith(values, {file}).answers() && doorWith(values, {folder.path.string()}).answers();
    };
    CHECK_FALSE(doorWith(values, {file}).answers());
    CHECK_FALSE(answersWith("; default-server = tcp:hall"));
    CHECK_FALSE(answersWith("autospawn = no"));
    CHECK(answersWith("default-server = tcp:hall"));
    CHECK(answersWith("  autospawn=yes"));
}
