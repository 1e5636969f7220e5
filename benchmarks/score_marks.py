"""How well crossed scores are read from simulated pictures of printed worksheets.

    python benchmarks/score_marks.py [--count 200] [--start 5000] [--size 1600] [--care usual]
                                     [--paper a4] [--language en] [--show]

Every page is printed by the program itself, marked by `tests/simulator/pen_marks.py`, taken by
`page_camera.py`. The reading's constants were set on seeds below 1000; everything follows from
`--start`. `--show` lists what went wrong. All pictures are simulated: no real pen, paper or phone.
"""

from __future__ import annotations

import argparse
import collections
import os
import sys
import time
from pathlib import Path

import numpy as np

ROOT = Path(__file__).parents[1]
for extra in ("tests/core/class_set", "tests/core", "tests", ""):
    sys.path.insert(0, str(ROOT / extra))
os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

ROWS = ("hue", "value", "intensity", "placement")


def outcome(row, reading) -> str:
    """What became of a row that was meant so."""
    if reading.kind == "number":
        if row.meant in ("one", "erased") and reading.score == row.score:
            return "right"
        if row.meant == "between" and reading.score in row.also:
            return "one of the two"
        return "WRONG NUMBER"
    if row.meant == "blank":
        return "right" if reading.kind == "blank" else reading.kind
    if row.meant in ("one", "erased", "corrected") and reading.kind == "blank":
        return "BLANK"
    return reading.kind


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--count", type=int, default=200)
    parser.add_argument("--start", type=int, default=5000)
    parser.add_argument("--size", default="1600", choices=("12 MP", "1600", "1280"))
    parser.add_argument("--care", default="usual", choices=("usual", "bad", "blurred"))
    parser.add_argument("--paper", default="a4", choices=("a4", "letter"))
    parser.add_argument("--language", default="en", choices=("en", "es"))
    parser.add_argument("--show", action="store_true")
    args = parser.parse_args()

    from simulator.page_camera import photographed
    from simulator.pen_marks import KINDS, USUAL_PENS, Paper, draw_row, drawn_row, write_words
    from simulator.printed_pages import printed_pages

    from app.cards.command import begin_drawing
    from core.class_set.score_marks.read import read_scores
    from core.photo import open_photo

    begin_drawing()
    sheets = printed_pages(args.paper, args.language)
    forms = [sheets.forms(index) for index in (0, 1)]
    table = collections.defaultdict(collections.Counter)
    seconds, registered, wrong = [], 0, []
    for seed in range(args.start, args.start + args.count):
        rng = np.random.default_rng(seed)
        index = seed % 2
        paper = Paper(sheets.greys[index], rng)
        kind = str(rng.choice(KINDS))
        pen = "faint pencil" if seed % 5 == 4 else str(rng.choice(USUAL_PENS))
        own = sheets.boxes[index]
        rows = []
        for boxes in own:
            usual = kind if rng.random() < 0.85 else str(rng.choice(KINDS))
            rows.append(drawn_row(rng, usual, pen))
            draw_row(paper, boxes, rows[-1])
        write_words(paper, 16, own[-1][0].y + 45, 175, int(rng.integers(1, 5)))
        photo = open_photo(photographed(paper.done(), args.size, args.care, rng), name="page.jpg")
        began = time.process_time()
        found = read_scores(photo.pixels, forms[index])
        seconds.append(time.process_time() - began)
        if found is None:
            continue
        registered += 1
        for number, (row, reading) in enumerate(zip(rows, found.rows, strict=True)):
            what = outcome(row, reading)
            table["all rows"][what] += 1
            group = row.meant if row.meant != "one" else f"one, {row.kind}"
            table[group][what] += 1
            if row.meant == "one":
                table["one mark"][what] += 1
                if row.pen == "faint pencil":
                    table["one, in faint pencil"][what] += 1
            doubtful = row.meant in ("corrected", "smudge", "dot", "struck", "between")
            if what != "right" and not (doubtful and what == "cannot tell"):
                wrong.append((seed, ROWS[number], row, reading, what))
    size = f"{args.size} {args.care}, {args.paper} {args.language}"
    print(f"{size}: {args.count} pages from seed {args.start}, {registered} registered")
    for group in sorted(table):
        counts, of = table[group], sum(table[group].values())
        said = "  ".join(f"{what} {n} ({n / of:.1%})" for what, n in counts.most_common())
        print(f"{group:22} {of:5}  {said}")
    print(f"{np.median(seconds):.2f} s of the processor a page, at most {max(seconds):.2f}")
    if args.show:
        for each in wrong:
            print(*each)


if __name__ == "__main__":
    main()
