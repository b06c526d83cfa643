// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/telling.h"
#include "app/verbs/mark_lines.h"
#include "app/verbs/option_reader.h"
#include "app/verbs/verb_list.h"
#include "core/rule/rule.h"
#include "core/rule/usual_floor.h"

#include <string>
#include <vector>

namespace piolo::app {
namespace {

constexpr OptionSpec options[] = {
    {"--start", "72"},     {"--target", "96"}, {"--drop", "4"},   {"--climb", "2"},
    {"--clean-runs", "5"}, {"--floor", "40"},  {"--step", "bpm"}, {"--gentle", ""},
};

// The standings from the start to the present one. Taking the newest mark back leaves those before it, so
// there is nothing to compute again.
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

VerbEnd run(const Words& words) {
    OptionReader in(words);
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

Verb ladderVerb() { return {"ladder", {"piolo ladder", options}, run}; }

} // namespace piolo::app
