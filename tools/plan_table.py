"""A table of plans to read through by eye: sample scenes, photos and made-up skies in ten boxes.

    python -m tools.plan_table OUT.md [PICTURE or FOLDER ...] [--readings FILE] [--box NAME ...]

What Read says of toning, the mix, how near it comes, why, what else is offered and what the class
view answers stand together for every band, so that one pass of the eye finds what contradicts.
"""

from __future__ import annotations

import argparse
import json
from collections.abc import Iterator
from pathlib import Path

import numpy as np

import sample_scenes
from core.cli.read import read_photo
from core.lesson.asking import answer_to
from core.paint.box.box import GENERIC_BOXES, Box
from core.paint.pigment.catalogue import CATALOGUE
from core.paint.plan import plan_mixes
from core.paint.planned import BandMix, MixPlan
from core.paint.words.mix import (
    alternative_text,
    band_reach_text,
    closest_text,
    mix_text,
    shortfall_text,
    why_text,
)
from core.paint.words.plan import caution_text, ladder_text
from core.paint.words.tone_sentence import planned_toning
from core.photo import open_photo
from core.reading.reading import BandReading, read_colour
from core.reading.wording import Wording
from core.words import colour_sentence_part, tone_down_sentence
from core.words.verdicts import verdict_word


def _box(name: str, *keys: str) -> Box:
    return Box(name, tuple(CATALOGUE[key] for key in keys))


BOXES: tuple[Box, ...] = (
    *GENERIC_BOXES.values(),
    _box("lesson", "lemon_yellow", "crimson", "ultramarine"),
    _box("lesson, warm red", "lemon_yellow", "warm_red", "ultramarine"),
    _box("mid yellow, crimson, cool blue", "mid_yellow", "crimson", "cool_blue"),
    _box("earths", "yellow_ochre", "burnt_sienna", "ultramarine"),
    _box("lesson and an earth", "lemon_yellow", "crimson", "ultramarine", "burnt_sienna"),
    _box("yellow and blue", "mid_yellow", "ultramarine"),
    _box("blues", "ultramarine", "cerulean_blue", "prussian_blue"),
)
"""Boxes a class may own: whole ones, three primaries, and boxes that lack something."""


def plan_lines(name: str, plan: MixPlan, readings: list[BandReading]) -> Iterator[str]:
    """A sky's plan, band by band."""
    yield f"### {name}"
    for band, reading in zip(plan.bands, readings, strict=True):
        yield from _band_lines(plan, band, reading)
    for caution in plan.cautions:
        yield f"- caution: {caution_text(plan.box, caution)}"
    yield ""


def _band_lines(plan: MixPlan, band: BandMix, reading: BandReading) -> Iterator[str]:
    box, own, colour = plan.box, band.classroom, reading.colour
    if own is None or colour is None:
        yield f"**{band.letter}** no sky"
        return
    wording = Wording()
    short = shortfall_text(own)
    yield (
        f"**{band.letter}** {colour_sentence_part(colour, wording)} [{colour.munsell.notation}]"
        f"  \n→ **{mix_text(box, own)}**: "
        f"{verdict_word(own.verdict)} {own.delta_E_2000:.1f} {short}"
    )
    yield f"- why: {why_text(box, own)} {band_reach_text(band)}".rstrip()
    if band.closest_to_show is not None:
        yield f"- {closest_text(box, band.closest_to_show)}"
    for item in band.alternatives:
        yield f"- {alternative_text(box, own, item)}"
    if band.tone_down is not None:
        yield f"- ladder: {ladder_text(box, band.tone_down, band.letter, own)}"
    toning = planned_toning(box, band)
    yield f"- read: {tone_down_sentence(reading, wording, toning)}"
    answer = answer_to("mix", reading, wording, mix_text(box, own), toning)
    yield f"- class: {answer.text} / {answer.second}"


def skies(pictures: list[Path], kept: Path | None) -> dict[str, list[list[float]]]:
    """CIELAB of the bands of every sky, from the top down, by name."""
    found = {
        name: [list(band.Lab) for band in sample_scenes.truth(name).bands]
        for name in sample_scenes.names()
    }
    if kept is not None and kept.exists():
        return found | json.loads(kept.read_text())
    read = {}
    for path in pictures:
        report = read_photo(open_photo(path))
        read[path.stem] = [list(r.colour.Lab) for r in report.sky.readings if r.colour is not None]
    if kept is not None:
        kept.write_text(json.dumps(read))
    return found | read


def bands(colours: list[list[float]]) -> list[BandReading]:
    """Bands of equal height."""
    height = 1 / len(colours)
    return [
        BandReading(
            "ABCDEFGH"[number],
            number * height,
            (number + 1) * height,
            read_colour(np.array(Lab)),
            *(None, None, None),
            *(0.0, False, 0.0, 1.0),
        )
        for number, Lab in enumerate(colours)
    ]


def main() -> None:
    """Write the table."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("out", type=Path)
    parser.add_argument("pictures", nargs="*", type=Path)
    parser.add_argument("--readings", type=Path, help="keep the pictures' readings here")
    parser.add_argument("--box", nargs="*", help="only the boxes of these names")
    args = parser.parse_args()
    pictures = [
        file
        for path in args.pictures
        for file in (sorted(path.glob("*.jpg")) if path.is_dir() else [path])
    ]
    known = skies(pictures, args.readings)
    lines = []
    for box in BOXES:
        if args.box and box.name not in args.box:
            continue
        lines.append(f"## {box.name}: {', '.join(box.keys)}\n")
        for name, colours in known.items():
            readings = bands(colours)
            lines += plan_lines(name, plan_mixes(readings, box), readings)
    args.out.write_text("\n".join(lines) + "\n", encoding="utf-8")


if __name__ == "__main__":
    main()
