// SPDX-License-Identifier: GPL-3.0-or-later
#include "tripwire/tripwire.h"

#include <cerrno>
#include <cstdlib>
#include <malloc.h>

// The C library's own names for the functions behind ours (glibc, malloc/malloc.c).
extern "C" {
void* __libc_malloc(std::size_t size);
void* __libc_calloc(std::size_t count, std::size_t size);
void* __libc_realloc(void* memory, std::size_t size);
void* __libc_memalign(std::size_t alignment, std::size_t size);
void __libc_free(void* memory);
}

using piolo::tripwire::note;
using piolo::tripwire::Trip;

extern "C" {

void* malloc(std::size_t size) noexcept {
    note(Trip::memory);
    return __libc_malloc(size);
}
void* calloc(std::size_t count, std::size_t size) noexcept {
    note(Trip::memory);
    return __libc_calloc(count, size);
}
void* realloc(void* memory, std::size_t size) noexcept {
    note(Trip::memory);
    return __libc_realloc(memory, size);
}
void* memalign(std::size_t alignment, std::size_t size) noexcept {
    note(Trip::memory);
    return __libc_memalign(alignment, size);
}
void* aligned_alloc(std::size_t alignment, std::size_t size) noexcept {
    note(Trip::memory);
    return __libc_memalign(alignment, size);
}
int posix_memalign(void** memory, std::size_t alignment, std::size_t size) noexcept {
    note(Trip::memory);
    void* const found = __libc_memalign(alignment, size);
    if (found == nullptr) return ENOMEM;
    *memory = found;
    return 0;
}
void free(void* memory) noexcept {
    note(Trip::memory);
    __libc_free(memory);
}

} // extern "C"
