// SPDX-License-Identifier: GPL-3.0-or-later
// Wires for logs and exceptions.
#include "tripwire/next.h"
#include "tripwire/tripwire.h"

#include <cstdarg>
#include <cstdio>
#include <typeinfo>

using piolo::tripwire::Next;
using piolo::tripwire::note;
using piolo::tripwire::Trip;

extern "C" {

std::size_t fwrite(const void* from, std::size_t size, std::size_t count, std::FILE* file) {
    static constinit Next<std::size_t(const void*, std::size_t, std::size_t, std::FILE*)> next("fwrite");
    note(Trip::log);
    return (*next)(from, size, count, file);
}
int fputs(const char* text, std::FILE* file) {
    static constinit Next<int(const char*, std::FILE*)> next("fputs");
    note(Trip::log);
    return (*next)(text, file);
}
int puts(const char* text) {
    static constinit Next<int(const char*)> next("puts");
    note(Trip::log);
    return (*next)(text);
}
int printf(const char* format, ...) {
    note(Trip::log);
    std::va_list list;
    va_start(list, format);
    const int written = std::vfprintf(stdout, format, list);
    va_end(list);
    return written;
}
int fprintf(std::FILE* file, const char* format, ...) {
    note(Trip::log);
    std::va_list list;
    va_start(list, format);
    const int written = std::vfprintf(file, format, list);
    va_end(list);
    return written;
}

[[noreturn]] void __cxa_throw(void* thrown, std::type_info* type, void (*destroy)(void*)) {
    static constinit Next<void(void*, std::type_info*, void (*)(void*))> next("__cxa_throw");
    note(Trip::exception);
    (*next)(thrown, type, destroy);
    __builtin_unreachable();
}

} // extern "C"
