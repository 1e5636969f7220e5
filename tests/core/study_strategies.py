"""Studies as hypothesis makes them up: everything a lesson can hold."""

from __future__ import annotations

import io

import numpy as np
from hypothesis import strategies as st
from PIL import Image

from core.bands.lines import Bands
from core.lesson.lesson import QUESTIONS_OF_TWO, Hands
from core.paint.box.box import GENERIC_BOXES, Box
from core.paint.box.own_paint import own_paint
from core.paint.options import BandChoice, MixOptions
from core.paint.wash.amounts import SHEETS, PaintSheet
from core.pictures import Picture, digest_of
from core.scrap.kept import ScrapEntry
from core.sheet.result import SheetOptions
from core.study import SheetEntry, Study, WheelPlace
from core.worksheet.worksheet import CHANGES, OwnScores, SheetPage, Worksheet


def small_picture(shade: int, kind: str = "JPEG") -> bytes:
    """A picture of one shade, a few hundred bytes."""
    out = io.BytesIO()
    Image.fromarray(np.full((12, 16, 3), shade, np.uint8)).save(out, kind)
    return out.getvalue()


PICTURES = {digest_of(data): data for data in map(small_picture, (40, 90, 140, 200))}

names = st.text(min_size=1, max_size=30)
texts = st.text(max_size=120)
pictures = st.builds(Picture, names, st.sampled_from(sorted(PICTURES)))


@st.composite
def bands(draw: st.DrawFn) -> Bands:
    """Up to nine lines anywhere they may be."""
    shares = draw(st.lists(st.floats(0.02, 1.0), min_size=1, max_size=10))
    horizon = draw(st.floats(0.5, 1.0))
    edges = np.cumsum(shares) / sum(shares) * horizon
    kept = [0.0]
    for edge in edges[:-1]:
        if edge - kept[-1] >= 0.011 and horizon - edge >= 0.011:
            kept.append(float(edge))
    return Bands(horizon, tuple(kept[1:]))


boxes = st.sampled_from(sorted(GENERIC_BOXES)).map(GENERIC_BOXES.__getitem__) | st.builds(
    lambda name, own: Box(name, (*GENERIC_BOXES["primary"].paints, own_paint(own, "ultramarine"))),
    st.text("abcdefgh ", min_size=1, max_size=20).filter(str.strip),
    st.text("abcdefgh", min_size=1, max_size=20),
)
keys = st.sampled_from(GENERIC_BOXES["school"].keys)
few_keys = st.lists(keys, max_size=3, unique=True).map(tuple)
choices = st.builds(
    BandChoice,
    few_keys,
    few_keys,
    st.none() | st.lists(st.tuples(keys, st.integers(0, 20)), max_size=3).map(tuple),
    st.none() | st.floats(1e-4, 0.2),
)
papers = st.sampled_from(list(SHEETS.values())) | st.builds(
    PaintSheet, names, st.floats(50, 900), st.floats(50, 900), st.floats(0, 20)
)
mixes = st.builds(
    MixOptions,
    papers,
    st.none() | st.floats(0.1, 60),
    st.floats(0, 2),
    st.booleans(),
    few_keys,
    st.dictionaries(st.sampled_from("ABCDEFGHI"), choices, max_size=5).map(
        lambda found: tuple(sorted(found.items(), key=lambda item: item[0]))
    ),
)
points = st.tuples(st.floats(-0.2, 1.2), st.floats(-0.2, 1.2))
sheets = st.builds(
    SheetEntry,
    pictures,
    st.builds(
        SheetOptions,
        st.none() | st.tuples(points, points, points, points),
        st.integers(0, 3),
        st.booleans(),
        st.none() | st.floats(0.2, 5),
    ),
)
scores = st.none() | st.integers(1, 10)
pages = st.builds(
    SheetPage,
    st.builds(OwnScores, scores, scores, scores, scores),
    texts,
    st.none() | st.sampled_from(CHANGES),
    st.none() | st.dates().map(lambda day: day.isoformat()),
)
worksheets = st.builds(Worksheet, texts, texts, st.tuples(pages, pages), texts)

scraps = st.builds(
    ScrapEntry,
    pictures,
    st.sampled_from("ABCDEFGHI"),
    st.tuples(st.floats(0, 100), st.floats(-80, 80), st.floats(-80, 80)),
    st.lists(st.tuples(keys, st.integers(1, 9)), min_size=1, max_size=3).map(tuple),
    st.floats(1e-4, 0.16),
    st.lists(st.tuples(keys, st.floats(0.1, 6)), max_size=2).map(tuple),
    st.none() | st.lists(st.tuples(keys, st.floats(0.1, 6)), max_size=2).map(tuple),
)

studies = st.builds(
    Study,
    texts,
    st.none() | pictures,
    st.none() | bands(),
    boxes,
    mixes,
    st.tuples(st.none() | sheets, st.none() | sheets),
    worksheets,
    st.lists(scraps, max_size=4).map(tuple),
    st.lists(
        st.builds(
            Hands,
            st.integers(0, 25),
            st.sampled_from(QUESTIONS_OF_TWO),
            st.text("abcdefgh -", min_size=1, max_size=20),
            st.integers(1, 99),
        ),
        max_size=6,
    ).map(tuple),
    st.none()
    | st.builds(WheelPlace, st.floats(-0.5, 1.5), st.floats(-0.5, 1.5), st.floats(0.1, 4)),
)
