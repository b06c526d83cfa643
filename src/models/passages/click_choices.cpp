// SPDX-License-Identifier: GPL-3.0-or-later
// The choices for the click in a passage's form, and its description of the click typed so far.
#include "models/passages/click_draft.h"
#include "models/passages/passage_editor.h"
#include "models/settings/setting_choices.h"
#include "models/text/click_words.h"

namespace piolo::models {

QVariantList PassageEditor::clickPlaces() const {
    QVariantList list;
    for (const ClickOn on : {ClickOn::beats, ClickOn::downbeats, ClickOn::backbeats, ClickOn::offbeats})
        list << choice(static_cast<int>(on), clickOnWords(on));
    return list;
}

QVariantList PassageEditor::swungNotes() const {
    QVariantList list;
    for (const SwungNotes notes : {SwungNotes::eighths, SwungNotes::sixteenths})
        list << choice(static_cast<int>(notes), swungWords(notes));
    return list;
}

QVariantList PassageEditor::accents() const {
    const Passage& passage = check_.passage;
    QVariantList list;
    for (int beat = 0; beat < passage.music.meter.beatsPerBar(); ++beat) {
        const Accent accent = accentOf(passage.click, passage.music.meter, beat);
        list << choice(static_cast<int>(accent),
                       qtTrId("form.accent").arg(QString::number(beat + 1), accentWords(accent)));
    }
    return list;
}

QString PassageEditor::clickSentence() const {
    const QString words = clickWords(check_.passage.click);
    return words.isEmpty() ? qtTrId("form.click.every-beat") : qtTrId("form.click").arg(words);
}

void PassageEditor::turnAccent(int beat) {
    const Meter& meter = check_.passage.music.meter;
    if (beat < 0 || beat >= meter.beatsPerBar() || readOnly()) return;
    set(QStringLiteral("accents"), withNextAccent(check_.passage.click, meter, beat));
}

} // namespace piolo::models
