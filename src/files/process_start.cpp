// SPDX-License-Identifier: GPL-3.0-or-later
#include "files/process_start.h"

#include <cerrno>
#include <csignal>
#include <fcntl.h>
#include <unistd.h>

namespace piolo::files {

void startProcess() noexcept {
    for (int stream = STDIN_FILENO; stream <= STDERR_FILENO; ++stream)
        // The lowest number that is free is this one.
        if (::fcntl(stream, F_GETFD) == -1 && errno == EBADF) (void)::open("/dev/null", O_RDWR);
    std::signal(SIGXFSZ, SIG_IGN);
}

} // namespace piolo::files
