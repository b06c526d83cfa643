// SPDX-License-Identifier: GPL-3.0-or-later
// An open file that closes itself.
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
    /// Closes at once; 0 or the errno of close.
    int close() noexcept;

private:
    int number_ = -1;
};

/// Writes all of it, going on after short writes: 0 or an errno value.
[[nodiscard]] int writeAll(int descriptor, std::span<const std::byte> bytes) noexcept;
/// Makes the entries of a folder durable: 0 or an errno value. Folders that cannot be synced count as synced.
[[nodiscard]] int syncFolder(const std::string& folder) noexcept;

} // namespace piolo::files
