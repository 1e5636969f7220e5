"""The painted sky: touching washes in the mixes' own colours, wet edges as the meetings say."""

from __future__ import annotations

from itertools import pairwise

import numpy as np
import pytest
from paint_tools import bands, colour, sky, sky_plan

import sample_scenes
from core.colour import hex_to_srgb, srgb_to_Lab
from core.colour.difference import delta_E_2000
from core.paint.box.box import DEFAULT_BOX
from core.paint.plan import plan_mixes
from core.paint.preview import laying_order, painted_sky


def edges_of(readings):
    return (readings[0].top, *(reading.bottom for reading in readings))


@pytest.mark.parametrize("name", sample_scenes.names())
def test_washes_fill_the_sky_in_the_colours_of_the_mixes(name):
    readings, plan = sky(name), sky_plan(name)
    washes = painted_sky(plan, edges_of(readings))
    assert washes[0].top == readings[0].top
    assert washes[-1].bottom == pytest.approx(readings[-1].bottom)
    for upper, lower in pairwise(washes):
        assert upper.bottom == pytest.approx(lower.top)
        # One run goes on where the other ends: no line that the paint would not have.
        ends = srgb_to_Lab(
            np.array([hex_to_srgb(upper.colours[-1]), hex_to_srgb(lower.colours[0])])
        )
        assert delta_E_2000(ends[0], ends[1]) < 1.0
    flat = {wash.letters[0]: wash.colours for wash in washes if len(wash.letters) == 1}
    for band in plan.bands:
        assert flat[band.letter] == (band.classroom.mix.colour.hex,)


@pytest.mark.parametrize("name", sample_scenes.names())
def test_bands_come_in_laying_order_and_a_wet_edge_needs_both(name):
    readings, plan = sky(name), sky_plan(name)
    order = laying_order(plan)
    assert set(order) <= {band.letter for band in plan.bands}
    assert len(order) == len(set(order))
    laid = []
    assert painted_sky(plan, edges_of(readings), laid) == ()
    for letter in order:
        laid.append(letter)
        washes = painted_sky(plan, edges_of(readings), laid)
        shown = {each for wash in washes for each in wash.letters}
        assert shown == set(laid)
        assert all(set(wash.letters) <= set(laid) for wash in washes)


def test_where_a_strip_stays_clean_the_paper_shows():
    readings = bands([colour("#e8c020"), colour("#5040a0")])
    # The photo passes through pinks, where the paint would turn green.
    seen = srgb_to_Lab(np.array([hex_to_srgb(t) for t in ("#e8c020", "#e08080", "#5040a0")]))
    plan = plan_mixes(readings, DEFAULT_BOX, transitions=(tuple(map(tuple, seen.tolist())),))
    meeting = plan.bands[0].meets_below
    (edge,) = [wash for wash in painted_sky(plan, (0, 0.5, 1)) if len(wash.letters) == 2]
    lightest = srgb_to_Lab(np.array([hex_to_srgb(text) for text in edge.colours]))[:, 0].max()
    assert not meeting.runs_together
    assert lightest > 90
    # Beyond the first and the last colour nothing else comes in.
    assert edge.colours[0] == plan.bands[0].classroom.mix.colour.hex
    assert edge.colours[-1] == plan.bands[1].classroom.mix.colour.hex


def test_edges_have_to_fit_the_bands():
    with pytest.raises(ValueError, match="2 edges"):
        painted_sky(sky_plan("dusk"), (0, 1))
