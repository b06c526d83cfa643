// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/curve_csv.h"
#include "app/curve_picture.h"
#include "app/option_reader.h"
#include "app/picture_size.h"
#include "app/practice_notebook.h"
#include "app/verb_list.h"
#include "files/atomic_file.h"

#include <span>

namespace piolo::app {
namespace {

constexpr OptionSpec options[] = {
    {"--folder", "~/spring-concert"}, {"--out", "curve.svg"}, {"--size", "960x360"}};

enum class CurveKind { svg, png, csv };

struct CurveOptions {
    std::string passage;
    std::string folder;
    std::string path;
    CurveKind kind = CurveKind::svg;
    PictureSize size;
};

CurveOptions readOptions(OptionReader& in, const Words& words) {
    CurveOptions read;
    if (words.freeWords().empty())
        in.fail({FaultNumber::missingOption, {}, {"\"Letter C, bars 41 to 48\""}}, "PASSAGE");
    else
        read.passage = words.freeWords().front();
    read.folder = in.text("--folder");
    read.path = in.text("--out");
    read.kind = static_cast<CurveKind>(in.fileKind("--out", read.path, {".svg", ".png", ".csv"}));
    read.size = readSize(in, {960, 360});
    return read;
}

std::string bytesOf(const CurveOptions& asked, const PassageRecord& record) {
    if (asked.kind == CurveKind::csv) return curveCsv(record);
    const CurvePicture picture{{asked.size.width, asked.size.height}, {record.lastDay.value_or(Date{}), 0}};
    return asked.kind == CurveKind::png ? curvePng(record, picture, 1) : curveSvg(record, picture);
}

Done writeCurve(const CurveOptions& asked, const PassageRecord& record) {
    const std::string bytes = bytesOf(asked, record);
    if (bytes.empty()) return Fault{FaultNumber::cannotWrite, {asked.path}, {}};
    return files::replaceFile(asked.path, std::as_bytes(std::span(bytes)));
}

VerbEnd run(const Words& words) {
    OptionReader in(words);
    const CurveOptions asked = readOptions(in, words);
    if (in.fault()) return *in.fault();
    const auto notebook = readNotebook(asked.folder);
    if (!notebook) return notebook.fault();
    const auto id = passageNamed(*notebook, asked.passage, "PASSAGE");
    if (!id) return id.fault();
    const Done written = writeCurve(asked, *notebook->passage(*id));
    if (!written) return written.fault();
    return exitDone;
}

} // namespace

Verb curveVerb() { return {"curve", {"piolo curve", options, 1}, run}; }

} // namespace piolo::app
