# SPDX-License-Identifier: GPL-3.0-or-later
"""The translations hold every text of the program and no other, and keep what they must keep of it."""
import pathlib
import re
import shutil
import subprocess
import tempfile
import unittest

import laws
import translations
from translations import Text

ROOT = pathlib.Path(__file__).resolve().parents[2]
LANGUAGES = ROOT / "src" / "languages"
CODES = re.compile(r'Language\{"(\w+)",')


def updated(folder):
    """Copies of the translations, as `update --keep` leaves them, and what lupdate remarked."""
    for path in translations.files(LANGUAGES).values():
        shutil.copy(path, folder)
    ran = subprocess.run(["bash", ROOT / "tests/languages/update", "--keep", folder], capture_output=True, text=True,
                         check=True)
    return translations.files(folder), ran.stdout + ran.stderr


class Translations(unittest.TestCase):
    maxDiff = None

    @classmethod
    def setUpClass(cls):
        scratch = tempfile.TemporaryDirectory()
        cls.addClassCleanup(scratch.cleanup)
        cls.files, cls.remarks = updated(scratch.name)
        cls.texts = {code: translations.read(path) for code, path in cls.files.items()}

    def test_every_text_is_translated_and_keeps_its_places(self):
        for code, texts in self.texts.items():
            with self.subTest(language=code):
                self.assertEqual("\n".join(laws.broken(texts)), "", "mend them, after: bash tests/languages/update")

    def test_a_language_has_all_texts_and_english_its_plurals(self):
        whole = {(text.context, text.source, text.comment) for text in self.texts["de"]}
        self.assertGreater(len(whole), 500)
        plurals = {(text.context, text.source, text.comment) for text in self.texts["de"] if text.plural}
        self.assertGreater(len(plurals), 5)
        for code, texts in self.texts.items():
            with self.subTest(language=code):
                have = {(text.context, text.source, text.comment) for text in texts}
                self.assertEqual(have, plurals if code == "en" else whole)

    def test_every_language_that_can_be_chosen_has_its_file(self):
        chosen = CODES.findall((ROOT / "src/models/settings/language.cpp").read_text())
        self.assertGreaterEqual(len(chosen), 3)
        self.assertEqual(sorted(chosen), sorted(self.files))
        for code, path in self.files.items():
            self.assertEqual(translations.language(path), code)

    def test_every_text_has_a_context_that_the_program_asks_for(self):
        lost = [line for line in self.remarks.splitlines() if "unknown namespace/class" in line]
        self.assertEqual(lost, [], "lupdate cannot tell whose text this is")
        for text in self.texts["de"]:
            self.assertNotIn(text.context, ("", "Words", "DraftWords"))


class TextsOfTheScreens(unittest.TestCase):
    WRITTEN = re.compile(r'\b(?:text|title|label|note|placeholder|words)\s*:[^\n,{]*?"([^"\n]*[A-Za-z]{2}[^"\n]*)"')
    TRANSLATED = re.compile(r'qsTr\((?:"(?:[^"\\]|\\.)*"(?:,\s*)?)+')
    # Signs, and what is compared, looked up or asked for.
    NAMES = re.compile(r'`[^`]*`|"[^"A-Za-z]*"|[!=]== "[^"]*"|"[^"]*" [!=]==|\["[^"]*"\]|\w\("[^"]*"')
    STANDING = re.compile(r"BPM|~/.*")  # a unit, and examples of files

    def plain(self, line):
        """Words for the eye that stand in the line untranslated."""
        rest = self.NAMES.sub("", self.TRANSLATED.sub("", line))
        return [words for words in self.WRITTEN.findall(rest) if not self.STANDING.fullmatch(words)]

    def test_no_screen_has_words_that_are_not_translated(self):
        screens = sorted((ROOT / "qml").rglob("*.qml"))
        self.assertGreater(len(screens), 50)
        for screen in screens:
            for number, line in enumerate(screen.read_text().splitlines(), 1):
                if "objectName" not in line and not line.strip().startswith(("//", "{screen:")):
                    self.assertEqual(self.plain(line), [], f"{screen.name}:{number}")

    def test_words_that_are_not_translated_are_found(self):
        self.assertEqual(self.plain('text: "Save it"'), ["Save it"])
        self.assertEqual(self.plain('text: row.busy ? qsTr("Wait") : "Save it"'), ["Save it"])
        self.assertEqual(self.plain('text: qsTr("Save it")'), [])


