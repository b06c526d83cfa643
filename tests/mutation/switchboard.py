# SPDX-License-Identifier: GPL-3.0-or-later
"""One source with many dormant changes: the test program activates one by its number, so a single build serves all."""
import re

from statements import bodies
from tokens import tokens_of

VARIABLE = "PIOLO_PLANTED"
HEADER = f"""#pragma once
#include <cstdlib>
namespace planted {{
inline int number() {{
    static const int woken = std::getenv("{VARIABLE}") ? std::atoi(std::getenv("{VARIABLE}")) : 0;
    return woken;
}}
}}
"""


class Switchboard:
    def __init__(self, source, numbered):
        """`numbered` maps numbers to mutants of this source. Only changes inside functions can be dormant here."""
        self._source = source
        self._tokens = tokens_of(source)
        self._bodies = bodies(self._tokens)
        self.sleeping = {number: mutant for number, mutant in numbered.items() if self._home(mutant)}

    def _home(self, mutant):
        for body in self._bodies:
            if self._tokens[body.opening].end <= mutant.start and mutant.end <= self._tokens[body.end].start:
                return body
        return None

    def text(self):
        """The source, with a changed copy of the whole body for each mutant before the original body."""
        parts, done = [], 0
        for body in self._bodies:
            start = self._tokens[body.opening].end
            parts.append(self._source[done:start] + "\n")
            parts += [self._copy(body, number) for number, mutant in self.sleeping.items()
                      if self._home(mutant) is body]
            done = start
        text = "".join(parts) + self._source[done:]
        last = [found.end() for found in re.finditer(r"^(?:#include|#pragma)[^\n]*\n", text, re.MULTILINE)][-1]
        return text[:last] + '#include "planted.h"\n' + text[last:]

    def _copy(self, body, number):
        mutant = self.sleeping[number]
        start, end = self._tokens[body.opening].end, self._tokens[body.end].start
        changed = self._source[start : mutant.start] + mutant.by + self._source[mutant.end : end]
        leave = "return;" if body.returns_nothing else "__builtin_trap();"
        return f"if (planted::number() == {number}) {{ // {number}\n{changed}\n{leave} }} // {number}\n"

    def drop_broken(self, text, broken_lines):
        """Removes the mutants to which these lines of `text` belong; false if no mutant is responsible."""
        blamed = set()
        for number in self.sleeping:
            first, last = (text.count("\n", 0, found.start()) + 1
                           for found in re.finditer(rf"// {number}$", text, re.MULTILINE))
            if any(first <= line <= last for line in broken_lines):
                blamed.add(number)
        self.sleeping = {number: mutant for number, mutant in self.sleeping.items() if number not in blamed}
        return bool(blamed)
