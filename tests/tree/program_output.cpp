// SPDX-License-Identifier: GPL-3.0-or-later
#include "program_output.h"

#include <doctest/doctest.h>

#include <array>
#include <cstdio>
#include <memory>

std::string outputOf(const std::string& command) {
    std::string text;
    const std::unique_ptr<FILE, int (*)(FILE*)> pipe(popen(command.c_str(), "r"), pclose);
    REQUIRE(pipe);
    std::array<char, 4096> piece{};
    while (fgets(piece.data(), piece.size(), pipe.get()) != nullptr) text += piece.data();
    return text;
}
