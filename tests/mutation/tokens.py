# SPDX-License-Identifier: GPL-3.0-or-later
"""C++ source as tokens with their positions, without comments and preprocessor lines."""
import re
from dataclasses import dataclass

_PATTERN = re.compile(
    r"""(?P<skip>\s+|//[^\n]*|/\*.*?\*/|^[ \t]*\#[^\n]*)
      | (?P<text>R"\((?:.|\n)*?\)"|"(?:\\.|[^"\\])*"|'(?:\\.|[^'\\])+')
      | (?P<number>\d[\d']*(?:\.\d+)?(?:[uUlLfF]|[eE][+-]?\d+)*)
      | (?P<word>[A-Za-z_]\w*)
      | (?P<sign><=>|<<=|>>=|\.\.\.|->|::|\+\+|--|<<|>>|<=|>=|==|!=|&&|\|\||[-+*/%&|^]=|.)
    """,
    re.VERBOSE | re.MULTILINE | re.DOTALL,
)
_CLOSING = {"(": ")", "[": "]", "{": "}"}


@dataclass(frozen=True)
class Token:
    kind: str
    text: str
    start: int
    end: int


def tokens_of(source):
    return [
        Token(found.lastgroup, found.group(), found.start(), found.end())
        for found in _PATTERN.finditer(source)
        if found.lastgroup != "skip"
    ]


def closing(tokens, opening):
    """The index of the bracket that closes the one at `opening`."""
    depth = 0
    for index in range(opening, len(tokens)):
        if tokens[index].text in _CLOSING:
            depth += 1
        elif tokens[index].text in _CLOSING.values():
            depth -= 1
            if depth == 0:
                return index
    raise ValueError(f"no bracket closes the one at character {tokens[opening].start}")


def is_binary(source, token):
    """True if there are blanks on both sides: in formatted code that distinguishes a binary operator from a bracket or a
    pointer."""
    return source[token.start - 1].isspace() and source[token.end].isspace()
