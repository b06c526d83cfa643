// SPDX-License-Identifier: GPL-3.0-or-later
#include "scratch_file.h"
#include "target.h"

#include "command/verbs/mark_lines.h"

#include <cstdio>
#include <memory>

namespace piolo::fuzz {

namespace {

struct Close {
    void operator()(std::FILE* file) const { std::fclose(file); }
};

} // namespace

void runMarks(std::string_view bytes) {
    const auto path = scratchFile("marks", bytes);
    const std::unique_ptr<std::FILE, Close> file(std::fopen(path.c_str(), "rb"));
    command::MarkReader reader(file.get());
    for (;;) {
        const auto mark = reader.next();
        if (!mark) {
            hold(mark.fault().location.file == "-" && mark.fault().location.line > 0,
                 "a fault names its line");
            return;
        }
        if (!*mark) return;
        const auto again = command::MarkLine::parse((*mark)->text());
        hold(again && again->kind == (*mark)->kind && again->tempo == (*mark)->tempo,
             "a mark is read as it is written");
    }
}

} // namespace piolo::fuzz
