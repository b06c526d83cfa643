// SPDX-License-Identifier: GPL-3.0-or-later
#include "command/options/option_reader.h"
#include "command/options/picture_size.h"
#include "command/output/curve_picture.h"
#include "command/output/drawing_application.h"
#include "command/verbs/practice_notebook.h"
#include "command/verbs/verb_list.h"
#include "files/atomic_file.h"
#include "plots/curve/curve_csv.h"
#include "plots/curve/passage_curves.h"

#include <algorithm>
#include <optional>
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
    std::optional<PictureKind> kind; ///< nothing: comma-separated values
    std::optional<plots::CurveBy> by;
    PictureSize size;
};

using Records = std::vector<const PassageRecord*>;

CurveOptions readOptions(OptionReader& in, const Arguments& arguments) {
    CurveOptions read;
    if (arguments.positionals().empty())
        in.fail({FaultNumber::missingOption, {}, {"\"Letter C, bars 41 to 48\""}}, "PASSAGE");
    read.passages = arguments.positionals();
    read.folder = in.text("--folder");
    read.path = in.text("--out");
    const std::size_t kind = in.fileKind("--out", read.path, {".svg", ".png", ".pdf", ".csv"});
    if (kind < 3) read.kind = static_cast<PictureKind>(kind);
    const std::size_t by = in.choice("--by", {"runs", "days"});
    if (in.isGiven("--by")) read.by = static_cast<plots::CurveBy>(by);
    read.size = readSize(in, {960, 360});
    return read;
}

std::string bytesOf(const CurveOptions& asked, const Notebook& notebook, const Records& records) {
    if (!asked.kind) return plots::curveCsv(records);
    const DrawingApplication application; // the names of scales are texts
    CurvePicture picture{{asked.size.width, asked.size.height}, {{}, 0}};
    std::vector<Id> ids;
    for (const PassageRecord* const record : records) {
        ids.push_back(record->passage.id);
        picture.view.today = std::max(picture.view.today, record->lastDay.value_or(Date{}));
    }
    if (records.size() == 1 && !asked.by) return curveBytes(*asked.kind, *records.front(), picture);
    const auto by = asked.by.value_or(plots::CurveBy::runs);
    return curvesBytes(*asked.kind, plots::curvesOf(notebook, ids, by), picture);
}

/// The named passages, each once.
Result<Records> recordsOf(const Notebook& notebook, const std::vector<std::string>& passages) {
    Records records;
    for (const std::string& wanted : passages) {
        const auto id = passageNamed(notebook, wanted, "PASSAGE");
        if (!id) return id.fault();
        const PassageRecord* const record = notebook.passage(*id);
        if (std::find(records.begin(), records.end(), record) == records.end()) records.push_back(record);
    }
    return records;
}

VerbEnd run(const Arguments& arguments) {
    OptionReader in(arguments);
    const CurveOptions asked = readOptions(in, arguments);
    if (in.fault()) return *in.fault();
    const auto notebook = readNotebook(asked.folder);
    if (!notebook) return notebook.fault();
    const auto records = recordsOf(*notebook, asked.passages);
    if (!records) return records.fault();
    const std::string bytes = bytesOf(asked, *notebook, *records);
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
