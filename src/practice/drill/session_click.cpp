// SPDX-License-Identifier: GPL-3.0-or-later
// A click without a passage, as the session sends it.
#include "practice/drill/drill_session.h"

namespace piolo::practice {

std::uint64_t DrillSession::beginClick(const engine::ClickPlan& plan) {
    changeClick(++clicks_, plan);
    return clicks_;
}

void DrillSession::changeClick(std::uint64_t number, const engine::ClickPlan& plan) {
    engine::Command command;
    command.kind = engine::Command::Kind::click;
    command.number = number;
    command.click = plan;
    send(command);
}

void DrillSession::endClick(std::uint64_t number) {
    engine::Command command;
    command.kind = engine::Command::Kind::endClick;
    command.number = number;
    send(command);
}

} // namespace piolo::practice
