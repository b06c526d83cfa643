// SPDX-License-Identifier: GPL-3.0-or-later
// The choices in the form of a passage.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "core/passage/passage.h"

namespace piolo::practice {
class PracticeBook;
} // namespace piolo::practice

namespace piolo::models {

/// Window thread. Every list is one of {value, text}.
class PassageChoices : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the editor of passages")
    Q_PROPERTY(QVariantList pieces READ pieces NOTIFY piecesChanged)
    /// The beats in which the meter can be counted, and the one that is counted, even if none was chosen.
    Q_PROPERTY(QVariantList beats READ beats NOTIFY changed)
    Q_PROPERTY(QString beat READ beat NOTIFY changed)
    Q_PROPERTY(QVariantList subdivisions READ subdivisions NOTIFY changed)
    /// What clicks, what swings, and the accent of each beat of the bar.
    Q_PROPERTY(QVariantList clickPlaces READ clickPlaces CONSTANT)
    Q_PROPERTY(QVariantList swungNotes READ swungNotes CONSTANT)
    Q_PROPERTY(QVariantList accents READ accents NOTIFY changed)
    /// How it is played.
    Q_PROPERTY(QVariantList articulations READ articulations CONSTANT)
    Q_PROPERTY(QVariantList rhythms READ rhythms CONSTANT)
public:
    /// `book` must outlive this object.
    explicit PassageChoices(const practice::PracticeBook& book, QObject* parent = nullptr);

    [[nodiscard]] QVariantList pieces() const;
    [[nodiscard]] QVariantList beats() const;
    [[nodiscard]] QString beat() const;
    [[nodiscard]] QVariantList subdivisions() const;
    [[nodiscard]] static QVariantList clickPlaces();
    [[nodiscard]] static QVariantList swungNotes();
    [[nodiscard]] QVariantList accents() const;
    [[nodiscard]] static QVariantList articulations();
    [[nodiscard]] static QVariantList rhythms();

    /// The passage as typed.
    void follow(const Passage& passage);

signals:
    void changed();
    void piecesChanged();

private:
    const practice::PracticeBook& book_;
    Passage passage_;
};

} // namespace piolo::models
