// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/settings/machine_settings.h"

#include <cstdlib>

namespace piolo::journal {

namespace {

std::string variable(const char* name) {
    const char* value = std::getenv(name);
    return value ? value : "";
}

/// The XDG Base Directory specification says to ignore relative paths. Empty if HOME is needed and not known.
std::string base(const char* name, const char* usual) {
    const std::string value = variable(name);
    if (value.starts_with('/')) return value + "/piolo";
    const std::string home = variable("HOME");
    return home.starts_with('/') ? home + usual + "/piolo" : std::string();
}

} // namespace

Result<Directories> systemDirectories() {
    const Directories found{base("XDG_CONFIG_HOME", "/.config"), base("XDG_STATE_HOME", "/.local/state"),
                            base("XDG_DATA_HOME", "/.local/share"), base("XDG_CACHE_HOME", "/.cache")};
    for (const std::string& each : {found.config, found.state, found.data, found.cache})
        if (each.empty()) return Fault{FaultNumber::noHome, {}, {}};
    return found;
}

} // namespace piolo::journal
