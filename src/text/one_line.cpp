// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/one_line.h"

#include <algorithm>

namespace piolo::text {
namespace {

constexpr QChar firstStrongIsolate(0x2068);
constexpr QChar popIsolate(0x2069);

bool breaksOrControls(char16_t c) {
    const bool noncharacter = (c >= 0xFDD0 && c <= 0xFDEF) || c >= 0xFFFE;
    return c < 0x20 || (c >= 0x7F && c < 0xA0) || c == 0x2028 || c == 0x2029 || noncharacter;
}

bool isIsolate(QChar c) { return c.unicode() >= 0x2066 && c.unicode() <= 0x2069; }

bool turns(QChar c) {
    switch (c.direction()) {
    case QChar::DirR:
    case QChar::DirAL:
    case QChar::DirRLE:
    case QChar::DirRLO:
    case QChar::DirLRE:
    case QChar::DirLRO:
    case QChar::DirPDF:
        return true;
    default:
        return isIsolate(c);
    }
}

} // namespace

QString onOneLine(const std::string& raw) {
    QString text = QString::fromStdString(raw);
    for (QChar& c : text)
        if (breaksOrControls(c.unicode())) c = QChar(0xFFFD);
    return text;
}

QString nameShown(const std::string& raw) {
    QString name = onOneLine(raw);
    if (std::none_of(name.cbegin(), name.cend(), turns)) return name;
    // Its own isolates could end ours.
    name.removeIf(isIsolate);
    return firstStrongIsolate + name + popIsolate;
}

} // namespace piolo::text
