// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/window_choices.h"

#include "models/room/screen.h"
#include "models/settings/language_table.h"

namespace piolo::app {

WindowChoices windowChoices() {
    WindowChoices choices{{}, {models::systemLanguage}};
    for (const models::Screen& screen : models::screenTable)
        if (screen.alone) choices.screens.push_back(screen.name);
    for (const models::Language& language : models::languageTable)
        choices.languages.emplace_back(language.code);
    return choices;
}

} // namespace piolo::app
