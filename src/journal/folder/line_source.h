// SPDX-License-Identifier: GPL-3.0-or-later
// The lines of a file, one at a time, in bounded memory.
#pragma once

#include "core/base/result.h"
#include "files/content_sum.h"
#include "files/descriptor.h"

#include <cstddef>
#include <cstdint>
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

/// How much of a file was read, and what it was.
struct ReadExtent {
    std::uint64_t bytes = 0;
    long lines = 0;        ///< closed by a newline
    bool closed = true;    ///< no line was begun and not ended
    std::uint64_t sum = 0; ///< files::ContentSum of these bytes
    bool operator==(const ReadExtent&) const noexcept = default;
};

/// Reads a regular file. One thread.
class LineSource {
public:
    /// Fault cannotRead, also for what is no regular file.
    static Result<LineSource> open(const std::string& path, std::size_t longest);
    /// The next line that is not empty; nothing at the end or after a fault.
    std::optional<SourceLine> next();
    /// Goes on behind what was read at another time, before the first next(). False when the file does not
    /// begin with that, or when its last line has grown: then nothing can be read any more.
    [[nodiscard]] bool skip(const ReadExtent& known);
    /// Of all that was read. At the end of the file: of the file.
    [[nodiscard]] ReadExtent extent() const;
    /// The fault that ended the reading early.
    [[nodiscard]] const std::optional<Fault>& fault() const { return fault_; }

private:
    LineSource(std::string path, std::size_t longest, files::Descriptor file);
    /// Reads at most `most` bytes. False at the end.
    bool fill(std::size_t most);
    /// Adds what the block holds of the present line; true when its newline was there.
    bool take(SourceLine& line);

    std::string path_;
    std::size_t longest_;
    files::Descriptor file_;
    std::string block_;
    std::size_t at_ = 0;
    long number_ = 0;
    bool closed_ = true;
    std::uint64_t bytes_ = 0;
    files::ContentSum sum_;
    std::optional<Fault> fault_;
};

} // namespace piolo::journal
