// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/verbs/verb.h"

#include "app/output/telling.h"
#include "app/verbs/help.h"
#include "app/verbs/verb_list.h"

#include <QLocale>

#include <array>
#include <optional>

namespace piolo::app {
namespace {

std::optional<Verb> verbNamed(std::string_view name) {
    for (const Verb& verb :
         std::array{clickVerb(), trackVerb(), ladderVerb(), curveVerb(), sheetVerb(), barsVerb(), modelVerb(),
                    scaleVerb(), staffVerb(), checkVerb(), exportVerb(), importVerb()})
        if (verb.name == name) return verb;
    return std::nullopt;
}

VerbEnd run(const Verb& verb, std::span<const std::string> words) {
    const auto read = Words::read(verb.syntax, words);
    if (!read) return read.fault();
    if (!read->helpAsked()) return verb.run(*read);
    const Done said = say(helpOf(verb.name));
    if (!said) return said.fault();
    return exitDone;
}

} // namespace

bool isVerb(const std::string& word) { return verbNamed(word).has_value(); }

int runVerb(const std::string& verb, std::span<const std::string> words) {
    QLocale::setDefault(QLocale::c()); // what a script reads is the same everywhere
    const auto found = verbNamed(verb);
    if (!found) return tell({FaultNumber::unknownVerb, {verb}, {}});
    const VerbEnd end = run(*found, words);
    return end ? *end : tell(end.fault());
}

} // namespace piolo::app