class TextsOfTheModels(unittest.TestCase):
    """lupdate sees no text that goes to the translator through a function of our own: that takes a struct with
    Q_DECLARE_TR_FUNCTIONS, and its tr()."""

    HELPER = re.compile(r"QString (\w+)\(const char\* \w+\)\s*\{\s*return QCoreApplication::translate\(")

    def hidden(self, source):
        return [call for helper in self.HELPER.findall(source) for call in re.findall(rf'\b{helper}\(\s*"[^"]*"', source)]

    def test_no_text_is_hidden_from_lupdate(self):
        sources = sorted((ROOT / "src/models").rglob("*.cpp"))
        self.assertGreater(len(sources), 50)
        for source in sources:
            self.assertEqual(self.hidden(source.read_text()), [], source.name)

    def test_a_hidden_text_is_found(self):
        helper = 'QString words(const char* text) { return QCoreApplication::translate("Log", text); }\n'
        self.assertEqual(self.hidden(helper + 'return words("a miss");'), ['words("a miss"'])
        self.assertEqual(self.hidden(helper + "return words(table[0]);"), [])


class EachLaw(unittest.TestCase):
    """A law that finds nothing would be none."""

    def broken(self, *forms, source="%1 of %n bars.", plural=True, state=""):
        return [law.__name__ for law in laws.ALL if law(Text("C", source, "", plural, state, forms))]

    def test_a_right_one_breaks_none(self):
        self.assertEqual(self.broken("%1 von %n Takt.", "%1 von %n Takten."), [])

    def test_a_missing_one_is_found(self):
        self.assertIn("done", self.broken("", ""))
        self.assertIn("done", self.broken("%1 von %n Takt.", ""))
        self.assertIn("done", self.broken("%1 von %n Takt.", "%1 von %n Takten.", state="unfinished"))

    def test_a_stale_one_is_found(self):
        for state in ("vanished", "obsolete"):
            self.assertIn("done", self.broken("%1 von %n Takt.", "%1 von %n Takten.", state=state))

    def test_a_missing_plural_is_found(self):
        self.assertEqual(self.broken("%1 von %n Takten."), ["plurals"])

    def test_another_placeholder_is_found(self):
        self.assertEqual(self.broken("%1 von %n Takt.", "%2 von %n Takten."), ["places"])
        self.assertEqual(self.broken("von %n Takt.", "%1 von %n Takten."), ["places"])
        self.assertEqual(self.broken("lässt sich nicht lesen", source="cannot be read[ (%1)]", plural=False), ["places"])

    def test_another_end_is_found(self):
        self.assertEqual(self.broken("%1 von %n Takt", "%1 von %n Takten."), ["ends"])
        self.assertEqual(self.broken("Speichern", source="Save…", plural=False), ["ends"])

    def test_another_margin_is_found(self):
        self.assertEqual(self.broken("Takt ", source="bar", plural=False), ["margins"])


class UpdatedFiles(unittest.TestCase):
    """On a small language of its own: what `update` does to a new text and to one that is gone."""

    STALE = """<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>NavBar</name>
    <message>
        <source>A text of long ago</source>
        <translation>Ein Text von einst</translation>
    </message>
</context>
</TS>
"""

    def state_after(self, *options):
        with tempfile.TemporaryDirectory() as folder:
            for code in ("de", "en"):
                pathlib.Path(folder, f"piolo_{code}.ts").write_text(self.STALE.replace('"de"', f'"{code}"'))
            subprocess.run(["bash", ROOT / "tests/languages/update", *options, folder], capture_output=True, check=True)
            texts = translations.read(pathlib.Path(folder, "piolo_de.ts"))
        return {text.source: text.state for text in texts}

    def test_new_texts_come_in_unfinished_and_gone_ones_go(self):
        states = self.state_after()
        self.assertEqual(states["Passages"], "unfinished")
        self.assertNotIn("A text of long ago", states)

    def test_a_gone_text_can_be_kept_and_is_marked(self):
        self.assertEqual(self.state_after("--keep")["A text of long ago"], "vanished")


if __name__ == "__main__":
    unittest.main()
