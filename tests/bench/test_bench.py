# SPDX-License-Identifier: GPL-3.0-or-later
"""Tests the bench's own arithmetic. Nothing is timed here."""
import unittest
import xml.etree.ElementTree

import page
import picture
from ratios import Ratio, quartiles, short, slope, take_turns


class Turns(unittest.TestCase):
    def test_each_contender_has_one_turn_a_round_and_one_before_that_is_thrown_away(self):
        order = []

        def worker(name):
            def work():
                order.append(name)
                return len(order)
            return work
        times = take_turns({name: worker(name) for name in "abc"}, 3)
        self.assertEqual("".join(order), "abc" + "abc" + "bca" + "cab")
        self.assertEqual(times, {"a": [4, 9, 11], "b": [5, 7, 12], "c": [6, 8, 10]})


class Ratios(unittest.TestCase):
    def test_a_ratio_is_taken_inside_each_round(self):
        ratio = Ratio([1, 20, 300], [1, 10, 100])
        self.assertEqual((ratio.median, ratio.low, ratio.high), (2, 1.5, 2.5))

    def test_rounds_that_do_not_match_are_refused(self):
        for times, base in (([1, 2], [1]), ([], [])):
            with self.assertRaises(ValueError):
                Ratio(times, base)

    def test_quartiles_are_the_medians_of_the_halves(self):
        self.assertEqual(quartiles([1, 2, 3, 4]), (1.5, 3.5))
        self.assertEqual(quartiles([1, 2, 3, 4, 5]), (2, 4))
        self.assertEqual(quartiles([7]), (7, 7))

    def test_a_start_has_no_part_in_the_slope(self):
        self.assertAlmostEqual(slope([1, 2, 4, 8], [100 + 3 * work for work in (1, 2, 4, 8)]), 3)

    def test_numbers_are_cut_to_what_counts(self):
        for value, text in ((0.0512, "0.051"), (0.996, "1.0"), (1.26, "1.3"), (12.6, "13"), (123.4, "123"), (1236, "1,240"), (54321, "54,300")):
            self.assertEqual(short(value), text)


class Pages(unittest.TestCase):
    def test_a_table_has_a_cell_for_every_column(self):
        self.assertEqual(page.table(["a", "b"], [["1", "2"]]), "| a | b |\n| --- | --- |\n| 1 | 2 |\n")
        with self.assertRaises(ValueError):
            page.table(["a", "b"], [["1"]])

    def test_only_what_stands_between_the_marks_is_replaced(self):
        text = "before\n<!-- x -->\nold\n<!-- end of x -->\nafter\n"
        self.assertEqual(page.replaced(text, "x", "new\n"), "before\n<!-- x -->\nnew\n<!-- end of x -->\nafter\n")
        with self.assertRaises(ValueError):
            page.replaced(text, "y", "new")


class Pictures(unittest.TestCase):
    def test_a_picture_is_well_formed_and_has_a_line_for_every_contender(self):
        panel = picture.Panel("work & time", "minutes", {"one": [(1, 1.0), (10, 9.0)], "two": [(1, 2.0), (10, 2.0)]})
        root = xml.etree.ElementTree.fromstring(picture.drawn([panel]))
        lines = [element for element in root.iter() if element.tag.endswith("polyline")]
        self.assertEqual(len(lines), 2)

    def test_ten_times_lies_as_far_from_one_as_a_hundred_times_from_ten(self):
        scale = picture.Scale([1, 100], 0, 200)
        self.assertEqual([scale.place(value) for value in (1, 10, 100)], [0, 100, 200])


if __name__ == "__main__":
    unittest.main()
