// SPDX-License-Identifier: GPL-3.0-or-later
// The form of a passage: checked while typing, with what it means in time and in clean runs.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QVariantList>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include "models/passages/music_import.h"
#include "models/passages/passage_draft.h"
#include "models/passages/piece_editor.h"
#include "models/passages/run_outlook_text.h"

#include <map>
#include <vector>

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
    /// Lists of {value, text}.
    Q_PROPERTY(QVariantList pieces READ pieces NOTIFY piecesChanged)
    Q_PROPERTY(QVariantList beats READ beats NOTIFY edited)
    Q_PROPERTY(QVariantList subdivisions READ subdivisions NOTIFY edited)
    /// The current beat, even if none was chosen.
    Q_PROPERTY(QString beat READ beat NOTIFY edited)
    /// The defaults for empty fields: the passage's bars, the usual groups, the usual floor.
    Q_PROPERTY(QString usualTitle READ usualTitle NOTIFY edited)
    Q_PROPERTY(QString usualGroups READ usualGroups NOTIFY edited)
    Q_PROPERTY(QString usualFloor READ usualFloor NOTIFY edited)

    /// What clicks and what swings: lists of {value, text}. And the accent of each beat of the bar.
    Q_PROPERTY(QVariantList clickPlaces READ clickPlaces CONSTANT)
    Q_PROPERTY(QVariantList swungNotes READ swungNotes CONSTANT)
    Q_PROPERTY(QVariantList accents READ accents NOTIFY edited)
    /// How it is played: lists of {value, text}.
    Q_PROPERTY(QVariantList articulations READ articulations CONSTANT)
    Q_PROPERTY(QVariantList rhythms READ rhythms CONSTANT)
    /// "Made from “March”."; "" if it was not made from another passage.
    Q_PROPERTY(QString originText READ originText NOTIFY loaded)
    /// Where the click sounds, in one line.
    Q_PROPERTY(QString clickSentence READ clickSentence NOTIFY edited)

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
    [[nodiscard]] QVariantList pieces() const;
    [[nodiscard]] QVariantList beats() const;
    [[nodiscard]] QVariantList subdivisions() const;
    [[nodiscard]] QString beat() const;
    [[nodiscard]] QString usualTitle() const;
    [[nodiscard]] QString usualGroups() const;
    [[nodiscard]] QString usualFloor() const;
    [[nodiscard]] QVariantList clickPlaces() const;
    [[nodiscard]] QVariantList swungNotes() const;
    [[nodiscard]] QVariantList accents() const;
    [[nodiscard]] static QVariantList articulations();
    [[nodiscard]] static QVariantList rhythms();
    [[nodiscard]] QString originText() const;
    [[nodiscard]] QString clickSentence() const;
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
    void piecesChanged();
    /// Something was recorded.
    void saved(const QString& passage);

private:
    struct Typed {
        QVariantMap values;
        QString piece;
        PieceDraft pieceDraft;
        Music notedMusic{};        ///< the music to which `notes` belong
        std::vector<Note> notes{}; ///< saved as long as the bars stay the same
        bool operator==(const Typed&) const = default;
    };
    void open(Id passage);
    /// Gives the input these notes as long as its bars are those of `music`.
    void giveNotes(const Music& music, std::vector<Note> notes);
    void takeMusic();
    void choosePiece(const score::Score& score, const score::Part& part);
    void show(const Typed& typed);
    void check();
    void follow();
    [[nodiscard]] Typed recorded() const;
    [[nodiscard]] Typed typed() const;
    [[nodiscard]] Standing standing() const;
    void record(const Passage& wanted);

    practice::PracticeBook& book_;
    PieceEditor piece_;
    MusicImport music_;
    RunOutlookText outlook_;
    Id id_;
    Typed typed_;
    Typed before_;
    DraftCheck check_;
    std::map<Id, Typed> unsaved_;
};

} // namespace piolo::models
