// SPDX-License-Identifier: GPL-3.0-or-later
#include "files/file_fault.h"

#include <cerrno>
#include <system_error>

namespace piolo::files {

Fault writeFault(const std::string& path, int error) {
    const bool full = error == ENOSPC || error == EDQUOT;
    return {full ? FaultNumber::diskFull : FaultNumber::cannotWrite,
            {path, 0},
            {std::generic_category().message(error)}};
}

Fault readFault(const std::string& path, int error) {
    return {FaultNumber::cannotRead, {path, 0}, {std::generic_category().message(error)}};
}

} // namespace piolo::files
