// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/curve_csv.h"
#include "app/option_reader.h"
#include "app/picture_size.h"
#include "app/practice_notebook.h"
#include "app/verb_list.h"
#include "files/atomic_file.h"
#include "plots/plot_file.h"

#include <QGuiApplication>

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

QByteArray picture(const CurveOptions& asked, const PassageRecord& record) {
    // Standard error holds faults alone, not Qt's remarks on a missing session.
    qInstallMessageHandler([](QtMsgType, const QMessageLogContext&, const QString&) {});
    qputenv("QT_QPA_PLATFORM", "offscreen"); // draws without a display
    char name[] = "piolo";
    char* arguments[] = {name, nullptr};
    int count = 1;
    const QGuiApplication application(count, arguments);
    const QSize size(asked.size.width, asked.size.height);
    const plots::CurveView view{record.lastDay.value_or(Date{}), 0};
    const plots::Drawing drawing = [&](QPainter& painter) {
        plots::drawTempoCurve(painter, size, record, view, plots::lightCurveStyle());
    };
    if (asked.kind == CurveKind::png) return plots::pngBytes(size, 1, drawing);
    return plots::svgBytes(size, QString::fromStdString(record.passage.title.name), drawing);
}

Done writeCurve(const CurveOptions& asked, const PassageRecord& record) {
    if (asked.kind == CurveKind::csv)
        return files::replaceFile(asked.path, std::as_bytes(std::span<const char>(curveCsv(record))));
    const QByteArray bytes = picture(asked, record);
    if (bytes.isEmpty()) return Fault{FaultNumber::cannotWrite, {asked.path}, {}};
    const std::span all(bytes.constData(), static_cast<std::size_t>(bytes.size()));
    return files::replaceFile(asked.path, std::as_bytes(all));
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
