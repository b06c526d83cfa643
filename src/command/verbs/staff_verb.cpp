// SPDX-License-Identifier: GPL-3.0-or-later
#include "command/options/option_reader.h"
#include "command/output/staff_file.h"
#include "command/verbs/practice_notebook.h"
#include "command/verbs/verb_list.h"

namespace piolo::command::staff_verb {
namespace {

struct StaffOptions {
    std::string passage;
    std::string folder;
    std::string path;
    plots::PictureKind kind = plots::PictureKind::svg;
    drawings::StaffPictureSize size;
};

StaffOptions readOptions(OptionReader& in, const Arguments& arguments) {
    StaffOptions read;
    if (arguments.positionals().empty())
        in.fail({FaultNumber::missingOption, {}, {"\"Letter C, bars 41 to 48\""}}, "PASSAGE");
    else
        read.passage = arguments.positionals().front();
    read.folder = in.text("--folder");
    read.path = in.text("--out");
    read.kind = static_cast<plots::PictureKind>(in.fileKind("--out", read.path, {".svg", ".png", ".pdf"}));
    read.size.width =
        static_cast<int>(in.whole("--width", {240, 8192}, drawings::StaffPictureSize::usualWidth));
    read.size.space = static_cast<int>(in.whole("--space", {4, 60}, drawings::StaffPictureSize::usualSpace));
    return read;
}

VerbEnd run(const Arguments& arguments) {
    OptionReader in(arguments);
    const StaffOptions asked = readOptions(in, arguments);
    if (in.fault()) return *in.fault();
    const auto notebook = readNotebook(asked.folder);
    if (!notebook) return notebook.fault();
    const auto id = passageNamed(*notebook, asked.passage, "PASSAGE");
    if (!id) return id.fault();
    const Passage& passage = notebook->passage(*id)->passage;
    if (passage.notes.empty()) return Fault{FaultNumber::noNotes, {asked.folder}, {passage.title.name}};
    const Done written = writeStaff(asked.path, asked.kind, staffOf(passage), passage.title.name, asked.size);
    if (!written) return written.fault();
    return exitDone;
}

} // namespace

Verb verb() {
    return {"staff",
            "draws the notes of a passage on a staff, as SVG, PNG or PDF",
            "piolo staff PASSAGE --folder DIR --out FILE [OPTION VALUE]...",
            "PASSAGE is the exact title or the id of a passage whose bars were picked from a score.",
            "piolo staff \"Letter C, bars 41 to 48\" --folder ~/spring-concert --out letter-c.svg",
            {folderOption(),
             {"--out", "FILE", "staff.svg", "FILE.svg, FILE.png or FILE.pdf; as high as the music needs"},
             {"--width", "N", "960", "width of the picture, 240 to 8192 dots, 96 to the inch (default 960)"},
             {"--space", "N", "9", "distance between two lines of the staff, 4 to 60 dots (default 9)"}},
            1,
            run};
}

} // namespace piolo::command::staff_verb
