// SPDX-License-Identifier: GPL-3.0-or-later
#include "target.h"

namespace piolo::fuzz {

namespace {

constexpr Target all[] = {
    {"command", runCommand},   {"folder", runFolder}, {"line", runLine},         {"marks", runMarks},
    {"passages", runPassages}, {"score", runScore},   {"settings", runSettings}, {"wav", runWav}};

} // namespace

std::span<const Target> targets() noexcept { return all; }

} // namespace piolo::fuzz
