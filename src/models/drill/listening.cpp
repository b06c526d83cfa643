// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/drill/listening.h"

namespace piolo::models {

Listening::Listening(practice::DrillControl& control, QObject* parent) : QObject(parent), control_(control) {
    using Control = practice::DrillControl;
    connect(&control_, &Control::opened, this, &Listening::passageChanged);
    connect(&control_, &Control::recordChanged, this, &Listening::passageChanged);
    connect(&control_, &Control::stateChanged, this, &Listening::activeChanged);
}

void Listening::setWithClick(bool withClick) {
    if (withClick == withClick_) return;
    withClick_ = withClick;
    emit withClickChanged();
}

} // namespace piolo::models
