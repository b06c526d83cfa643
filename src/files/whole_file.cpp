// SPDX-License-Identifier: GPL-3.0-or-later
#include "files/whole_file.h"

#include "files/descriptor.h"
#include "files/file_fault.h"

#include <algorithm>
#include <array>
#include <cerrno>
#include <fcntl.h>
#include <limits>
#include <sys/stat.h>
#include <unistd.h>

namespace piolo::files {

Result<std::string> wholeFile(const std::string& path) {
    return wholeFile(path, std::numeric_limits<std::size_t>::max());
}

Result<std::string> wholeFile(const std::string& path, std::size_t most) {
    const Descriptor file(::open(path.c_str(), O_RDONLY | O_CLOEXEC));
    if (!file.isOpen()) return readFault(path, errno);
    std::string text;
    struct stat found {};
    if (::fstat(file.number(), &found) == 0 && S_ISREG(found.st_mode))
        text.reserve(std::min(most, static_cast<std::size_t>(found.st_size)));
    std::array<char, 65'536> block{};
    for (;;) {
        const auto count = ::read(file.number(), block.data(), std::min(block.size(), most - text.size()));
        if (count == 0) return text;
        if (count > 0)
            text.append(block.data(), static_cast<std::size_t>(count));
        else if (errno != EINTR)
            return readFault(path, errno);
    }
}

} // namespace piolo::files
