// SPDX-License-Identifier: GPL-3.0-or-later
#include "command/options/option_reader.h"
#include "command/output/report.h"
#include "command/verbs/mark_lines.h"
#include "command/verbs/verb_list.h"
#include "core/rule/rule.h"
#include "core/rule/usual_floor.h"

#include <string>
#include <vector>

namespace piolo::command::ladder_verb {
namespace {

// The standings from the start to the current one. Taking back the newest mark leaves the earlier ones, so
// nothing needs to be computed again.
class Climb {
public:
    Climb(Tempo start, const Rule& rule) : rule_(rule), standings_{{start, 0}} {}

    [[nodiscard]] Standing present() const { return standings_.back(); }
    void take(const MarkLine& mark) {
        switch (mark.kind) {
        case MarkLine::Kind::clean:
            return standings_.push_back(afterClean(present(), rule_).after);
        case MarkLine::Kind::miss:
            return standings_.push_back(afterMiss(present(), rule_).after);
        case MarkLine::Kind::tempo:
            return standings_.push_back(handSet(mark.tempo));
        case MarkLine::Kind::back:
            break;
        }
        if (standings_.size() > 1) standings_.pop_back();
    }

private:
    Rule rule_;
    std::vector<Standing> standings_;
};

std::string row(const MarkLine& mark, Standing before, Standing after) {
    return mark.text() + ',' + before.tempo.text() + ',' + after.tempo.text() + ',' +
           std::to_string(after.streak) + '\n';
}

struct LadderOptions {
    Tempo start = Tempo::bpm(60);
    Rule rule;
};

LadderOptions readOptions(OptionReader& in) {
    const auto whole = [&](std::string_view option) {
        return static_cast<std::int32_t>(in.whole(option, {1, 100}));
    };
    LadderOptions read;
    read.start = in.tempo("--start");
    read.rule.target = in.tempo("--target");
    read.rule.drop = whole("--drop");
    read.rule.climb = whole("--climb");
    read.rule.cleanRuns = whole("--clean-runs");
    read.rule.floor = in.tempo("--floor", usualFloor(read.start));
    read.rule.step = in.choice("--step", {"bpm", "notches"}) == 0 ? StepKind::bpm : StepKind::notches;
    read.rule.gentle = in.isGiven("--gentle");
    in.inOrder("--floor", read.rule.floor, "--start", read.start);
    in.inOrder("--start", read.start, "--target", read.rule.target);
    return read;
}

VerbEnd run(const Arguments& arguments) {
    OptionReader in(arguments);
    const LadderOptions read = readOptions(in);
    if (in.fault()) return *in.fault();
    Climb climb(read.start, read.rule);
    MarkReader marks(stdin);
    Done said = say("mark,tempo_before,tempo_after,streak_after\n");
    while (said) {
        const auto mark = marks.next();
        if (!mark) return mark.fault();
        if (!*mark) return exitDone;
        const Standing before = climb.present();
        climb.take(**mark);
        said = say(row(**mark, before, climb.present()));
    }
    return said.fault();
}

} // namespace

Verb verb() {
    return {"ladder",
            "reads marks and prints the tempo that the rule gives after each",
            "piolo ladder --start N --target N --drop N --climb N --clean-runs N [OPTION VALUE]...",
            "It reads marks from standard input, one per line: clean, miss, back, or tempo and a number.\n"
            "It prints rows of comma-separated values on standard output.",
            "printf 'clean\\nclean\\nmiss\\nback\\n' | piolo ladder --start 72 --target 96 --drop 4 --climb "
            "2 --clean-runs 5",
            {{"--start", "N", "72", "tempo at the start: beats per minute, 10 to 400, up to three decimals"},
             {"--target", "N", "96", "tempo to reach"},
             {"--drop", "N", "4", "how far a miss lowers the tempo, 1 to 100"},
             {"--climb", "N", "2", "how far a full streak of clean runs raises it, 1 to 100"},
             {"--clean-runs", "N", "5", "clean runs in a row for a climb, 1 to 100"},
             {"--floor", "N", "40", "lowest tempo (default 40, or the start if that is lower)"},
             {"--step", "WORD", "bpm", "bpm, or notches of the traditional metronome scale (default bpm)"},
             {"--gentle", "", "",
              "within two climbs of the target, a miss drops one climb; at the target, a miss\n"
              "only ends the streak, and only a second one in a row drops"}},
            0,
            run};
}

} // namespace piolo::command::ladder_verb
