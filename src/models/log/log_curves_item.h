// SPDX-License-Identifier: GPL-3.0-or-later
// The log's curves on the screen: they can be zoomed, moved and pointed at.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QQuickPaintedItem>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include "models/log/log_model.h"
#include "plots/curve/curves_plot.h"

#include <optional>
#include <vector>

namespace piolo::models {

/// Window thread. Reads the log when it changes and lays out the picture when the view changes; a frame only
/// draws.
class LogCurvesItem : public QQuickPaintedItem {
    Q_OBJECT
    QML_NAMED_ELEMENT(LogCurves)
    Q_PROPERTY(piolo::models::LogModel* log READ log WRITE setLog NOTIFY logChanged)
    /// "days" or "runs".
    Q_PROPERTY(QString by READ by WRITE setBy NOTIFY byChanged)
    Q_PROPERTY(bool dark MEMBER dark_ NOTIFY looksChanged)
    Q_PROPERTY(QString family MEMBER family_ NOTIFY looksChanged)
    /// True if there is nothing to draw.
    Q_PROPERTY(bool empty READ empty NOTIFY curvesChanged)
    /// True if all of it is visible.
    Q_PROPERTY(bool whole READ whole NOTIFY viewChanged)
    /// The picture in words.
    Q_PROPERTY(QString words READ words NOTIFY curvesChanged)
    /// The text for the pointed run or day; "" if there is none.
    Q_PROPERTY(QString pointedText READ pointedText NOTIFY pointedChanged)
    Q_PROPERTY(QPointF pointedAt READ pointedAt NOTIFY pointedChanged)
public:
    explicit LogCurvesItem(QQuickItem* parent = nullptr);

    [[nodiscard]] LogModel* log() const { return log_; }
    void setLog(LogModel* log);
    [[nodiscard]] QString by() const;
    void setBy(const QString& by);
    [[nodiscard]] bool empty() const { return curves_.empty(); }
    [[nodiscard]] bool whole() const { return view_ == all_; }
    [[nodiscard]] QString words() const;
    [[nodiscard]] QString pointedText() const;
    [[nodiscard]] QPointF pointedAt() const;
    [[nodiscard]] const plots::CurvesView& view() const { return view_; }
    /// How often the picture has been laid out so far.
    [[nodiscard]] int layouts() const { return layouts_; }

    void paint(QPainter* painter) override;

    /// Shows `factor` times as much of the axis (below 1: less), keeping what is at x in place.
    Q_INVOKABLE void zoom(double factor, double x);
    Q_INVOKABLE void zoomMiddle(double factor);
    /// Moves the curves to the right by that many pixels, never past their ends.
    Q_INVOKABLE void pan(double pixels);
    Q_INVOKABLE void showAll();
    /// Points at the run or day nearest to that position, or at none.
    Q_INVOKABLE void point(double x, double y);
    /// Points at the next run or day of the same passage (-1: the previous one), starting with the last
    /// visible one.
    Q_INVOKABLE void step(int by);
    /// Points at the next passage, at about the same position.
    Q_INVOKABLE void turn();
    Q_INVOKABLE void unpoint();
    /// Saves what is visible; see saveCurves(). Returns "" on success, otherwise one sentence.
    Q_INVOKABLE QString save(const QString& path) const;

signals:
    void logChanged();
    void byChanged();
    void looksChanged();
    void curvesChanged();
    void viewChanged();
    void pointedChanged();

protected:
    void geometryChange(const QRectF& now, const QRectF& before) override;

private:
    void read();
    void relook();
    void seeing(plots::CurvesView wanted);
    void pointAt(std::optional<plots::CurvesPoint> place);
    void follow(double x);
    [[nodiscard]] plots::CurveStyle style() const;
    const plots::CurvesLayout& layout() const;

    LogModel* log_ = nullptr;
    plots::CurveBy by_ = plots::CurveBy::days;
    bool dark_ = false;
    QString family_;
    std::vector<plots::CurveSeries> curves_;
    plots::CurvesView all_, view_;
    std::optional<plots::CurvesPoint> pointed_;
    mutable std::optional<plots::CurvesLayout> layout_;
    mutable int layouts_ = 0;
};

} // namespace piolo::models
