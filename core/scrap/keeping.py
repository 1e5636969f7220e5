"""From strokes held against a plan to the scraps a study keeps, and back."""

from __future__ import annotations

import io

import numpy as np
from numpy.typing import NDArray

from core.colour.srgb import linear_to_srgb
from core.errors import StudyFileError
from core.i18n import translate
from core.paint.planned import MixPlan
from core.pictures import PictureStore
from core.scrap.held import Earlier, Held
from core.scrap.kept import MOST_SCRAPS, Parts, ScrapEntry, added_now, same_puddle
from core.scrap.model import Stroke
from core.scrap.paper import Floats32
from core.scrap.strokes import FoundStroke, Scrap

_AROUND = 0.35  # of a stroke's sides: the paper kept around it
_SIDE = 240


def picture_of(scrap: Scrap) -> NDArray[np.uint8]:
    """The picture with its light undone, (h, w, 3) uint8: bare paper is white."""
    return _encoded(scrap.paper.relative)


def _encoded(relative: Floats32) -> NDArray[np.uint8]:
    encoded = linear_to_srgb(np.clip(relative, 0.0, 1.0))
    return np.asarray(np.round(255 * encoded).astype(np.uint8))


def stroke_picture(scrap: Scrap, stroke: FoundStroke) -> bytes:
    """A stroke with a little paper around it, as a small JPEG of its pixels alone."""
    from PIL import Image  # deferred: start-up time

    relative = scrap.paper.relative
    height, width = relative.shape[:2]
    left, top, right, bottom = stroke.region
    x, y = _AROUND * (right - left), _AROUND * (bottom - top)
    columns = slice(int(max(left - x, 0) * width), int(np.ceil(min(right + x, 1) * width)))
    rows = slice(int(max(top - y, 0) * height), int(np.ceil(min(bottom + y, 1) * height)))
    image = Image.fromarray(_encoded(relative[rows, columns]))
    image.thumbnail((_SIDE, _SIDE))
    buffer = io.BytesIO()
    image.save(buffer, "JPEG", quality=90, subsampling=0)
    return buffer.getvalue()


def earlier_of(scraps: tuple[ScrapEntry, ...], plan: MixPlan) -> dict[str, Earlier]:
    """What is known of the puddle each band of a plan has now."""
    found = {}
    for band in plan.bands:
        if band.classroom is not None:
            tries = same_puddle(scraps, band.letter, band.classroom.mix.parts)
            if tries:
                strokes = tuple(Stroke(scrap.Lab, dict(scrap.added)) for scrap in tries)
                found[band.letter] = Earlier(strokes, added_now(tries))
    return found


def entries_of(scrap: Scrap, held: Held, store: PictureStore) -> tuple[ScrapEntry, ...]:
    """The strokes of one band as the study keeps them; none of a band without a mix.

    Parameters
    ----------
    store : PictureStore
        Takes their pictures, stripped.
    """
    if held.mix is None or held.advice is None:
        return ()
    advised: Parts | None = held.advice.addition.parts
    if held.advice.deed == "begin again":
        advised = None
    name = translate("scrap", "scrap") + ".jpg"
    return tuple(
        ScrapEntry(
            store.add(name, stroke_picture(scrap, stroke)),
            held.letter,
            stroke.Lab,
            held.mix.parts,
            held.mix.load_ml,
            held.added,
            advised,
        )
        for stroke in held.strokes
    )


def with_entries(
    scraps: tuple[ScrapEntry, ...], new: tuple[ScrapEntry, ...]
) -> tuple[ScrapEntry, ...]:
    """The scraps with more of them.

    Raises
    ------
    StudyFileError
        There would be too many for one study.
    """
    if len(scraps) + len(new) > MOST_SCRAPS:
        raise StudyFileError(
            translate(
                "scrap", "A study keeps {most} scraps: take some out before you keep more."
            ).format(most=MOST_SCRAPS)
        )
    return (*scraps, *new)
