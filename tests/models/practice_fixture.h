// SPDX-License-Identifier: GPL-3.0-or-later
// A drill in virtual time, and the model that the screen shows of it.
#pragma once

#include "../practice/drill_fixture.h"
#include "models/drill/drill_model.h"

namespace piolo::test {

class PracticeFixture : public DrillFixture {
public:
    explicit PracticeFixture(std::optional<Passage> passage = {}) : DrillFixture(std::move(passage)) {}

private:
    models::DrillModel model_{*book, *control};

public:
    models::DrillModel* drill = &model_;
};

} // namespace piolo::test
