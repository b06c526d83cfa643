// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/log/log_curves_item.h"

#include "models/log/curve_saving.h"
#include "models/log/log_curves.h"

#include <QLocale>
#include <QPainter>

#include <algorithm>

namespace piolo::models {

namespace {

/// At least this many days or runs are always visible.
constexpr double leastSeen = 4;
constexpr double pointerReach = 24;

} // namespace

LogCurvesItem::LogCurvesItem(QQuickItem* parent) : QQuickPaintedItem(parent) {
    setAntialiasing(true);
    connect(this, &LogCurvesItem::looksChanged, this, &LogCurvesItem::relook);
}

void LogCurvesItem::setLog(LogModel* log) {
    if (log == log_) return;
    if (log_ != nullptr) disconnect(log_, nullptr, this, nullptr);
    log_ = log;
    if (log_ != nullptr) connect(log_, &LogModel::refreshed, this, &LogCurvesItem::read);
    emit logChanged();
    read();
}

QString LogCurvesItem::by() const {
    return by_ == plots::CurveBy::days ? QStringLiteral("days") : QStringLiteral("runs");
}

void LogCurvesItem::setBy(const QString& by) {
    const auto wanted = by == QLatin1String("runs") ? plots::CurveBy::runs : plots::CurveBy::days;
    if (wanted == by_) return;
    by_ = wanted;
    emit byChanged();
    read();
}

void LogCurvesItem::read() {
    if (log_ == nullptr || !log_->shown()) return;
    curves_ = log_->curves(by_);
    const plots::CurvesView before = all_;
    all_ = plots::wholeView(curves_, log_->today());
    if (by_ == plots::CurveBy::days && log_->filter().from)
        all_.from = std::min(static_cast<double>(log_->filter().from->daysSince1970()), all_.to - 1);
    pointed_.reset();
    if (!(all_ == before)) view_ = all_; // losing an entry does not lose the player's position
    emit curvesChanged();
    emit pointedChanged();
    emit viewChanged();
    relook();
}

void LogCurvesItem::relook() {
    layout_.reset();
    update();
}

void LogCurvesItem::geometryChange(const QRectF& now, const QRectF& before) {
    QQuickPaintedItem::geometryChange(now, before);
    if (now.size() != before.size()) relook();
}

QString LogCurvesItem::words() const { return curveWords(curves_); }

QString LogCurvesItem::pointedText() const {
    return pointed_ ? pointWords(curves_[pointed_->series], pointed_->point, log_->today()) : QString();
}

QPointF LogCurvesItem::pointedAt() const {
    return pointed_ ? layout().at(curves_[pointed_->series].points[pointed_->point]) : QPointF();
}

plots::CurveStyle LogCurvesItem::style() const {
    plots::CurveStyle style = dark_ ? plots::darkCurveStyle() : plots::lightCurveStyle();
    if (!family_.isEmpty()) style.font.setFamily(family_);
    style.targetWord = qtTrId("curve.target");
    style.dueWord = qtTrId("curve.due");
    style.locale = QLocale();
    return style;
}

const plots::CurvesLayout& LogCurvesItem::layout() const {
    if (!layout_) {
        layout_ = plots::layOutCurves(curves_, view_, size(), style());
        ++layouts_;
    }
    return *layout_;
}

void LogCurvesItem::paint(QPainter* painter) {
    if (curves_.empty()) return;
    const auto pointed = pointed_ ? std::optional(pointedAt()) : std::nullopt;
    plots::drawCurves(*painter, size(), layout(), style(), pointed);
}

void LogCurvesItem::seeing(plots::CurvesView wanted) {
    const double most = all_.to - all_.from;
    const double width = std::clamp(wanted.to - wanted.from, std::min(leastSeen, most), most);
    wanted.from = std::clamp(wanted.from, all_.from, all_.to - width);
    wanted.to = wanted.from + width;
    if (wanted == view_) return;
    view_ = wanted;
    relook();
    emit viewChanged();
    emit pointedChanged();
}

void LogCurvesItem::zoom(double factor, double x) {
    if (curves_.empty()) return;
    const QRectF frame = layout().frame;
    const double across = std::clamp((x - frame.left()) / std::max(1.0, frame.width()), 0.0, 1.0);
    const double width = view_.to - view_.from;
    const double wanted =
        std::clamp(width * factor, std::min(leastSeen, all_.to - all_.from), all_.to - all_.from);
    const double from = view_.from + across * (width - wanted);
    seeing({from, from + wanted});
}

void LogCurvesItem::zoomMiddle(double factor) {
    if (!curves_.empty()) zoom(factor, layout().frame.center().x());
}

void LogCurvesItem::pan(double pixels) {
    if (curves_.empty()) return;
    const double moved = pixels * (view_.to - view_.from) / std::max(1.0, layout().frame.width());
    seeing({view_.from - moved, view_.to - moved});
}

void LogCurvesItem::showAll() { seeing(all_); }

void LogCurvesItem::point(double x, double y) {
    if (!curves_.empty()) pointAt(plots::pointNear(curves_, layout(), {x, y}, pointerReach));
}

void LogCurvesItem::pointAt(std::optional<plots::CurvesPoint> place) {
    if (place == pointed_) return;
    pointed_ = place;
    emit pointedChanged();
    update();
}

void LogCurvesItem::step(int by) {
    if (curves_.empty()) return;
    if (!pointed_) {
        const plots::PointRange seen = plots::pointsBetween(curves_.front(), view_.from, view_.to);
        return pointAt(plots::CurvesPoint{0, seen.end - 1});
    }
    const auto last = static_cast<std::ptrdiff_t>(curves_[pointed_->series].points.size()) - 1;
    const auto wanted =
        std::clamp<std::ptrdiff_t>(static_cast<std::ptrdiff_t>(pointed_->point) + by, 0, last);
    pointAt(plots::CurvesPoint{pointed_->series, static_cast<std::size_t>(wanted)});
    follow(curves_[pointed_->series].points[pointed_->point].x);
}

void LogCurvesItem::turn() {
    if (!pointed_) return step(1);
    const double x = curves_[pointed_->series].points[pointed_->point].x;
    const std::size_t next = (pointed_->series + 1) % curves_.size();
    const plots::PointRange near = plots::pointsBetween(curves_[next], x, x);
    pointAt(plots::CurvesPoint{next, near.end - 1});
    follow(curves_[next].points[near.end - 1].x);
}

void LogCurvesItem::unpoint() { pointAt(std::nullopt); }

QString LogCurvesItem::save(const QString& path) const {
    return saveCurves(path, {curves_, view_, size().toSize(), log_->records(curves_)});
}

// Keeps the pointed position visible.
void LogCurvesItem::follow(double x) {
    const double width = view_.to - view_.from;
    if (x < view_.from) seeing({x, x + width});
    if (x > view_.to) seeing({x - width, x});
}

} // namespace piolo::models
