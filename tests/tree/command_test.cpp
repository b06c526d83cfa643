// SPDX-License-Identifier: GPL-3.0-or-later
// The command by itself: what it links, and what another verb takes.
#include "program_output.h"

#include <doctest/doctest.h>

#include <filesystem>

namespace fs = std::filesystem;

namespace {

std::string programOf(const char* name) {
    const std::string program = std::string(PIOLO_BUILD_DIR) + "/tests/tree/" + name;
    REQUIRE(fs::exists(program));
    return program;
}

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

} // namespace

TEST_CASE(
    "a verb starts without Qt Gui, Qt Quick, QML, a sound device and a PDF reader; they come when needed") {
    const std::string build = PIOLO_BUILD_DIR;
    const auto needs = [](const std::string& file, const char* library) {
        INFO(file, " ", library);
        return has(outputOf("ldd '" + file + "'"), library);
    };
    for (const std::string& program : {programOf("command_alone"), build + "/piolo"}) {
        CHECK(needs(program, "libQt6Core"));
        for (const auto* library : {"libQt6Gui", "libQt6Svg", "libQt6Quick", "libQt6Qml", "libQt6Multimedia",
                                    "librtmidi", "libpoppler", "libzip"})
            CHECK(!needs(program, library));
        CHECK(outputOf("'" + program + "' scale --key C --instrument oboe").starts_with("scale: C major"));
    }
    CHECK(needs(build + "/plugins/libpiolo_drawing.so", "libQt6Svg"));
    CHECK(!needs(build + "/plugins/libpiolo_drawing.so", "libQt6Quick"));
    CHECK(needs(build + "/plugins/libpiolo_window.so", "libQt6Quick"));
}

TEST_CASE("a verb is one file and one line of the table: help, faults and pages then know it") {
    const std::string program = "'" + programOf("command_with_whistle") + "' ";
    CHECK(outputOf(program + "whistle --times 2") == "whistled 2\n");
    const std::string help = outputOf(program + "whistle --help");
    CHECK(help.starts_with("piolo whistle: whistles\n"));
    CHECK(has(help, "\n  --times N  how many times\n"));
    const std::string lists = outputOf(program);
    CHECK(has(lists, "\npiolo whistle  whistles\n"));
    CHECK(has(lists, "\n| `piolo whistle` | whistles |\n"));
    CHECK(has(outputOf(program + "klick 2>&1"), ", import or whistle, or see"));
    CHECK(has(outputOf(program + "whistle --wibble 2>&1"), "piolo whistle --help"));
    CHECK(has(outputOf(program + "whistle 2>&1"), "E103: --times: "));
    CHECK(has(outputOf(program + "check --help"), "piolo check: "));
    CHECK(!has(outputOf("'" + programOf("command_alone") + "'"), "whistle"));
}
