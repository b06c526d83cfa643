// SPDX-License-Identifier: GPL-3.0-or-later
// Reads the lines of a file one at a time, in bounded memory.
#pragma once

#include "core/base/result.h"
#include "files/content_sum.h"
#include "files/descriptor.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>

namespace piolo::journal {

/// A line without its ending ("\n" or "\r\n").
struct SourceLine {
    std::string text;
    long number = 0;      ///< from 1
    bool tooLong = false; ///< `text` then has only its beginning
    bool closed = true;   ///< false: the file ends without a newline
};

/// How much of a file was read, and its checksum.
struct ReadExtent {
    std::uint64_t bytes = 0;
    long lines = 0;        ///< those closed by a newline
    bool closed = true;    ///< no line was left incomplete
    std::uint64_t sum = 0; ///< files::ContentSum of these bytes
    bool operator==(const ReadExtent&) const noexcept = default;
};

/// Reads a regular file. One thread.
class LineSource {
public:
    /// Fault cannotRead, also for anything that is not a regular file.
    static Result<LineSource> open(const std::string& path, std::size_t longest);
    /// The next non-empty line; nothing at the end or after a fault.
    std::optional<SourceLine> next();
    /// Continues after what was read at another time; call before the first next(). False if the file does
    /// not begin with that, or if its last line has grown: then nothing more can be read.
    [[nodiscard]] bool skip(const ReadExtent& known);
    /// Of everything read so far; at the end of the file, of the whole file.
    [[nodiscard]] ReadExtent extent() const;
    /// The fault that stopped reading early.
    [[nodiscard]] const std::optional<Fault>& fault() const { return fault_; }

private:
    LineSource(std::string path, std::size_t longest, files::Descriptor file);
    /// Reads at most `most` bytes. False at the end.
    bool fill(std::size_t most);
    /// Adds the part of the current line that is in the block; true if it included the newline.
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
