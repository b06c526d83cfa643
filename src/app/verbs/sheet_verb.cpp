// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/drawing_application.h"
#include "app/verbs/option_reader.h"
#include "app/verbs/practice_notebook.h"
#include "app/verbs/verb_list.h"
#include "files/atomic_file.h"
#include "models/settings/language.h"
#include "models/text/paper_words.h"

#include <algorithm>
#include <span>

namespace piolo::app {
namespace {

constexpr OptionSpec options[] = {
    {"--folder", "~/spring-concert"}, {"--paper", "letter"}, {"--out", "sheet.pdf"}};

struct SheetOptions {
    std::vector<std::string> passages;
    std::string folder;
    std::string path;
    plots::PaperSize paper = plots::PaperSize::a4;
};

SheetOptions readOptions(OptionReader& in, const Words& words) {
    SheetOptions read;
    if (words.freeWords().empty())
        in.fail({FaultNumber::missingOption, {}, {"\"Letter C, bars 41 to 48\""}}, "PASSAGE");
    read.passages = words.freeWords();
    read.folder = in.text("--folder");
    read.path = in.text("--out");
    in.fileKind("--out", read.path, {".pdf", ".svg", ".png"});
    read.paper = static_cast<plots::PaperSize>(in.choice("--paper", {"a4", "letter"}));
    return read;
}

/// The passages named, each once.
Result<std::vector<Id>> idsOf(const Notebook& notebook, const std::vector<std::string>& passages) {
    std::vector<Id> ids;
    for (const std::string& wanted : passages) {
        const auto id = passageNamed(notebook, wanted, "PASSAGE");
        if (!id) return id.fault();
        if (std::find(ids.begin(), ids.end(), *id) == ids.end()) ids.push_back(*id);
    }
    return ids;
}

Fault placed(Fault fault, const std::string& path) {
    fault.place.file = fault.number == FaultNumber::pagesNeedPdf ? "--out" : path;
    return fault;
}

VerbEnd run(const Words& words) {
    OptionReader in(words);
    const SheetOptions asked = readOptions(in, words);
    if (in.fault()) return *in.fault();
    const auto notebook = readNotebook(asked.folder);
    if (!notebook) return notebook.fault();
    const auto ids = idsOf(*notebook, asked.passages);
    if (!ids) return ids.fault();
    const DrawingApplication application;
    models::loadEnglish();
    const auto bytes = models::paperBytes(QString::fromStdString(asked.path),
                                          models::paperSheet(*notebook, *ids, asked.paper));
    if (!bytes) return placed(bytes.fault(), asked.path);
    const Done written = files::replaceFile(
        asked.path, std::as_bytes(std::span(bytes->constData(), static_cast<std::size_t>(bytes->size()))));
    if (!written) return written.fault();
    return exitDone;
}

} // namespace

Verb sheetVerb() { return {"sheet", {"piolo sheet", options, models::mostOnPaper}, run}; }

} // namespace piolo::app
