"""A folder of photos looked through: each as Read would say it, a bad one named, nothing scored."""

from __future__ import annotations

import json
import os
import shutil
from pathlib import Path

import numpy as np
import pytest
from PIL import Image

import sample_scenes
from core.choosing.look import THUMBNAIL, look_at
from core.choosing.through import SORTINGS, in_order, look_through, photos_in
from core.choosing.words import against, look_text
from core.cli import run
from core.errors import Cancelled, UsageError
from core.paint.box.box import DEFAULT_BOX, TWELVE_PAN
from core.photo import open_photo
from core.pipeline import propose_for, read_sky
from core.reading.wording import Wording

SCENES = ("dusk", "marsh", "fell")


@pytest.fixture(scope="module")
def folder(tmp_path_factory) -> Path:
    """Three skies, a clouded one, a picture that is none, and things that are no pictures."""
    folder = tmp_path_factory.mktemp("skies")
    for number, name in enumerate(SCENES):
        shutil.copy(sample_scenes.path(name), folder / f"sky {number + 8}.jpg")
    (folder / "sky 2.jpg").write_bytes(b"not a picture at all")
    (folder / "notes.txt").write_text("bring brushes")
    (folder / ".hidden.jpg").write_bytes(b"")
    (folder / "inside").mkdir()
    return folder


@pytest.fixture(scope="module")
def looked(folder):
    return list(look_through(photos_in(folder), DEFAULT_BOX))


def test_pictures_are_found_as_people_count(folder) -> None:
    names = [path.name for path in photos_in(folder)]
    assert names == ["sky 2.jpg", "sky 8.jpg", "sky 9.jpg", "sky 10.jpg"]


def test_a_picture_without_an_ending_is_found_too(tmp_path) -> None:
    shutil.copy(sample_scenes.path("dusk"), tmp_path / "IMG_0001")
    (tmp_path / "README").write_text("words")
    assert [path.name for path in photos_in(tmp_path)] == ["IMG_0001"]


def test_a_bad_file_is_named_and_stops_none_of_the_others(looked) -> None:
    assert [each.look is not None for each in looked] == [False, True, True, True]
    assert looked[0].sentence.endswith("choose a photo instead.")


def test_what_is_said_is_what_read_says(looked) -> None:
    for each, name in zip(looked[1:], SCENES, strict=True):
        photo = open_photo(sample_scenes.path(name))
        proposal = propose_for(photo)
        assert each.look.bands == proposal.bands
        assert each.look.readings == read_sky(photo, proposal).readings
        assert max(each.look.picture.shape) <= 2 * THUMBNAIL


def test_a_line_says_bands_hues_dull_ones_and_reach(looked) -> None:
    texts = [look_text(each.look, Wording()) for each in looked[1:]]
    assert texts[0].startswith("5 bands: orange, red, red-violet, violet and blue-violet ")
    assert "(primary, secondary and tertiary)." in texts[0]
    assert "None is dull." in texts[0]
    assert texts[1].startswith("3 bands, all greys. ")
    assert "dull" not in texts[1]
    assert all("The box reaches all." in text for text in texts)


def test_what_speaks_against_a_photo_is_said(tmp_path) -> None:
    """One colour only; light lost; another colour to the left: each is said, and no photo else."""
    rng = np.random.default_rng(3)
    flat = np.full((240, 360, 3), (110, 150, 200)) + rng.integers(-2, 3, (240, 360, 3))
    burnt = flat.copy()
    burnt[:100] = 255
    across = np.linspace(0, 1, 360)[None, :, None] * np.array((120, -20, -130))
    sides = np.clip(flat + across, 0, 255)
    wanted = {
        "flat": "nearly of one colour",
        "burnt": "the photo has lost light or detail",
        "sides": "more from left to right",
    }
    for name, pixels in (("flat", flat), ("burnt", burnt), ("sides", sides)):
        path = tmp_path / f"{name}.png"
        Image.fromarray(pixels.clip(0, 255).astype(np.uint8)).save(path)
        said = " ".join(against(look_at(path, TWELVE_PAN)))
        assert wanted[name] in said, (name, said)
    assert not against(look_at(sample_scenes.path("dusk"), TWELVE_PAN))


def test_what_the_box_does_not_reach_is_named() -> None:
    blues = TWELVE_PAN.only(["ultramarine", "cerulean_blue"])
    look = look_at(sample_scenes.path("dusk"), blues)
    assert {"C", "D", "E"} <= set(look.beyond)
    assert "The box does not reach" in look_text(look, Wording())


def test_sorting_changes_the_order_and_nothing_else(looked) -> None:
    looks = [each.look for each in looked if each.look]
    for sorting in SORTINGS:
        assert sorted(map(id, in_order(looks, sorting))) == sorted(map(id, looks))
    assert [each.bands.count for each in in_order(looks, "bands")] == [5, 4, 3]
    assert in_order(looks[::-1], "folder") == tuple(looks)
    hues = [len(each.classes) for each in in_order(looks, "hues")]
    assert hues == sorted(hues, reverse=True)


def test_it_can_be_stopped(folder) -> None:
    stopped = []

    def should_stop() -> bool:
        stopped.append(True)
        return len(stopped) > 3

    with pytest.raises(Cancelled):
        list(look_through(photos_in(folder)[1:], DEFAULT_BOX, should_stop))


@pytest.mark.parametrize(
    ("made", "said"),
    [("nothing", "There is no folder"), ("file", "is not a folder"), ("empty", "no photo in")],
)
def test_a_folder_that_will_not_do_gets_one_sentence(tmp_path, made, said) -> None:
    path = tmp_path / "skies"
    if made == "file":
        path.write_text("x")
    elif made == "empty":
        path.mkdir()
    with pytest.raises(UsageError, match=said) as caught:
        photos_in(path)
    assert str(caught.value).count(". ") == 0


@pytest.mark.skipif(not hasattr(os, "fsencode") or os.name == "nt", reason="names are bytes there")
def test_names_that_are_not_utf8_do_no_harm(tmp_path, capsys) -> None:
    shutil.copy(sample_scenes.path("fell"), os.fsencode(tmp_path) + b"/caf\xe9.jpg")
    assert run(["choose", str(tmp_path)]) == 0
    assert "4 bands" in capsys.readouterr().out


def test_the_command_prints_a_line_a_photo_or_json(folder, capsys) -> None:
    assert run(["choose", str(folder)]) == 0
    out, err = capsys.readouterr()
    assert "sky 8.jpg: 5 bands" in out.replace("\n", " ")
    assert err.startswith("gradewash: sky 2.jpg: ")
    assert run(["choose", str(folder), "--json", "--box", "primary"]) == 0
    found = json.loads(capsys.readouterr().out)
    assert [sky["bands"] for sky in found["skies"]] == [5, 3, 4]
    assert found["refused"][0]["file"] == "sky 2.jpg"
    assert run(["choose", str(folder / "none")]) == 2
