// SPDX-License-Identifier: GPL-3.0-or-later
// What hostile bytes are fed to. Each target has its laws; bytes that break one are a find.
#pragma once

#include <span>
#include <stdexcept>
#include <string_view>

namespace piolo::fuzz {

struct Target {
    std::string_view name; ///< also the folder of its finds and seeds
    void (*run)(std::string_view bytes);
};

/// In order of name.
[[nodiscard]] std::span<const Target> targets() noexcept;

void runCommand(std::string_view bytes);  ///< arguments, one per line: a verb with its options, or those of
                                          ///< the window
void runFolder(std::string_view bytes);   ///< a practice folder of up to three files, and its check
void runLine(std::string_view bytes);     ///< one line of a journal
void runMarks(std::string_view bytes);    ///< the standard input of `piolo ladder`
void runPassages(std::string_view bytes); ///< a passage file
void runScore(std::string_view bytes);    ///< a score, compressed or not
void runSettings(std::string_view bytes); ///< the machine's settings
void runWav(std::string_view bytes);      ///< a WAV file

/// Checks a law of a target.
inline void hold(bool law, const char* what) {
    if (!law) throw std::logic_error(what);
}

} // namespace piolo::fuzz
