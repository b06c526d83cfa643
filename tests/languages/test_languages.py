# SPDX-License-Identifier: GPL-3.0-or-later
"""The translations hold every text that the program asks for and no other, and keep what they must keep of their English."""
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile
import unittest

import laws
import texts
import translations
from translations import Text

ROOT = texts.ROOT
LANGUAGES = ROOT / "src" / "languages"
CODES = re.compile(r'Language\{"(\w+)",')


def update(*words):
    subprocess.run([sys.executable, ROOT / "tests/languages/update", *words], check=True)


def updated(folder):
    """Copies of the translations, as `update --keep` leaves them."""
    for path in translations.files(LANGUAGES).values():
        shutil.copy(path, folder)
    update("--keep", folder)
    return translations.files(folder)


class Translations(unittest.TestCase):
    maxDiff = None

    @classmethod
    def setUpClass(cls):
        scratch = tempfile.TemporaryDirectory()
        cls.addClassCleanup(scratch.cleanup)
        cls.files = updated(scratch.name)
        cls.texts = {code: translations.read(path) for code, path in cls.files.items()}
        cls.asked = texts.asked()

    def test_every_text_is_translated_and_keeps_its_places(self):
        for code, of_language in self.texts.items():
            with self.subTest(language=code):
                held = [laws.of_english(text) for text in of_language] if code == "en" else of_language
                self.assertEqual("\n".join(laws.broken(held)), "", "put them right, after: python3 tests/languages/update")

    def test_a_language_has_every_text_that_is_asked_for_and_no_other(self):
        asked = {(one.id, one.plural) for one in self.asked}
        faults = {(id, False) for id in texts.faults()}
        self.assertGreater(len(asked), 1000)
        self.assertGreater(len([one for one in asked if one[1]]), 15)
        self.assertGreater(len(faults), 80)
        for code, path in translations.files(LANGUAGES).items():
            with self.subTest(language=code):
                have = {(text.id, text.plural) for text in translations.read(path)}
                self.assertEqual(have, asked if code == "en" else asked | faults)

    def test_no_text_is_asked_for_both_with_a_count_and_without(self):
        self.assertEqual(laws.unlike_plurals(self.asked), [])

    def test_the_files_are_as_update_writes_them(self):
        for code, path in translations.files(LANGUAGES).items():
            self.assertEqual(path.read_text(), self.files[code].read_text(), code)

    def test_every_language_that_can_be_chosen_has_its_file(self):
        chosen = CODES.findall((ROOT / "src/models/settings/language_table.h").read_text())
        self.assertGreaterEqual(len(chosen), 3)
        self.assertEqual(sorted(chosen), sorted(self.files))
        for code, path in self.files.items():
            self.assertEqual(translations.language(path), code)

    def test_no_text_is_asked_for_in_another_way(self):
        other = re.compile(r"\bqsTr\(|\bqsTranslate\(|[ (:]tr\(|QT_TR_NOOP|QT_TRANSLATE_NOOP|Q_DECLARE_TR_FUNCTIONS")
        for path in texts.sources():
            self.assertEqual(other.findall(path.read_text()), [], path.name)


class TextsOfTheScreens(unittest.TestCase):
    WRITTEN = re.compile(r'\b(?:text|title|label|note|placeholder|words)\s*:[^\n,{]*?"([^"\n]*[A-Za-z]{2}[^"\n]*)"')
    TRANSLATED = re.compile(r'qsTrId\("[^"]*"')
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
        self.assertEqual(self.plain('text: row.busy ? qsTrId("files.wait") : "Save it"'), ["Save it"])
        self.assertEqual(self.plain('text: qsTrId("files.save")'), [])


