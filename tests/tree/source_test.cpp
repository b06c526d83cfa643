// SPDX-License-Identifier: GPL-3.0-or-later
#include "room_table.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>

namespace fs = std::filesystem;

TEST_CASE("every source file begins with its licence and has at most 400 lines") {
    int files = 0;
    for (const auto* folder : {"src", "qml", "tests", "samples"}) {
        for (const auto& entry : fs::recursive_directory_iterator(fs::path(PIOLO_SOURCE_DIR) / folder)) {
            const auto suffix = entry.path().extension();
            if (suffix != ".h" && suffix != ".cpp" && suffix != ".qml") continue;
            const std::string name = fs::relative(entry.path(), PIOLO_SOURCE_DIR).string();
            const std::string text = sourceText(name);
            INFO(name);
            CHECK(text.starts_with("// SPDX-License-Identifier: GPL-3.0-or-later\n"));
            CHECK(std::count(text.begin(), text.end(), '\n') <= 400);
            ++files;
        }
    }
    CHECK(files > 60);
}
