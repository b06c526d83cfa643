// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/staff_picture.h"
#include "app/output/telling.h"
#include "app/verbs/option_reader.h"
#include "app/verbs/practice_notebook.h"
#include "app/verbs/verb_list.h"
#include "files/atomic_file.h"

#include <span>

namespace piolo::app {
namespace {

constexpr OptionSpec options[] = {
    {"--folder", "~/spring-concert"}, {"--out", "staff.svg"}, {"--width", "960"}, {"--space", "9"}};

struct StaffOptions {
    std::string passage;
    std::string folder;
    std::string path;
    PictureKind kind = PictureKind::svg;
    StaffPictureSize size;
};

StaffOptions readOptions(OptionReader& in, const Words& words) {
    StaffOptions read;
    if (words.freeWords().empty())
        in.fail({FaultNumber::missingOption, {}, {"\"Letter C, bars 41 to 48\""}}, "PASSAGE");
    else
        read.passage = words.freeWords().front();
    read.folder = in.text("--folder");
    read.path = in.text("--out");
    read.kind = static_cast<PictureKind>(in.fileKind("--out", read.path, {".svg", ".png", ".pdf"}));
    read.size.width = static_cast<int>(in.whole("--width", {240, 8192}, StaffPictureSize::usualWidth));
    read.size.space = static_cast<int>(in.whole("--space", {4, 60}, StaffPictureSize::usualSpace));
    return read;
}

VerbEnd run(const Words& words) {
    OptionReader in(words);
    const StaffOptions asked = readOptions(in, words);
    if (in.fault()) return *in.fault();
    const auto notebook = readNotebook(asked.folder);
    if (!notebook) return notebook.fault();
    const auto id = passageNamed(*notebook, asked.passage, "PASSAGE");
    if (!id) return id.fault();
    const Passage& passage = notebook->passage(*id)->passage;
    if (passage.notes.empty()) return Fault{FaultNumber::noNotes, {asked.folder}, {passage.title.name}};
    const StaffPicture picture =
        staffPicture(asked.kind, staffOf(passage), QString::fromStdString(passage.title.name), asked.size);
    if (picture.bytes.empty()) return Fault{FaultNumber::cannotWrite, {asked.path}, {}};
    const Done written = files::replaceFile(asked.path, std::as_bytes(std::span(picture.bytes)));
    if (!written) return written.fault();
    const Done said = say(remarksOn(picture));
    if (!said) return said.fault();
    return exitDone;
}

} // namespace

Verb staffVerb() { return {"staff", {"piolo staff", options, 1}, run}; }

} // namespace piolo::app
