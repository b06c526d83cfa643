// SPDX-License-Identifier: GPL-3.0-or-later
#include "command/verbs/run_verb.h"

#include "command/output/report.h"
#include "command/verbs/verb_help.h"
#include "command/verbs/verb_list.h"

#include <QLocale>

namespace piolo::command {
namespace {

VerbEnd run(const Verb& verb, std::span<const std::string> words) {
    const auto arguments = Arguments::read(verb.syntax(), words);
    if (!arguments) return arguments.fault();
    if (!arguments->helpAsked()) return verb.run(*arguments);
    const Done said = say(helpOf(verb));
    if (!said) return said.fault();
    return exitDone;
}

} // namespace

int runVerb(std::span<const std::string> words) {
    QLocale::setDefault(QLocale::c()); // output for scripts is the same in every locale
    const auto verb = verbNamed(words.front());
    if (!verb) return report({FaultNumber::unknownVerb, {words.front()}, {verbNames()}});
    const VerbEnd end = run(*verb, words.subspan(1));
    return end ? *end : report(end.fault());
}

} // namespace piolo::command
