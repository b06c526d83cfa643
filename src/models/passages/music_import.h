// SPDX-License-Identifier: GPL-3.0-or-later
// Picks bars from a MusicXML file for the form of a passage.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "core/passage/piece_music.h"
#include "score/pick/excerpt.h"
#include "score/read/score.h"

#include <optional>

namespace piolo::models {

/// Window thread. The score reader's own limits bound the time for reading.
class MusicImport : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the editor of passages")
    /// The file that was read, or ""; its title and composer in one line.
    Q_PROPERTY(QString file READ file NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    /// A list of {value, text}.
    Q_PROPERTY(QVariantList parts READ parts NOTIFY changed)
    Q_PROPERTY(int part READ part WRITE setPart NOTIFY changed)
    /// The bars as typed, by the numbers printed in the part.
    Q_PROPERTY(QString from READ from WRITE setFrom NOTIFY changed)
    Q_PROPERTY(QString to READ to WRITE setTo NOTIFY changed)
    /// "bars 1 to 48": the bars to choose from.
    Q_PROPERTY(QString barsText READ barsText NOTIFY changed)
    /// The selection in one line; "" if it is not possible.
    Q_PROPERTY(QString summary READ summary NOTIFY changed)
    /// One line; "" if all is well.
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

    /// Reads the file with that path or, when dropped on the window, that URL.
    Q_INVOKABLE void read(const QString& pathOrAddress);
    /// Forgets the file.
    Q_INVOKABLE void close();
    /// Passes the selection to the form. Does nothing while there is no summary.
    Q_INVOKABLE void take();

    [[nodiscard]] const score::Score& score() const { return score_; }
    /// The meter and tempo at the beginning of the chosen part, if they are marked.
    [[nodiscard]] PieceMusic pieceMusic() const;
    /// The selected bars; nothing if they cannot be used.
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
