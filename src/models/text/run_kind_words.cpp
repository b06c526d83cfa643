// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/text/run_kind_words.h"

#include <QtGlobal>

#include <algorithm>
#include <array>

namespace piolo::models {

namespace {

/// The ids of a run kind's texts.
struct RunKindTexts {
    RunKind kind;
    const char* word;
    const char* apartWord; ///< null: the same word
    const char* apartLine; ///< null: it affects the rule
};

constexpr std::array runKindTexts{
    RunKindTexts{RunKind::run, QT_TRID_NOOP("log.line.run"), nullptr, nullptr},
    RunKindTexts{RunKind::attempt, QT_TRID_NOOP("log.line.try"), QT_TRID_NOOP("log.line.a-try"),
                 QT_TRID_NOOP("drill.try.note")},
    RunKindTexts{RunKind::silent, QT_TRID_NOOP("log.line.without-click"), nullptr,
                 QT_TRID_NOOP("drill.without-click.note")},
    RunKindTexts{RunKind::context, QT_TRID_NOOP("log.line.in-context"), nullptr,
                 QT_TRID_NOOP("drill.in-context.note")},
    RunKindTexts{RunKind::aside, QT_TRID_NOOP("log.line.aside"), nullptr, QT_TRID_NOOP("drill.aside.note")},
};
static_assert(std::ranges::equal(runKindTexts, runKindTable, {}, &RunKindTexts::kind, &RunKindInfo::kind),
              "every run kind has its texts, in the order of the table");

const RunKindTexts& textsOf(RunKind kind) { return runKindTexts.at(static_cast<std::size_t>(kind)); }

} // namespace

QString kindWord(Entry::Kind kind) {
    const auto run = runKindOf(kind);
    return run ? qtTrId(textsOf(*run).word) : qtTrId("log.line.tempo-set");
}

QString apartWord(Entry::Kind kind) {
    const auto run = runKindOf(kind);
    const char* const own = run ? textsOf(*run).apartWord : nullptr;
    return own == nullptr ? kindWord(kind) : qtTrId(own);
}

QString apartLine(RunKind kind) {
    const char* const line = textsOf(kind).apartLine;
    return line == nullptr ? QString() : qtTrId(line);
}

} // namespace piolo::models
