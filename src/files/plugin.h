// SPDX-License-Identifier: GPL-3.0-or-later
// Libraries of Piolo's own that are loaded when they are first needed: what they bring with them costs a
// start nothing.
#pragma once

#include "core/base/result.h"

namespace piolo::files {

/// The object of that name in libpiolo_PLUGIN.so, which stays loaded. The library is in the folder that the
/// program's run path names (add_plugin in src/rooms.cmake). Fault: cannotRead. Any thread; not
/// real-time-safe.
[[nodiscard]] Result<const void*> pluginObject(const char* plugin, const char* object);

/// The table of functions that a plugin exports as `Functions::object`. As pluginObject().
template <typename Functions>
Result<const Functions*> pluginFunctions() {
    const auto object = pluginObject(Functions::plugin, Functions::object);
    if (!object) return object.fault();
    return static_cast<const Functions*>(*object);
}

} // namespace piolo::files
