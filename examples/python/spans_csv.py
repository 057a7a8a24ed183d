"""A spreadsheet's rows in, the same rows with spans out: spans_csv.py IN.csv OUT.csv"""
import csv
import sys

import frame

FIELDS = ("use", "size", "species", "grade", "spacing_in", "live_psf", "dead_psf")


def span(row):
    """The row with its span in tape notation, or with what is wrong with it."""
    given = {key: row[key] for key in FIELDS if row.get(key)}
    for key in ("spacing_in", "live_psf", "dead_psf"):
        if key in given:
            given[key] = float(given[key])
    try:
        found = frame.joist_span(**given)
    except (frame.Error, ValueError) as error:
        return dict(row, span="", governs="", wrong=str(error))
    return dict(row, span=frame.tape_format(found.span_in, rounding="down"), governs=found.governs, wrong="")


def main(path_in, path_out):
    with open(path_in, newline="", encoding="utf-8") as file:
        rows = [span(row) for row in csv.DictReader(file)]
    with open(path_out, "w", newline="", encoding="utf-8") as file:
        writer = csv.DictWriter(file, fieldnames=list(rows[0]))
        writer.writeheader()
        writer.writerows(rows)
    print("%d rows, %d with a span" % (len(rows), sum(1 for row in rows if row["span"])))


if __name__ == "__main__":
    main(*sys.argv[1:3])
