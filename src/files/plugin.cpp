// SPDX-License-Identifier: GPL-3.0-or-later
#include "files/plugin.h"

#include <string>

#include <dlfcn.h>

namespace piolo::files {

Result<const void*> pluginObject(const char* plugin, const char* object) {
    const std::string file = std::string("libpiolo_") + plugin + ".so";
    void* const library = ::dlopen(file.c_str(), RTLD_NOW | RTLD_LOCAL);
    const void* const found = library == nullptr ? nullptr : ::dlsym(library, object);
    if (found != nullptr) return found;
    const char* const why = ::dlerror();
    return Fault{FaultNumber::cannotRead, {file}, {why == nullptr ? "" : why}};
}

} // namespace piolo::files
