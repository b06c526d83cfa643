// SPDX-License-Identifier: GPL-3.0-or-later
// The marks that `piolo ladder` reads, one per line.
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
    Tempo tempo = Tempo::bpm(60); ///< for Kind::tempo

    /// "clean", "miss", "back" or "tempo 72.5".
    [[nodiscard]] std::string text() const;
    /// Reads one mark without surrounding blanks. Faults, with an empty location: badMark, badMarkTempo.
    static Result<MarkLine> parse(std::string_view line);
};

/// The lines of a stream without surrounding blanks (including carriage returns); blank lines are skipped.
class MarkReader {
public:
    explicit MarkReader(std::FILE* in) : in_(in) {}
    /// The next mark, or nothing at the end. Faults, all located at "-" and its line: badMark, badMarkTempo,
    /// lineTooLong, cannotRead.
    Result<std::optional<MarkLine>> next();

private:
    Done readLine(std::string& line, bool& ended);
    [[nodiscard]] Fault here(Fault fault) const;

    std::FILE* in_;
    long line_ = 0;
};

} // namespace piolo::command
