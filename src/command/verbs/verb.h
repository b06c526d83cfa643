// SPDX-License-Identifier: GPL-3.0-or-later
// A verb of the command. Each has one file, NAME_verb.cpp, and one line in verb_table.inc; the help, the
// faults and the pages are generated from its description.
#pragma once

#include "command/options/arguments.h"
#include "command/output/exit_code.h"
#include "core/base/result.h"

#include <string_view>

namespace piolo::command {

/// The result of a verb: the exit status, or the fault that ended it.
using VerbEnd = Result<ExitCode>;

/// Main thread. run() reads standard input and writes standard output and error.
struct Verb {
    std::string_view name;    ///< "click"
    std::string_view summary; ///< what it does, following its name: "writes a click …"
    std::string_view usage;   ///< one or more lines: "piolo click --tempo N …"
    std::string_view about;   ///< further information, in lines; may be ""
    std::string_view example; ///< a command line that works as it is
    OptionSpecs options;
    std::size_t mostPositionals = 0; ///< the most arguments that are not options
    VerbEnd (*run)(const Arguments& arguments) = nullptr;

    [[nodiscard]] Syntax syntax() const { return {"piolo " + std::string(name), options, mostPositionals}; }
};

} // namespace piolo::command
