"""Every field of every calculation, fed what it must refuse: the facts of the fields say what that is. Each refusal names the
field's path, the value and what is valid. Nothing here names a calculation."""
import math
import unittest

import frame

import good


class Odd:
    """A value of no kind a field takes."""


OTHERS = (Odd(), b"12", {1, 2}, 1j, print, Odd)


def bad_numbers(field):
    low, high = field["low"], field["high"]
    yield from (math.nan, math.inf, -math.inf, 1e308, -1e308, -1e300)
    yield low if field["low_open"] else math.nextafter(low, -math.inf)
    yield high if field["high_open"] else math.nextafter(high, math.inf)
    if low > 0 or (low == 0 and field["low_open"]):
        yield 0
    if low >= 0:
        yield -1
    yield from (True, [], {}, "", " ", "no number", "1e5", "nan", "\0", "\ud800", "x" * 100000) + OTHERS


def bad_integers(field):
    yield from (
        int(field["low"]) - 1,
        -(10**30),
        10**30,
        math.nan,
        math.inf,
        1.5,
        True,
        "2",
        "",
        [],
        {},
        -(2**31),
    )
    if field["high"] < 2**31 - 1:
        yield from (int(field["high"]) + 1, 2**31 - 1)
    yield from OTHERS


BAD = {
    "word": ("", " ", "no such word", "\0", "\ud800", "x" * 100000, "%s%n", 1, 0, -1, 1.5, True, [], {}) + OTHERS,
    "bool": (0, 1, 2, "yes", "", [], {}, math.nan) + OTHERS,
    "text": (1, 1.5, True, [], {}, "\0", "a\0b", "\ud800") + OTHERS,
    "list": (1, 1.5, "text", True, [1], ["text"], [[[]]], [Odd()], {"": 1}, {1: 2}) + OTHERS,
    "handle": (1, 1.5, "text", True, [], {}, frame.working(), frame.code_overlay) + OTHERS,
    "words": (1, "text", True, [[]], ["no such word"], [1], [1.5], [Odd()], [True], {"x": 1}) + OTHERS,
    "numbers": (1, "text", True, [[]], ["no number"], [Odd()], [True], [math.nan], [1e308], {"x": 1}) + OTHERS,
}


def bad_values(field):
    if field["name"] == "watch":  # a function is what it takes
        return [value for value in BAD["handle"] if value is not print]
    if field["kind"] == "number":
        return bad_numbers(field)
    if field["kind"] == "integer":
        return bad_integers(field)
    return BAD[field["kind"]]


class EveryField(unittest.TestCase):
    def refused(self, name, given, path, value, listed=False):
        with self.assertRaises(frame.Error, msg="%s.%s = %.60r was taken" % (name, path, value)) as caught:
            getattr(frame, name)(**given)
        error = caught.exception
        where = "%s.%s = %.60r: %s" % (name, path, value, error)
        if listed:  # an item within is at fault, or the list itself
            self.assertTrue(error.field.startswith(path), where)
        else:
            self.assertEqual(error.field, path, where)
        self.assertIn(error.field, str(error), where)
        self.assertTrue(error.valid or listed, where)
        self.assertNotIn("\n", str(error))
        self.tried += 1

    def walk(self, name, given, owner, fields, before):
        """owner: the dict, somewhere in given, whose fields these are."""
        for field in fields:
            key, path = field["name"], before + field["name"]
            kept = owner.get(key)
            for value in bad_values(field):
                owner[key] = value
                self.refused(name, given, path, value, field["kind"] in ("list", "numbers", "words"))
            if field["need"] == "required":
                owner[key] = None
                self.refused(name, given, path, None)
            owner[key] = kept
            if kept is None:
                del owner[key]
            elif field["kind"] == "list":
                self.items(name, given, owner, field, path)

    def items(self, name, given, owner, field, path):
        names = [f["name"] for f in field["element"] if f["need"] != "result"]
        kept = owner[field["name"]]
        owner[field["name"]] = [dict(zip(names, item)) if isinstance(item, list) else item for item in kept]
        for place, item in enumerate(owner[field["name"]]):
            self.walk(
                name, given, item, [f for f in field["element"] if f["need"] != "result"], "%s[%d]." % (path, place)
            )
            item["no_such_field"] = 1
            self.refused(name, given, "%s[%d].no_such_field" % (path, place), 1, True)
            del item["no_such_field"]
        owner[field["name"]] = kept[:1] + [tuple(range(len(names) + 1))]
        self.refused(name, given, path, "too many values", True)
        owner[field["name"]] = kept

    def test_every_calculation(self):
        for name in frame.calculations():
            with self.subTest(name):
                self.assertIn(name, good.INPUTS, "add one good call of it to tests/bindings/good_inputs.json")
                given = good.copy(good.INPUTS[name])
                getattr(frame, name)(**given)
                self.tried = 0
                self.walk(name, given, given, [f for f in frame.fields(name) if f["need"] != "result"], "")
                self.assertGreater(self.tried, 10)
                self.assertEqual(given, good.INPUTS[name])
                getattr(frame, name)(**given)

    def test_no_good_call_is_left_over(self):
        self.assertEqual(set(good.INPUTS) - set(frame.calculations()), set())

    def test_misspelt_fields(self):
        for name in frame.calculations():
            for field in frame.fields(name):
                if field["need"] == "result" or len(field["name"]) < 4:
                    continue
                wrong = field["name"][:1] + "q" + field["name"][1:]
                with self.assertRaises(frame.InputError) as caught:
                    getattr(frame, name)(**{wrong: 1})
                self.assertEqual((caught.exception.field, caught.exception.valid), (wrong, field["name"]))

    def test_columns(self):
        for name in frame.calculations():
            given = good.copy(good.INPUTS[name])
            for field in frame.fields(name):
                if field["kind"] not in ("number", "integer", "word", "bool"):
                    continue
                for value in bad_values(field):
                    try:
                        result = frame.batch(name, **dict(given, **{field["name"]: [value]}))
                    except frame.Error as error:
                        self.assertIn(error.field, (field["name"], field["name"] + "[0]", "calculation"), str(error))
                    else:
                        self.assertNotEqual(result.status, ["ok"], "%s.%s = [%.60r]" % (name, field["name"], value))


if __name__ == "__main__":
    unittest.main()
