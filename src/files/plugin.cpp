// SPDX-License-Identifier: GPL-3.0-or-later
#include "files/plugin.h"

#include <cstddef>
#include <dlfcn.h>
#include <unistd.h>
#include <vector>

namespace piolo::files {

Result<const void*> pluginObject(const char* plugin, const char* object) {
    const std::string file = std::string("libpiolo_") + plugin + ".so";
    void* const library = ::dlopen(file.c_str(), RTLD_NOW | RTLD_LOCAL);
    const void* const found = library == nullptr ? nullptr : ::dlsym(library, object);
    if (found != nullptr) return found;
    const char* const why = ::dlerror();
    return Fault{FaultNumber::cannotRead, {file}, {why == nullptr ? "" : why}};
}

std::string pluginProgram(const char* name) {
    void* const self = ::dlopen(nullptr, RTLD_LAZY);
    Dl_serinfo size{};
    if (self == nullptr || ::dlinfo(self, RTLD_DI_SERINFOSIZE, &size) != 0) return {};
    std::vector<std::max_align_t> room(size.dls_size / sizeof(std::max_align_t) + 1);
    auto* const paths = reinterpret_cast<Dl_serinfo*>(room.data());
    *paths = size;
    if (::dlinfo(self, RTLD_DI_SERINFO, paths) != 0) return {};
    for (unsigned path = 0; path < paths->dls_cnt; ++path) {
        std::string program = std::string(paths->dls_serpath[path].dls_name) + "/" + name;
        if (::access(program.c_str(), X_OK) == 0) return program;
    }
    return {};
}

} // namespace piolo::files
