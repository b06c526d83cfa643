# SPDX-License-Identifier: GPL-3.0-or-later
"""Reads and writes a translation file (.ts) of Qt Linguist: its texts by their ids."""
import dataclasses
import pathlib
import xml.etree.ElementTree as ElementTree
from xml.sax.saxutils import escape


@dataclasses.dataclass(frozen=True)
class Text:
    """One text of the program in one language."""

    id: str
    source: str  # the English text of the translation; for a plural, the form for many
    plural: bool
    state: str  # "": done; unfinished or vanished
    forms: tuple[str, ...]  # one, or one for each plural form
    comment: str = ""  # describes the placeholders; in the English file


def _text(message):
    translation = message.find("translation")
    plural = message.get("numerus") == "yes"
    forms = [form.text or "" for form in translation.findall("numerusform")] if plural else [translation.text or ""]
    return Text(message.get("id"), message.findtext("source") or "", plural, translation.get("type") or "", tuple(forms),
                message.findtext("translatorcomment") or "")


def read(path):
    """All texts of the file, in its order."""
    return [_text(message) for message in ElementTree.parse(path).getroot().iter("message")]


def _written(words):
    return escape(words, {'"': "&quot;", "'": "&apos;"})


def _message(text):
    state = f' type="{text.state}"' if text.state else ""
    yield f'    <message id="{text.id}"{" numerus=" + chr(34) + "yes" + chr(34) if text.plural else ""}>'
    yield f"        <source>{_written(text.source)}</source>"
    if text.comment:
        yield f"        <translatorcomment>{_written(text.comment)}</translatorcomment>"
    if text.plural:
        yield f"        <translation{state}>"
        yield from (f"            <numerusform>{_written(form)}</numerusform>" for form in text.forms)
        yield "        </translation>"
    else:
        yield f"        <translation{state}>{_written(text.forms[0])}</translation>"
    yield "    </message>"


def write(path, code, texts):
    """The texts, in the order of their ids."""
    lines = ['<?xml version="1.0" encoding="utf-8"?>', "<!DOCTYPE TS>",
             f'<TS version="2.1" language="{code}" sourcelanguage="en">', "<context>", "    <name></name>"]
    for text in sorted(texts, key=lambda text: text.id):
        lines += _message(text)
    pathlib.Path(path).write_text("\n".join(lines + ["</context>", "</TS>", ""]))


def language(path):
    """The code that the file's head gives."""
    return ElementTree.parse(path).getroot().get("language")


def files(folder):
    """The translation files of a folder, by their code."""
    return {path.stem.removeprefix("piolo_"): path for path in sorted(pathlib.Path(folder).glob("piolo_*.ts"))}
