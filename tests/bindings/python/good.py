"""One good call of every calculation, from ../good_inputs.json."""
import json
import os

with open(
    os.path.join(os.path.dirname(os.path.dirname(os.path.abspath(__file__))), "good_inputs.json"), encoding="utf-8"
) as file:
    INPUTS = json.load(file)


def copy(value):
    return json.loads(json.dumps(value))
