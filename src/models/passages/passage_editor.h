// SPDX-License-Identifier: GPL-3.0-or-later
// The form of a passage: checked while typing, with what it means in time and in clean runs.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QVariantList>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include "models/passages/draft_check.h"
#include "models/passages/draft_text.h"
#include "models/passages/music_import.h"
#include "models/passages/passage_choices.h"
#include "models/passages/piece_editor.h"
#include "models/passages/run_outlook_text.h"
#include "models/passages/unsaved_forms.h"

namespace piolo::practice {
class PracticeBook;
} // namespace piolo::practice

namespace piolo::models {

/// Window thread. Unsaved input is kept when another passage is loaded and is back when its passage is loaded
/// again, until the program ends.
class PassageEditor : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by PracticeRoom")
    /// The passage being edited, "" for a new one.
    Q_PROPERTY(QString passage READ passage NOTIFY loaded)
    /// A map of the input by field (the fields of passage_draft.h).
    Q_PROPERTY(QVariant draft READ draft NOTIFY edited)
    /// A map: one line for each invalid field.
    Q_PROPERTY(QVariant faults READ faults NOTIFY edited)
    Q_PROPERTY(bool valid READ valid NOTIFY edited)
    /// True if there is something to save.
    Q_PROPERTY(bool changed READ changed NOTIFY edited)
    Q_PROPERTY(bool readOnly READ readOnly CONSTANT)

    /// "" for a separate exercise, "new" for a new piece, or the piece's id.
    Q_PROPERTY(QString pieceChoice READ pieceChoice WRITE setPieceChoice NOTIFY edited)
    Q_PROPERTY(piolo::models::PieceEditor* piece READ piece CONSTANT)
    /// Bars from a MusicXML file: once taken, they are in the form of a new passage.
    Q_PROPERTY(piolo::models::MusicImport* music READ music CONSTANT)
    Q_PROPERTY(piolo::models::PassageChoices* choices READ choices CONSTANT)
    Q_PROPERTY(piolo::models::DraftText* text READ text CONSTANT)
    Q_PROPERTY(piolo::models::RunOutlookText* outlook READ outlook CONSTANT)
public:
    explicit PassageEditor(practice::PracticeBook& book, QObject* parent = nullptr);

    [[nodiscard]] QString passage() const;
    [[nodiscard]] QVariantMap draft() const { return typed_.values; }
    [[nodiscard]] QVariantMap faults() const { return check_.faults; }
    [[nodiscard]] bool valid() const;
    [[nodiscard]] bool changed() const;
    [[nodiscard]] bool readOnly() const;
    [[nodiscard]] QString pieceChoice() const { return typed_.piece; }
    void setPieceChoice(const QString& choice);
    [[nodiscard]] PieceEditor* piece() { return &piece_; }
    [[nodiscard]] MusicImport* music() { return &music_; }
    [[nodiscard]] PassageChoices* choices() { return &choices_; }
    [[nodiscard]] DraftText* text() { return &text_; }
    [[nodiscard]] RunOutlookText* outlook() { return &outlook_; }

    /// Sets a field. Unknown fields are ignored.
    Q_INVOKABLE void set(const QString& field, const QVariant& value);
    /// Selects the next accent for that beat (counted from 0): strong, half strong, plain, silent, then
    /// strong again.
    Q_INVOKABLE void turnAccent(int beat);
    /// Accepts the suggestion.
    Q_INVOKABLE void takeProposal();
    /// Loads the form of that passage; of a new one if the id is unknown.
    Q_INVOKABLE void load(const QString& id);
    Q_INVOKABLE void startNew();
    /// Loads a new passage from the first half of that one, for the player to name and adjust.
    void loadFirstHalf(const QString& id);
    /// Discards unsaved input.
    Q_INVOKABLE void revert();
    /// Records the groups that changed, and the piece. Returns the passage's id; "" if something is invalid.
    Q_INVOKABLE QString save();

signals:
    void loaded();
    void edited();
    /// Something was recorded.
    void saved(const QString& passage);

private:
    void open(Id passage);
    void takeMusic();
    void use(const TypedPassage& form);
    void show(const TypedPassage& form);
    void check();
    void describe();
    void follow();
    [[nodiscard]] TypedPassage recorded() const;
    [[nodiscard]] TypedPassage typed() const;

    practice::PracticeBook& book_;
    PieceEditor piece_;
    MusicImport music_;
    PassageChoices choices_;
    DraftText text_;
    RunOutlookText outlook_;
    Id id_;
    TypedPassage typed_; // its piece draft is in piece_
    TypedPassage before_;
    DraftCheck check_;
    UnsavedForms unsaved_;
};

} // namespace piolo::models
