// SPDX-License-Identifier: GPL-3.0-or-later
#include "command/options/option_reader.h"
#include "command/output/report.h"
#include "command/verbs/score_text.h"
#include "command/verbs/verb_list.h"
#include "core/base/digits.h"
#include "journal/passage_file/passage_file.h"
#include "practice/scores/picked_passage.h"
#include "score/read/score_file.h"

#include <algorithm>

namespace piolo::command::bars_verb {
namespace {

/// By number or by full name.
Result<std::size_t> partNamed(const score::Score& score, const std::string& name) {
    const auto number = digitsOf(name, 1, 4);
    if (number && *number >= 1 && *number <= std::ssize(score.parts))
        return static_cast<std::size_t>(*number - 1);
    const auto found = std::ranges::find(score.parts, name, &score::Part::name);
    if (found != score.parts.end()) return static_cast<std::size_t>(found - score.parts.begin());
    return Fault{FaultNumber::noSuchPart, {"--part"}, {name, std::to_string(score.parts.size())}};
}

Result<std::size_t> barNamed(const score::Part& part, const std::string& number, std::size_t from,
                             const char* option) {
    if (const auto bar = score::barNumbered(part, number, from)) return *bar;
    return Fault{FaultNumber::noSuchBar, {option}, {number, part.bars[from].number, part.bars.back().number}};
}

struct Asked {
    std::string part;
    std::string from;
    std::string to;
    std::string out;
};

Asked readOptions(OptionReader& in) {
    Asked asked;
    asked.part = in.text("--part", "1");
    const bool picks = in.isGiven("--from") || in.isGiven("--to") || in.isGiven("--out");
    if (picks) asked.from = in.text("--from");
    if (picks) asked.to = in.text("--to", asked.from);
    asked.out = in.text("--out", "");
    if (!asked.out.empty()) in.fileKind("--out", asked.out, {journal::passageFileEnding});
    return asked;
}

Result<score::Stretch> stretchOf(const score::Part& part, const Asked& asked) {
    const auto first = barNamed(part, asked.from, 0, "--from");
    if (!first) return first.fault();
    const auto last = barNamed(part, asked.to, *first, "--to");
    if (!last) return last.fault();
    return score::Stretch{*first, *last};
}

Done pick(const score::Score& score, std::size_t place, const Asked& asked, const std::string& file) {
    const score::Part& part = score.parts[place];
    const auto stretch = stretchOf(part, asked);
    if (!stretch) return stretch.fault();
    const auto made = score::excerpt(score, place, *stretch);
    if (!made) {
        Fault fault = made.fault();
        fault.location.file = file;
        return fault;
    }
    if (!asked.out.empty()) {
        const Done written =
            journal::writePassageFile(asked.out, practice::pickedPassage(score, part, *stretch, *made));
        if (!written) return written;
    }
    return say(excerptReport(part, *made));
}

VerbEnd run(const Arguments& arguments) {
    OptionReader in(arguments);
    if (arguments.positionals().empty())
        in.fail({FaultNumber::missingOption, {}, {"march.musicxml"}}, "FILE");
    const Asked asked = readOptions(in);
    if (in.fault()) return *in.fault();
    const std::string& file = arguments.positionals().front();
    const auto reading = score::readScoreFile(file);
    if (!reading.faults.empty()) return reading.faults.front();
    const auto part = partNamed(reading.score, asked.part);
    if (!part) return part.fault();
    const Done done =
        asked.from.empty() ? say(scoreReport(reading.score)) : pick(reading.score, *part, asked, file);
    if (!done) return done.fault();
    return exitDone;
}

} // namespace

Verb verb() {
    return {
        "bars",
        "reads a MusicXML score and makes a passage of the bars you pick",
        "piolo bars FILE\n"
        "piolo bars FILE --from BAR [--to BAR] [--part NAME] [--out FILE.piolo.json]",
        "FILE is FILE.musicxml, FILE.xml or FILE.mxl. Without bars, it lists the parts, bars, meters and "
        "tempo marks.\n"
        "With bars, it prints the passage that they make, with its notes.",
        "piolo bars ferrywake.musicxml --from 0 --to 4 --out ferrywake.piolo.json",
        {{"--part", "NAME", "\"Alto Saxophone\"", "number or full name of a part (default: the first part)"},
         {"--from", "BAR", "17", "first bar, by its printed number"},
         {"--to", "BAR", "24", "last bar (default: the first bar)"},
         {"--out", "FILE.piolo.json", "letter-b.piolo.json",
          "writes the passage and its piece, for piolo import"}},
        1,
        run};
}

} // namespace piolo::command::bars_verb
