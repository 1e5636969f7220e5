"""What is said of each sample sky before it is opened is what is read once it is."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QSize
from PySide6.QtGui import QColor, QImage

import sample_scenes
from app.files.opening import Opener
from app.widgets.sky_wall import SkyButton
from core.photo import open_photo
from core.pipeline import propose_for, read_sky
from core.words import hue_short


@pytest.mark.parametrize("name", ["dusk", "marsh", "pines"])
def test_the_words_are_those_of_the_reading(name: str) -> None:
    told = Opener.tell_of(name)
    photo = open_photo(sample_scenes.path(name))
    proposal = propose_for(photo)
    readings = read_sky(photo, proposal, proposal.bands).readings
    assert told.short == f"{len(readings)} bands"
    assert told.words.startswith(told.short)
    assert len(told.colours) == len(readings)
    for reading in (readings[0], readings[-1]):
        assert hue_short(reading.colour.hue) in told.words


def test_no_colour_is_shown_without_its_name(qtbot) -> None:
    """In little room the chips go first, then all but the number."""
    told = Opener.tell_of("dusk")
    sky = SkyButton("Dusk", None)
    qtbot.addWidget(sky)
    sky.tell(told)
    assert told.words in sky.accessibleDescription()
    first = QColor(told.colours[0]).rgb()
    shown = []
    for width in (400, 230, 100):
        sky.resize(QSize(width, 160))
        picture = QImage(sky.size(), QImage.Format.Format_RGB32)
        picture.fill(QColor("#868686"))
        sky.render(picture)
        shown.append(any(picture.pixel(x, 150) == first for x in range(2, 12)))
    assert shown == [True, False, False]
