"""Before the class a mix with a paint that is hardly known says so."""

from __future__ import annotations

from pathlib import Path

from own_paint_tools import KEY, WRONG

from app.classview.content import mix_of
from core.paint.box.box import TWELVE_PAN
from core.paint.options import MixOptions
from core.photo import open_photo
from core.pipeline import plan_sky, propose_for, read_sky

SKY = Path(__file__).parents[3] / "sample_scenes" / "dusk.jpg"


def test_a_mix_with_a_doubtful_own_paint_says_so_and_a_measured_one_does_not() -> None:
    photo = open_photo(SKY)
    sky = read_sky(photo, propose_for(photo))
    for box in (WRONG, TWELVE_PAN):
        plan = plan_sky(sky, box, MixOptions())
        said = {band.letter: mix_of(plan, band.letter) for band in plan.bands}
        own = {
            band.letter
            for band in plan.bands
            if band.classroom is not None and KEY in band.classroom.mix.keys
        }
        assert bool(own) == (box is WRONG)
        for letter, text in said.items():
            assert text.endswith(("(only a guide)", "(try it first)")) == (letter in own)
