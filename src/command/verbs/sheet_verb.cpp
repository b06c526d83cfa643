// SPDX-License-Identifier: GPL-3.0-or-later
#include "command/options/option_reader.h"
#include "command/verbs/practice_notebook.h"
#include "command/verbs/verb_list.h"
#include "drawings/plugin/drawing_functions.h"
#include "files/atomic_file.h"
#include "files/plugin.h"
#include "plots/paper/paper_words.h"

#include <span>

namespace piolo::command::sheet_verb {
namespace {

struct SheetOptions {
    std::vector<std::string> passages;
    std::string folder;
    std::string path;
    plots::PaperSize paper = plots::PaperSize::a4;
};

SheetOptions readOptions(OptionReader& in, const Arguments& arguments) {
    SheetOptions read;
    if (arguments.positionals().empty())
        in.fail({FaultNumber::missingOption, {}, {"\"Letter C, bars 41 to 48\""}}, "PASSAGE");
    read.passages = arguments.positionals();
    read.folder = in.text("--folder");
    read.path = in.text("--out");
    in.fileKind("--out", read.path, {".pdf", ".svg", ".png"});
    read.paper = static_cast<plots::PaperSize>(in.choice("--paper", {"a4", "letter"}));
    return read;
}

Fault located(Fault fault, const std::string& path) {
    fault.location.file = fault.number == FaultNumber::pagesNeedPdf ? "--out" : path;
    return fault;
}

VerbEnd run(const Arguments& arguments) {
    OptionReader in(arguments);
    const SheetOptions asked = readOptions(in, arguments);
    if (in.fault()) return *in.fault();
    const auto notebook = readNotebook(asked.folder);
    if (!notebook) return notebook.fault();
    const auto ids = passagesNamed(*notebook, asked.passages);
    if (!ids) return ids.fault();
    const auto drawing = files::pluginFunctions<drawings::DrawingFunctions>();
    if (!drawing) return drawing.fault();
    const auto bytes = (*drawing)->sheetFile(asked.path, *notebook, *ids, asked.paper);
    if (!bytes) return located(bytes.fault(), asked.path);
    const Done written = files::replaceFile(asked.path, std::as_bytes(std::span(*bytes)));
    if (!written) return written.fault();
    return exitDone;
}

} // namespace

Verb verb() {
    return {"sheet",
            "draws practice sheets to print and tick in pencil, as PDF, SVG or PNG",
            "piolo sheet PASSAGE... --folder DIR --out FILE [--paper WORD]",
            "PASSAGE is the exact title or the id of a passage; you can give up to 20.",
            "piolo sheet \"Letter C, bars 41 to 48\" --folder ~/spring-concert --out sheet.pdf",
            {folderOption(),
             {"--out", "FILE", "sheet.pdf",
              "FILE.pdf, FILE.svg or FILE.png; a picture has its pages one below the other, 10 at most"},
             {"--paper", "WORD", "letter", "a4 or letter (default a4)"}},
            plots::mostOnPaper,
            run};
}

} // namespace piolo::command::sheet_verb
