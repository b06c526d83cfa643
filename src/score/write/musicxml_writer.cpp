// SPDX-License-Identifier: GPL-3.0-or-later
#include "score/write/musicxml_writer.h"

#include "core/base/clean_text.h"
#include "core/music/pitch_text.h"
#include "core/music/spelling.h"
#include "score/read/limits.h"
#include "score/write/beams.h"
#include "score/write/note_element.h"

#include <algorithm>
#include <array>
#include <numeric>
#include <sstream>

namespace piolo::score {

namespace {

// Diatonic steps of the usual interval for each number of semitones: a second, a third and so on; six are an
// augmented fourth.
constexpr std::array<std::int32_t, 12> diatonicSteps{0, 1, 1, 2, 2, 3, 3, 4, 5, 5, 6, 6};

/// Ten-thousandths as a decimal with no more places than needed: "162.0005".
std::string decimal(std::int64_t tenThousandths) {
    std::string text = std::to_string(tenThousandths + 10'000);
    const std::string whole = std::to_string(tenThousandths / 10'000);
    std::string places = text.substr(text.size() - 4);
    while (!places.empty() && places.back() == '0') places.pop_back();
    return places.empty() ? whole : whole + '.' + places;
}

std::int64_t ticksPerDivision(const Notation& notation) {
    std::int64_t ticks = notation.ticksPerWhole / 4;
    for (const NotatedBar& bar : notation.bars)
        for (const NotatedNote& note : bar.notes) ticks = std::gcd(ticks, note.ticks);
    return ticks;
}

/// notesTooFine for the first bar with a duration that our own reader would not accept.
std::optional<Fault> tooFine(const Notation& notation) {
    const std::int64_t most = ticksPerDivision(notation) * mostDivisions;
    for (const NotatedBar& bar : notation.bars)
        for (const NotatedNote& note : bar.notes)
            if (note.ticks > most || notation.ticksPerWhole / 4 > most)
                return Fault{FaultNumber::notesTooFine, {}, {std::to_string(bar.number)}};
    return std::nullopt;
}

class PartWriter {
public:
    PartWriter(const WrittenPart& part, const Notation& notation)
        : part_(part), notation_(notation), ticksPerDivision_(ticksPerDivision(notation)) {}

    void write(pugi::xml_node root) {
        Accidentals accidentals(part_.fifths);
        auto part = root.append_child("part");
        part.append_attribute("id") = "P1";
        for (const NotatedBar& bar : notation_.bars) {
            auto measure = part.append_child("measure");
            measure.append_attribute("number") = numberOf(bar).c_str();
            if (bar.pickUp) measure.append_attribute("implicit") = "yes";
            if (&bar == &notation_.bars.front()) addBeginning(measure);
            accidentals.beginBar();
            const auto beams = beamsOf(bar, part_.music.meter, notation_.ticksPerWhole);
            for (std::size_t i = 0; i < bar.notes.size(); ++i)
                addNote(measure, bar.notes[i], beams[i], ticksPerDivision_, accidentals);
            if (&bar == &notation_.bars.back()) addEnd(measure);
        }
    }

private:
    /// A bar before bar 0 has no number; X1 is common practice.
    static std::string numberOf(const NotatedBar& bar) {
        return bar.number < 0 ? "X1" : std::to_string(bar.number);
    }

    void addBeginning(pugi::xml_node measure) const {
        auto attributes = measure.append_child("attributes");
        addNumber(attributes, "divisions", notation_.ticksPerWhole / 4 / ticksPerDivision_);
        addNumber(attributes.append_child("key"), "fifths", part_.fifths);
        auto time = attributes.append_child("time");
        addText(time, "beats", beats());
        addNumber(time, "beat-type", part_.music.meter.denominator());
        auto clef = attributes.append_child("clef");
        addText(clef, "sign", part_.clef == Clef::bass ? "F" : "G");
        addNumber(clef, "line", part_.clef == Clef::bass ? 4 : 2);
        if (part_.transposition != 0) addTranspose(attributes);
        if (part_.tempo) addTempo(measure, *part_.tempo);
    }

    /// Groups are written only if they differ from the meter's usual ones.
    [[nodiscard]] std::string beats() const {
        const Meter& meter = part_.music.meter;
        const auto usual = Meter::make(meter.numerator(), meter.denominator(), meter.beat());
        return usual && *usual == meter ? std::to_string(meter.numerator()) : meter.groupsText();
    }

    void addTranspose(pugi::xml_node attributes) const {
        const Transposition by = transpositionOf(part_.transposition);
        auto transpose = attributes.append_child("transpose");
        addNumber(transpose, "diatonic", by.diatonic);
        addNumber(transpose, "chromatic", by.chromatic);
        if (by.octaveChange != 0) addNumber(transpose, "octave-change", by.octaveChange);
    }

    void addTempo(pugi::xml_node measure, Tempo tempo) const {
        const Fraction beat = fractionOf(part_.music.meter.beat());
        auto direction = measure.append_child("direction");
        direction.append_attribute("placement") = "above";
        auto metronome = direction.append_child("direction-type").append_child("metronome");
        if (const auto shape = shapeOf(beat)) {
            addText(metronome, "beat-unit", shape->type);
            for (int dot = 0; dot < shape->dots; ++dot) metronome.append_child("beat-unit-dot");
        }
        addText(metronome, "per-minute", tempo.text());
        const std::int64_t quarters =
            std::int64_t{tempo.thousandths()} * 40 * beat.numerator / beat.denominator;
        direction.append_child("sound").append_attribute("tempo") = decimal(quarters).c_str();
    }

    static void addEnd(pugi::xml_node measure) {
        auto line = measure.append_child("barline");
        line.append_attribute("location") = "right";
        addText(line, "bar-style", "light-heavy");
    }

    const WrittenPart& part_;
    const Notation& notation_;
    std::int64_t ticksPerDivision_;
};

/// XML does not allow control characters and some others.
std::string printable(std::string text) {
    std::ranges::replace_if(
        text, [](char c) { return static_cast<unsigned char>(c) < ' '; }, ' ');
    return cleanText(text);
}

void addHead(pugi::xml_node root, const WrittenPart& part) {
    addText(root.append_child("work"), "work-title", printable(part.title));
    auto identification = root.append_child("identification");
    if (!part.composer.empty())
        addText(identification, "creator", printable(part.composer)).append_attribute("type") = "composer";
    addText(identification.append_child("encoding"), "software", "Piolo");
    auto listed = root.append_child("part-list").append_child("score-part");
    listed.append_attribute("id") = "P1";
    addText(listed, "part-name", printable(part.instrument));
}

std::optional<Fault> mistransposed(const WrittenPart& part) {
    const auto wrong = std::ranges::find_if(part.notes, [&](const Note& note) {
        return note.sounding != midiNumber(note.written) + part.transposition;
    });
    if (wrong == part.notes.end()) return std::nullopt;
    return Fault{
        FaultNumber::notesTransposed, {}, {pitchText(wrong->written), std::to_string(wrong->sounding)}};
}

std::string textOf(const pugi::xml_document& document) {
    std::ostringstream out;
    out << "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
           "<!DOCTYPE score-partwise PUBLIC \"-//Recordare//DTD MusicXML 4.0 Partwise//EN\" "
           "\"http://www.musicxml.org/dtds/partwise.dtd\">\n";
    document.save(out, "  ", pugi::format_indent | pugi::format_no_declaration, pugi::encoding_utf8);
    return out.str();
}

} // namespace

Transposition transpositionOf(std::int32_t semitones) noexcept {
    const std::int32_t rest = semitones % semitonesOfOctave;
    const std::int32_t steps = diatonicSteps[static_cast<std::size_t>(rest < 0 ? -rest : rest)];
    return {rest, rest < 0 ? -steps : steps, semitones / semitonesOfOctave};
}

Result<std::string> musicXmlOf(const WrittenPart& part) {
    if (auto fault = mistransposed(part)) return *fault;
    const auto notation = notationOf(part.music, part.notes);
    if (!notation) return notation.fault();
    if (auto fault = tooFine(*notation)) return *fault;
    pugi::xml_document document;
    auto root = document.append_child("score-partwise");
    root.append_attribute("version") = "4.0";
    addHead(root, part);
    PartWriter(part, *notation).write(root);
    return textOf(document);
}

} // namespace piolo::score
