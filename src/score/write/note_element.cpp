// SPDX-License-Identifier: GPL-3.0-or-later
#include "score/write/note_element.h"

#include <string>

namespace piolo::score {

namespace {

/// One head of a note symbol. A part of a long note has ties of its own.
struct Head {
    const Note* note = nullptr; ///< null for a rest
    bool tiedBefore = false;
    bool tiedAfter = false;
};

Head headOf(const NotatedNote& symbol, const Note& note) {
    return {&note, symbol.fromBefore || note.tiedBefore, symbol.goesOn || note.tiedAfter};
}

void addTyped(pugi::xml_node parent, const char* name, const char* type) {
    parent.append_child(name).append_attribute("type") = type;
}

void addPitch(pugi::xml_node element, WrittenPitch written) {
    auto pitch = element.append_child("pitch");
    addText(pitch, "step", std::string(1, written.step));
    if (written.alter != 0) addNumber(pitch, "alter", written.alter);
    addNumber(pitch, "octave", written.octave);
}

void addTimeModification(pugi::xml_node element, const NotatedNote& symbol) {
    if (symbol.actual == symbol.normal) return;
    auto ratio = element.append_child("time-modification");
    addNumber(ratio, "actual-notes", symbol.actual);
    addNumber(ratio, "normal-notes", symbol.normal);
    addText(ratio, "normal-type", symbol.normalType);
}

void addBeams(pugi::xml_node element, const std::vector<std::string_view>& beams) {
    int number = 0;
    for (const std::string_view word : beams)
        addText(element, "beam", word).append_attribute("number") = ++number;
}

void addTuplet(pugi::xml_node notations, const char* type) {
    auto tuplet = notations.append_child("tuplet");
    tuplet.append_attribute("type") = type;
    tuplet.append_attribute("number") = 1;
}

void addSlur(pugi::xml_node notations, const char* type) {
    auto slur = notations.append_child("slur");
    slur.append_attribute("type") = type;
    slur.append_attribute("number") = 1;
}

/// Articulations go on the first part of a long note.
void addArticulations(pugi::xml_node notations, const NoteArticulation& marks) {
    if (!marks.staccato && !marks.accent && !marks.tenuto) return;
    auto list = notations.append_child("articulations");
    if (marks.accent) list.append_child("accent");
    if (marks.staccato) list.append_child("staccato");
    if (marks.tenuto) list.append_child("tenuto");
}

void addNotations(pugi::xml_node element, const NotatedNote& symbol, const Head& head, bool isFirst) {
    auto notations = element.append_child("notations");
    if (head.tiedBefore) addTyped(notations, "tied", "stop");
    if (head.tiedAfter) addTyped(notations, "tied", "start");
    if (head.note != nullptr && head.note->articulation.slurEnds && !symbol.goesOn)
        addSlur(notations, "stop");
    if (head.note != nullptr && head.note->articulation.slurBegins && !symbol.fromBefore)
        addSlur(notations, "start");
    if (isFirst && symbol.tupletBegins) addTuplet(notations, "start");
    if (isFirst && symbol.tupletEnds) addTuplet(notations, "stop");
    if (head.note != nullptr && !symbol.fromBefore) addArticulations(notations, head.note->articulation);
    if (!notations.first_child()) element.remove_child(notations);
}

/// Builds a head or a rest, with child elements in the order of the schema.
class Element {
public:
    Element(pugi::xml_node measure, const NotatedNote& symbol, const Head& head, bool isFirst)
        : it_(measure.append_child("note")), symbol_(symbol), head_(head), isFirst_(isFirst) {}

    void write(const std::vector<std::string_view>& beams, std::int64_t duration, Accidentals& accidentals) {
        if (!isFirst_) it_.append_child("chord");
        addWhat();
        addNumber(it_, "duration", duration);
        if (head_.tiedBefore) addTyped(it_, "tie", "stop");
        if (head_.tiedAfter) addTyped(it_, "tie", "start");
        addNumber(it_, "voice", 1);
        if (symbol_.fillsBar) return;
        addText(it_, "type", symbol_.shape.type);
        for (int dot = 0; dot < symbol_.shape.dots; ++dot) it_.append_child("dot");
        if (head_.note != nullptr)
            if (const auto sign = accidentals.before(head_.note->written, head_.tiedBefore))
                addText(it_, "accidental", *sign);
        addTimeModification(it_, symbol_);
        if (isFirst_) addBeams(it_, beams);
        addNotations(it_, symbol_, head_, isFirst_);
    }

private:
    void addWhat() {
        if (head_.note != nullptr)
            addPitch(it_, head_.note->written);
        else if (auto rest = it_.append_child("rest"); symbol_.fillsBar)
            rest.append_attribute("measure") = "yes";
    }

    pugi::xml_node it_;
    const NotatedNote& symbol_;
    Head head_;
    bool isFirst_;
};

} // namespace

pugi::xml_node addText(pugi::xml_node parent, const char* name, std::string_view text) {
    auto child = parent.append_child(name);
    child.text() = std::string(text).c_str();
    return child;
}

pugi::xml_node addNumber(pugi::xml_node parent, const char* name, std::int64_t number) {
    return addText(parent, name, std::to_string(number));
}

void addNote(pugi::xml_node measure, const NotatedNote& note, const std::vector<std::string_view>& beams,
             std::int64_t ticksPerDivision, Accidentals& accidentals) {
    const std::int64_t duration = note.ticks / ticksPerDivision;
    if (note.heads.empty()) Element(measure, note, {}, true).write(beams, duration, accidentals);
    for (const Note* head : note.heads)
        Element(measure, note, headOf(note, *head), head == note.heads.front())
            .write(beams, duration, accidentals);
}

} // namespace piolo::score
