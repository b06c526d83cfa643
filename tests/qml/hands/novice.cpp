// SPDX-License-Identifier: GPL-3.0-or-later
#include "novice.h"

#include "models/files/file_dialogs.h"

#include <doctest/doctest.h>

#include <QFile>
#include <QTest>
#include <QWheelEvent>

namespace piolo::test {

Novice::Novice(Hand hand) : ScreenFixture(true), hand_(hand) {}

void Novice::press(const QString& name) {
    CAPTURE(name.toStdString());
    QQuickItem* const item = find(name);
    REQUIRE(item != nullptr);
    if (hand_ == Hand::keys) {
        REQUIRE(tabTo(*item));
        key(Qt::Key_Space);
        return;
    }
    scrollTo(name);
    REQUIRE(QRect(QPoint(0, 0), window().size()).contains(middleOf(name)));
    pressAt(middleOf(name));
    play(0.3);
}

void Novice::pressAt(QPoint place) {
    ++presses_;
    if (hand_ == Hand::finger)
        touch(place);
    else
        QTest::mouseClick(&window(), Qt::LeftButton, Qt::NoModifier, place);
}

void Novice::key(int key, Qt::KeyboardModifiers modifiers) {
    ++presses_;
    modifiers == Qt::NoModifier ? tap(key) : QTest::keyClick(&window(), Qt::Key(key), modifiers);
    play(0.3);
}

void Novice::mark() {
    if (hand_ == Hand::keys)
        tap(Qt::Key_Space);
    else if (hand_ == Hand::mouse)
        QTest::mouseClick(&window(), Qt::LeftButton, Qt::NoModifier, {20, window().height() / 2});
    else
        touch({window().width() / 3, window().height() - 40});
    play(0.3);
}

void Novice::atTheDrill(const char* button, Qt::Key key) {
    if (hand_ == Hand::keys)
        this->key(key);
    else
        press(QString::fromLatin1(button));
    play(0.3);
}

void Novice::choose(const QString& name, const QString& value) {
    press(name);
    play(0.1);
    QQuickItem* const wanted = option(value);
    REQUIRE(wanted != nullptr);
    if (hand_ != Hand::keys) {
        pressAt(wanted->mapToScene({wanted->width() / 2, wanted->height() / 2}).toPoint());
    } else {
        for (int step = 0; step < 40 && !option(value)->property("highlighted").toBool(); ++step)
            key(Qt::Key_Down);
        key(Qt::Key_Return);
    }
    play(0.3);
}

QQuickItem* Novice::option(const QString& value) const {
    for (QQuickItem* item : shown())
        if (item->inherits("QQuickItemDelegate") &&
            item->property("modelData").toMap()[QStringLiteral("value")] == value)
            return item;
    return nullptr;
}

void Novice::chooseTheOboe() {
    if (hand_ != Hand::keys) return press(QStringLiteral("instrument-oboe"));
    REQUIRE(tabTo(*find("instrumentSearch")));
    for (const char letter : {'o', 'b', 'o', 'e'}) QTest::keyClick(&window(), letter);
    QTest::keyClick(&window(), Qt::Key_Return);
    play(0.3);
}

void Novice::openTheScore(const QString& button) {
    const QString score = scores_.filePath(QStringLiteral("ferrywake.musicxml"));
    REQUIRE(QFile::copy(QStringLiteral(PIOLO_SAMPLES "/ferrywake.musicxml"), score));
    models::FileDialogs::create(nullptr, nullptr)->remember(QUrl::fromLocalFile(score));
    press(button);
    const QString first = QStringLiteral("fileDialogDelegate0"); // of the dialog that Qt draws
    REQUIRE(QTest::qWaitFor([&] { return find(first) != nullptr; }));
    QTest::qWait(50); // laid out
    if (hand_ == Hand::keys) {
        ++presses_;
        QTest::keyClick(&window(), Qt::Key_Return);
    } else if (hand_ == Hand::mouse) {
        presses_ += 2;
        QTest::mouseDClick(&window(), Qt::LeftButton, Qt::NoModifier, middleOf(first));
    } else {
        pressAt(middleOf(first));
        pressAt(middleOf(first));
    }
    for (int turn = 0; room().editor()->music()->summary().isEmpty() && turn < 500; ++turn) QTest::qWait(10);
    play(0.1);
    static_cast<void>(shot()); // what the file holds is laid out
}

const PassageRecord& Novice::record() {
    return *room().book().notebook().passage(room().book().notebook().passages().front());
}

int Novice::missed() {
    int count = 0;
    for (const Entry& entry : record().entries) count += entry.mark == Mark::missed ? 1 : 0;
    return count;
}

bool Novice::tabTo(const QQuickItem& item) {
    constexpr int most = 100;
    const bool tab = item.objectName().startsWith("tab-");
    const auto there = [&] { return item.hasActiveFocus() || item.isAncestorOf(window().activeFocusItem()); };
    for (int press = 0; press < most && !there(); ++press) {
        const QQuickItem* const here = window().activeFocusItem();
        const bool inTabs = here != nullptr && here->objectName().startsWith("tab-");
        ++presses_;
        QTest::keyClick(&window(), tab && inTabs ? Qt::Key_Right : Qt::Key_Tab);
    }
    return there();
}

bool Novice::isInSight(const QQuickItem& item) const {
    const QPointF middle = item.mapToScene({item.width() / 2, item.height() / 2});
    if (!QRectF(QPointF(0, 0), window().size()).contains(middle)) return false;
    for (const QQuickItem* up = item.parentItem(); up != nullptr; up = up->parentItem())
        if (up->clip() && !up->mapRectToScene(up->boundingRect()).contains(middle)) return false;
    return true;
}

void Novice::scrollTo(const QString& name) {
    constexpr int most = 120;
    for (int turn = 0; turn < most && find(name) != nullptr && !isInSight(*find(name)); ++turn) {
        QQuickItem* around = find(name)->parentItem();
        while (around != nullptr && !around->inherits("QQuickFlickable")) around = around->parentItem();
        if (around == nullptr) return;
        const QRectF place =
            around->mapRectToScene(around->boundingRect()) & QRectF(QPointF(0, 0), QSizeF(window().size()));
        scroll(place.center().toPoint(), middleOf(name).y() > place.center().y());
        static_cast<void>(QTest::qWaitFor([&] { return !around->property("moving").toBool(); }));
        static_cast<void>(shot());
    }
}

// Drags by less than a screen, so that nothing is passed by.
void Novice::scroll(QPoint place, bool down) {
    constexpr int step = 60;
    if (hand_ == Hand::mouse) {
        QWheelEvent wheel(place, window().mapToGlobal(place), {}, {0, down ? -120 : 120}, Qt::NoButton,
                          Qt::NoModifier, Qt::NoScrollPhase, false);
        wheel.setTimestamp(++wheelMoment_ * 100);
        QCoreApplication::sendEvent(&window(), &wheel);
    } else {
        drag(place, place + QPoint(0, down ? -step : step));
    }
    QTest::qWait(40);
    play(0.05);
}

} // namespace piolo::test
