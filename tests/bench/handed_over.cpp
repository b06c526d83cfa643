// SPDX-License-Identifier: GPL-3.0-or-later
// Preloaded before the sound server's client library: records when a block that contains sound is handed to
// the server, before the server's own buffer. Writes one line "NANOSECONDS FRAMES FIRST" per block to the
// file that HANDED_OVER names (time of the monotonic clock; length of the block; its first sample that is not
// silent; float32 mono).
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <dlfcn.h>
#include <span>

struct pa_stream;

namespace {

using Write = int (*)(pa_stream*, const void*, std::size_t, void (*)(void*), std::int64_t, int);

void note(std::span<const float> block) {
    std::size_t first = 0;
    while (first < block.size() && block[first] == 0.0F) ++first;
    if (first == block.size()) return;
    timespec now{};
    clock_gettime(CLOCK_MONOTONIC, &now);
    static FILE* const out = std::fopen(std::getenv("HANDED_OVER"), "w");
    if (out == nullptr) return;
    std::fprintf(out, "%lld %zu %zu\n", static_cast<long long>(now.tv_sec) * 1'000'000'000 + now.tv_nsec,
                 block.size(), first);
    std::fflush(out);
}

} // namespace

extern "C" __attribute__((visibility("default"))) int pa_stream_write(pa_stream* stream, const void* data,
                                                                      std::size_t bytes,
                                                                      void (*release)(void*),
                                                                      std::int64_t offset, int seek);

extern "C" int pa_stream_write(pa_stream* stream, const void* data, std::size_t bytes, void (*release)(void*),
                               std::int64_t offset, int seek) {
    static const auto next = reinterpret_cast<Write>(dlsym(RTLD_NEXT, "pa_stream_write"));
    note({static_cast<const float*>(data), bytes / sizeof(float)});
    return next(stream, data, bytes, release, offset, seek);
}
