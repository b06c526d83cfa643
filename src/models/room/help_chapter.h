// SPDX-License-Identifier: GPL-3.0-or-later
// The chapters of the help: the only table.
#pragma once

#include <QtGlobal>

#include <algorithm>
#include <array>
#include <string_view>

namespace piolo::models {

/// Plain values; any thread may read them.
struct HelpChapter {
    std::string_view name;
    std::string_view file;   ///< in qml/help, without ".qml"
    const char* title;       ///< the id of its text
    std::string_view screen; ///< from which it is opened (screen.h); "" if only the contents lead to it
    std::string_view part{}; ///< of that screen, if only this part opens it
};

/// In the order of the contents.
inline constexpr std::array helpChapterTable{
    HelpChapter{"start", "HelpStart", QT_TRID_NOOP("help.start.title"), "welcome"},
    HelpChapter{"passages", "HelpPassages", QT_TRID_NOOP("help.passages.title"), "passages"},
    HelpChapter{"music", "HelpMusic", QT_TRID_NOOP("help.score.title"), "passages", "music"},
    HelpChapter{"picture", "HelpPicture", QT_TRID_NOOP("help.picture.title"), "passages", "picture"},
    HelpChapter{"drill", "HelpDrill", QT_TRID_NOOP("help.drill.title"), "drill"},
    HelpChapter{"runThrough", "HelpRunThrough", QT_TRID_NOOP("help.run-through.title"), "runThrough"},
    HelpChapter{"set", "HelpSet", QT_TRID_NOOP("set.title"), "set"},
    HelpChapter{"click", "HelpClick", QT_TRID_NOOP("help.click.title"), "click"},
    HelpChapter{"scales", "HelpScales", QT_TRID_NOOP("help.scales.title"), "scales"},
    HelpChapter{"log", "HelpLog", QT_TRID_NOOP("help.log.title"), "log"},
    HelpChapter{"paper", "HelpPaper", QT_TRID_NOOP("help.paper.title"), "passages", "paper"},
    HelpChapter{"files", "HelpFiles", QT_TRID_NOOP("help.files.title"), "passages", "files"},
    HelpChapter{"settings", "HelpSettings", QT_TRID_NOOP("help.settings.title"), "settings"},
    HelpChapter{"care", "HelpCare", QT_TRID_NOOP("help.care.title"), ""},
};

/// The chapter that is opened from that part of the screen ("": the screen as a whole); null if there is
/// none.
[[nodiscard]] constexpr const HelpChapter* chapterFor(std::string_view screen, std::string_view part) {
    const auto* const found = std::ranges::find_if(helpChapterTable, [&](const HelpChapter& chapter) {
        return chapter.screen == screen && chapter.part == part;
    });
    return found == helpChapterTable.end() ? nullptr : found;
}

} // namespace piolo::models
