// SPDX-License-Identifier: GPL-3.0-or-later
// The form of a passage: checked as it is typed, told what it means in time and in clean runs.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
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

/// Window's thread. What was typed and not saved is kept when another passage is loaded, and is there again
/// when its passage comes back, until the program ends.
class PassageEditor : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by PracticeRoom")
    /// The passage that is edited, "" for a new one.
    Q_PROPERTY(QString passage READ passage NOTIFY loaded)
    /// A map: what is typed, by field (the fields are those of models/passage_draft.h).
    Q_PROPERTY(QVariant draft READ draft NOTIFY edited)
    /// A map: one plain line by faulty field.
    Q_PROPERTY(QVariant faults READ faults NOTIFY edited)
    Q_PROPERTY(bool valid READ valid NOTIFY edited)
    /// There is something to save.
    Q_PROPERTY(bool changed READ changed NOTIFY edited)
    Q_PROPERTY(bool readOnly READ readOnly CONSTANT)

    /// "" on its own, "new" for a new piece, or the piece's id.
    Q_PROPERTY(QString pieceChoice READ pieceChoice WRITE setPieceChoice NOTIFY edited)
    Q_PROPERTY(piolo::models::PieceEditor* piece READ piece CONSTANT)
    /// Bars from a MusicXML file: once they are taken they stand in the form of a new passage.
    Q_PROPERTY(piolo::models::MusicImport* music READ music CONSTANT)
    /// Lists of {value, text}.
    Q_PROPERTY(QVariantList pieces READ pieces NOTIFY piecesChanged)
    Q_PROPERTY(QVariantList beats READ beats NOTIFY edited)
    Q_PROPERTY(QVariantList subdivisions READ subdivisions NOTIFY edited)
    /// The beat in force, also when none was chosen.
    Q_PROPERTY(QString beat READ beat NOTIFY edited)
    /// What stands for an empty field: the passage's bars, the usual groups, the usual floor.
    Q_PROPERTY(QString usualTitle READ usualTitle NOTIFY edited)
    Q_PROPERTY(QString usualGroups READ usualGroups NOTIFY edited)
    Q_PROPERTY(QString usualFloor READ usualFloor NOTIFY edited)

    /// What clicks, and what swings: lists of {value, text}. One entry for each beat of the bar: its accent.
    Q_PROPERTY(QVariantList clickPlaces READ clickPlaces CONSTANT)
    Q_PROPERTY(QVariantList swungNotes READ swungNotes CONSTANT)
    Q_PROPERTY(QVariantList accents READ accents NOTIFY edited)
    /// How it is played: lists of {value, text}.
    Q_PROPERTY(QVariantList articulations READ articulations CONSTANT)
    Q_PROPERTY(QVariantList rhythms READ rhythms CONSTANT)
    /// "Made of bars 41 to 48 of “March”"; "" for a passage of its own.
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

    /// Types into a field. Unknown fields are not taken.
    Q_INVOKABLE void set(const QString& field, const QVariant& value);
    /// The next accent for that beat (from 0): strong, half strong, plain, silent, and again.
    Q_INVOKABLE void turnAccent(int beat);
    /// Takes the proposal over.
    Q_INVOKABLE void takeProposal();
    /// The form of that passage; of a new one for an unknown id.
    Q_INVOKABLE void load(const QString& id);
    Q_INVOKABLE void startNew();
    /// A new passage of that one's first half, for the player to name and to cut otherwise.
    void loadFirstHalf(const QString& id);
    /// Throws away what is typed and not saved.
    Q_INVOKABLE void revert();
    /// Records the groups that changed, and the piece. The passage's id; "" when something is at fault.
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
        Music notedMusic{};        ///< what `notes` are notes of
        std::vector<Note> notes{}; ///< saved as long as the bars stay these
        bool operator==(const Typed&) const = default;
    };
    void open(Id passage);
    /// What is typed has these notes, as long as its bars are those of `music`.
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
