from __future__ import annotations

from pathlib import Path

import pytest

from app.state.boxes import SavedBoxes
from core.errors import BoxError
from core.paint.box.box import SPLIT_PRIMARY, TWELVE_PAN, Box


def test_boxes_are_kept_by_name_and_replaced(tmp_path: Path) -> None:
    shelf = SavedBoxes(tmp_path / "boxes")
    assert shelf.boxes() == ()
    ours = Box("Our cupboard", TWELVE_PAN.paints)
    other = Box("our: cupboard", SPLIT_PRIMARY.paints)
    shelf.save(ours)
    shelf.save(other)
    assert shelf.boxes() == (ours, other)
    changed = Box("Our cupboard", SPLIT_PRIMARY.paints)
    shelf.save(changed)
    assert shelf.boxes() == (changed, other)
    shelf.remove("Our cupboard")
    shelf.remove("never there")
    assert shelf.boxes() == (other,)


def test_a_damaged_box_is_passed_over(tmp_path: Path) -> None:
    shelf = SavedBoxes(tmp_path)
    shelf.save(Box("Ours", TWELVE_PAN.paints))
    (tmp_path / "broken.json").write_text("{", encoding="utf-8")
    assert [box.name for box in shelf.boxes()] == ["Ours"]


def test_names_of_the_boxes_that_come_along_are_taken(tmp_path: Path) -> None:
    with pytest.raises(BoxError, match="another name"):
        SavedBoxes(tmp_path).save(TWELVE_PAN)


def test_a_folder_that_cannot_be_made_is_said(tmp_path: Path) -> None:
    (tmp_path / "file").write_text("", encoding="utf-8")
    with pytest.raises(BoxError, match="could not be kept"):
        SavedBoxes(tmp_path / "file" / "boxes").save(Box("Ours", TWELVE_PAN.paints))
