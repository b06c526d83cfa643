// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/passage/difference.h"

#include <utility>

namespace piolo {

namespace {

std::string textOf(bool value) { return value ? "yes" : "no"; }
std::string textOf(std::int32_t value) { return std::to_string(value); }
std::string textOf(Tempo value) { return value.text(); }
std::string textOf(StepKind value) { return value == StepKind::bpm ? "bpm" : "notches"; }
std::string textOf(Id value) { return value.isNone() ? std::string{} : value.text(); }
std::string textOf(Fraction value) { return value.isZero() ? std::string{} : value.text(); }
std::string textOf(ClickOn value) { return std::string(nameOf(value)); }
std::string textOf(SwungNotes value) { return std::string(nameOf(value)); }
std::string textOf(const std::string& value) { return value; }
std::string textOf(const std::optional<Date>& value) { return value ? value->text() : std::string{}; }

std::string textOf(const std::optional<Tempo>& value) { return value ? value->text() : std::string{}; }

std::string textOf(const std::vector<Accent>& accents) {
    std::string text;
    for (const Accent accent : accents) text.append(text.empty() ? "" : " ").append(nameOf(accent));
    return text;
}

std::string textOf(const std::vector<BreathPlace>& breaths) {
    std::string text;
    for (const auto& [bar, beat, beats] : breaths) {
        if (!text.empty()) text += ", ";
        text += "bar " + std::to_string(bar) + " beat " + std::to_string(beat) + " waits " +
                std::to_string(beats);
    }
    return text;
}

/// Collects the differences.
class Comparison {
public:
    template <typename Value>
    void compare(const char* key, const Value& from, const Value& to) {
        if (from != to) found.push_back({key, textOf(from), textOf(to)});
    }
    std::vector<Difference> found;
};

void compare(Comparison& in, const Title& from, const Title& to) {
    in.compare("title.name", from.name, to.name);
    in.compare("title.piece", from.piece, to.piece);
    in.compare("title.origin", from.origin, to.origin);
}

void compare(Comparison& in, const PieceMusic& from, const PieceMusic& to) {
    in.compare("music.meter", from.meter.text(), to.meter.text());
    in.compare("music.beat", fractionOf(from.meter.beat()), fractionOf(to.meter.beat()));
    in.compare("music.groups", from.meter.groupsText(), to.meter.groupsText());
    in.compare("music.tempo", from.tempo, to.tempo);
}

void compare(Comparison& in, const Music& from, const Music& to) {
    in.compare("music.meter", from.meter.text(), to.meter.text());
    in.compare("music.beat", fractionOf(from.meter.beat()), fractionOf(to.meter.beat()));
    in.compare("music.groups", from.meter.groupsText(), to.meter.groupsText());
    in.compare("music.subdivision", from.subdivision, to.subdivision);
    in.compare("music.pickup", from.pickup, to.pickup);
    in.compare("music.firstBar", from.firstBar, to.firstBar);
    in.compare("music.bars", from.bars, to.bars);
    in.compare("music.landing", from.landing, to.landing);
    in.compare("music.countInBars", from.countInBars, to.countInBars);
    in.compare("music.breathBeats", from.breathBeats, to.breathBeats);
}

void compare(Comparison& in, const Tempi& from, const Tempi& to) {
    in.compare("tempi.start", from.start, to.start);
    in.compare("tempi.target", from.rule.target, to.rule.target);
    in.compare("tempi.floor", from.rule.floor, to.rule.floor);
    in.compare("tempi.step", from.rule.step, to.rule.step);
    in.compare("tempi.drop", from.rule.drop, to.rule.drop);
    in.compare("tempi.climb", from.rule.climb, to.rule.climb);
    in.compare("tempi.cleanRuns", from.rule.cleanRuns, to.rule.cleanRuns);
    in.compare("tempi.gentle", from.rule.gentle, to.rule.gentle);
}

void compare(Comparison& in, const Manner& from, const Manner& to) {
    in.compare("manner.articulation", std::string(nameOf(from.articulation)),
               std::string(nameOf(to.articulation)));
    in.compare("manner.rhythm", std::string(nameOf(from.rhythm)), std::string(nameOf(to.rhythm)));
    in.compare("manner.group", from.group, to.group);
    in.compare("manner.fingering", from.fingering, to.fingering);
}

void compare(Comparison& in, const Scale& from, const Scale& to) {
    in.compare("scale.tonic", textOf(from.tonic), textOf(to.tonic));
    in.compare("scale.kind", std::string(nameOf(from.kind)), std::string(nameOf(to.kind)));
    in.compare("scale.range", std::string(nameOf(from.range)), std::string(nameOf(to.range)));
    in.compare("scale.pattern", std::string(nameOf(from.pattern)), std::string(nameOf(to.pattern)));
    in.compare("scale.notes", from.notesPerBeat, to.notesPerBeat);
    in.compare("scale.instrument", from.instrument, to.instrument);
}

void compare(Comparison& in, const ClickPattern& from, const ClickPattern& to) {
    in.compare("click.on", from.on, to.on);
    in.compare("click.accents", from.accents, to.accents);
    in.compare("click.swing", swingText(from.swing), swingText(to.swing));
    in.compare("click.swung", from.swung, to.swung);
    in.compare("click.barsOn", from.barsOn, to.barsOn);
    in.compare("click.barsOff", from.barsOff, to.barsOff);
    in.compare("click.silentBars", from.silentBars, to.silentBars);
    in.compare("click.leftOutBeats", from.leftOutBeats, to.leftOutBeats);
    in.compare("click.seed", from.seed, to.seed);
    in.compare("click.breaths", from.breaths, to.breaths);
    in.compare("click.breathBelow", from.breathBelow, to.breathBelow);
}

/// A fact cannot remove a scale: a passage that was a scale remains one.
void compareScales(Comparison& in, const std::optional<Scale>& from, const std::optional<Scale>& to) {
    if (!to) return;
    if (from) return compare(in, *from, *to);
    in.found.push_back({"scale", {}, textOf(*to)});
}

} // namespace

std::vector<Difference> differences(const Piece& from, const Piece& to) {
    Comparison in;
    in.compare("name", from.name, to.name);
    in.compare("instrument", from.instrument, to.instrument);
    in.compare("due", from.due, to.due);
    in.compare("composer", from.composer, to.composer);
    in.compare("transposition", from.transposition, to.transposition);
    in.compare("bars", from.bars, to.bars);
    compare(in, from.music, to.music);
    in.compare("notes", from.notes, to.notes);
    return std::move(in.found);
}

std::vector<Difference> differences(const Passage& from, const Passage& to) {
    Comparison in;
    compare(in, from.title, to.title);
    compare(in, from.music, to.music);
    compare(in, from.tempi, to.tempi);
    compare(in, from.click, to.click);
    compare(in, from.manner, to.manner);
    compareScales(in, from.scale, to.scale);
    in.compare("notation", static_cast<std::int32_t>(from.notes.size()),
               static_cast<std::int32_t>(to.notes.size()));
    if (from.notes != to.notes && from.notes.size() == to.notes.size())
        in.found.push_back(
            {"notation", std::to_string(from.notes.size()), std::to_string(to.notes.size()) + " others"});
    return std::move(in.found);
}

GroupMarks differingGroups(const Passage& from, const Passage& to) noexcept {
    return {from.title != to.title,
            from.music != to.music,
            from.tempi != to.tempi,
            from.click != to.click,
            from.manner != to.manner,
            from.notes != to.notes,
            to.scale && from.scale != to.scale};
}

GroupMarks makingGroups(const Passage& passage) noexcept {
    return {true,
            true,
            true,
            true,
            passage.manner != Manner{},
            !passage.notes.empty(),
            passage.scale.has_value()};
}

PassageFact factOf(const Passage& passage, const GroupMarks& groups) {
    PassageFact fact;
    fact.passage = passage.id;
    if (groups.title) fact.title = passage.title;
    if (groups.music) fact.music = passage.music;
    if (groups.tempi) fact.tempi = passage.tempi;
    if (groups.click) fact.click = passage.click;
    if (groups.manner) fact.manner = passage.manner;
    if (groups.notes) fact.notes = passage.notes;
    if (groups.scale) fact.scale = passage.scale;
    return fact;
}

} // namespace piolo
