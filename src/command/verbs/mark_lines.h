// SPDX-License-Identifier: GPL-3.0-or-later
// The marks that `piolo ladder` reads, one a line.
#pragma once

#include "core/base/result.h"
#include "core/time/tempo.h"

#include <cstdio>
#include <optional>
#include <string>
#include <string_view>

namespace piolo::command {

struct MarkLine {
    enum class Kind { clean, miss, back, tempo };
    Kind kind = Kind::clean;
    Tempo tempo = Tempo::bpm(60); ///< of Kind::tempo

    /// "clean", "miss", "back" or "tempo 72.5".
    [[nodiscard]] std::string text() const;
    /// Reads one mark without blanks around it. Faults, with an empty place: badMark, badMarkTempo.
    static Result<MarkLine> parse(std::string_view line);
};

/// Lines of a stream, blanks around them taken off (a carriage return too), blank lines passed over.
class MarkReader {
public:
    explicit MarkReader(std::FILE* in) : in_(in) {}
    /// The next mark, or nothing at the end. Faults, all at "-" and its line: badMark, badMarkTempo,
    /// lineTooLong, cannotRead.
    Result<std::optional<MarkLine>> next();

private:
    Done readLine(std::string& line, bool& ended);
    [[nodiscard]] Fault here(Fault fault) const;

    std::FILE* in_;
    long line_ = 0;
};

} // namespace piolo::command
