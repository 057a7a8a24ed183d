"""A homework sheet marked: a student's answers against the working of a header, line by line."""
import frame

ANSWERS = {  # what the student wrote down
    "w": 430, "M": 36281, "S": 64.2, "f_b": 565, "F_b'": 962.5,
}


def main():
    working = frame.working()
    check = frame.beam_check(size="2x10", plies=3, species="SPF", grade="No.2", span_in="7' 6\"", dead_plf=120, snow_plf=310,
                             bearing_in=3, compression_edge="held", working=working)
    print("The header", "holds" if check.passes else "fails", "with a ratio of %.3f;" % check.ratio, check.governs, "governs.")
    print(working.mark(ANSWERS))
    print("What the sheet did not ask:")
    for line in check.not_checked:
        print(" -", line)


if __name__ == "__main__":
    main()
