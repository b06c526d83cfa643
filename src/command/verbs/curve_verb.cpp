// SPDX-License-Identifier: GPL-3.0-or-later
#include "command/options/option_reader.h"
#include "command/options/picture_size.h"
#include "command/verbs/practice_notebook.h"
#include "command/verbs/verb_list.h"
#include "drawings/plugin/drawing_functions.h"
#include "files/atomic_file.h"
#include "files/plugin.h"

#include <algorithm>
#include <span>
#include <vector>

namespace piolo::command::curve_verb {
namespace {

/// More lines could not be distinguished by dash and ink.
constexpr std::size_t mostPassages = 20;

struct CurveOptions {
    std::vector<std::string> passages;
    std::string folder;
    std::string path;
    drawings::CurveRequest curves;
};

CurveOptions readOptions(OptionReader& in, const Arguments& arguments) {
    CurveOptions read;
    if (arguments.positionals().empty())
        in.fail({FaultNumber::missingOption, {}, {"\"Letter C, bars 41 to 48\""}}, "PASSAGE");
    read.passages = arguments.positionals();
    read.folder = in.text("--folder");
    read.path = in.text("--out");
    const std::size_t kind = in.fileKind("--out", read.path, {".svg", ".png", ".pdf", ".csv"});
    if (kind < 3) read.curves.kind = static_cast<plots::PictureKind>(kind);
    const std::size_t by = in.choice("--by", {"runs", "days"});
    if (in.isGiven("--by")) read.curves.by = static_cast<plots::CurveBy>(by);
    const PictureSize size = readSize(in, {960, 360});
    read.curves.size = {size.width, size.height};
    return read;
}

VerbEnd run(const Arguments& arguments) {
    OptionReader in(arguments);
    const CurveOptions asked = readOptions(in, arguments);
    if (in.fault()) return *in.fault();
    const auto notebook = readNotebook(asked.folder);
    if (!notebook) return notebook.fault();
    const auto ids = passagesNamed(*notebook, asked.passages);
    if (!ids) return ids.fault();
    const auto drawing = files::pluginFunctions<drawings::DrawingFunctions>();
    if (!drawing) return drawing.fault();
    const std::string bytes = (*drawing)->curveFile(*notebook, *ids, asked.curves);
    if (bytes.empty()) return Fault{FaultNumber::cannotWrite, {asked.path}, {}};
    const Done written = files::replaceFile(asked.path, std::as_bytes(std::span(bytes)));
    if (!written) return written.fault();
    return exitDone;
}

} // namespace

Verb verb() {
    return {"curve",
            "draws the tempo curves of passages as SVG, PNG, PDF or CSV",
            "piolo curve PASSAGE... --folder DIR --out FILE [OPTION VALUE]...",
            "PASSAGE is the exact title or the id of a passage; you can give up to 20.",
            "piolo curve \"Letter C, bars 41 to 48\" --folder ~/spring-concert --out curve.svg",
            {folderOption(),
             {"--out", "FILE", "curve.svg",
              "FILE.svg, FILE.png, FILE.pdf, or FILE.csv for the runs as comma-separated values"},
             {"--by", "WORD", "days", "runs or days, as on the log screen (several passages: default runs)"},
             {"--size", "WxH", "960x360", "size of the picture, 64x64 to 8192x8192 (default 960x360)"}},
            mostPassages,
            run};
}

} // namespace piolo::command::curve_verb
