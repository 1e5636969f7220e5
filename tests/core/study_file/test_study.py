from __future__ import annotations

from dataclasses import FrozenInstanceError

import pytest

from core import study as edits
from core.bands.lines import Bands
from core.errors import UsageError
from core.lesson.lesson import Hands
from core.paint.options import BandChoice, MixOptions
from core.pictures import Picture
from core.study import (
    Study,
    move_line,
    remove_line,
    split_band,
    study_of,
    with_bands,
    with_hands,
    without_work,
)

STUDY = study_of(Picture("evening_sky.jpg"), Bands(0.8, (0.2, 0.5)))


def test_title_comes_from_the_file_name() -> None:
    assert study_of(Picture("dusk_over__the lake.JPG")).title == "dusk over the lake"
    assert study_of(Picture(".jpg")).title == ".jpg"
    assert study_of(Picture("___.png")).title == "___.png"


def test_a_study_is_frozen_and_comparable() -> None:
    with pytest.raises(FrozenInstanceError):
        STUDY.title = "x"  # type: ignore[misc]
    assert study_of(Picture("evening_sky.jpg"), Bands(0.8, (0.2, 0.5))) == STUDY
    assert hash(STUDY) == hash(study_of(Picture("evening_sky.jpg"), Bands(0.8, (0.2, 0.5))))


@pytest.mark.parametrize(
    ("edit", "expected"),
    [
        (lambda s: edits.move_line(s, 0, 0.3), Bands(0.8, (0.3, 0.5))),
        (lambda s: edits.move_line(s, 0, 0.9), Bands(0.8, (0.49, 0.5))),
        (lambda s: edits.move_horizon(s, 0.9), Bands(0.9, (0.2, 0.5))),
        (lambda s: edits.move_horizon(s, 0.1), Bands(0.51, (0.2, 0.5))),
        (lambda s: edits.split_band(s, 0), Bands(0.8, (0.1, 0.2, 0.5))),
        (lambda s: edits.add_line(s, 0.6), Bands(0.8, (0.2, 0.5, 0.6))),
        (lambda s: edits.remove_line(s, 1), Bands(0.8, (0.2,))),
        (lambda s: edits.with_bands(s, Bands(1.0)), Bands(1.0)),
    ],
)
def test_edits_change_the_bands_and_nothing_else(edit, expected: Bands) -> None:
    after = edit(STUDY)
    assert after.bands.horizon == pytest.approx(expected.horizon)
    assert after.bands.lines == pytest.approx(expected.lines)
    assert edits.with_bands(after, STUDY.bands) == STUDY


def test_edits_that_do_not_fit_say_so() -> None:
    with pytest.raises(UsageError):
        edits.add_line(STUDY, 0.95)
    with pytest.raises(UsageError):
        edits.split_band(edits.with_bands(STUDY, Bands(0.015)), 0)
    with pytest.raises(ValueError, match="no bands"):
        edits.move_line(Study(), 0, 0.5)


def test_what_was_asked_of_a_band_goes_with_it_when_lines_come_and_go() -> None:
    wish = {letter: BandChoice(pinned=(letter,)) for letter in "ABCD"}
    mix = MixOptions()
    for letter, choice in wish.items():
        mix = mix.with_choice(letter, choice)
    study = Study(bands=Bands(0.8, (0.2, 0.4, 0.6)), mix=mix)

    split = edits.split_band(study, 1)
    assert [split.mix.choice(letter) for letter in "ABDE"] == list(wish.values())
    assert split.mix.choice("C") == BandChoice()
    assert edits.add_line(study, 0.3).mix == split.mix
    # The new half goes again: everything is as before.
    assert edits.remove_line(split, 1).mix == mix
    # Of two bands that become one, the upper one's wishes stay.
    merged = edits.remove_line(study, 0)
    assert [merged.mix.choice(letter) for letter in "ABC"] == [wish[k] for k in "ACD"]
    assert merged.mix.choice("D") == BandChoice()
    assert edits.move_line(study, 1, 0.45).mix == mix


def test_hands_go_with_the_bands_that_stay_whole():
    hands = tuple(Hands(band, "hue", "violet", band + 1) for band in range(4))
    study = with_hands(Study(bands=Bands(0.8, (0.2, 0.4, 0.6))), hands)
    split = split_band(study, 1)
    assert [(h.band, h.count) for h in split.hands] == [(0, 1), (3, 3), (4, 4)]
    joined = remove_line(study, 1)
    assert [(h.band, h.count) for h in joined.hands] == [(0, 1), (2, 4)]
    assert move_line(study, 0, 0.25).hands == hands
    assert with_bands(study, Bands(0.8, (0.3,))).hands == ()
    assert without_work(study).hands == ()
