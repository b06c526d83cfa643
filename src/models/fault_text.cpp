// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/fault_text.h"
namespace piolo::models {
QString faultSentence(const Fault& fault) { return QString::number(static_cast<int>(fault.number)); }
QString faultLine(const Fault& fault) { return faultSentence(fault); }
} // namespace piolo::models
