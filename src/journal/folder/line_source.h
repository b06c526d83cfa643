// SPDX-License-Identifier: GPL-3.0-or-later
// The lines of a file, one at a time, in bounded memory.
#pragma once

#include "core/base/result.h"
#include "files/descriptor.h"

#include <cstddef>
#include <optional>
#include <string>

namespace piolo::journal {

/// One line without its end ("\n" or "\r\n").
struct SourceLine {
    std::string text;
    long number = 0;      ///< from 1
    bool tooLong = false; ///< `text` is then its beginning only
    bool closed = true;   ///< false: the file ends without a newline
};

/// Reads a regular file. One thread.
class LineSource {
public:
    /// Fault cannotRead, also for what is no regular file.
    static Result<LineSource> open(const std::string& path, std::size_t longest);
    /// The next line that is not empty; nothing at the end or after a fault.
    std::optional<SourceLine> next();
    /// The fault that ended the reading early.
    [[nodiscard]] const std::optional<Fault>& fault() const { return fault_; }

private:
    LineSource(std::string path, std::size_t longest, files::Descriptor file);
    /// False at the end.
    bool fill();
    /// Adds what the block holds of the present line; true when its newline was there.
    bool take(SourceLine& line);

    std::string path_;
    std::size_t longest_;
    files::Descriptor file_;
    std::string block_;
    std::size_t at_ = 0;
    long number_ = 0;
    std::optional<Fault> fault_;
};

} // namespace piolo::journal
