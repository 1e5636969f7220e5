"""An open band with two colours offers a look at the mix for the second."""

from __future__ import annotations

from dataclasses import replace

from app.mix.band_detail import detail_view
from app.mix.detail import BandDetail
from app.mix.views import band_view
from core.colour import hex_to_srgb, srgb_to_Lab
from core.paint.box.box import DEFAULT_BOX
from core.paint.options import MixOptions
from core.paint.plan import plan_mixes
from core.reading.reading import BandReading, SecondColour, read_colour


def colour(code: str):
    return read_colour(srgb_to_Lab(hex_to_srgb(code)))


def test_the_second_colour_has_a_look_of_its_own_where_there_is_one(qtbot) -> None:
    dark, blue = colour("#4a4650"), colour("#5080c0")
    second = SecondColour(colour("#f0a050"), 0.3, soft=True)
    cloudy = BandReading("A", 0.0, 0.3, dark, dark, dark, dark, 1.0, False, 0.0, 1.0, second)
    plain = replace(cloudy, letter="B", top=0.3, bottom=0.6, colour=blue, second=None)
    plan = plan_mixes([cloudy, plain], DEFAULT_BOX)

    views = [
        detail_view(plan, band, band_view(plan, band, MixOptions()), MixOptions(), None)
        for band in plan.bands
    ]
    detail = BandDetail()
    qtbot.addWidget(detail)
    detail.set_view(views[0])
    detail.show_stage("second")
    assert detail.stage == "second"
    assert not detail.second.isHidden()
    assert detail.tone.isHidden()
    assert "Its second colour, orange" in detail.second.accessibleName()
    assert "lay it first" in detail.second.accessibleName()
    # Another band without one: back to toning down, and nothing is offered.
    detail.set_view(views[1])
    assert detail.stage == "tone"
    assert detail.stages._segments["second"].isHidden()
