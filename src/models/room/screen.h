// SPDX-License-Identifier: GPL-3.0-or-later
// The screens of the window: the only table.
#pragma once

#include "models/keys/key_scope.h"

#include <QtGlobal>

#include <algorithm>
#include <array>
#include <string_view>

namespace piolo::models {

/// Plain values; any thread may read them.
struct Screen {
    std::string_view name;          ///< as in PracticeRoom.screen and `--screen`
    std::string_view file;          ///< in qml/, without ".qml"
    std::string_view chapter;       ///< of the help, for F1; "" for the help itself
    const char* tab;                ///< the id of its text in the navigation; null: not reached from there
    KeyScope keys = KeyScope::none; ///< whose keys are handled while it is shown
    bool kept = false;              ///< is kept while another screen is shown
};

/// In the order of the navigation.
inline constexpr std::array screenTable{
    Screen{"passages", "PassagesScreen", "passages", QT_TRID_NOOP("nav.passages"), KeyScope::form},
    Screen{"drill", "DrillArea", "drill", QT_TRID_NOOP("nav.drill"), KeyScope::drill, true},
    Screen{"scales", "ScalesScreen", "scales", QT_TRID_NOOP("nav.scales")},
    Screen{"log", "LogScreen", "log", QT_TRID_NOOP("nav.log"), KeyScope::log},
    Screen{"settings", "SettingsScreen", "settings", QT_TRID_NOOP("nav.settings")},
    Screen{"help", "HelpScreen", "", QT_TRID_NOOP("nav.help")},
    Screen{"runThrough", "RunThroughScreen", "runThrough", nullptr, KeyScope::runThrough},
    Screen{"welcome", "WelcomeScreen", "start", nullptr},
};

/// Null if there is no screen with that name.
[[nodiscard]] constexpr const Screen* screenNamed(std::string_view name) {
    const auto* const found =
        std::ranges::find_if(screenTable, [&](const Screen& screen) { return name == screen.name; });
    return found == screenTable.end() ? nullptr : found;
}

} // namespace piolo::models
