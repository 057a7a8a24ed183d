"""Every status the library can give is given here once, with a text that says what is at fault and what would be valid; those that
a binding cannot come to are named with where they are tested."""
import json
import math
import os
import unittest

import frame

SOURCE, BUILD = os.environ.get("FRAME_SOURCE", "."), os.environ.get("FRAME_BUILD", "build")
with open(os.path.join(SOURCE, "tests", "bindings", "statuses.json"), encoding="utf-8") as file:
    STATUSES = json.load(file)


class Statuses(unittest.TestCase):
    def test_each_is_produced(self):
        for status, name, given in STATUSES["produced"]:
            with self.subTest(status), self.assertRaises(frame.Error) as caught:
                getattr(frame, name)(**{key: math.nan if value == "NaN" else value for key, value in given.items()})
            error = caught.exception
            self.assertEqual(error.status, status)
            self.assertTrue(error.field and str(error).startswith(error.field), str(error))
            self.assertNotIn("\n", str(error))

    def test_a_file_that_cannot_be_written(self):
        with self.assertRaises(frame.Error) as caught:
            frame.drawing().save_svg(os.path.join(SOURCE, "no such folder", "drawing.svg"))
        self.assertEqual(caught.exception.status, "not written")

    def test_none_is_left_out(self):
        with open(os.path.join(BUILD, "made", "api.json"), encoding="utf-8") as file:
            known = [entry["words"][0] for entry in json.load(file)["words"]["status"]["entries"]]
        told = [status for status, _, _ in STATUSES["produced"]] + list(STATUSES["elsewhere"])
        self.assertEqual(sorted(known), sorted(told))


if __name__ == "__main__":
    unittest.main()
