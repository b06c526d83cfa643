// SPDX-License-Identifier: GPL-3.0-or-later
// The screens of the window: the only table.
#pragma once

#include "models/keys/key_scope.h"

#include <QtGlobal>

#include <algorithm>
#include <array>
#include <string_view>

namespace piolo::models {

/// Where the navigation shows a screen: those for practice at the left; the rest small, at the right.
enum class TabPlace { none, left, right };

/// Plain values; any thread may read them.
struct Screen {
    std::string_view name; ///< as in PracticeRoom.screen and `--screen`
    std::string_view file; ///< in qml/, without ".qml"
    const char* tab;       ///< the id of its text in the navigation; null: not reached from there
    TabPlace place = TabPlace::none;
    KeyScope keys = KeyScope::none; ///< whose keys are handled while it is shown
    bool kept = false;              ///< is kept while another screen is shown
    bool alone = true;              ///< shows something when it is opened by `--screen`
    std::string_view sign{};        ///< in place of the text, in a narrow window
};

/// In the order of the navigation.
inline constexpr std::array screenTable{
    Screen{"passages", "PassagesScreen", QT_TRID_NOOP("nav.passages"), TabPlace::left, KeyScope::form},
    Screen{"scales", "ScalesScreen", QT_TRID_NOOP("nav.scales"), TabPlace::left},
    Screen{"log", "LogScreen", QT_TRID_NOOP("nav.log"), TabPlace::left, KeyScope::log},
    Screen{"settings", "SettingsScreen", QT_TRID_NOOP("nav.settings"), TabPlace::right, KeyScope::none, false,
           true, "⚙"},
    Screen{"help", "HelpScreen", QT_TRID_NOOP("nav.help"), TabPlace::right, KeyScope::none, false, true, "?"},
    Screen{"drill", "DrillArea", nullptr, TabPlace::none, KeyScope::drill, true},
    Screen{"runThrough", "RunThroughScreen", nullptr, TabPlace::none, KeyScope::runThrough, false, false},
    Screen{"set", "SetScreen", nullptr, TabPlace::none, KeyScope::set},
    Screen{"welcome", "WelcomeScreen", nullptr, TabPlace::none, KeyScope::welcome, false, false},
    Screen{"click", "ClickScreen", nullptr, TabPlace::none, KeyScope::click},
};

/// Null if there is no screen with that name.
[[nodiscard]] constexpr const Screen* screenNamed(std::string_view name) {
    const auto* const found =
        std::ranges::find_if(screenTable, [&](const Screen& screen) { return name == screen.name; });
    return found == screenTable.end() ? nullptr : found;
}

/// The screen that is shown at the start.
[[nodiscard]] constexpr std::string_view firstScreen(bool noPassageYet) {
    return noPassageYet ? "welcome" : "passages";
}

} // namespace piolo::models
