// SPDX-License-Identifier: GPL-3.0-or-later
// A verb of the command. Each has one file, NAME_verb.cpp, and one line in verb_table.inc; the help, the
// faults and the pages are made from what stands here.
#pragma once

#include "command/options/arguments.h"
#include "command/output/exit_code.h"
#include "core/base/result.h"

#include <string_view>

namespace piolo::command {

/// What a verb returns: the exit code, or the fault that ends it.
using VerbEnd = Result<ExitCode>;

/// Main thread. run() reads standard input and writes standard output and error.
struct Verb {
    std::string_view name;    ///< "click"
    std::string_view summary; ///< what it does, to follow its name: "writes a click …"
    std::string_view usage;   ///< one line or more: "piolo click --tempo N …"
    std::string_view about;   ///< what else there is to know, in lines; may be ""
    std::string_view example; ///< a command line that works as it is
    OptionSpecs options;
    std::size_t mostPositionals = 0; ///< words that are not options, at most
    VerbEnd (*run)(const Arguments& arguments) = nullptr;

    [[nodiscard]] Syntax syntax() const { return {"piolo " + std::string(name), options, mostPositionals}; }
};

} // namespace piolo::command
