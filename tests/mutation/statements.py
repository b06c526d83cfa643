# SPDX-License-Identifier: GPL-3.0-or-later
"""Function bodies and the statements in them, as spans of tokens."""
from dataclasses import dataclass, replace

from tokens import closing

_BEFORE_BODY = {")", "const", "noexcept", "override"}
_WITH_HEAD = {"if", "while", "for", "switch"}


@dataclass(frozen=True)
class Body:
    opening: int  # its opening brace
    end: int
    returns_nothing: bool


@dataclass(frozen=True)
class Statement:
    kind: str  # a keyword, "block" or "plain"
    first: int
    last: int  # the last token, inclusive
    head: tuple = ()  # of if, while, for, switch: first and last token inside the parentheses
    alone: bool = False  # the only statement of an if or a loop: omitting it means omitting the whole


def bodies(tokens):
    """The non-empty body of every function that is not inside another function."""
    found = []
    index = start = 0
    while index < len(tokens):
        text = tokens[index].text
        if text == "{" and index and tokens[index - 1].text in _BEFORE_BODY:
            end = closing(tokens, index)
            if end > index + 1:
                found.append(Body(index, end, _returns_nothing(tokens[start:index])))
            index, start = end, end + 1
        elif text in (";", "{", "}"):
            start = index + 1
        index += 1
    return found


def _returns_nothing(declaration):
    """True for a void function or a constructor: `Name(` or `Name::Name(`."""
    texts = [token.text for token in declaration]
    name = texts.index("(") - 1
    return "void" in texts or name == 0 or texts[name - 1] == "explicit" or (
        name >= 2 and texts[name - 1] == "::" and texts[name - 2] == texts[name])


def statements(tokens, opening, end):
    """Every statement between the braces, including those inside other statements and lambdas."""
    index = opening + 1
    while index < end:
        if tokens[index].text in ("case", "default"):
            while tokens[index].text != ":":
                index += 1
            index += 1
            continue
        nested, after = _statement(tokens, index)
        yield from nested
        index = after


def _statement(tokens, index):
    """The statement at `index` with all statements inside it, and the index after it."""
    text = tokens[index].text
    if text == "{":
        end = closing(tokens, index)
        return [Statement("block", index, end), *statements(tokens, index, end)], end + 1
    if text in _WITH_HEAD:
        return _headed(tokens, index)
    end = index
    nested = []
    while tokens[end].text != ";":
        if tokens[end].text in ("(", "[", "{"):
            close = closing(tokens, end)
            nested += _lambdas(tokens, end, close)
            end = close
        end += 1
    kind = text if text in ("return", "break", "continue") else "plain"
    return [Statement(kind, index, end), *nested], end + 1


def _headed(tokens, index):
    close = closing(tokens, index + 1)
    nested, after = _statement(tokens, close + 1)
    if tokens[after].text == "else":
        more, after = _statement(tokens, after + 1)
        nested += more
    else:
        nested[0] = replace(nested[0], alone=True)
    return [Statement(tokens[index].text, index, after - 1, (index + 2, close - 1)), *nested], after


def _lambdas(tokens, opening, end):
    found = []
    index = opening
    while index <= end:
        if tokens[index].text == "{" and tokens[index - 1].text in (")", "]", "noexcept"):
            close = closing(tokens, index)
            found += list(statements(tokens, index, close))
            index = close
        index += 1
    return found
