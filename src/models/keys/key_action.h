// SPDX-License-Identifier: GPL-3.0-or-later
// What keys and switches do: the only table. room/key_dispatch carries it out.
#pragma once

#include "models/keys/key_scope.h"

#include <QtGlobal>

#include <algorithm>
#include <array>
#include <cstddef>
#include <optional>
#include <string_view>

namespace piolo::models {

enum class KeyAction {
    mark,
    back,
    stop,
    pedal,
    clean,
    faster,
    slower,
    attempt,
    hear,
    next,
    stretch,
    save,
    tap,
    click
};

/// Plain values; any thread may read them.
struct KeyActionInfo {
    KeyAction action;
    std::string_view name; ///< in the machine's settings, and in QML
    const char* text;      ///< the id of its text
    KeyScope scopes;
    std::array<const char*, 2> usual{}; ///< its keys as portable text; null: fewer keys
    /// The id of the text for how the single pedal does it, with %1 for its keys; "": by a press; null: not
    /// at all.
    const char* byPedal = nullptr;
};

/// In the order of KeyAction, which is that of the settings screen.
inline constexpr std::array keyActions{
    KeyActionInfo{KeyAction::mark,
                  "mark",
                  QT_TRID_NOOP("keys.action.miss"),
                  KeyScope::drill | KeyScope::runThrough | KeyScope::set | KeyScope::click,
                  {"Space", "PgDown"},
                  ""},
    KeyActionInfo{KeyAction::back,
                  "back",
                  QT_TRID_NOOP("keys.action.back"),
                  KeyScope::drill | KeyScope::runThrough,
                  {"Backspace", "PgUp"},
                  QT_TRID_NOOP("keys.twice")},
    KeyActionInfo{KeyAction::stop,
                  "stop",
                  QT_TRID_NOOP("keys.action.stop"),
                  KeyScope::drill | KeyScope::runThrough | KeyScope::click,
                  {"Esc"},
                  QT_TRID_NOOP("keys.held")},
    KeyActionInfo{KeyAction::pedal, "pedal", QT_TRID_NOOP("keys.action.pedal"),
                  KeyScope::drill | KeyScope::runThrough | KeyScope::set | KeyScope::click},
    KeyActionInfo{KeyAction::clean,
                  "clean",
                  QT_TRID_NOOP("keys.action.clean"),
                  KeyScope::drill | KeyScope::runThrough,
                  {"Return"}},
    KeyActionInfo{KeyAction::faster,
                  "faster",
                  QT_TRID_NOOP("keys.action.faster"),
                  KeyScope::drill | KeyScope::click,
                  {"Up"}},
    KeyActionInfo{KeyAction::slower,
                  "slower",
                  QT_TRID_NOOP("keys.action.slower"),
                  KeyScope::drill | KeyScope::click,
                  {"Down"}},
    KeyActionInfo{KeyAction::attempt, "try", QT_TRID_NOOP("keys.action.try"), KeyScope::drill, {"T"}},
    KeyActionInfo{KeyAction::hear, "hear", QT_TRID_NOOP("keys.action.hear"), KeyScope::drill, {"H"}},
    KeyActionInfo{KeyAction::next,
                  "next",
                  QT_TRID_NOOP("keys.action.next"),
                  KeyScope::drill,
                  {"N"},
                  QT_TRID_NOOP("keys.held")},
    KeyActionInfo{KeyAction::stretch, "stretch", QT_TRID_NOOP("keys.action.stretch"), KeyScope::log, {"N"}},
    KeyActionInfo{KeyAction::save, "save", QT_TRID_NOOP("keys.action.save"), KeyScope::form, {"Ctrl+Return"}},
    KeyActionInfo{KeyAction::tap,
                  "tap",
                  QT_TRID_NOOP("keys.action.tap"),
                  KeyScope::click | KeyScope::figure,
                  {"T", "PgUp"}},
    KeyActionInfo{KeyAction::click,
                  "click",
                  QT_TRID_NOOP("keys.action.click"),
                  KeyScope::drill | KeyScope::form | KeyScope::welcome,
                  {"F2"}},
};

[[nodiscard]] constexpr std::size_t rowOf(KeyAction action) { return static_cast<std::size_t>(action); }

[[nodiscard]] constexpr const KeyActionInfo& infoOf(KeyAction action) { return keyActions[rowOf(action)]; }

[[nodiscard]] constexpr std::optional<KeyAction> keyActionNamed(std::string_view name) {
    const auto* const found =
        std::ranges::find_if(keyActions, [&](const KeyActionInfo& info) { return info.name == name; });
    return found == keyActions.end() ? std::nullopt : std::optional(found->action);
}

static_assert(std::ranges::all_of(keyActions,
                                  [](const KeyActionInfo& info) { return &infoOf(info.action) == &info; }),
              "the table has the order of KeyAction");

} // namespace piolo::models
