// SPDX-License-Identifier: GPL-3.0-or-later
#include "text_walk.h"

#include <QQuickItem>
#include <QRegularExpression>

#include <algorithm>

namespace piolo::test {

namespace {

struct Shown {
    QQuickItem* item;
    QString text;
    QRectF ink;     ///< the painted area, in window coordinates
    QRectF visible; ///< the part of it that is not scrolled out of view
};

QRectF inWindow(const QQuickItem& item, const QRectF& part) { return item.mapRectToScene(part); }

/// The area of the letters: a text item may be wider.
QRectF inkOf(const QQuickItem& text) {
    const qreal width = text.property("contentWidth").toReal();
    const qreal height = text.property("contentHeight").toReal();
    const int across = text.property("effectiveHorizontalAlignment").toInt();
    const int down = text.property("verticalAlignment").toInt();
    const qreal left = text.property("leftPadding").toReal();
    const qreal right = text.property("rightPadding").toReal();
    const qreal room = text.width() - left - right - width;
    const qreal x = across & Qt::AlignHCenter ? room / 2 : across & Qt::AlignRight ? room : 0;
    const qreal y = down & Qt::AlignVCenter  ? (text.height() - height) / 2
                    : down & Qt::AlignBottom ? text.height() - height
                                             : 0;
    return inWindow(text, {left + x, y, width, height});
}

QRectF unscrolled(const QQuickItem& text, QRectF part) {
    for (const QQuickItem* up = text.parentItem(); up != nullptr; up = up->parentItem())
        if (up->clip()) part = part.intersected(inWindow(*up, up->boundingRect()));
    return part;
}

/// The button or box that contains a text; the window if there is none.
const QQuickItem* holderOf(const QQuickItem& text) {
    const QQuickItem* up = text.parentItem();
    for (; up->parentItem() != nullptr; up = up->parentItem())
        if (up->inherits("QQuickAbstractButton") || (up->inherits("QQuickRectangle") && up->width() > 60))
            break;
    return up;
}

bool seeThrough(const QQuickItem* item) {
    for (; item != nullptr; item = item->parentItem())
        if (item->opacity() == 0) return true;
    return false;
}

void gather(QQuickItem* item, QList<Shown>& shown) {
    if (!item->isVisible()) return;
    const QString text = item->inherits("QQuickText") ? item->property("text").toString() : QString();
    if (!text.isEmpty() && !seeThrough(item)) {
        const QRectF ink = inkOf(*item);
        shown.append({item, text, ink, unscrolled(*item, ink)});
    }
    for (QQuickItem* child : item->childItems()) gather(child, shown);
}

bool isOwn(const QString& text, const QStringList& own) {
    return std::any_of(own.begin(), own.end(), [&](const QString& words) { return text.contains(words); });
}

bool standsOut(const Shown& text) {
    const QQuickItem* holder = holderOf(*text.item);
    const QRectF around = inWindow(*holder, holder->boundingRect()).adjusted(-1.5, 0, 1.5, 0);
    return text.ink.left() < around.left() || text.ink.right() > around.right();
}

bool lieOver(const Shown& a, const Shown& b) {
    const QRectF both = a.visible.intersected(b.visible);
    return both.width() > 3 && both.height() > 5;
}

/// A text missing in every language is shown as its id. File name endings begin with a full stop, and URLs
/// contain slashes.
bool isId(const QString& text) {
    static const QRegularExpression id(
        QStringLiteral("(?<![.\\w~/-])[a-z][a-z-]*\\.[a-z][a-z.-]*(?![\\w.-]*/)"));
    return id.match(text).hasMatch();
}

} // namespace

QStringList cutTexts(QQuickWindow& window, const QStringList& own) {
    QList<Shown> shown;
    gather(window.contentItem(), shown);
    QStringList lines;
    for (qsizetype i = 0; i < shown.size(); ++i) {
        const Shown& text = shown[i];
        if (text.visible.isEmpty()) continue;
        if (text.item->property("truncated").toBool() && !isOwn(text.text, own))
            lines << "cut off: " + text.text;
        if (isId(text.text)) lines << "not translated: " + text.text;
        if (standsOut(text)) lines << "stands out: " + text.text;
        for (qsizetype j = i + 1; j < shown.size(); ++j)
            if (lieOver(text, shown[j])) lines << "over each other: " + text.text + " | " + shown[j].text;
    }
    return lines;
}

} // namespace piolo::test
