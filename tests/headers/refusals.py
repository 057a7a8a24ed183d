"""What a public header gets wrong stops the generator with file and line: refusals.py SOURCE_DIR

Each case is one line of an in-struct, an out-struct or a word list, and what is said about it.
"""
import os
import sys
import tempfile

sys.dont_write_bytecode = True
sys.path.insert(0, os.path.join(sys.argv[1], "lib", "generate"))
from read_headers import Reader, Trouble  # noqa: E402

WORDS = """/** The edition. */
typedef int32_t frame_edition;
enum frame_edition_values {
    FRAME_EDITION_OLD = 1, /**< "ASCE 7-16". The older one. */
    %s
};
"""
STRUCT = """/** %s. */
typedef struct frame_try_%s {
    uint32_t struct_size, struct_id;
    %s
} frame_try_%s;
"""
GOOD_WORD = 'FRAME_EDITION_NEW = 2, /**< "ASCE 7-22". The newer one. */'
IN = [  # the field's line; None when it is right
    ("frame_edition edition; /**< \"ASCE 7-16\". The edition. */", None),  # a phrase: resolved by the calculation
    ("frame_edition edition; /**< ASCE 7-16. The edition. */", "neither required nor optional nor a default that a word can have"),
    ("frame_edition edition; /**< the newer one : 1..2. The edition. */", "is not a word of edition"),
    ("frame_edition edition; /**< The edition. */", "neither required nor optional"),
    ("double span_in; /**< required : >0..480. Span. */", None),
    ("double span_in; /**< 12 : >0..480. Span. */", None),
    ("double span_in; /**< twelve. Span. */", "neither required nor optional nor a default that a number can have"),
    ("double span_in; /**< required. Span. */", "a number needs a range"),
    ("double span_in; /**< required : 480..0. Span. */", "the range is empty"),
    ("double span_in; /**< some : 0..480. Span. */", "default some is not a number"),
    ("frame_bool wet; /**< no. Wet. */", None),
    ("frame_bool wet; /**< never. Wet. */", "neither required nor optional nor a default that a bool can have"),
    ("double from; /**< required : 0..1. From. */", "reserved word"),
    ("float span_in; /**< required : 0..480. Span. */", "type float is not one a struct may hold"),
    ("double span_in;", "expected TYPE NAME"),
]
OUT = [
    ("double ratio; /**< The ratio. */", None),
    ("double ratio; /**< required : 0..1. The ratio. */", "an out-struct has no required fields"),
]
WORD = [
    (GOOD_WORD, None),
    ("FRAME_EDITION_NEW = 2, /**< The newer one. */", "expected NAME = NUMBER"),
]


def said(text):
    with tempfile.TemporaryDirectory() as folder:
        path = os.path.join(folder, "try.h")
        with open(path, "w", encoding="utf-8") as file:
            file.write(text)
        try:
            Reader().read("try", path)
        except Trouble as trouble:
            return str(trouble).replace(path, "try.h")
    return None


def main():
    wrong = cases = 0
    words = WORDS % GOOD_WORD
    line_of_field, line_of_word = words.count("\n") + 4, 5
    for rows, make, line in (
        (IN, lambda text: words + STRUCT % ("In", "in", text, "in"), line_of_field),
        (OUT, lambda text: words + STRUCT % ("Out", "out", text, "out"), line_of_field),
        (WORD, lambda text: WORDS % text, line_of_word),
    ):
        for text, expected in rows:
            cases += 1
            message = said(make(text))
            right = message is None if expected is None else bool(message) and expected in message and message.startswith("try.h:%d: " % line)
            if not right:
                wrong += 1
                print("%s\n    said: %s\n    expected: %s" % (text, message, expected and "try.h:%d: ... %s" % (line, expected)))
    print("%d cases, %d wrong" % (cases, wrong))
    return 1 if wrong else 0


sys.exit(main())
