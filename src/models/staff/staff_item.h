// SPDX-License-Identifier: GPL-3.0-or-later
// Music on a staff on the screen, drawn by src/plots.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QPointer>
#include <QQuickPaintedItem>
#include <QtQml/qqmlregistration.h>

#include "models/staff/staff_view.h"

#include "plots/staff/staff_layout.h"

#include <optional>

namespace piolo::models {

/// As large as its space allows for all of the music, between two sizes; if even the smaller one does not
/// fit, shows the systems around the bar being played.
class StaffItem : public QQuickPaintedItem {
    Q_OBJECT
    QML_NAMED_ELEMENT(Staff)
    Q_PROPERTY(piolo::models::StaffView* view READ view WRITE setView NOTIFY viewChanged)
    Q_PROPERTY(bool dark MEMBER dark_ NOTIFY looksChanged)
    /// Pixels per staff space: never more than the first, and less than the second only if a single bar needs
    /// it.
    Q_PROPERTY(double mostSpace MEMBER mostSpace_ NOTIFY sizesChanged)
    Q_PROPERTY(double leastSpace MEMBER leastSpace_ NOTIFY sizesChanged)
    /// The width for the layout: the item's own, known before a layout has assigned it.
    Q_PROPERTY(double span MEMBER span_ NOTIFY sizesChanged)
    /// The height available.
    Q_PROPERTY(double room MEMBER room_ NOTIFY sizesChanged)
    /// The part's own number of the bar being played; -1 if none.
    Q_PROPERTY(int bar MEMBER bar_ NOTIFY placeChanged)
    /// The note that sounds, as an index into the music; -1 if none.
    Q_PROPERTY(int lit MEMBER lit_ NOTIFY placeChanged)
    /// The height it needs at its span.
    Q_PROPERTY(double wantedHeight READ wantedHeight NOTIFY wantedHeightChanged)
    /// What is drawn now: pixels per staff space, and the systems from … to of all.
    Q_PROPERTY(double space READ space NOTIFY shownChanged)
    Q_PROPERTY(int firstShown READ firstShown NOTIFY shownChanged)
    Q_PROPERTY(int shown READ shown NOTIFY shownChanged)
    Q_PROPERTY(int systems READ systems NOTIFY shownChanged)
public:
    explicit StaffItem(QQuickItem* parent = nullptr);

    [[nodiscard]] StaffView* view() const { return view_; }
    void setView(StaffView* view);
    [[nodiscard]] double wantedHeight() const { return wantedHeight_; }
    [[nodiscard]] double space() const { return layout_ ? layout_->space : 0; }
    [[nodiscard]] int firstShown() const { return static_cast<int>(first_); }
    [[nodiscard]] int shown() const { return static_cast<int>(count_); }
    [[nodiscard]] int systems() const { return layout_ ? static_cast<int>(layout_->systems.size()) : 0; }
    void paint(QPainter* painter) override;

signals:
    void viewChanged();
    void looksChanged();
    void sizesChanged();
    void placeChanged();
    void wantedHeightChanged();
    void shownChanged();

private:
    [[nodiscard]] bool canDraw() const { return view_ != nullptr && view_->known() && span_ >= 40; }
    [[nodiscard]] plots::StaffLayout laidOut(double space) const;
    [[nodiscard]] std::optional<std::size_t> present() const;
    double layOut(double least, std::size_t systems);
    void fit();
    void choose();
    void follow();

    QPointer<StaffView> view_;
    bool dark_ = false;
    double span_ = 0;
    double room_ = 0;
    double mostSpace_ = 14;
    double leastSpace_ = 8;
    int bar_ = -1;
    int lit_ = -1;
    double wantedHeight_ = 0;
    std::optional<plots::StaffLayout> layout_;
    std::size_t first_ = 0; // the first system that is shown
    std::size_t count_ = 0;
};

} // namespace piolo::models
