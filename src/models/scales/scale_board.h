// SPDX-License-Identifier: GPL-3.0-or-later
// The grid of twelve keys by seven subdivisions, the cell chosen in it, and the weeks.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "models/scales/scale_choices.h"
#include "models/staff/staff_view.h"
#include "practice/figures/scale_figures.h"

#include <optional>

namespace piolo::models {

/// Window's thread. Computed anew when it is read the first time after the notebook changed.
class ScaleBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by PracticeRoom")
    Q_PROPERTY(piolo::models::ScaleChoices* choices READ choices CONSTANT)
    /// The columns: {name, concert, spoken}, as written and as it sounds.
    Q_PROPERTY(QVariantList keys READ keys NOTIFY changed)
    /// The rows, quarters to septuplets: {words, detail, cells}; a cell is {best, share, below, spoken,
    /// secure}: its best tempo, its share of the target (0…1), streak and days in a line.
    Q_PROPERTY(QVariantList rows READ rows NOTIFY changed)
    /// The last weeks, the present one last: {label, runs}, runs by column.
    Q_PROPERTY(QVariantList weeks READ weeks NOTIFY changed)
    /// The cell chosen; the one proposed until the player chooses another.
    Q_PROPERTY(int row READ row NOTIFY chosen)
    Q_PROPERTY(int column READ column NOTIFY chosen)
    Q_PROPERTY(int proposedRow READ proposedRow NOTIFY changed)
    Q_PROPERTY(int proposedColumn READ proposedColumn NOTIFY changed)
    /// Of the cell chosen. "E♭ major in quintuplets".
    Q_PROPERTY(QString title READ title NOTIFY chosen)
    /// Why it is proposed, or what was played of it.
    Q_PROPERTY(QString whyText READ whyText NOTIFY chosen)
    /// At what tempo it begins, and why.
    Q_PROPERTY(QString startText READ startText NOTIFY chosen)
    Q_PROPERTY(piolo::models::StaffView* staff READ staff CONSTANT)
    Q_PROPERTY(QString notesText READ notesText NOTIFY chosen)
    /// How it ends on a beat, and its key signature.
    Q_PROPERTY(QString endText READ endText NOTIFY chosen)
    /// "Goes up to A6, above your range."; "" inside it.
    Q_PROPERTY(QString rangeText READ rangeText NOTIFY chosen)
    /// The other name of its key; "" where there is none.
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
    [[nodiscard]] QString whyText() const;
    [[nodiscard]] QString startText() const;
    [[nodiscard]] StaffView* staff() { return &staff_; }
    [[nodiscard]] QString notesText() const;
    [[nodiscard]] QString endText() const;
    [[nodiscard]] QString rangeText() const;
    [[nodiscard]] QString otherName() const;
    [[nodiscard]] bool canDrill() const;
    /// The scale of the cell chosen, and its notes; none where the range has no tonic of it.
    [[nodiscard]] Scale scale() const;
    [[nodiscard]] std::optional<ScalePart> part() const;

    Q_INVOKABLE void choose(int row, int column);
    /// To the next cell; the grid has no edges from side to side.
    Q_INVOKABLE void move(int columns, int rows);
    Q_INVOKABLE void chooseProposed();
    Q_INVOKABLE void turnSpelling();
    /// The passage of the cell chosen (32 digits), made when there is none yet; "" when that cannot be.
    Q_INVOKABLE QString passageToDrill();
    /// That of the cell proposed.
    QString proposedPassage();

signals:
    void changed();
    void chosen();

private:
    void forget();
    void showStaff();
    [[nodiscard]] practice::ScalePlace cell() const;
    [[nodiscard]] QVariantMap cellMap(practice::ScalePlace cell) const;

    practice::PracticeBook& book_;
    practice::ScaleFigures figures_;
    ScaleChoices choices_;
    StaffView staff_;
    std::optional<practice::ScalePlace> chosen_;
};

} // namespace piolo::models
