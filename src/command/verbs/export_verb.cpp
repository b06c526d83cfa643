// SPDX-License-Identifier: GPL-3.0-or-later
#include "command/options/option_reader.h"
#include "command/output/written_file.h"
#include "command/verbs/practice_notebook.h"
#include "command/verbs/verb_list.h"
#include "core/passage/passage_set.h"
#include "journal/passage_file/passage_file.h"
#include "practice/scores/passage_score.h"
#include "score/write/musicxml_writer.h"

#include <limits>

namespace piolo::command::export_verb {
namespace {

// A passage named twice is included once.
Result<PassageSet> namedSet(const Notebook& notebook, const std::vector<std::string>& names) {
    if (names.empty()) return wholeSet(notebook);
    std::vector<Id> ids;
    for (const std::string& name : names) {
        const auto id = passageNamed(notebook, name, "PASSAGE");
        if (!id) return id.fault();
        ids.push_back(*id);
    }
    return chosenSet(notebook, ids);
}

Fault inFolder(Fault fault, const std::string& folder) {
    if (fault.location.file.empty()) fault.location.file = folder;
    return fault;
}

VerbEnd exportSet(const Arguments& arguments, const std::string& folder, const std::string& path) {
    const auto notebook = readNotebook(folder);
    if (!notebook) return notebook.fault();
    const auto set = namedSet(*notebook, arguments.positionals());
    if (!set) return inFolder(set.fault(), folder);
    if (set->pieces.empty() && set->passages.empty())
        return Fault{FaultNumber::nothingToExport, {folder}, {}};
    const Done written = journal::writePassageFile(path, *set);
    if (!written) return written.fault();
    return exitDone;
}

VerbEnd exportScore(const std::string& name, const std::string& folder, const std::string& path) {
    const auto notebook = readNotebook(folder);
    if (!notebook) return notebook.fault();
    const auto id = passageNamed(*notebook, name, "PASSAGE");
    if (!id) return id.fault();
    const Passage& passage = notebook->passage(*id)->passage;
    if (passage.notes.empty()) return Fault{FaultNumber::noNotes, {folder}, {passage.title.name}};
    const auto text = score::musicXmlOf(
        practice::writtenPartOf(passage, notebook->piece(passage.title.piece).value_or(Piece{})));
    if (!text) return inFolder(text.fault(), folder);
    const Done written = writeInFolder(path, *text);
    if (!written) return written.fault();
    return exitDone;
}

/// A score contains a single passage.
void refuseOthers(OptionReader& in, const std::vector<std::string>& names) {
    if (names.empty()) in.fail({FaultNumber::missingOption, {}, {"\"Letter C, bars 41 to 48\""}}, "PASSAGE");
    if (names.size() > 1) in.fail({FaultNumber::unexpectedWord, {}, {"piolo export"}}, names[1]);
}

VerbEnd run(const Arguments& arguments) {
    OptionReader in(arguments);
    const std::string folder = in.text("--folder");
    const std::string path = in.text("--out");
    const bool isScore = in.fileKind("--out", path, {journal::passageFileEnding, ".musicxml"}) == 1;
    if (isScore) refuseOthers(in, arguments.positionals());
    if (in.fault()) return *in.fault();
    return isScore ? exportScore(arguments.positionals().front(), folder, path)
                   : exportSet(arguments, folder, path);
}

} // namespace

Verb verb() {
    return {
        "export",
        "writes passages and their pieces as a file for another player",
        "piolo export [PASSAGE]... --folder DIR --out FILE.piolo.json\n"
        "piolo export PASSAGE --folder DIR --out FILE.musicxml",
        "PASSAGE is the exact title or the id of a passage; without any, all passages and pieces are "
        "written.\n"
        "The file does not contain what you played. FILE.musicxml holds the notes of one passage as a score.",
        "piolo export \"Letter C, bars 41 to 48\" --folder ~/spring-concert --out sectional.piolo.json",
        {folderOption(),
         {"--out", "FILE", "sectional.piolo.json",
          "where to write; an existing file is replaced only by a complete new one"}},
        std::numeric_limits<std::size_t>::max(),
        run};
}

} // namespace piolo::command::export_verb
