// SPDX-License-Identifier: GPL-3.0-or-later
// Another language for as long as it lives; then that of the source again, with plain numbers.
#pragma once

#include "models/settings/language.h"

#include <QLocale>

namespace piolo::test {

struct Spoken {
    explicit Spoken(const char* code) { models::speak(QString::fromLatin1(code)); }
    Spoken(const Spoken&) = delete;
    Spoken& operator=(const Spoken&) = delete;
    ~Spoken() {
        models::speak(QStringLiteral("en"));
        QLocale::setDefault(QLocale::c());
    }
};

} // namespace piolo::test
