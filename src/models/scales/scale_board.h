// SPDX-License-Identifier: GPL-3.0-or-later
// The grid of twelve keys by seven subdivisions, its selected cell, and the weeks.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "models/scales/scale_choices.h"
#include "models/staff/staff_view.h"
#include "practice/figures/scale_figures.h"

#include <optional>

namespace piolo::models {

/// Window thread. Computed when first read after the notebook has changed.
class ScaleBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by PracticeRoom")
    Q_PROPERTY(piolo::models::ScaleChoices* choices READ choices CONSTANT)
    /// The columns: {name, concert, spoken}, as written and as sounding.
    Q_PROPERTY(QVariantList keys READ keys NOTIFY changed)
    /// The rows, quarters to septuplets: {words, detail, notes, cells}; a cell is {best, share, below,
    /// spoken, secure}: its best tempo, its share of the target (0…1), streak and days in one line.
    Q_PROPERTY(QVariantList rows READ rows NOTIFY changed)
    /// The last weeks, the current one last: {label, runs}, with runs by column.
    Q_PROPERTY(QVariantList weeks READ weeks NOTIFY changed)
    /// The selected cell; the suggested one until the player selects another.
    Q_PROPERTY(int row READ row NOTIFY chosen)
    Q_PROPERTY(int column READ column NOTIFY chosen)
    Q_PROPERTY(int proposedRow READ proposedRow NOTIFY changed)
    Q_PROPERTY(int proposedColumn READ proposedColumn NOTIFY changed)
    /// For the selected cell: "E♭ major in quintuplets".
    Q_PROPERTY(QString title READ title NOTIFY chosen)
    /// What the cell shows, in words: its best tempo, its streak and when it was played; "" if it was not.
    Q_PROPERTY(QString cellText READ cellText NOTIFY chosen)
    /// Why it is suggested; "" if it is not, and was played.
    Q_PROPERTY(QString whyText READ whyText NOTIFY chosen)
    /// The tempo at which it starts, and why.
    Q_PROPERTY(QString startText READ startText NOTIFY chosen)
    Q_PROPERTY(piolo::models::StaffView* staff READ staff CONSTANT)
    Q_PROPERTY(QString notesText READ notesText NOTIFY chosen)
    /// How it ends on a beat, and its key signature.
    Q_PROPERTY(QString endText READ endText NOTIFY chosen)
    /// "Altissimo: it goes up to A6 …"; "" within the range.
    Q_PROPERTY(QString rangeText READ rangeText NOTIFY chosen)
    /// The other name of its key; "" if there is none.
    Q_PROPERTY(QString otherName READ otherName NOTIFY chosen)
    Q_PROPERTY(bool canDrill READ canDrill NOTIFY chosen)
public:
    explicit ScaleBoard(practice::PracticeBook& book, QObject* parent = nullptr);

    [[nodiscard]] ScaleChoices* choices() { return &choices_; }
    [[nodiscard]] QVariantList keys() const;
    [[nodiscard]] QVariantList rows() const;
    [[nodiscard]] QVariantList weeks() const;
    [[nodiscard]] int row() const;
    [[nodiscard]] int column() const;
    [[nodiscard]] int proposedRow() const;
    [[nodiscard]] int proposedColumn() const;
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString cellText() const;
    [[nodiscard]] QString whyText() const;
    [[nodiscard]] QString startText() const;
    [[nodiscard]] StaffView* staff() { return &staff_; }
    [[nodiscard]] QString notesText() const;
    [[nodiscard]] QString endText() const;
    [[nodiscard]] QString rangeText() const;
    [[nodiscard]] QString otherName() const;
    [[nodiscard]] bool canDrill() const;
    /// The scale of the selected cell and its notes; no notes if the range does not contain its tonic.
    [[nodiscard]] Scale scale() const;
    [[nodiscard]] std::optional<ScalePart> part() const;

    Q_INVOKABLE void choose(int row, int column);
    /// Moves to another cell; horizontally, the grid wraps around.
    Q_INVOKABLE void move(int columns, int rows);
    Q_INVOKABLE void chooseProposed();
    Q_INVOKABLE void turnSpelling();
    /// The passage of the selected cell (32 digits), created if necessary; "" if it cannot be created.
    Q_INVOKABLE QString passageToDrill();
    /// The passage of the suggested cell, created if necessary; none if it cannot be created.
    Id proposedPassage();

signals:
    void changed();
    void chosen();

private:
    Id passageOfCell();
    void forget();
    void showStaff();
    [[nodiscard]] practice::CellAddress cell() const;
    [[nodiscard]] QVariantMap cellMap(practice::CellAddress cell) const;

    practice::PracticeBook& book_;
    practice::ScaleFigures figures_;
    ScaleChoices choices_;
    StaffView staff_;
    std::optional<practice::CellAddress> chosen_;
};

} // namespace piolo::models
