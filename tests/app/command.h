// SPDX-License-Identifier: GPL-3.0-or-later
// Runs the built program as a child process, as a script would.
#pragma once

#include <map>
#include <string>
#include <vector>

namespace piolo::test {

using Args = std::vector<std::string>;

struct Ended {
    int code = -1;  ///< exit status; -1 if a signal ended it
    int signal = 0; ///< that signal
    std::string out;
    std::string err;
};

/// What a run may get besides its arguments.
struct Around {
    std::string input;                              ///< standard input
    std::map<std::string, std::string> environment; ///< added to the current one
    std::string inputPath;                          ///< read as standard input instead of `input`
    std::string outputPath;                         ///< written as standard output; `out` stays empty
};

Ended runPiolo(const Args& words, const Around& around = {});
/// Starts a run with its output discarded and returns its process id.
int beginPiolo(const Args& words);
/// Waits for it to end.
Ended endOf(int process);

/// A folder that is removed when the test ends.
class Scratch {
public:
    Scratch();
    ~Scratch();
    Scratch(const Scratch&) = delete;
    Scratch& operator=(const Scratch&) = delete;
    [[nodiscard]] std::string path(const std::string& name = {}) const;
    /// The names of all entries, including hidden ones, sorted.
    [[nodiscard]] std::vector<std::string> names() const;
    /// Creates the file and its parent folders; returns its path.
    std::string put(const std::string& name, const std::string& bytes) const;

private:
    std::string folder_;
};

std::string bytesOf(const std::string& path);

} // namespace piolo::test
