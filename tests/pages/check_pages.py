#!/usr/bin/env python3
"""The demonstration page as people meet it, measured in Debian's Chromium: at phone and desk width no sideways scroll, no text
under 9 pt, nothing of a drawing outside its picture; on A4 and Letter no drawing split over two pages.

    check_pages.py PAGE.html [--pictures FOLDER]
"""
import json
import os
import re
import subprocess
import sys
import tempfile

CHROMIUM = ["chromium", "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
            "--disable-background-networking", "--disable-component-update", "--disable-sync", "--hide-scrollbars"]

# Runs in the page: writes what it measured into the title, where --dump-dom shows it.
PROBE = """<script>
addEventListener('load', () => {
  const found = {width: innerWidth, scroll: document.documentElement.scrollWidth, small: [], clipped: [], drawings: 0};
  const shown = e => { const r = e.getBoundingClientRect(); return r.width > 0 && r.height > 0; };
  for (const d of document.querySelectorAll('details')) d.open = true;
  found.scrollOpen = document.documentElement.scrollWidth;
  for (const svg of document.querySelectorAll('svg')) {
    if (!shown(svg)) continue;
    found.drawings++;
    const box = svg.getBoundingClientRect();
    for (const text of svg.querySelectorAll('text')) {
      const r = text.getBoundingClientRect();
      if (r.left < box.left - .6 || r.right > box.right + .6 || r.top < box.top - .6 || r.bottom > box.bottom + .6)
        found.clipped.push(text.textContent);
      const scale = box.width / svg.viewBox.baseVal.width;
      const size = parseFloat(getComputedStyle(text).fontSize) * scale;
      if (size < 11.9) found.small.push(text.textContent + ' ' + size.toFixed(1) + ' px');
    }
  }
  for (const e of document.querySelectorAll('main *')) {
    if (!shown(e) || e.closest('svg') || e.closest('math')) continue;
    for (const n of e.childNodes)
      if (n.nodeType === 3 && n.textContent.trim() && parseFloat(getComputedStyle(e).fontSize) < 11.9)
        found.small.push(e.tagName + ' ' + getComputedStyle(e).fontSize + ' ' + n.textContent.trim().slice(0, 30));
  }
  document.title = 'MEASURED' + JSON.stringify(found);
});
</script>"""


def chromium(*arguments):
    with tempfile.TemporaryDirectory() as profile:
        done = subprocess.run(CHROMIUM + ["--user-data-dir=" + profile] + list(arguments), capture_output=True, text=True,
                              timeout=120)
        return done.stdout


def measure(page, width, folder):
    # A window cannot be made narrower than some 500 px: the page is framed at the width wanted.
    with open(page, encoding="utf-8") as file:
        text = file.read().replace("</head>", PROBE + "</head>", 1)
    inner = os.path.join(folder, "inner.html")
    with open(inner, "w", encoding="utf-8") as file:
        file.write(text)
    outer = os.path.join(folder, "outer.html")
    with open(outer, "w", encoding="utf-8") as file:
        file.write('<iframe id="f" src="inner.html" style="border:0;width:%dpx;height:3000px"></iframe><script>'
                   'setInterval(()=>{const t=f.contentDocument.title;if(t.startsWith("MEASURED"))document.title=t},50)</script>' % width)
    dom = chromium("--allow-file-access-from-files", "--window-size=1400,3000", "--virtual-time-budget=4000", "--dump-dom",
                   "file://" + outer)
    found = re.search(r"<title>MEASURED(.*?)</title>", dom, re.S)
    if not found:
        sys.exit("the browser measured nothing at %d px" % width)
    return json.loads(found.group(1).replace("&amp;", "&").replace("&lt;", "<").replace("&gt;", ">"))


def judge(found, width):
    wrong = []
    if found["width"] != width:
        wrong.append("the page was %d px wide" % found["width"])
    if max(found["scroll"], found["scrollOpen"]) > width:
        wrong.append("scrolls sideways: %d px wide, %d with all folds open" % (found["scroll"], found["scrollOpen"]))
    if not found["drawings"]:
        wrong.append("shows no drawing")
    wrong += ["text under 9 pt: %s" % text for text in found["small"][:8]]
    wrong += ["text outside its drawing: %s" % text for text in found["clipped"][:8]]
    return wrong


def on_paper(page, size, folder):
    """Prints with every drawing in a frame of its own colour and sees on how many pages each colour is found."""
    with open(page, encoding="utf-8") as file:
        text = file.read()
    text = text.replace("</style>", "@page{size:%s}</style>" % size, 1)
    numbers = iter(range(1, 10000))
    text = re.sub(r'<figure class="wide">', lambda m: '<figure class="wide" style="border-left:6px solid rgb(255,%d,0)">'
                  % (next(numbers) * 5), text)
    copy = os.path.join(folder, "paper.html")
    with open(copy, "w", encoding="utf-8") as file:
        file.write(text)
    pdf = os.path.join(folder, size + ".pdf")
    chromium("--no-pdf-header-footer", "--print-to-pdf=" + pdf, "file://" + copy)
    subprocess.run(["pdftoppm", "-r", "40", pdf, os.path.join(folder, size)], check=True)
    pages = sorted(name for name in os.listdir(folder) if name.startswith(size) and name.endswith(".ppm"))
    seen = {}
    for name in pages:
        with open(os.path.join(folder, name), "rb") as file:
            data = file.read()
        pixels = data[data.index(b"255\n") + 4:]
        for i in range(0, len(pixels) - 2, 3):
            if pixels[i] == 255 and pixels[i + 2] == 0 and pixels[i + 1] % 5 == 0 and 0 < pixels[i + 1] < 255:
                seen.setdefault(pixels[i + 1], set()).add(name)
    if not pages or not seen:
        return ["%s: nothing was printed" % size]
    return ["%s: a drawing is split over pages" % size for where in seen.values() if len(where) > 1]


def main(page, pictures):
    page = os.path.abspath(page)
    wrong = []
    with tempfile.TemporaryDirectory() as folder:
        for width in (390, 1100):
            wrong += ["%d px: %s" % (width, trouble) for trouble in judge(measure(page, width, folder), width)]
        for size in ("A4", "Letter"):
            wrong += on_paper(page, size, folder)
    if pictures:
        os.makedirs(pictures, exist_ok=True)
        chromium("--window-size=1000,6000", "--screenshot=" + os.path.join(pictures, "desk.png"), "file://" + page)
    for trouble in wrong:
        print(trouble)
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1], sys.argv[sys.argv.index("--pictures") + 1] if "--pictures" in sys.argv else None))
