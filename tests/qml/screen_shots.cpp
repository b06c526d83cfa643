// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen_shots.h"

#include <doctest/doctest.h>

#include <QDir>

namespace piolo::test {

void keepShot(const QImage& picture, const QString& name) {
    REQUIRE(QDir().mkpath(PIOLO_SHOTS));
    const QString file = QStringLiteral("%1/%2.png").arg(PIOLO_SHOTS, name);
    INFO(file.toStdString());
    CHECK(picture.save(file));
}

void shootAll(ScreenFixture& fixture, const QString& name, const std::function<void()>& settle,
              const std::function<void(const QImage&, bool)>& look) {
    for (const QSize size : {QSize(1280, 800), QSize(1024, 640), QSize(1920, 1080)}) {
        fixture.resize(size.width(), size.height());
        for (const bool dark : {false, true}) {
            fixture.setDark(dark);
            settle();
            const QImage picture = fixture.shot();
            CAPTURE(name.toStdString());
            CHECK(picture.size() == size);
            look(picture, dark);
            keepShot(picture, QStringLiteral("%1-%2x%3%4")
                                  .arg(name)
                                  .arg(size.width())
                                  .arg(size.height())
                                  .arg(dark ? QStringLiteral("-dark") : QString()));
        }
    }
    fixture.setDark(false);
    fixture.resize(1280, 800);
}

} // namespace piolo::test
