// SPDX-License-Identifier: GPL-3.0-or-later
// What a back takes back, as it counted until then, and what puts it back.
#pragma once

#include "core/history/notebook.h"

#include <optional>

namespace piolo::practice {

/// Plain values; any thread may read them.
struct TakenBack {
    enum class What {
        run,
        tempo,
        lateMiss, ///< the run is clean again
        doubt,    ///< its runs count again
        mark,     ///< a corrected mark: the run has the one before again
        runThrough
    };
    What what = What::run;
    Tempo tempo = Tempo::bpm(60); ///< of the run, or the tempo that was set
    Mark mark = Mark::clean;      ///< of the run, as it counted
    std::optional<Spot> spot;     ///< where it was first missed, if that is known
    std::size_t runs = 1;         ///< how many a doubt made void
    /// Records it again; nothing: it was never recorded.
    std::optional<FactBody> putsBack;
};

/// Ask before `fact` is taken back. `subject` is its passage or, for a run-through, its piece. Nothing if no
/// such fact is known or it is one of another kind.
[[nodiscard]] std::optional<TakenBack> takenBack(const Notebook& notebook, Id subject, Id fact);

} // namespace piolo::practice
