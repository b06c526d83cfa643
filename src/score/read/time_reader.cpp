// SPDX-License-Identifier: GPL-3.0-or-later
#include "score/read/time_reader.h"

#include "core/base/digits.h"
#include "score/write/note_value.h"

#include <algorithm>
#include <iterator>
#include <numeric>

namespace piolo::score {

namespace {

constexpr int mostBeats = 99;
constexpr std::int64_t fastest = 100'000'000; // thousandths

bool isPowerOfTwo(int number) { return number > 0 && (number & (number - 1)) == 0; }

/// "5" or "3+2".
std::optional<std::vector<int>> beatsIn(std::string_view text) {
    std::vector<int> groups;
    for (;;) {
        const auto plus = std::min(text.find('+'), text.size());
        const auto group = digitsOf(text.substr(0, plus), 1, 2);
        if (!group || *group == 0) return std::nullopt;
        groups.push_back(static_cast<int>(*group));
        if (plus == text.size()) return groups;
        text.remove_prefix(plus + 1);
    }
}

std::optional<Fraction> beatOf(Source& source, pugi::xml_node metronome) {
    const auto unit = metronome.child("beat-unit");
    const auto* const found = std::ranges::find(noteValues, textOf(unit), &NoteValue::name);
    const auto dots = std::ranges::distance(metronome.children("beat-unit-dot"));
    const auto beat =
        found == noteValues.end() ? std::nullopt : dotted(found->length, static_cast<long>(dots));
    if (!beat) source.wrong(unit ? unit : metronome, textOf(unit));
    return beat;
}

/// The first number of "c. 108", "108-112" or "108,5".
std::optional<std::int64_t> numberIn(std::string_view text) {
    const auto begin = text.find_first_of("0123456789");
    if (begin == std::string_view::npos) return std::nullopt;
    std::string number(text.substr(begin));
    std::ranges::replace(number, ',', '.');
    number.resize(std::min(number.find_first_not_of("0123456789."), number.size()));
    while (number.ends_with('.')) number.pop_back();
    return thousandthsIn(number, fastest);
}

// A <metronome> with a second beat unit relates two tempi: it has a beat but no number. One made of
// <metronome-note> has no beat unit and states no tempo.
void readMetronome(Source& source, pugi::xml_node metronome, TempoMark& mark) {
    if (!metronome.child("beat-unit")) return;
    mark.beat = beatOf(source, metronome);
    mark.text = textOf(metronome.child("per-minute"));
    mark.perMinute = numberIn(mark.text);
}

void readSound(Source& source, pugi::xml_node sound, TempoMark& mark) {
    const auto tempo = sound.attribute("tempo");
    if (!tempo) return;
    std::string text = tempo.value();
    // Files may have many decimal places; thousandths are precise enough for any ear.
    if (const auto point = text.find('.'); point != std::string::npos)
        text.resize(std::min(text.size(), point + 4));
    mark.quarters = thousandthsIn(text, fastest);
    if (!mark.quarters) source.wrong(sound, std::string("tempo ") + tempo.value());
}

bool sendsElsewhere(std::string_view words) {
    for (const std::string_view jump : {"D.C.", "D.S.", "D. C.", "D. S.", "Da Capo", "da capo", "Dal Segno",
                                        "dal segno", "To Coda", "to Coda"})
        if (words.find(jump) != std::string_view::npos) return true;
    return false;
}

void soundSigns(pugi::xml_node sound, std::vector<SignKind>& signs) {
    for (const char* name : {"dacapo", "dalsegno", "tocoda"})
        if (sound.attribute(name)) signs.push_back(SignKind::jump);
    if (sound.attribute("coda")) signs.push_back(SignKind::codaBegins);
}

void directionSigns(pugi::xml_node direction, std::vector<SignKind>& signs) {
    for (const auto type : direction.children("direction-type"))
        for (const auto child : type.children()) {
            const std::string_view name = child.name();
            if (name == "words" && sendsElsewhere(textOf(child))) signs.push_back(SignKind::jump);
            if (name == "coda" && !direction.child("sound").attribute("tocoda"))
                signs.push_back(SignKind::codaBegins);
        }
}

void barlineSigns(pugi::xml_node barline, std::vector<SignKind>& signs) {
    const std::string_view repeat = barline.child("repeat").attribute("direction").value();
    if (repeat == "forward") signs.push_back(SignKind::repeatBegins);
    if (repeat == "backward") signs.push_back(SignKind::repeatEnds);
    const std::string_view ending = barline.child("ending").attribute("type").value();
    if (ending == "start") signs.push_back(SignKind::endingBegins);
    if (ending == "stop" || ending == "discontinue") signs.push_back(SignKind::endingEnds);
}

} // namespace

TimeSignature readTime(Source& source, pugi::xml_node time) {
    TimeSignature read;
    const auto beats = time.child("beats");
    if (time.child("senza-misura") || beats.next_sibling("beats")) {
        read.counted = false;
        return read;
    }
    if (!beats) {
        source.missing(time, "beats");
        return read;
    }
    const auto groups = beatsIn(textOf(beats)).value_or(std::vector<int>());
    const int all = std::accumulate(groups.begin(), groups.end(), 0);
    const auto type = time.child("beat-type");
    const int note = source.whole(type ? type : time, {1, 128}).value_or(4);
    if (all == 0 || all > mostBeats)
        source.wrong(beats, textOf(beats));
    else if (!isPowerOfTwo(note))
        source.wrong(type, textOf(type));
    else
        return {all, note, groups.size() > 1 ? groups : std::vector<int>(), true};
    return read;
}

std::optional<TempoMark> readTempoMark(Source& source, pugi::xml_node element) {
    TempoMark mark;
    for (const auto type : element.children("direction-type"))
        if (const auto metronome = type.child("metronome")) readMetronome(source, metronome, mark);
    readSound(source, std::string_view(element.name()) == "sound" ? element : element.child("sound"), mark);
    if (!mark.beat && !mark.quarters) return std::nullopt;
    return mark;
}

std::vector<SignKind> readSigns(pugi::xml_node element) {
    std::vector<SignKind> signs;
    const std::string_view name = element.name();
    if (name == "barline") barlineSigns(element, signs);
    if (name == "direction") directionSigns(element, signs);
    soundSigns(name == "sound" ? element : element.child("sound"), signs);
    return signs;
}

} // namespace piolo::score
