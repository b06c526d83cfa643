// SPDX-License-Identifier: GPL-3.0-or-later
#include "command/output/import_report.h"

#include "command/output/printed_text.h"

#include <algorithm>

namespace piolo::command {
namespace {

std::string changes(const ImportItem& item) {
    std::string text;
    for (const Difference& difference : item.differences) {
        text += text.empty() ? ": " : ", ";
        text += difference.key + ' ' + (difference.from.empty() ? "none" : printed(difference.from)) +
                " -> " + (difference.to.empty() ? "none" : printed(difference.to));
    }
    return text;
}

const char* deedOf(const ImportItem& item, Differing differing) {
    if (item.state == ImportState::added) return "added";
    if (differing == Differing::leave) return "left alone";
    return item.state == ImportState::removedHere ? "restored" : "replaced";
}

std::string lineOf(const ImportItem& item, Differing differing) {
    std::string line = deedOf(item, differing);
    line.append(item.isPiece ? ": piece \"" : ": passage \"").append(printed(item.name)).append("\"");
    if (item.state == ImportState::removedHere) line += " (removed here)";
    if (item.editedHere) line += " (edited here since it was imported)";
    return line + changes(item) + '\n';
}

std::string totals(std::span<const ImportItem> plan, Differing differing) {
    const auto in = [&](ImportState state) {
        return std::ranges::count(plan, state, [](const ImportItem& item) { return item.state; });
    };
    const auto differ = in(ImportState::differs) + in(ImportState::removedHere);
    std::string text = std::to_string(in(ImportState::added)) + " added, " +
                       std::to_string(in(ImportState::same)) + " the same, " + std::to_string(differ) +
                       (differing == Differing::replace ? " replaced" : " left alone");
    if (differ > 0 && differing == Differing::leave) text += "; --replace takes them from the file";
    return text + '\n';
}

} // namespace

std::string importReport(std::span<const ImportItem> plan, Differing differing) {
    std::string report;
    for (const ImportItem& item : plan)
        if (item.state != ImportState::same) report += lineOf(item, differing);
    return report + totals(plan, differing);
}

} // namespace piolo::command
