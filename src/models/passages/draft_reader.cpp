// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/passages/draft_reader.h"

#include "models/text/typed_values.h"

namespace piolo::models {

QString DraftReader::text(const char* field) const {
    return draft_.value(QLatin1String(field)).toString().trimmed();
}
bool DraftReader::flag(const char* field) const { return draft_.value(QLatin1String(field)).toBool(); }
bool DraftReader::good(const char* field) const { return !faults_.contains(QLatin1String(field)); }
void DraftReader::refuse(const char* field, const QString& line) {
    faults_.insert(QLatin1String(field), line);
}

int DraftReader::count(const char* field, int least, int most, int fallback) {
    const auto read = readCount(text(field), least, most);
    if (!read) refuse(field, qtTrId("form.fault.whole").arg(least).arg(most));
    return read.value_or(fallback);
}

Tempo DraftReader::tempo(const char* field, Tempo fallback) {
    const auto read = readTempo(text(field));
    if (!read) refuse(field, qtTrId("form.fault.tempo"));
    return read.value_or(fallback);
}

} // namespace piolo::models
