// SPDX-License-Identifier: GPL-3.0-or-later
// Piolo's own libraries that are loaded when first needed, so that their dependencies do not slow down the
// start.
#pragma once

#include "core/base/result.h"

#include <string>

namespace piolo::files {

/// The object with that name in libpiolo_PLUGIN.so, which stays loaded. The library is in the folder named by
/// the program's run path (add_plugin in src/rooms.cmake). Fault: cannotRead. Any thread; not real-time-safe.
[[nodiscard]] Result<const void*> pluginObject(const char* plugin, const char* object);

/// The table of functions that a plugin exports as `Functions::object`. Otherwise as pluginObject().
template <typename Functions>
Result<const Functions*> pluginFunctions() {
    const auto object = pluginObject(Functions::plugin, Functions::object);
    if (!object) return object.fault();
    return static_cast<const Functions*>(*object);
}

/// The path of a program of ours beside the plugins; "" if it is not there. Any thread.
[[nodiscard]] std::string pluginProgram(const char* name);

} // namespace piolo::files
