// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/curve/curve_csv.h"

#include <string_view>

namespace piolo::plots {
namespace {

constexpr std::string_view header = "time,date,kind,tempo,mark,streak_after,id\n";

std::string_view wordOf(Mark mark) {
    switch (mark) {
    case Mark::clean:
        return "clean";
    case Mark::missed:
        return "missed";
    case Mark::voided:
        break;
    }
    return "void";
}

// No field contains a comma, a quote or a line ending, so none needs quoting.
void addRow(std::string& csv, const Entry& entry) {
    csv.append(entry.at.text()).append(",").append(entry.at.date().text()).append(",");
    csv.append(nameOf(entry.kind)).append(",").append(entry.tempo.text()).append(",");
    if (entry.kind != Entry::Kind::tempo) csv.append(wordOf(entry.mark));
    csv.append(",").append(std::to_string(entry.after.streak)).append(",");
    csv.append(entry.id.text()).append("\n");
}

} // namespace

std::string curveCsv(const std::vector<const PassageRecord*>& records) {
    const bool several = records.size() > 1;
    std::string csv = several ? "passage," : "";
    csv.append(header);
    for (const PassageRecord* const record : records)
        for (const Entry& entry : record->entries) {
            if (several) csv.append(record->passage.id.text()).append(",");
            addRow(csv, entry);
        }
    return csv;
}

} // namespace piolo::plots
