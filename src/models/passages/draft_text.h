// SPDX-License-Identifier: GPL-3.0-or-later
// What the form says of the passage typed: the defaults of empty fields, its click, its origin.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include "core/passage/passage.h"

namespace piolo::practice {
class PracticeBook;
} // namespace piolo::practice

namespace piolo::models {

/// Window thread.
class DraftText : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the editor of passages")
    /// The defaults for empty fields: the passage's bars, the usual groups, the usual floor.
    Q_PROPERTY(QString usualTitle READ usualTitle NOTIFY changed)
    Q_PROPERTY(QString usualGroups READ usualGroups NOTIFY changed)
    Q_PROPERTY(QString usualFloor READ usualFloor NOTIFY changed)
    /// Where the click sounds, in one line.
    Q_PROPERTY(QString clickSentence READ clickSentence NOTIFY changed)
    /// "Made from “March”."; "" if it was not made from another passage.
    Q_PROPERTY(QString originText READ originText NOTIFY changed)
public:
    /// `book` must outlive this object.
    explicit DraftText(const practice::PracticeBook& book, QObject* parent = nullptr);

    [[nodiscard]] QString usualTitle() const;
    [[nodiscard]] QString usualGroups() const;
    [[nodiscard]] QString usualFloor() const;
    [[nodiscard]] QString clickSentence() const;
    [[nodiscard]] QString originText() const;

    /// `id`: none for a new passage. `passage`: as typed.
    void follow(Id id, const Passage& passage);

signals:
    void changed();

private:
    const practice::PracticeBook& book_;
    Id id_;
    Passage passage_;
};

} // namespace piolo::models
