// SPDX-License-Identifier: GPL-3.0-or-later
#include "files/descriptor.h"

#include <cerrno>
#include <fcntl.h>
#include <unistd.h>
#include <utility>

namespace piolo::files {

Descriptor::Descriptor(Descriptor&& other) noexcept : number_(std::exchange(other.number_, -1)) {}

Descriptor& Descriptor::operator=(Descriptor&& other) noexcept {
    if (this != &other) {
        close();
        number_ = std::exchange(other.number_, -1);
    }
    return *this;
}

Descriptor::~Descriptor() { close(); }

int Descriptor::close() noexcept {
    const int number = std::exchange(number_, -1);
    return number < 0 || ::close(number) == 0 ? 0 : errno;
}

int writeAll(int descriptor, std::span<const std::byte> bytes) noexcept {
    while (!bytes.empty()) {
        const auto taken = ::write(descriptor, bytes.data(), bytes.size());
        if (taken > 0)
            bytes = bytes.subspan(static_cast<std::size_t>(taken));
        else if (taken == 0)
            return ENOSPC;
        else if (errno != EINTR)
            return errno;
    }
    return 0;
}

int syncFolder(const std::string& folder) noexcept {
    const Descriptor opened(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    if (!opened.isOpen()) return errno;
    if (::fsync(opened.number()) == 0) return 0;
    // Some network file systems cannot sync folders.
    return errno == EINVAL || errno == ENOTSUP || errno == EROFS ? 0 : errno;
}

} // namespace piolo::files
