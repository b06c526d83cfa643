// SPDX-License-Identifier: GPL-3.0-or-later
// Runs a program and, at every SIGUSR1, stops its first thread (the window's) for two seconds while all its
// other threads continue: `hold_thread PROGRAM ARGUMENT…`. It is the program's parent, which tracing
// requires. SIGTERM ends the program.
#include <cerrno>
#include <csignal>
#include <cstdio>
#include <ctime>
#include <initializer_list>

#include <sys/prctl.h>
#include <sys/ptrace.h>
#include <sys/wait.h>
#include <unistd.h>

namespace {

constexpr std::time_t heldSeconds = 2;

bool hold(pid_t thread) {
    if (ptrace(PTRACE_SEIZE, thread, nullptr, nullptr) != 0) return false;
    int status = 0;
    if (ptrace(PTRACE_INTERRUPT, thread, nullptr, nullptr) != 0) return false;
    if (waitpid(thread, &status, __WALL) != thread || !WIFSTOPPED(status)) return false;
    timespec left{heldSeconds, 0};
    while (nanosleep(&left, &left) != 0 && errno == EINTR) {
    }
    return ptrace(PTRACE_DETACH, thread, nullptr, nullptr) == 0;
}

int statusOf(int status) { return WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status); }

int watch(pid_t program, const sigset_t& signals) {
    for (;;) {
        const int signal = sigwaitinfo(&signals, nullptr);
        if (signal == SIGTERM) kill(program, SIGTERM);
        if (signal == SIGUSR1) std::fprintf(stderr, hold(program) ? "held\n" : "could not hold\n");
        int status = 0;
        if (waitpid(program, &status, WNOHANG) == program) return statusOf(status);
    }
}

} // namespace

int main(int argc, char** argv) {
    if (argc < 2) return 2;
    sigset_t signals;
    sigset_t usual;
    sigemptyset(&signals);
    for (const int signal : {SIGUSR1, SIGTERM, SIGCHLD}) sigaddset(&signals, signal);
    sigprocmask(SIG_BLOCK, &signals, &usual);
    const auto program = fork();
    if (program == 0) {
        prctl(PR_SET_PDEATHSIG, SIGKILL);
        sigprocmask(SIG_SETMASK, &usual, nullptr);
        execv(argv[1], argv + 1);
        _exit(127);
    }
    return program < 0 ? 1 : watch(program, signals);
}
