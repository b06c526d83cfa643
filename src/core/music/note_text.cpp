// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/music/note_text.h"

#include "core/base/digits.h"
#include "core/music/pitch_text.h"
#include "core/time/fraction_sum.h"

#include <algorithm>
#include <array>

namespace piolo {

namespace {

constexpr std::size_t longestNumber = 9;
constexpr std::int32_t mostSounding = 127;

struct Sign {
    char sign;
    bool Note::*tie;
    bool NoteArticulation::*sound;
};
constexpr std::array<Sign, 7> allSigns{{{'t', &Note::tiedBefore, nullptr},
                                        {'T', &Note::tiedAfter, nullptr},
                                        {'.', nullptr, &NoteArticulation::staccato},
                                        {'>', nullptr, &NoteArticulation::accent},
                                        {'-', nullptr, &NoteArticulation::tenuto},
                                        {'(', nullptr, &NoteArticulation::slurBegins},
                                        {')', nullptr, &NoteArticulation::slurEnds}}};

bool isMarked(const Note& note, const Sign& sign) {
    return sign.tie != nullptr ? note.*sign.tie : note.articulation.*sign.sound;
}

/// The words of a text, from the front.
std::string_view word(std::string_view& text) {
    const auto end = std::min(text.find(' '), text.size());
    const auto found = text.substr(0, end);
    text.remove_prefix(std::min(end + 1, text.size()));
    return found;
}

std::optional<Fraction> fractionIn(std::string_view text) {
    const auto stroke = text.find('/');
    if (stroke == std::string_view::npos) return std::nullopt;
    const auto above = digitsOf(text.substr(0, stroke), 1, longestNumber);
    const auto below = digitsOf(text.substr(stroke + 1), 1, longestNumber);
    if (!above || !below || *below == 0) return std::nullopt;
    return reducedFraction(*above, *below);
}

} // namespace

std::string noteText(const Note& note) {
    std::string text = note.onset.text() + ' ' + note.length.text() + ' ' + pitchText(note.written) + ' ' +
                       std::to_string(note.sounding);
    std::string signs;
    for (const Sign& sign : allSigns)
        if (isMarked(note, sign)) signs += sign.sign;
    return signs.empty() ? text : text + ' ' + signs;
}

std::optional<Note> noteOf(std::string_view text) {
    std::string_view rest = text;
    const auto onset = fractionIn(word(rest));
    const auto length = fractionIn(word(rest));
    const auto pitch = pitchNamed(word(rest));
    const auto sounding = digitsOf(word(rest), 1, 3);
    if (!onset || !length || length->isZero() || !pitch || !sounding || *sounding > mostSounding)
        return std::nullopt;
    Note note{*pitch, static_cast<std::int32_t>(*sounding), *onset, *length, false, false, {}};
    for (const Sign& sign : allSigns) {
        if (!rest.starts_with(sign.sign)) continue;
        rest.remove_prefix(1);
        (sign.tie != nullptr ? note.*sign.tie : note.articulation.*sign.sound) = true;
    }
    if (noteText(note) != text) return std::nullopt;
    return note;
}

bool areInOrder(const std::vector<Note>& notes) {
    return std::is_sorted(notes.begin(), notes.end(), [](const Note& a, const Note& b) {
        return order(a.onset, b.onset) == std::weak_ordering::less;
    });
}

} // namespace piolo
