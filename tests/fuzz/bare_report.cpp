// SPDX-License-Identifier: GPL-3.0-or-later
// The targets check what is returned, not what is printed, so neither output nor Qt is needed.
#include "command/output/report.h"
#include "command/verbs/score_text.h"

namespace piolo::command {

ExitCode report(const Fault& fault) { return static_cast<int>(fault.number) < 200 ? exitUse : exitInput; }

Done say(std::string_view /*text*/) { return done(); }

Done sayFault(const Fault& /*fault*/) { return done(); }

std::string scoreReport(const score::Score& /*score*/) { return {}; }

std::string excerptReport(const score::Part& /*part*/, const score::Excerpt& /*made*/) { return {}; }

} // namespace piolo::command
