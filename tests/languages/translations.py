# SPDX-License-Identifier: GPL-3.0-or-later
"""Reads a translation file (.ts) of Qt Linguist: its texts and what they became."""
import dataclasses
import pathlib
import xml.etree.ElementTree as ElementTree


@dataclasses.dataclass(frozen=True)
class Text:
    """One text of the program in one language."""

    context: str
    source: str
    comment: str
    plural: bool
    state: str  # "": done; unfinished, vanished or obsolete
    forms: tuple[str, ...]  # one, or one for each plural form

    def named(self):
        return f"{self.context}: {self.source!r}" + (f" ({self.comment})" if self.comment else "")


def _text(context, message):
    translation = message.find("translation")
    plural = message.get("numerus") == "yes"
    forms = [form.text or "" for form in translation.findall("numerusform")] if plural else [translation.text or ""]
    return Text(context, message.findtext("source"), message.findtext("comment") or "", plural,
                translation.get("type") or "", tuple(forms))


def read(path):
    """All texts of the file, in its order."""
    root = ElementTree.parse(path).getroot()
    return [_text(context.findtext("name"), message)
            for context in root.findall("context") for message in context.findall("message")]


def language(path):
    """The code that the file's head gives."""
    return ElementTree.parse(path).getroot().get("language")


def files(folder):
    """The translation files of a folder, by their code."""
    return {path.stem.removeprefix("piolo_"): path for path in sorted(pathlib.Path(folder).glob("piolo_*.ts"))}
