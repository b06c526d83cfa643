// SPDX-License-Identifier: GPL-3.0-or-later
// What is shown in place of the window if the program cannot start.
#include <doctest/doctest.h>

#include <QQmlApplicationEngine>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTest>

TEST_CASE("why the program cannot start is there to read, also in a narrow window, and Space or a click "
          "closes it") {
    for (const bool click : {true, false}) {
        QQmlApplicationEngine engine;
        engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
        const QString fault =
            QStringLiteral("E301: /home/oboe/.config/piolo/settings.json: cannot be read (Permission "
                           "denied); check the name and its permissions");
        engine.setInitialProperties({{QStringLiteral("fault"), fault}});
        engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Piolo/FaultWindow.qml")));
        REQUIRE(engine.rootObjects().size() == 1);
        auto* const window = qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst());
        REQUIRE(window != nullptr);
        window->resize(320, window->height());
        REQUIRE(QTest::qWaitForWindowExposed(window));
        const auto* const text = window->findChild<QQuickItem*>(QStringLiteral("startFault"));
        REQUIRE(text != nullptr);
        CHECK(text->property("text").toString() == fault);
        CHECK_FALSE(text->property("truncated").toBool());
        const auto* const button = window->findChild<QQuickItem*>(QStringLiteral("closeFault"));
        REQUIRE(button != nullptr);
        const QPointF middle = button->mapToScene({button->width() / 2, button->height() / 2});
        if (click)
            QTest::mouseClick(window, Qt::LeftButton, Qt::NoModifier, middle.toPoint());
        else
            QTest::keyClick(window, Qt::Key_Space);
        CHECK_FALSE(window->isVisible());
    }
}
