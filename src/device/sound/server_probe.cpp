// SPDX-License-Identifier: GPL-3.0-or-later
#include "device/sound/server_probe.h"

#include <algorithm>
#include <cstdlib>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <sstream>

#include <linux/sockios.h>
#include <poll.h>
#include <sys/ioctl.h>
#include <sys/socket.h>
#include <sys/un.h>
#include <unistd.h>

namespace piolo::device {
namespace {

namespace fs = std::filesystem;

constexpr int looks = 20;
constexpr int lookEveryMillis = 10;

/// The sockets in a list such as "unix:/run/a {machine}unix:/run/b"; empty if any of them is not a local
/// socket.
std::vector<std::string> socketsIn(const std::string& servers) {
    std::vector<std::string> sockets;
    std::istringstream words{servers};
    for (std::string word; words >> word;) {
        if (word.front() == '{') word.erase(0, word.find('}') + 1);
        if (word.starts_with("unix:")) word.erase(0, std::strlen("unix:"));
        if (!word.starts_with('/')) return {};
        sockets.push_back(word);
    }
    return sockets;
}

/// True if a line of the file has a setting that makes the socket's presence or absence meaningless.
bool decides(const fs::path& file) {
    std::ifstream lines{file};
    for (std::string line; std::getline(lines, line);) {
        std::erase_if(line, [](char each) { return each == ' ' || each == '\t'; });
        if (line.starts_with("default-server=") || line.starts_with("autospawn=yes")) return true;
    }
    return false;
}

bool anyDecides(const std::vector<std::string>& configurations) {
    std::error_code ignored;
    for (const fs::path each : configurations) {
        if (!fs::is_directory(each, ignored)) {
            if (decides(each)) return true;
            continue;
        }
        for (const auto& file : fs::directory_iterator{each, ignored})
            if (decides(file.path())) return true;
    }
    return false;
}

/// True if the byte we send is read soon. A server that listens but is not running yet, or hangs, does not
/// read it, and many pending connections could even block Qt's own.
bool isRead(int line) noexcept {
    if (::send(line, "", 1, MSG_NOSIGNAL | MSG_DONTWAIT) != 1) return false;
    for (int look = 0; look < looks; ++look) {
        int unread = 0;
        if (::ioctl(line, SIOCOUTQ, &unread) != 0) return false;
        if (unread == 0) return true;
        ::poll(nullptr, 0, lookEveryMillis);
    }
    return false;
}

bool takesCalls(const std::string& socket) noexcept {
    sockaddr_un address{};
    address.sun_family = AF_UNIX;
    if (socket.size() >= sizeof address.sun_path) return true;
    std::copy(socket.begin(), socket.end(), address.sun_path);
    const int line = ::socket(AF_UNIX, SOCK_STREAM | SOCK_NONBLOCK | SOCK_CLOEXEC, 0);
    if (line < 0) return false;
    const bool open =
        ::connect(line, reinterpret_cast<const sockaddr*>(&address), sizeof address) == 0 && isRead(line);
    ::close(line);
    return open;
}

std::string systemValue(const char* name) {
    const char* value = std::getenv(name);
    return value == nullptr ? std::string{} : std::string{value};
}

} // namespace

ServerProbe::ServerProbe(const Environment& environment, const std::vector<std::string>& configurations) {
    if (const auto named = environment("PULSE_SERVER"); !named.empty()) {
        sockets_ = socketsIn(named);
        return;
    }
    if (anyDecides(configurations)) return;
    const auto own = environment("PULSE_RUNTIME_PATH");
    const auto session = environment("XDG_RUNTIME_DIR");
    if (own.empty() && session.empty()) return;
    sockets_ = {own.empty() ? session + "/pulse/native" : own + "/native", "/run/pulse/native"};
}

const ServerProbe& ServerProbe::ofSystem() {
    // Never destroyed: at the end of the program, the sound's thread may still ask.
    static const auto* const probe = new ServerProbe{systemValue,
                                                     {systemValue("PULSE_CLIENTCONFIG"),
                                                      systemValue("HOME") + "/.config/pulse/client.conf",
                                                      "/etc/pulse/client.conf", "/etc/pulse/client.conf.d"}};
    return *probe;
}

bool ServerProbe::answers() const noexcept {
    return sockets_.empty() || std::any_of(sockets_.begin(), sockets_.end(), takesCalls);
}

} // namespace piolo::device
