// SPDX-License-Identifier: GPL-3.0-or-later
// Finds out whether a sound server answers, without touching Qt Multimedia.
#pragma once

#include <functional>
#include <string>
#include <vector>

namespace piolo::device {

/// Qt 6.4 looks for the sound server once when it is first used, and once more three seconds after losing it.
/// If no server answers then, it never looks again, so we must look before Qt does.
class ServerProbe {
public:
    /// Returns the value of an environment variable, or "" if it is not set.
    using Environment = std::function<std::string(const char* name)>;
    /// Looks where the server's client library would look. `configurations` are its configuration files, and
    /// folders of such files. If one of them names a server or enables starting it on demand, we cannot tell
    /// from here whether it will answer.
    ServerProbe(const Environment& environment, const std::vector<std::string>& configurations);
    /// The probe for this process.
    [[nodiscard]] static const ServerProbe& ofSystem();

    /// Any thread; waits for at most 0.2 s. True if a server accepts connections, and also if we cannot tell.
    [[nodiscard]] bool answers() const noexcept;
    /// The sockets that are tried; empty if we cannot tell.
    [[nodiscard]] const std::vector<std::string>& sockets() const noexcept { return sockets_; }

private:
    std::vector<std::string> sockets_;
};

} // namespace piolo::device