class TextsOfTheModels(unittest.TestCase):
    """An id that reaches qtTrId() through a function or a table of our own is found only if it is marked."""

    HELPER = re.compile(r"QString (\w+)\(const char\* \w+\)\s*\{\s*return qtTrId\(")

    def hidden(self, source):
        return [call for helper in self.HELPER.findall(source) for call in re.findall(rf'\b{helper}\(\s*"[^"]*"', source)]

    def test_no_text_is_hidden_from_the_files(self):
        sources = sorted((ROOT / "src/models").rglob("*.cpp"))
        self.assertGreater(len(sources), 50)
        for source in sources:
            self.assertEqual(self.hidden(source.read_text()), [], source.name)

    def test_a_hidden_text_is_found(self):
        helper = 'QString words(const char* id) { return qtTrId(id); }\n'
        self.assertEqual(self.hidden(helper + 'return words("log.miss");'), ['words("log.miss"'])
        self.assertEqual(self.hidden(helper + "return words(table[0]);"), [])


class EachLaw(unittest.TestCase):
    """A law that finds nothing would be none."""

    def broken(self, *forms, source="%1 of %n bars.", plural=True, state="", id="log.bars"):
        return [law.__name__ for law in laws.ALL if law(Text(id, source, plural, state, forms))]

    def test_a_right_one_breaks_none(self):
        self.assertEqual(self.broken("%1 von %n Takt.", "%1 von %n Takten."), [])

    def test_a_missing_one_is_found(self):
        self.assertIn("done", self.broken("", ""))
        self.assertIn("done", self.broken("%1 von %n Takt.", ""))
        self.assertIn("done", self.broken("%1 von %n Takt.", "%1 von %n Takten.", state="unfinished"))

    def test_a_stale_one_is_found(self):
        self.assertIn("done", self.broken("%1 von %n Takt.", "%1 von %n Takten.", state="vanished"))

    def test_an_id_with_words_in_it_is_found(self):
        self.assertIn("named", self.broken("%1 von %n Takt.", "%1 von %n Takten.", id="Some bars"))

    def test_plurals_that_differ_in_english_are_found(self):
        english = Text("log.bars", "", True, "", ("%1 of %n bar.", "of %n bars."))
        self.assertEqual(laws.broken([laws.of_english(english)]), ["log.bars has other placeholders: '%1 of %n bar.'"])

    def test_a_text_asked_for_with_and_without_a_count_is_found(self):
        asked = texts.asked_in('qtTrId("log.bars", 2); qtTrId("log.runs", n); qtTrId( "log.bars"); QT_TRID_NOOP("log.day")')
        self.assertEqual([one.id for one in asked], ["log.bars", "log.runs", "log.bars", "log.day"])
        self.assertEqual(laws.unlike_plurals(asked), ["log.bars"])

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
    """On a small language of its own: what `update` does to a new text, to one that is gone, and to one whose English
    has changed."""

    GONE = Text("log.of-long-ago", "", False, "", ("A text of long ago",))
    ENGLISH = Text("nav.passages", "", False, "", ("Passages",))

    def after(self, german, *words):
        with tempfile.TemporaryDirectory() as folder:
            translations.write(pathlib.Path(folder, "piolo_en.ts"), "en", [self.GONE, self.ENGLISH])
            translations.write(pathlib.Path(folder, "piolo_de.ts"), "de", german)
            update(*words, folder)
            return {text.id: text for text in translations.read(pathlib.Path(folder, "piolo_de.ts"))}

    def test_new_texts_come_in_unfinished_and_gone_ones_go(self):
        after = self.after([self.GONE])
        self.assertEqual(after["nav.passages"], Text("nav.passages", "Passages", False, "unfinished", ("",)))
        self.assertEqual(after["breaks.misses"].forms, ("", ""))
        self.assertEqual(after["fault.E207"].state, "unfinished")
        self.assertNotIn("log.of-long-ago", after)

    def test_a_gone_text_can_be_kept_and_is_marked(self):
        self.assertEqual(self.after([self.GONE], "--keep")["log.of-long-ago"].state, "vanished")

    def test_a_translation_of_other_english_is_to_be_checked_again(self):
        for source, state in (("Passages", ""), ("Pieces", "unfinished")):
            after = self.after([Text("nav.passages", source, False, "", ("Stellen",))])["nav.passages"]
            self.assertEqual((after.source, after.state, after.forms), ("Passages", state, ("Stellen",)))


if __name__ == "__main__":
    unittest.main()
