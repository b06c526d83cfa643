// SPDX-License-Identifier: GPL-3.0-or-later
// Bars picked from a MusicXML file, for the form of a passage.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "score/pick/excerpt.h"
#include "score/read/score.h"

#include <optional>

namespace piolo::models {

/// Window's thread. Reading is bounded by the reader's own limits.
class MusicImport : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the editor of passages")
    /// The file that was read, "" for none; its title and composer in one line.
    Q_PROPERTY(QString file READ file NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    /// A list of {value, text}.
    Q_PROPERTY(QVariantList parts READ parts NOTIFY changed)
    Q_PROPERTY(int part READ part WRITE setPart NOTIFY changed)
    /// The bars as they are typed, by the numbers printed in the part.
    Q_PROPERTY(QString from READ from WRITE setFrom NOTIFY changed)
    Q_PROPERTY(QString to READ to WRITE setTo NOTIFY changed)
    /// "bars 1 to 48": what there is to pick from.
    Q_PROPERTY(QString barsText READ barsText NOTIFY changed)
    /// What is picked, in one line; "" when nothing can be.
    Q_PROPERTY(QString summary READ summary NOTIFY changed)
    /// One plain line; "" when all is well.
    Q_PROPERTY(QString fault READ fault NOTIFY changed)
public:
    using QObject::QObject;

    [[nodiscard]] QString file() const { return file_; }
    [[nodiscard]] QString title() const;
    [[nodiscard]] QVariantList parts() const;
    [[nodiscard]] int part() const { return part_; }
    [[nodiscard]] QString from() const { return from_; }
    [[nodiscard]] QString to() const { return to_; }
    [[nodiscard]] QString barsText() const;
    [[nodiscard]] QString summary() const;
    [[nodiscard]] QString fault() const { return fault_; }
    void setPart(int part);
    void setFrom(const QString& bar);
    void setTo(const QString& bar);

    /// Reads the file of that path, or of a file's address as it is dropped on the window.
    Q_INVOKABLE void read(const QString& pathOrAddress);
    /// Forgets the file.
    Q_INVOKABLE void close();
    /// Hands what is picked to the form. Nothing while there is no summary.
    Q_INVOKABLE void take();

    [[nodiscard]] const score::Score& score() const { return score_; }
    /// The meter and tempo with which the chosen part begins, as far as they are marked.
    [[nodiscard]] PieceMusic pieceMusic() const;
    /// The picked bars; nothing when they cannot be picked.
    [[nodiscard]] const std::optional<score::Excerpt>& excerpt() const { return excerpt_; }

signals:
    void changed();
    void taken();

private:
    void pick();
    [[nodiscard]] const score::Part& chosen() const { return score_.parts[static_cast<std::size_t>(part_)]; }
    [[nodiscard]] std::optional<score::Stretch> stretch();

    QString file_, from_, to_, fault_;
    int part_ = 0;
    score::Score score_;
    std::optional<score::Excerpt> excerpt_;
};

} // namespace piolo::models
