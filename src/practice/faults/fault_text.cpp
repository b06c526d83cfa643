// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/faults/fault_text.h"

#include "practice/faults/fault_sentences.h"
#include "text/one_line.h"

#include <QtGlobal>

namespace piolo::practice {
namespace {

constexpr qsizetype longestArgument = 200;

QString shortened(QString text) {
    if (text.size() <= longestArgument) return text;
    return text.left(longestArgument) + QChar(0x2026);
}

QString argument(const Fault& fault, std::size_t index) {
    return index < fault.arguments.size() ? shortened(text::onOneLine(fault.arguments[index])) : QString();
}

// Replaces %1 … %9 with the arguments in one pass, because an argument may itself contain "%1".
QString filled(QStringView pattern, const Fault& fault) {
    QString text;
    for (qsizetype i = 0; i < pattern.size(); ++i) {
        const bool mark = pattern[i] == u'%' && i + 1 < pattern.size();
        const int digit = mark ? pattern[i + 1].digitValue() : -1;
        if (digit < 1) {
            text += pattern[i];
            continue;
        }
        text += argument(fault, static_cast<std::size_t>(digit - 1));
        ++i;
    }
    return text;
}

// Text in square brackets is left out if its argument is missing.
QString withoutEmptyBrackets(QString pattern, const Fault& fault) {
    const qsizetype open = pattern.indexOf(u'[');
    const qsizetype close = pattern.indexOf(u']', open + 1);
    if (open < 0 || close < 0) return pattern;
    const qsizetype mark = pattern.indexOf(u'%', open);
    const auto index = static_cast<std::size_t>(pattern[mark + 1].digitValue() - 1);
    if (argument(fault, index).isEmpty()) return pattern.remove(open, close - open + 1);
    return pattern.remove(close, 1).remove(open, 1);
}

// The English sentence is only in its table: the command needs it without any translation.
QString translatedPattern(FaultNumber number) {
    const QByteArray id = "fault.E" + QByteArray::number(static_cast<int>(number));
    const QString translated = qtTrId(id.constData());
    return translated == QLatin1String(id) ? QString::fromUtf8(sentencePattern(number)) : translated;
}

} // namespace

QString faultSentence(const Fault& fault) {
    const QString pattern = translatedPattern(fault.number);
    return filled(withoutEmptyBrackets(pattern, fault), fault);
}

QString faultLine(const Fault& fault) {
    QString line = QStringLiteral("E%1: ").arg(static_cast<int>(fault.number));
    if (!fault.location.file.empty()) {
        line += text::onOneLine(fault.location.file);
        if (fault.location.line > 0) line += u':' + QString::number(fault.location.line);
        line += QStringLiteral(": ");
    }
    return line + faultSentence(fault);
}

} // namespace piolo::practice
