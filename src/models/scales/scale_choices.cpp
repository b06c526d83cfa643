// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/scales/scale_choices.h"

#include "core/music/pitch_text.h"
#include "core/music/spelling.h"
#include "models/scales/instrument_search.h"
#include "models/scales/scale_lists.h"
#include "models/settings/setting_choices.h"
#include "practice/log/practice_book.h"
#include "text/scale_words.h"

namespace piolo::models {

namespace {

/// How far a player's range may extend beyond the usual one, in semitones.
constexpr int further = 12;
constexpr int nearer = 12;

/// The note with that number and at most one accidental, with flats and sharps as players usually name them.
WrittenPitch simple(int midi) {
    constexpr std::array<int, semitonesOfOctave> letters{0, 0, 1, 2, 2, 3, 3, 4, 5, 5, 6, 6};
    const auto [octave, place] = octavesOf(midi, semitonesOfOctave);
    return spelledAt((octave - 1) * lettersOfOctave + letters.at(static_cast<std::size_t>(place)), midi);
}

/// The notes from `least` to `most`, with the current one in its own spelling.
QVariantList notesFrom(int least, int most, WrittenPitch inForce) {
    QVariantList list;
    for (int midi = least; midi <= most; ++midi) {
        const WrittenPitch pitch = midi == midiNumber(inForce) ? inForce : simple(midi);
        list << choice(QString::fromStdString(pitchText(pitch)), text::noteName(pitch));
    }
    return list;
}

} // namespace

ScaleChoices::ScaleChoices(practice::PracticeBook& book, QObject* parent) : QObject(parent), book_(book) {
    connect(&book, &practice::PracticeBook::changed, this, [this](const QString& passage) {
        if (passage.isEmpty()) emit changed();
    });
}

const ScaleSettings& ScaleChoices::settings() const { return book_.notebook().settings().scales; }
bool ScaleChoices::readOnly() const { return book_.readOnly(); }

void ScaleChoices::record(const ScaleSettings& wanted) {
    if (wanted == settings() || readOnly()) return;
    PracticeSettings practice = book_.notebook().settings();
    practice.scales = wanted;
    book_.record(SettingsFact{practice});
}

QVariantList ScaleChoices::found(const QString& typed) { return instrumentsByFamily(typed); }
QString ScaleChoices::firstFound(const QString& typed) { return firstInstrument(typed); }

QString ScaleChoices::proposed() const {
    const auto meant = instrumentOfPieces(book_.notebook());
    return meant && meant->instrument->name != settings().instrument ? wordOf(meant->instrument->name)
                                                                     : QString();
}

QString ScaleChoices::proposedText() const {
    return proposed().isEmpty() ? QString() : text::instrumentName(proposed().toStdString());
}

QString ScaleChoices::proposedBy() const {
    return proposed().isEmpty() ? QString() : instrumentOfPieces(book_.notebook())->piece;
}

QString ScaleChoices::instrumentText() const { return text::instrumentName(settings().instrument); }

void ScaleChoices::setInstrument(const QString& name) {
    if (instrumentNamed(name.toStdString()) == nullptr || name == instrument()) return;
    ScaleSettings wanted = settings();
    wanted.instrument = name.toStdString();
    wanted.lowest.reset();
    wanted.highest.reset();
    record(wanted);
}

QVariantList ScaleChoices::lowestNotes() const {
    const Player player = playerOf(settings());
    const int usual = midiNumber(player.instrument->range.lowest);
    return notesFrom(usual - further, usual + nearer, player.range.lowest);
}

QVariantList ScaleChoices::highestNotes() const {
    const Player player = playerOf(settings());
    const int usual = midiNumber(player.instrument->range.highest);
    return notesFrom(usual - nearer, usual + further, player.range.highest);
}

QString ScaleChoices::lowest() const {
    return QString::fromStdString(pitchText(playerOf(settings()).range.lowest));
}

QString ScaleChoices::highest() const {
    return QString::fromStdString(pitchText(playerOf(settings()).range.highest));
}

void ScaleChoices::setLowest(const QString& note) {
    if (!hasChoice(lowestNotes(), note)) return;
    ScaleSettings wanted = settings();
    wanted.lowest = pitchNamed(note.toStdString());
    record(wanted);
}

void ScaleChoices::setHighest(const QString& note) {
    if (!hasChoice(highestNotes(), note)) return;
    ScaleSettings wanted = settings();
    wanted.highest = pitchNamed(note.toStdString());
    record(wanted);
}

QVariantList ScaleChoices::kinds() { return scaleKindChoices(); }
QString ScaleChoices::kind() const { return wordOf(nameOf(settings().view.kind)); }
void ScaleChoices::setKind(const QString& name) {
    ScaleSettings wanted = settings();
    wanted.view.kind = scaleKindNamed(name.toStdString()).value_or(wanted.view.kind);
    record(wanted);
}

QVariantList ScaleChoices::ranges() { return rangeChoices(); }
QString ScaleChoices::range() const { return wordOf(nameOf(settings().view.range)); }
void ScaleChoices::setRange(const QString& name) {
    ScaleSettings wanted = settings();
    wanted.view.range = scaleRangeNamed(name.toStdString()).value_or(wanted.view.range);
    record(wanted);
}

QVariantList ScaleChoices::patterns() { return patternChoices(); }
QString ScaleChoices::pattern() const { return wordOf(nameOf(settings().view.pattern)); }
void ScaleChoices::setPattern(const QString& name) {
    ScaleSettings wanted = settings();
    wanted.view.pattern = scalePatternNamed(name.toStdString()).value_or(wanted.view.pattern);
    record(wanted);
}

QVariantList ScaleChoices::orders() { return keyOrderChoices(); }
QString ScaleChoices::order() const { return wordOf(nameOf(settings().order)); }
void ScaleChoices::setOrder(const QString& name) {
    ScaleSettings wanted = settings();
    wanted.order = keyOrderNamed(name.toStdString()).value_or(wanted.order);
    record(wanted);
}

void ScaleChoices::drawAgain() {
    ScaleSettings wanted = settings();
    wanted.order = KeyOrder::drawn;
    wanted.seed = (wanted.seed + 1) % (ScaleSettings::mostSeed + 1);
    record(wanted);
}

void ScaleChoices::turnSpelling(int pitchClass) {
    ScaleSettings wanted = settings();
    wanted.spelling.turn(pitchClass);
    record(wanted);
}

} // namespace piolo::models
