// SPDX-License-Identifier: GPL-3.0-or-later
#include "command/verbs/verb_help.h"

#include "command/verbs/verb_list.h"

#include <algorithm>

namespace piolo::command {
namespace {

std::string leftOf(const OptionSpec& option) {
    std::string left = "  " + std::string(option.name);
    if (!option.value.empty()) left.append(" ").append(option.value);
    return left;
}

void pad(std::string& text, std::size_t width) { text.append(width - std::min(width, text.size()), ' '); }

/// Indents every further line of `text` by `indent`.
std::string indented(std::string text, std::size_t indent) {
    for (auto at = text.find('\n'); at != std::string::npos; at = text.find('\n', at + 1))
        text.insert(at + 1, indent, ' ');
    return text;
}

void addParagraph(std::string& text, std::string_view paragraph) {
    if (!paragraph.empty()) text.append("\n").append(paragraph).append("\n");
}

} // namespace

std::string optionLines(const OptionSpecs& options) {
    std::size_t width = 0;
    for (const OptionSpec& option : options) width = std::max(width, leftOf(option).size() + 2);
    std::string lines;
    for (const OptionSpec& option : options) {
        if (!option.heading.empty()) lines += '\n' + option.heading + '\n';
        std::string line = leftOf(option);
        pad(line, width);
        lines += line + indented(option.help, width) + '\n';
    }
    return lines;
}

std::string helpOf(const Verb& verb) {
    std::string text = "piolo " + std::string(verb.name) + ": " + std::string(verb.summary) + '\n';
    addParagraph(text, "Usage: " + indented(std::string(verb.usage), 7));
    addParagraph(text, verb.about);
    if (!verb.options.empty()) text += '\n' + optionLines(verb.options);
    addParagraph(text, "Example: " + std::string(verb.example));
    return text;
}

std::string verbLines() {
    std::string lines;
    for (const Verb& verb : verbs()) {
        std::string line = "piolo " + std::string(verb.name);
        pad(line, 15);
        lines += line + std::string(verb.summary) + '\n';
    }
    return lines;
}

std::string verbTable() {
    std::string table = "| | |\n| --- | --- |\n";
    for (const Verb& verb : verbs())
        table.append("| `piolo ").append(verb.name).append("` | ").append(verb.summary).append(" |\n");
    return table;
}

} // namespace piolo::command
