// SPDX-License-Identifier: GPL-3.0-or-later
#include "command/output/report.h"

#include "practice/faults/fault_text.h"

#include <cerrno>
#include <cstdio>
#include <cstring>

namespace piolo::command {
namespace {

constexpr int firstInputNumber = 200;

} // namespace

ExitCode report(const Fault& fault) {
    const QByteArray line = "piolo: " + practice::faultLine(fault).toUtf8() + '\n';
    std::fwrite(line.constData(), 1, static_cast<std::size_t>(line.size()), stderr);
    return static_cast<int>(fault.number) < firstInputNumber ? exitUse : exitInput;
}

Done say(std::string_view text) {
    errno = 0;
    const bool taken = std::fwrite(text.data(), 1, text.size(), stdout) == text.size();
    if (taken && std::fflush(stdout) == 0) return done();
    if (errno == ENOSPC) return Fault{FaultNumber::diskFull, {"-"}, {}};
    return Fault{FaultNumber::cannotWrite, {"-"}, {std::strerror(errno)}};
}

Done sayFault(const Fault& fault) { return say(practice::faultLine(fault).toStdString() + '\n'); }

} // namespace piolo::command
