// SPDX-License-Identifier: GPL-3.0-or-later
#include "allocation_count.h"

#include <atomic>
#include <cstdlib>
#include <new>

// The sanitizers bring operators of their own.
#ifndef PIOLO_SANITIZED

namespace {

std::atomic<bool> counting{false};
std::atomic<std::uint64_t> counted{0};

void note() noexcept {
    if (counting.load(std::memory_order_relaxed)) counted.fetch_add(1, std::memory_order_relaxed);
}

} // namespace

void* operator new(std::size_t size) {
    note();
    if (void* memory = std::malloc(size == 0 ? 1 : size)) return memory;
    throw std::bad_alloc();
}
void operator delete(void* memory) noexcept {
    note();
    std::free(memory);
}
void operator delete(void* memory, std::size_t /*size*/) noexcept {
    note();
    std::free(memory);
}

namespace piolo::engine {

AllocationCount::AllocationCount() noexcept {
    counted = 0;
    counting = true;
}
AllocationCount::~AllocationCount() { counting = false; }
std::uint64_t AllocationCount::value() const noexcept { return counted; }

} // namespace piolo::engine

#endif
