// SPDX-License-Identifier: GPL-3.0-or-later
// The form of a piece: its name and composer, the instrument on which it is played, its date, its length.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include "models/passages/piece_draft.h"

namespace piolo::practice {
class PracticeBook;
} // namespace piolo::practice

namespace piolo::models {

/// Window thread.
class PieceEditor : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the editor of passages")
    Q_PROPERTY(QString name READ name WRITE setName NOTIFY edited)
    Q_PROPERTY(QString instrument READ instrument WRITE setInstrument NOTIFY edited)
    Q_PROPERTY(QString due READ due WRITE setDue NOTIFY edited)
    Q_PROPERTY(QString composer READ composer WRITE setComposer NOTIFY edited)
    Q_PROPERTY(QString transposition READ transposition WRITE setTransposition NOTIFY edited)
    Q_PROPERTY(QString bars READ bars WRITE setBars NOTIFY edited)
    Q_PROPERTY(QString meter READ meter WRITE setMeter NOTIFY edited)
    Q_PROPERTY(QString tempo READ tempo WRITE setTempo NOTIFY edited)
    /// "Tempo of the piece, ♩. =": what `tempo` counts.
    Q_PROPERTY(QString tempoLabel READ tempoLabel NOTIFY edited)
    Q_PROPERTY(QString notes READ notes WRITE setNotes NOTIFY edited)
    /// One line for an invalid field; "" if it is valid.
    Q_PROPERTY(QString nameFault READ nameFault NOTIFY edited)
    Q_PROPERTY(QString dueFault READ dueFault NOTIFY edited)
    Q_PROPERTY(bool valid READ valid NOTIFY edited)
    Q_PROPERTY(QString composerFault READ composerFault NOTIFY edited)
    Q_PROPERTY(QString transpositionFault READ transpositionFault NOTIFY edited)
    Q_PROPERTY(QString barsFault READ barsFault NOTIFY edited)
    Q_PROPERTY(QString meterFault READ meterFault NOTIFY edited)
    Q_PROPERTY(QString tempoFault READ tempoFault NOTIFY edited)
    Q_PROPERTY(QString notesFault READ notesFault NOTIFY edited)
public:
    explicit PieceEditor(practice::PracticeBook& book, QObject* parent = nullptr);

    [[nodiscard]] QString name() const { return draft_.name; }
    [[nodiscard]] QString instrument() const { return draft_.instrument; }
    [[nodiscard]] QString due() const { return draft_.due; }
    void setName(const QString& name);
    void setInstrument(const QString& instrument);
    void setDue(const QString& due);
    [[nodiscard]] QString composer() const { return draft_.composer; }
    [[nodiscard]] QString transposition() const { return draft_.transposition; }
    [[nodiscard]] QString bars() const { return draft_.bars; }
    [[nodiscard]] QString meter() const { return draft_.meter; }
    [[nodiscard]] QString tempo() const { return draft_.tempo; }
    [[nodiscard]] QString tempoLabel() const;
    [[nodiscard]] QString notes() const { return draft_.notes; }
    void setComposer(const QString& composer);
    void setTransposition(const QString& semitones);
    void setBars(const QString& bars);
    /// Another meter brings its usual beat.
    void setMeter(const QString& meter);
    void setTempo(const QString& tempo);
    void setNotes(const QString& notes);
    [[nodiscard]] QString nameFault() const;
    [[nodiscard]] QString dueFault() const;
    [[nodiscard]] QString composerFault() const;
    [[nodiscard]] QString transpositionFault() const;
    [[nodiscard]] QString barsFault() const;
    [[nodiscard]] QString meterFault() const;
    [[nodiscard]] QString tempoFault() const;
    [[nodiscard]] QString notesFault() const;
    [[nodiscard]] bool valid() const;

    [[nodiscard]] const PieceDraft& draft() const { return draft_; }
    void setDraft(const PieceDraft& draft);
    /// Records what changed, a new piece with a new id. Returns the piece's id; none if the draft is not
    /// valid.
    Id save();

signals:
    void edited();

private:
    void put(QString PieceDraft::*field, const QString& text);

    practice::PracticeBook& book_;
    PieceDraft draft_;
};

} // namespace piolo::models
