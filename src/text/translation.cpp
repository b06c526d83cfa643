// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/translation.h"

#include <QCoreApplication>

namespace piolo::text {

std::unique_ptr<QTranslator> textsIn(const QString& code) {
    auto made = std::make_unique<QTranslator>();
    if (!made->load(QStringLiteral("piolo_") + code, QStringLiteral(":/languages"))) return nullptr;
    QCoreApplication::installTranslator(made.get());
    return made;
}

void loadEnglish() { static const auto english = textsIn(QStringLiteral("en")); }

} // namespace piolo::text
