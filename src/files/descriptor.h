// SPDX-License-Identifier: GPL-3.0-or-later
// A file descriptor that closes itself.
#pragma once

#include <cstddef>
#include <span>
#include <string>

namespace piolo::files {

/// Owns a POSIX file descriptor. One thread at a time.
class Descriptor {
public:
    Descriptor() = default;
    explicit Descriptor(int number) noexcept : number_(number) {}
    Descriptor(Descriptor&& other) noexcept;
    Descriptor& operator=(Descriptor&& other) noexcept;
    ~Descriptor();

    [[nodiscard]] bool isOpen() const noexcept { return number_ >= 0; }
    [[nodiscard]] int number() const noexcept { return number_; }
    /// Closes the file now. Returns 0 or the errno value of close().
    int close() noexcept;

private:
    int number_ = -1;
};

/// Writes all bytes, continuing after short writes. Returns 0 or an errno value.
[[nodiscard]] int writeAll(int descriptor, std::span<const std::byte> bytes) noexcept;
/// Makes the entries of a folder durable. Returns 0 or an errno value; 0 also for folders that cannot be
/// synced.
[[nodiscard]] int syncFolder(const std::string& folder) noexcept;

} // namespace piolo::files
