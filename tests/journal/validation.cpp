// SPDX-License-Identifier: GPL-3.0-or-later
#include "validation.h"

#include "../files/scratch_folder.h"

#include <cstdlib>
#include <doctest/doctest.h>

namespace piolo::test {

bool hasValidator() {
    const bool found = std::system("python3 -c 'import jsonschema' 2>/dev/null") == 0; // NOLINT(cert-env33-c)
    if (!found) FAIL_CHECK("python3-jsonschema is not installed: .ci/packages has it among those for tests");
    return found;
}

std::string refusedLines(const std::string& schema, const std::string& lines) {
    const ScratchFolder folder;
    put(folder / "lines", lines);
    const std::string source = PIOLO_SOURCE_DIR;
    const std::string command = "python3 '" + source + "/tests/journal/invalid_lines.py' '" + source +
                                "/docs/" + schema + "' '" + (folder / "lines") + "' > '" + (folder / "out") +
                                "'";
    CHECK(std::system(command.c_str()) == 0); // NOLINT(cert-env33-c)
    return contentOf(folder / "out");
}

} // namespace piolo::test
