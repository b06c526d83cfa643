// SPDX-License-Identifier: GPL-3.0-or-later
// Whether a sound server answers, found out without touching Qt Multimedia.
#pragma once

#include <functional>
#include <string>
#include <vector>

namespace piolo::device {

/// Qt 6.4 asks for the sound server once when it is first touched, and once more three seconds after a loss;
/// where nobody answers then it never asks again. So somebody else must look before Qt does.
class ServerProbe {
public:
    /// The value of an environment variable, "" when it is not set.
    using Environment = std::function<std::string(const char* name)>;
    /// Where the server's client library would look. `configurations`: its configuration files and folders
    /// of them; where one of them names a server or has it started on demand, nothing can be told from here.
    ServerProbe(const Environment& environment, const std::vector<std::string>& configurations);
    /// This process's.
    [[nodiscard]] static const ServerProbe& ofSystem();

    /// Any thread; waits for 0.2 s at most. True when somebody takes calls, and when nothing can be told.
    [[nodiscard]] bool answers() const noexcept;
    /// The sockets that are tried; none when nothing can be told.
    [[nodiscard]] const std::vector<std::string>& sockets() const noexcept { return sockets_; }

private:
    std::vector<std::string> sockets_;
};

} // namespace piolo::device
