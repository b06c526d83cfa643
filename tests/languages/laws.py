# SPDX-License-Identifier: GPL-3.0-or-later
"""What a translation must keep of its English. Each law gives what is wrong in one line, or nothing. English itself is
held to the same laws: the forms of a plural against each other."""
import dataclasses
import re

import texts

PLURAL_FORMS = 2  # of English, German and Italian alike

_PLACE = re.compile(r"%L?[1-9n]|&(?=\w)|[\[\]]")
_ENDS = ".:?!…;,"


def done(text):
    if text.state in ("vanished", "obsolete"):
        return "is a text that the program does not ask for"
    if not all(text.forms):
        return "is not translated"
    if text.state == "unfinished":
        return "has not been checked since its English changed"
    return None


def named(text):
    return None if texts.ID.fullmatch(text.id) else "is not a valid id"


def plurals(text):
    if text.plural and len(text.forms) != PLURAL_FORMS:
        return f"has {len(text.forms)} plural forms, not {PLURAL_FORMS}"
    return None


def places(text):
    """Placeholders, the key of a menu and the brackets around what may be missing."""
    wanted = sorted(_PLACE.findall(text.source))
    for form in text.forms:
        if form and sorted(_PLACE.findall(form)) != wanted:
            return f"has other placeholders: {form!r}"
    return None


def _end(words):
    words = words.rstrip("”“»\"')")
    return words[-1:] if words[-1:] in _ENDS else ""


def ends(text):
    for form in text.forms:
        if form and _end(form) != _end(text.source):
            return f"ends otherwise: {form!r}"
    return None


def margins(text):
    """Spaces and line ends around it."""
    for form in text.forms:
        if form and (form[:1].isspace(), form[-1:].isspace()) != (text.source[:1].isspace(), text.source[-1:].isspace()):
            return f"has other margins: {form!r}"
    return None


ALL = (done, named, plurals, places, ends, margins)


def of_english(text):
    """An English text as it is held to the laws."""
    return dataclasses.replace(text, source=text.forms[-1])


def broken(all_texts):
    """A line for each law that a text breaks."""
    return [f"{text.id} {fault}" for text in all_texts for law in ALL if (fault := law(text))]


def unlike_plurals(asked):
    """Ids that are asked for both with a count and without."""
    counted = {one.id for one in asked if one.plural}
    return sorted({one.id for one in asked if not one.plural} & counted)
