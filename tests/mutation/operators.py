# SPDX-License-Identifier: GPL-3.0-or-later
"""The small changes that can be made in a source. They depend only on the text, not on its meaning."""
import re
from dataclasses import dataclass

from statements import bodies, statements
from tokens import closing, is_binary, tokens_of

_SPACED = {
    "<": ("<=", ">="), "<=": ("<", ">"), ">": (">=", "<="), ">=": (">", "<"),
    "==": ("!=",), "!=": ("==",), "&&": ("||",), "||": ("&&",),
    "+": ("-",), "-": ("+",), "*": ("/",), "/": ("*",), "%": ("/",), "<<": (">>",), ">>": ("<<",),
    "+=": ("-=",), "-=": ("+=",),
}
_TIGHT = {"++": ("--",), "--": ("++",)}
_WORDS = {"true": "false", "false": "true"}
_CALLS = {"min": "max", "max": "min", "any_of": "all_of", "all_of": "any_of", "front": "back", "back": "front"}
_EMPTY = {"{}", "false", "0", "nullptr", "std::nullopt"}  # what `return {};` would return anyway
_COMPARISONS = {"<", "<=", ">", ">=", "==", "!="}


@dataclass(frozen=True)
class Mutant:
    file: str
    line: int
    code: str  # the line without leading and trailing blanks
    change: str  # "old -> new"
    nth: int  # which of several equal lines has the change, counted from 1
    start: int
    end: int
    by: str

    def key(self):
        return (self.file, self.code, self.change, self.nth)

    def applied(self, source):
        return source[: self.start] + self.by + source[self.end :]


def enumerators(headers):
    """Maps every enumerator of an enum class in these headers to the one that replaces it."""
    swaps = {}
    for text in headers:
        for name, body in re.findall(r"enum class (\w+)[^{;]*\{([^}]*)\}", text):
            members = re.findall(r"\w+", re.sub(r"//[^\n]*", "", body))
            for index, member in enumerate(members):
                swaps[(name, member)] = members[(index + 1) % len(members)]
    return swaps


def mutants(file, source, swaps):
    """All mutants of one file, in order of position."""
    tokens = tokens_of(source)
    changes = set(_sign_changes(source, tokens, swaps)) | set(_statement_changes(source, tokens))
    found, counts = [], {}
    for start, end, by in sorted(changes):
        line = source.count("\n", 0, start) + 1
        code = source.splitlines()[line - 1].strip()
        change = f"{_short(source[start:end]) or '(nothing)'} -> {_short(by)}"
        key = (code, change)
        counts[key] = counts.get(key, 0) + 1
        found.append(Mutant(file, line, code, change, counts[key], start, end, by))
    return found


def _short(text):
    flat = " ".join(text.split())
    return flat if len(flat) <= 60 else flat[:40] + " … " + flat[-17:]


def _sign_changes(source, tokens, swaps):
    for index, token in enumerate(tokens):
        for by in _replacements(source, tokens, index, swaps):
            yield token.start, token.end, by
        if token.text == "?":
            yield _swapped_choice(source, tokens, index)


def _replacements(source, tokens, index, swaps):
    token = tokens[index]
    before = tokens[index - 1].text if index else ""
    if token.kind == "number":
        yield from _neighbours(token.text)
    elif token.kind == "word":
        if token.text in _WORDS:
            yield _WORDS[token.text]
        if token.text in _CALLS and tokens[index + 1].text == "(":
            yield _CALLS[token.text]
        if before == "::" and (tokens[index - 2].text, token.text) in swaps:
            yield swaps[(tokens[index - 2].text, token.text)]
    elif token.text in _SPACED and is_binary(source, token):
        yield from _SPACED[token.text]
    elif token.text in _TIGHT:
        yield from _TIGHT[token.text]
    elif token.text == "!" or (token.text == "-" and not is_binary(source, token)):
        yield ""


def _neighbours(number):
    digits, suffix = re.fullmatch(r"([\d']+)(.*)", number).groups()
    if suffix.strip("uUlL"):
        return
    value = int(digits.replace("'", ""))
    yield f"{value + 1}{suffix}"
    if value:
        yield f"{value - 1}{suffix}"


def _swapped_choice(source, tokens, mark):
    """`? a : b` becomes `? b : a`."""
    index, colon, depth = mark + 1, 0, 0
    while True:
        text = tokens[index].text
        if depth == 0 and text in (";", ",", ")", "}"):
            break
        if text in ("(", "[", "{"):
            index = closing(tokens, index)
        elif text == ":" and not colon:
            colon = index
        index += 1
    first = source[tokens[mark + 1].start : tokens[colon - 1].end]
    second = source[tokens[colon + 1].start : tokens[index - 1].end]
    return tokens[mark].start, tokens[index - 1].end, f"? {second} : {first}"


def _statement_changes(source, tokens):
    for body in bodies(tokens):
        found = list(statements(tokens, body.opening, body.end))
        if found[0].kind != "return":  # otherwise the change to that return statement is the same
            place = tokens[body.opening].end
            yield place, place, " return;" if body.returns_nothing else " return {};"
        for statement in found:
            yield from _of_statement(source, tokens, statement)


def _of_statement(source, tokens, statement):
    first, last = tokens[statement.first], tokens[statement.last]
    if statement.kind == "return" and statement.last > statement.first + 1:
        if source[tokens[statement.first + 1].start : last.start].strip() not in _EMPTY:
            yield first.start, last.end, "return {};"
    elif statement.kind != "block" and not statement.alone and not _declares(tokens, statement):
        yield first.start, last.end, ";"
    if statement.kind in ("if", "while", "for"):
        condition = _condition(source, tokens, statement)
        if condition:
            yield condition


def _declares(tokens, statement):
    """A declaration cannot be removed alone: it starts with a word followed by another word or by a template's bracket."""
    one, two = tokens[statement.first : statement.first + 2]
    if statement.kind != "plain" or one.kind != "word":
        return False
    return one.text in ("const", "auto", "constexpr", "using") or two.kind == "word"


def _condition(source, tokens, statement):
    """Negates the condition. Nothing if it declares something, if the loop is over a range, or if it is a single comparison,
    which has an opposite of its own."""
    first, last = statement.head
    semicolons = [index for index in range(first, last + 1) if tokens[index].text == ";"]
    if statement.kind == "for":
        if len(semicolons) != 2 or semicolons[1] == semicolons[0] + 1:
            return None
        first, last = semicolons[0] + 1, semicolons[1] - 1
    elif semicolons:
        first = semicolons[-1] + 1
    signs = [token.text for token in tokens[first : last + 1] if token.kind == "sign"]
    if "=" in signs or (_COMPARISONS & set(signs) and not {"&&", "||"} & set(signs)):
        return None
    start, end = tokens[first].start, tokens[last].end
    return start, end, f"!({source[start:end]})"
