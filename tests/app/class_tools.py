"""A class view to look at, and every text that is drawn on it."""

from __future__ import annotations

import numpy as np
import pytest

from app.classview.view import ClassView
from app.drawing import ink
from app.drawing.pyramid import Pyramid, image_of
from core.colour import srgb_to_Lab
from core.paint.box.box import DEFAULT_BOX
from core.paint.plan import plan_mixes
from core.reading.reading import BandReading, read_colours
from core.reading.wording import Wording

SKY = ((52, 84, 160), (120, 140, 190), (210, 150, 160), (238, 190, 130), (246, 226, 160))
LEAST_TEXT = 0.04
"""What a class is promised, as a share of the height; not what the layout says of itself."""

SCREENS = ((1366, 768), (1920, 1080), (1024, 768), (1280, 1024))


def readings_of(colours):
    Lab = srgb_to_Lab(np.array(colours) / 255)
    edges = np.linspace(0, 0.8, len(colours) + 1)
    return tuple(
        BandReading(
            "ABCDEFGHIJKLMNOPQRSTUVWXYZ"[i], edges[i], edges[i + 1], c, c, c, c, 1.0, False, 0, 1
        )
        for i, c in enumerate(read_colours(Lab))
    )


def class_view(colours=SKY, size=(1366, 768), shape=(400, 600)) -> ClassView:
    view = ClassView()
    pixels = np.zeros((*shape, 3), np.uint8)
    view.show_photo(Pyramid.of(image_of(pixels)), shape[1] / shape[0])
    readings = readings_of(colours)
    view.show_readings(readings, Wording())
    view.show_plan(plan_mixes(readings, DEFAULT_BOX))
    view.resize(*size)
    view.begin(0)
    return view


def record_texts(monkeypatch: pytest.MonkeyPatch) -> list:
    """Every text that is drawn, with its size and place, since the last `clear`."""
    import app.classview.keys
    import app.drawing.classview.demonstration
    import app.drawing.classview.lines
    import app.drawing.classview.names
    import app.drawing.classview.painted
    import app.drawing.classview.strip
    import app.drawing.classview.tally
    import app.drawing.classview.text
    import app.drawing.classview.tries
    import app.drawing.ladder
    import app.drawing.wheel.wheel

    texts = []

    def record(painter, centre, text, size, colour, weight=ink.FIRST, *, align=0.5):
        width = ink.text_size(text, size, weight)[0]
        left = centre.x() - align * width
        texts.append((text, size, left, left + width, centre.y()))

    modules = (
        ink,
        app.drawing.classview.demonstration,
        app.drawing.classview.lines,
        app.drawing.classview.names,
        app.drawing.classview.painted,
        app.drawing.classview.strip,
        app.drawing.classview.tally,
        app.drawing.classview.text,
        app.drawing.classview.tries,
        app.drawing.ladder,
        app.drawing.wheel.wheel,
        app.classview.keys,
    )
    for module in modules:
        monkeypatch.setattr(module, "draw_text", record)
    return texts


def texts_of(view, drawn):
    drawn.clear()
    view.grab()
    return list(drawn)
