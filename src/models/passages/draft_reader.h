// SPDX-License-Identifier: GPL-3.0-or-later
// Reads a draft field by field; an invalid field adds one line of explanation and gives its fallback.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QString>
#include <QVariantMap>

#include "core/time/tempo.h"

namespace piolo::models {

class DraftReader {
public:
    /// `draft` must outlive the reader.
    explicit DraftReader(const QVariantMap& draft) : draft_(draft) {}

    /// Without surrounding spaces.
    [[nodiscard]] QString text(const char* field) const;
    [[nodiscard]] bool flag(const char* field) const;
    [[nodiscard]] bool good(const char* field) const;
    [[nodiscard]] QVariantMap faults() const { return faults_; }
    void refuse(const char* field, const QString& line);

    [[nodiscard]] int count(const char* field, int least, int most, int fallback);
    [[nodiscard]] Tempo tempo(const char* field, Tempo fallback);

private:
    const QVariantMap& draft_;
    QVariantMap faults_;
};

} // namespace piolo::models
