// SPDX-License-Identifier: GPL-3.0-or-later
#include "tripwire/system_gate.h"

#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <sys/prctl.h>
#include <sys/syscall.h>
#include <ucontext.h>
#include <unistd.h>

namespace piolo::tripwire {

namespace {

// The kernel reads this byte at every system call of the thread (Linux,
// Documentation/admin-guide/syscall-user-dispatch).
constinit thread_local volatile char shut = SYSCALL_DISPATCH_FILTER_ALLOW;
constinit thread_local volatile long caught = -1;
constinit thread_local bool built = false;

/// The call is made after all, so that the program continues as if it were not being watched.
void makeTheCall(int /*signal*/, siginfo_t* info, void* context) {
    shut = SYSCALL_DISPATCH_FILTER_ALLOW;
    caught = info->si_syscall;
    auto& registers = static_cast<ucontext_t*>(context)->uc_mcontext.gregs;
    long result = info->si_syscall;
    register long fourth asm("r10") = registers[REG_R10];
    register long fifth asm("r8") = registers[REG_R8];
    register long sixth asm("r9") = registers[REG_R9];
    asm volatile("syscall"
                 : "+a"(result)
                 : "D"(registers[REG_RDI]), "S"(registers[REG_RSI]), "d"(registers[REG_RDX]), "r"(fourth),
                   "r"(fifth), "r"(sixth)
                 : "rcx", "r11", "memory");
    registers[REG_RAX] = result;
}

void build() noexcept {
    struct sigaction action {};
    action.sa_sigaction = makeTheCall;
    action.sa_flags = SA_SIGINFO;
    if (::sigaction(SIGSYS, &action, nullptr) == 0 &&
        ::prctl(PR_SET_SYSCALL_USER_DISPATCH, PR_SYS_DISPATCH_ON, 0, 0, &shut) == 0) {
        built = true;
        return;
    }
    std::perror("this kernel cannot watch a thread's system calls");
    std::abort();
}

} // namespace

void shutGate() noexcept {
    if (!built) build();
    caught = -1;
    shut = SYSCALL_DISPATCH_FILTER_BLOCK;
}

long openGate() noexcept {
    shut = SYSCALL_DISPATCH_FILTER_ALLOW;
    const long call = caught;
    caught = -1;
    return call;
}

} // namespace piolo::tripwire
