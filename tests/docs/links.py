#!/usr/bin/env python3
"""Every relative link of the Markdown pages leads somewhere; every calculation has a page: links.py BUILD_DIR SOURCE_DIR"""
import json
import os
import re
import sys

LINK = re.compile(r"\[[^\]\n]*\]\(([^)\s]+)\)")
SKIPPED = {"build", ".git", "made"}


def pages(root):
    for folder, folders, names in os.walk(root):
        folders[:] = [name for name in folders if name not in SKIPPED and not name.startswith("build")]
        for name in names:
            if name.endswith(".md"):
                yield os.path.join(folder, name)


def main(build, source):
    wrong, links = [], 0
    for page in pages(source):
        with open(page, encoding="utf-8") as file:
            text = re.sub(r"```.*?```", "", file.read(), flags=re.S)
        for target in LINK.findall(text):
            target = target.split("#")[0]
            if not target or "://" in target or target.startswith("mailto:"):
                continue
            links += 1
            if not os.path.exists(os.path.normpath(os.path.join(os.path.dirname(page), target))) and not target.endswith("reference.md"):
                wrong.append("%s: %s leads nowhere" % (os.path.relpath(page, source), target))
    with open(os.path.join(build, "made", "api.json"), encoding="utf-8") as file:
        calculations = json.load(file)["calculations"]
    for name in calculations:
        if not os.path.exists(os.path.join(source, "docs", "handbook", name + ".md")):
            wrong.append("docs/handbook/%s.md: the calculation has no page" % name)
    print("\n".join(wrong + ["%d links, %d calculations" % (links, len(calculations))]))
    return bool(wrong) or not links


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:3]))
