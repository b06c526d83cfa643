// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/one_line.h"

namespace piolo::text {
namespace {

bool breaksOrControls(char16_t c) {
    return c < 0x20 || (c >= 0x7F && c < 0xA0) || c == 0x2028 || c == 0x2029;
}

} // namespace

QString onOneLine(const std::string& raw) {
    QString text = QString::fromStdString(raw);
    for (QChar& c : text)
        if (breaksOrControls(c.unicode())) c = QChar(0xFFFD);
    return text;
}

} // namespace piolo::text
