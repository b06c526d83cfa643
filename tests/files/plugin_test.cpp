// SPDX-License-Identifier: GPL-3.0-or-later
#include "files/plugin.h"

#include <doctest/doctest.h>

using namespace piolo;

namespace {

struct Absent {
    static constexpr const char* plugin = "nowhere";
    static constexpr const char* object = "pioloNowhere";
};

} // namespace

TEST_CASE("a plugin that is not there is a fault that names its file") {
    const auto found = files::pluginObject("nowhere", "pioloNowhere");
    REQUIRE(!found);
    CHECK(found.fault().number == FaultNumber::cannotRead);
    CHECK(found.fault().location.file == "libpiolo_nowhere.so");
    const auto functions = files::pluginFunctions<Absent>();
    REQUIRE(!functions);
    CHECK(functions.fault() == found.fault());
}
