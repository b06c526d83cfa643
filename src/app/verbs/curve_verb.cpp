// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/curve_picture.h"
#include "app/verbs/option_reader.h"
#include "app/verbs/picture_size.h"
#include "app/verbs/practice_notebook.h"
#include "app/verbs/verb_list.h"
#include "files/atomic_file.h"
#include "models/log/log_curves.h"
#include "plots/curve/curve_csv.h"

#include <algorithm>
#include <optional>
#include <span>
#include <vector>

namespace piolo::app {
namespace {

constexpr OptionSpec options[] = {
    {"--folder", "~/spring-concert"}, {"--by", "days"}, {"--out", "curve.svg"}, {"--size", "960x360"}};
/// More lines cannot be told apart by their dashes and inks.
constexpr std::size_t mostPassages = 20;

struct CurveOptions {
    std::vector<std::string> passages;
    std::string folder;
    std::string path;
    std::optional<PictureKind> kind; ///< none: comma-separated values
    std::optional<plots::CurveBy> by;
    PictureSize size;
};

using Records = std::vector<const PassageRecord*>;

CurveOptions readOptions(OptionReader& in, const Words& words) {
    CurveOptions read;
    if (words.freeWords().empty())
        in.fail({FaultNumber::missingOption, {}, {"\"Letter C, bars 41 to 48\""}}, "PASSAGE");
    read.passages = words.freeWords();
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
    CurvePicture picture{{asked.size.width, asked.size.height}, {{}, 0}};
    std::vector<Id> ids;
    for (const PassageRecord* const record : records) {
        ids.push_back(record->passage.id);
        picture.view.today = std::max(picture.view.today, record->lastDay.value_or(Date{}));
    }
    if (records.size() == 1 && !asked.by) return curveBytes(*asked.kind, *records.front(), picture);
    const auto by = asked.by.value_or(plots::CurveBy::runs);
    return sheetBytes(*asked.kind, models::curvesOf(notebook, ids, by), picture);
}

/// The passages named, each once.
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

VerbEnd run(const Words& words) {
    OptionReader in(words);
    const CurveOptions asked = readOptions(in, words);
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

Verb curveVerb() { return {"curve", {"piolo curve", options, mostPassages}, run}; }

} // namespace piolo::app
