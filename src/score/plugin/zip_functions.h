// SPDX-License-Identifier: GPL-3.0-or-later
// The functions of libzip that the program uses; it is loaded when a compressed score is first read.
#pragma once

#include "core/base/result.h"

#include <cstddef>
#include <string>
#include <string_view>

namespace piolo::score {

struct ZipFunctions {
    static constexpr const char* plugin = "zip";
    static constexpr const char* object = "pioloZip";

    /// The bytes of one file in an archive, at most `most`. Faults, at the location of `absent`:
    /// brokenArchive, scoreTooLarge, and `absent` itself if there is no such file. Any thread.
    Result<std::string> (*entry)(std::string_view archive, const std::string& name, std::size_t most,
                                 const Fault& absent);
};

} // namespace piolo::score
