// SPDX-License-Identifier: GPL-3.0-or-later
// The real function behind a wire.
#pragma once

#include <atomic>
#include <dlfcn.h>

namespace piolo::tripwire {

/// Looked up at the first call. A plain pointer, because the guard of a local static would itself trip a
/// wire.
template <typename Function>
class Next {
public:
    explicit constexpr Next(const char* name) noexcept : name_(name) {}
    Function* operator*() noexcept {
        void* found = found_.load(std::memory_order_relaxed);
        if (found == nullptr) {
            found = ::dlsym(RTLD_NEXT, name_);
            found_.store(found, std::memory_order_relaxed);
        }
        return reinterpret_cast<Function*>(found);
    }

private:
    const char* name_;
    std::atomic<void*> found_{nullptr};
};

} // namespace piolo::tripwire
