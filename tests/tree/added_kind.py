#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Adds a fact kind to a scratch copy: its own file, and its line in the list of kinds.

added_kind.py COMPILER SOURCE: the fold does not compile without a word on the kind, and compiles with it; a line of the
kind is then written, read and checked, and the ids that it names are found, with nothing else touched.
"""
import pathlib
import subprocess
import sys
import tempfile

NEW_FILE = """\
#pragma once
#include "core/base/fields.h"
#include "core/base/id.h"
#include "core/facts/fact_role.h"
#include <string>
#include <string_view>
namespace piolo {
struct ReedFact {
    static constexpr std::string_view kindName = "reed";
    static constexpr FactRole role = FactRole::edits;
    Id passage;
    std::string name;
    std::int32_t strength = 3;
    bool operator==(const ReedFact&) const = default;
};
template <typename Fields>
void describe(Fields& in, ReedFact& fact) {
    in.field("passage", fact.passage);
    in.field("name", fact.name, Longest{20});
    unlessUsual(in, "strength", fact.strength, 3, Range{1, 5});
}
} // namespace piolo
"""

PROGRAM = """
int main() {
    using namespace piolo;
    const Fact fact{{0, 9}, "0123456789abcdef0123456789abcdef", 1, 1, {}, ReedFact{{0, 7}, "soft", 2}};
    const std::string line = journal::toLine(fact);
    if (line.find(R"("kind":"reed","passage":"00000000000000000000000000000007","name":"soft","strength":2,"sum")") ==
        std::string::npos)
        return 1;
    const auto read = journal::fromLine(line, {});
    if (!read || *read != fact) return 2;
    Fact wrong = fact;
    std::get<ReedFact>(wrong.body).strength = 6;
    const auto refused = journal::fromLine(journal::toLine(wrong), {});
    if (refused || refused.fault().number != FaultNumber::badFactValue) return 3;
    if (practice::namedBy(fact.body) != std::vector<Id>{Id{0, 7}}) return 4;
    return kindOf(fact.body) == "reed" && passageOf(fact.body) == Id{0, 7} ? 0 : 5;
}
"""

PARTS = ["core/base", "core/facts", "core/music", "core/scales", "core/time", "journal/json", "journal/lines"]
MORE = ["core/history/fact.cpp", "core/passage/click_pattern.cpp", "core/passage/manner.cpp",
        "core/passage/picture.cpp", "practice/check/named_ids.cpp"]
LEFT_OUT = ["core/scales/scale_grid.cpp", "core/scales/scale_passage.cpp", "core/scales/scale_proposal.cpp",
            "core/scales/scale_weeks.cpp", "core/time/felt_beat.cpp",
            "core/time/duration.cpp", "journal/lines/sequence.cpp"]


def planted(text, before, after):
    """`text` with `after` for the one `before`."""
    if text.count(before) != 1:
        sys.exit(f"{before!r} is there {text.count(before)} times")
    return text.replace(before, after)


def main(compiler, source):
    src = pathlib.Path(source) / "src"
    with tempfile.TemporaryDirectory() as folder:
        scratch = pathlib.Path(folder)
        facts = scratch / "core" / "facts"
        facts.mkdir(parents=True)
        (facts / "reed_fact.h").write_text(NEW_FILE, encoding="utf-8")
        kinds = (src / "core/facts/fact_body.h").read_text(encoding="utf-8")
        kinds = planted(kinds, '#include "core/facts/removal_fact.h"\n',
                        '#include "core/facts/reed_fact.h"\n#include "core/facts/removal_fact.h"\n')
        (facts / "fact_body.h").write_text(planted(kinds, "ClockFact>;", "ClockFact, ReedFact>;"), encoding="utf-8")

        def compiled(path, *more):
            command = [compiler, "-std=gnu++20", "-O0", "-w", f"-I{scratch}", f"-I{src}", *more, str(path)]
            return subprocess.run(command, capture_output=True, text=True, check=False)

        def object_of(path):
            made = path.with_suffix(".o")
            built = compiled(path, "-c", "-o", str(made))
            if built.returncode != 0:
                sys.exit("the program does not compile:\n" + built.stderr)
            return str(made)

        fold = src / "core/history/passage_fold.cpp"
        forgotten = compiled(fold, "-fsyntax-only")
        if forgotten.returncode == 0 or "ReedFact" not in forgotten.stderr:
            sys.exit("a forgotten kind compiles:\n" + forgotten.stderr)
        with_kind = scratch / "passage_fold.cpp"
        with_kind.write_text(planted(fold.read_text(encoding="utf-8"), "std::visit(ForKinds{",
                                     "std::visit(ForKinds{[](const ReedFact& /*reed*/) {}, "), encoding="utf-8")
        known = compiled(with_kind, "-fsyntax-only")
        if known.returncode != 0:
            sys.exit("the fold does not compile with the kind:\n" + known.stderr)

        # Each folder is compiled in one piece: with so many small files, that is most of the time saved.
        pieces = {part: [f for f in sorted((src / part).glob("*.cpp")) if str(f.relative_to(src)) not in LEFT_OUT]
                  for part in PARTS}
        for name in MORE:
            pieces.setdefault(name.rpartition("/")[0], []).append(src / name)
        objects = []
        for number, files in enumerate(pieces.values()):
            piece = scratch / f"piece_{number}.cpp"
            piece.write_text("".join(f'#include "{f}"\n' for f in files), encoding="utf-8")
            objects.append(object_of(piece))
        program = scratch / "program.cpp"
        program.write_text('#include "journal/lines/fact_line.h"\n#include "practice/check/named_ids.h"\n' + PROGRAM,
                           encoding="utf-8")
        objects.append(object_of(program))
        linked = subprocess.run([compiler, "-o", str(scratch / "program"), *objects, "-lz"], capture_output=True,
                                text=True, check=False)
        if linked.returncode != 0:
            sys.exit("the program does not link:\n" + linked.stderr)
        ran = subprocess.run([scratch / "program"], check=False)
        if ran.returncode != 0:
            sys.exit(f"the kind is not known everywhere: {ran.returncode}")
    print("a kind was added by its own file, its line in the list and its word in the fold")


main(sys.argv[1], sys.argv[2])
