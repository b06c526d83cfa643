// SPDX-License-Identifier: GPL-3.0-or-later
// An on-screen keyboard over the lower part of the window, shown and hidden by the test.
#include "../screen_fixture.h"

#include <doctest/doctest.h>

#include <QGuiApplication>
#include <QtGui/private/qinputmethod_p.h>
#include <QtGui/qpa/qplatforminputcontext.h>

using namespace piolo;
using piolo::test::ScreenFixture;

namespace {

/// Covers the lower part of the window as soon as it is told to.
class Keyboard final : public QPlatformInputContext {
public:
    Keyboard() { QInputMethodPrivate::get(QGuiApplication::inputMethod())->testContext = this; }
    ~Keyboard() override { QInputMethodPrivate::get(QGuiApplication::inputMethod())->testContext = nullptr; }
    [[nodiscard]] bool isValid() const override { return true; }
    [[nodiscard]] QRectF keyboardRect() const override { return place_; }
    [[nodiscard]] bool isInputPanelVisible() const override { return !place_.isEmpty(); }
    void cover(QSize window, int height) {
        place_ = QRectF(0, window.height() - height, window.width(), height);
        emitKeyboardRectChanged();
        emitInputPanelVisibleChanged();
    }
    void leave() {
        place_ = {};
        emitInputPanelVisibleChanged();
        emitKeyboardRectChanged();
    }

private:
    QRectF place_;
};

struct OnATablet : ScreenFixture {
    void typeInto(const QString& name) {
        QQuickItem* const item = find(name);
        CAPTURE(name.toStdString());
        REQUIRE(item != nullptr);
        item->forceActiveFocus(Qt::MouseFocusReason);
        play(0.1);
        if (!item->hasActiveFocus() && !item->isAncestorOf(window().activeFocusItem())) FAIL("has no focus");
    }
    /// The lower edge of what has the focus.
    [[nodiscard]] double lowerEdge() const {
        const QQuickItem* const item = window().activeFocusItem();
        REQUIRE(item != nullptr);
        return item->mapToScene({0, item->height()}).y();
    }
};

} // namespace

TEST_CASE_FIXTURE(OnATablet,
                  "an on-screen keyboard covers nothing that is typed into, and gives the room back") {
    for (const QSize size : {QSize(600, 960), QSize(1280, 800)}) {
        CAPTURE(size.width());
        resize(size.width(), size.height());
        const int height = size.height() * 2 / 5;
        for (const auto* field : {"field-target", "field-climb", "drillTempo"}) {
            if (QString::fromLatin1(field) == "drillTempo") {
                open("drill");
            } else {
                room().edit(QString::fromStdString(passage().text()), false);
                play(0.1);
            }
            CAPTURE(field);
            QQuickItem* const screens = find("screens");
            REQUIRE(screens != nullptr);
            const double all = screens->height();
            Keyboard keyboard;
            typeInto(QString::fromLatin1(field));
            keyboard.cover(size, height);
            play(0.2);
            CHECK(screens->height() == doctest::Approx(all - height));
            CHECK(lowerEdge() <= size.height() - height);
            keyboard.leave();
            play(0.1);
            CHECK(screens->height() == doctest::Approx(all));
        }
    }
    CHECK(warnings().join("\n").toStdString() == "");
}
