"""Scraps in a study: kept, moved with their bands, salvaged, and read by older versions' rules."""

from __future__ import annotations

import json
from dataclasses import replace

import pytest
from study_strategies import small_picture

from core.bands.lines import Bands
from core.errors import StudyFileError
from core.pictures import PictureStore
from core.scrap.kept import ScrapEntry
from core.study import Study, digests_of, remove_line, split_band
from core.study_file.container import pack, unpack
from core.study_file.contents import Contents
from core.study_file.document import study_from_bytes, study_from_contents, study_to_bytes


def lesson() -> tuple[Study, PictureStore]:
    store = PictureStore()
    scraps = tuple(
        ScrapEntry(
            store.add("scrap.jpg", small_picture(shade)),
            letter,
            (50.0, 10.0, -3.5),
            (("crimson", 3), ("sap_green", 1)),
            0.01,
            (("crimson", 0.25),),
            advised,
        )
        for shade, letter, advised in (
            (40, "A", ()),
            (90, "C", (("crimson", 1.0),)),
            (140, "C", None),
        )
    )
    return Study("Dusk", None, Bands(0.8, (0.2, 0.5)), scraps=scraps), store


def test_scraps_come_back_with_their_pictures() -> None:
    study, store = lesson()
    opened = study_from_bytes(study_to_bytes(study, store))
    assert opened.study == study
    assert set(opened.pictures) == digests_of(study)
    assert opened.gone == ()


def test_only_a_study_with_scraps_needs_the_newer_version() -> None:
    study, store = lesson()
    new, old = (
        json.loads(unpack(study_to_bytes(some, store)).json)
        for some in (study, replace(study, scraps=()))
    )
    assert (new["version"], old["version"]) == (2, 1)
    assert "scraps" not in old  # an older program refuses a part it does not know


def test_scraps_follow_their_bands() -> None:
    study, _ = lesson()
    assert [scrap.letter for scrap in split_band(study, 0).scraps] == ["A", "D", "D"]
    assert [scrap.letter for scrap in remove_line(study, 1).scraps] == ["A", "B", "B"]


def test_of_a_damaged_file_the_whole_scraps_are_kept_and_the_rest_told() -> None:
    study, store = lesson()
    contents = unpack(study_to_bytes(study, store))
    pictures = {name: data for name, data in contents.pictures.items() if "scrap2" not in name}
    opened = study_from_contents(Contents(contents.json, pictures, damaged=True))
    assert opened.study.scraps == (study.scraps[0], study.scraps[2])
    assert opened.gone == ("a scrap",)


@pytest.mark.parametrize(
    ("field", "value"), [("Lab", [1, 2]), ("letter", "AA"), ("load_ml", -1), ("parts", [])]
)
def test_a_scrap_that_cannot_be_right_is_refused(field: str, value: object) -> None:
    study, store = lesson()
    contents = unpack(study_to_bytes(study, store))
    parts = json.loads(contents.json)
    parts["scraps"][0][field] = value
    with pytest.raises(StudyFileError, match="a scrap"):
        study_from_bytes(pack(Contents(json.dumps(parts).encode(), contents.pictures)))
