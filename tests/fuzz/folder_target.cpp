// SPDX-License-Identifier: GPL-3.0-or-later
#include "scratch_file.h"
#include "target.h"

#include "core/history/notebook.h"
#include "journal/folder/practice_folder.h"
#include "practice/check/journal_check.h"

#include <algorithm>
#include <array>

namespace piolo::fuzz {

namespace {

constexpr char fileEnd = '\x1e'; // the ASCII record separator separates two files

std::string writeFiles(std::string_view bytes) {
    for (const std::string name : {"a", "b", "c"}) {
        const auto end = std::min(bytes.find(fileEnd), bytes.size());
        scratchFile("band/journal/" + name + ".jsonl", bytes.substr(0, end));
        bytes.remove_prefix(std::min(end + 1, bytes.size()));
    }
    return scratchFolder() + "/band";
}

} // namespace

void runFolder(std::string_view bytes) {
    const auto lines =
        std::count_if(bytes.begin(), bytes.end(), [](char c) { return c == '\n' || c == fileEnd; }) + 1;
    const auto folder = writeFiles(bytes);
    const auto contents = journal::readFolder(folder, Id{1, 1}.text());
    hold(bool(contents), "a folder is read whatever its files hold");
    const auto reported = contents->facts.size() + contents->faults.size();
    hold(reported <= static_cast<std::size_t>(lines), "a line is a fact or one fault");
    for (const Fault& fault : contents->faults) hold(fault.location.line > 0, "a fault names its line");
    const auto notebook = fold(contents->facts);
    auto facts = contents->facts;
    std::reverse(facts.begin(), facts.end());
    const auto turned = fold(facts);
    hold(notebook.passages(true) == turned.passages(true), "the order of reading does not matter");
    for (const Id passage : notebook.passages(true))
        hold(notebook.passage(passage)->standing == turned.passage(passage)->standing,
             "nor does it to a passage");
    const auto files = practice::journalFilesAt(folder);
    hold(bool(files), "a folder can be checked");
    const auto faults = practice::faultsOf(*files, {2026, 5, 1});
    hold(faults.size() >= contents->faults.size(), "a check reports at least what reading reports");
}

} // namespace piolo::fuzz
