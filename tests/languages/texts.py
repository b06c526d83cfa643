# SPDX-License-Identifier: GPL-3.0-or-later
"""The ids that the program asks for, as its sources have them, and what the English sentence of a fault is."""
import dataclasses
import pathlib
import re

ROOT = pathlib.Path(__file__).resolve().parents[2]
ID = re.compile(r"[a-z][a-z0-9-]*(\.[a-zA-Z0-9-]+)+")

_ASKED = re.compile(r'\b(q[st]TrId|QT_TRID_NOOP|QT_TRID_N_NOOP)\(\s*"([^"]*)"\s*([,)])')
_FAULT = re.compile(r'\{(\w+),\s*((?:"(?:[^"\\]|\\.)*"\s*)+)\}')
_NUMBER = re.compile(r"^    (\w+) = (\d{3}),", re.MULTILINE)
_PIECE = re.compile(r'"((?:[^"\\]|\\.)*)"')


@dataclasses.dataclass(frozen=True)
class Asked:
    """One place that asks for a text."""

    id: str
    plural: bool  # true if it has a count
    file: str


def asked_in(source, file=""):
    return [Asked(id, follows == "," or way == "QT_TRID_N_NOOP", file) for way, id, follows in _ASKED.findall(source)]


def sources():
    """The files that a text can be asked for in."""
    return sorted(path for folder, kinds in (("src", ("*.h", "*.cpp")), ("qml", ("*.qml",)))
                  for kind in kinds for path in (ROOT / folder).rglob(kind))


def asked():
    """Every place in the program."""
    return [one for path in sources() for one in asked_in(path.read_text(), path.name)]


def faults():
    """The sentences of the numbered faults by their ids. Their English is in the program: the command needs it."""
    numbers = dict(_NUMBER.findall((ROOT / "src/core/base/fault.h").read_text()))
    table = (ROOT / "src/practice/faults/fault_sentences.cpp").read_text()
    return {f"fault.E{numbers[name]}": "".join(_PIECE.findall(pieces)).replace('\\"', '"')
            for name, pieces in _FAULT.findall(table)}
