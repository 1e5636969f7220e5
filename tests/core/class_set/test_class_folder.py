"""The folder: what is acknowledged is kept, whatever happens; nothing foreign is touched."""

from __future__ import annotations

import errno
import json
import os
import random
from dataclasses import replace
from pathlib import Path

import pytest
from class_set_tools import TAG, made_folder, phone_exif, sheet_jpeg
from to_be_killed import parent_of

import core.class_set.folder as folder_module
from core.class_set import edits
from core.class_set.bringing import anonymous_name, bring_in, files_in
from core.class_set.deleting import delete_class_set
from core.class_set.folder import ClassFolder, open_folder, read_class_set
from core.class_set.model import Marking
from core.class_set.placing import place_all
from core.class_set.schema import class_set_from_json, class_set_to_json
from core.class_set.studies import study_bytes, study_of, with_study
from core.class_set.ticket import Slot, Ticket
from core.errors import ClassSetError
from core.sheet.options import SheetOptions
from core.study_file.document import study_from_bytes
from core.worksheet.worksheet import OwnScores, SheetPage, Worksheet

ROOT = Path(__file__).parents[3]
PRIVATE = (b"Petra", b"Beispiel", b"Lumenix", b"Model Nine", b"2027:03", b"GPS", b"Anna")


def bring(folder: ClassFolder, *files: Path) -> list[str]:
    return [told.sentence for told in bring_in(folder, files_in(files)) if told.sentence]


def pictures(where: Path, *tickets: Ticket | None, exif: bool = True) -> list[Path]:
    where.mkdir(exist_ok=True)
    files = []
    for k, ticket in enumerate(tickets):
        file = where / f"IMG_{2000 + k}.jpg"
        notes = phone_exif(f"2027:03:18 10:15:{k:02d}") if exif else None
        file.write_bytes(sheet_jpeg(ticket, seed=k + 1, exif=notes))
        files.append(file)
    return files


def full_set(folder: ClassFolder):
    """The folder's class set with something in every field."""
    options = SheetOptions(((0.1, 0.1), (0.9, 0.1), (0.9, 0.9), (0.1, 0.9)), 1, True, 1.4)
    class_set = folder.class_set
    digest = class_set.brought[0].digest
    class_set = edits.place(class_set, digest, Slot(2, 1))
    class_set = edits.with_options(class_set, digest, options)
    page = SheetPage(OwnScores(7, 8, None, 4), "Less water.", "value", "2027-03-18")
    class_set = edits.with_worksheet(class_set, 2, Worksheet(pages=(page, SheetPage())))
    said = Marking("Good greys.", "Wetter paper.", "Well done.", "B+", ("late", ""), True)
    return edits.with_marking(class_set, 2, said)


def test_everything_comes_back_as_it_was(tmp_path: Path) -> None:
    with made_folder(tmp_path) as folder:
        bring(folder, *pictures(tmp_path / "in", Ticket(TAG, 1, "1"), None))
        folder.save(full_set(folder))
        kept = folder.class_set
    with open_folder(tmp_path / "7b", tmp_path / "data") as again:
        assert again.class_set == kept
        assert again.missing == ()
    assert read_class_set(tmp_path / "7b") == kept


def test_bringing_in_twice_adds_nothing(tmp_path: Path) -> None:
    files = pictures(tmp_path / "in", Ticket(TAG, 1, "1"), Ticket(TAG, 1, "2"), None)
    with made_folder(tmp_path) as folder:
        bring(folder, tmp_path / "in")
        before = (folder.path / "class-set.json").read_bytes()
        kept = sorted((folder.path / "pictures").iterdir())
        bring(folder, tmp_path / "in", files[0])
        assert (folder.path / "class-set.json").read_bytes() == before
        assert sorted((folder.path / "pictures").iterdir()) == kept


def test_order_of_the_shots_is_kept_and_nothing_else_of_their_moments(tmp_path: Path) -> None:
    pictures(tmp_path / "in", *(Ticket(TAG, k, "1") for k in (3, 1, 2)))
    with made_folder(tmp_path) as folder:
        bring(folder, tmp_path / "in")
        assert [each.order for each in folder.class_set.brought] == [(0, 0), (0, 1), (0, 2)]


def test_no_place_name_or_camera_in_any_file(tmp_path: Path) -> None:
    files = pictures(tmp_path / "in", Ticket(TAG, 1, "1"), Ticket(TAG, 1, "2"))
    named = files[0].rename(tmp_path / "in" / "Anna Beispiel sheet 1.jpg")
    assert b"Petra" in named.read_bytes()
    with made_folder(tmp_path) as folder:
        bring(folder, tmp_path / "in")
        out = study_bytes(folder, 1)
    everything = [f.read_bytes() for f in (tmp_path / "7b").rglob("*") if f.is_file()]
    for data in (*everything, out):
        assert not any(word in data for word in PRIVATE)


@pytest.mark.parametrize(
    "name", ["IMG_2063.jpg", "DSC00017.JPG", "20270318_101502.jpg", "PXL_20270318_101502.MP.jpg"]
)
def test_a_cameras_own_names_stay(name: str) -> None:
    assert anonymous_name(name, 1) == name


@pytest.mark.parametrize(
    "name", ["anna.jpg", "Berg_1.jpg", "IMG Anna.jpg", "K7 first.heic", "é.png"]
)
def test_any_other_name_goes(name: str) -> None:
    assert anonymous_name(name, 12).startswith("picture 012.")


def test_one_bad_file_does_not_stop_the_others(tmp_path: Path) -> None:
    files = pictures(tmp_path / "in", Ticket(TAG, 1, "1"))
    (tmp_path / "in" / "IMG_1.jpg").write_bytes(b"no picture")
    with made_folder(tmp_path) as folder:
        wrong = bring(folder, tmp_path / "in")
        assert len(wrong) == 1
        assert len(folder.class_set.brought) == len(files)


def test_a_full_disk_half_way_keeps_what_was_told(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    pictures(tmp_path / "in", *(Ticket(TAG, k, "1") for k in (1, 2, 3)))
    written = folder_module.write_file
    calls = 0

    def full(path: Path, data: bytes, **options: bool) -> None:
        nonlocal calls
        calls += 1
        if calls > 3:
            raise OSError(errno.ENOSPC, "full")
        written(path, data, **options)

    with made_folder(tmp_path) as folder:
        monkeypatch.setattr(folder_module, "write_file", full)
        told = []
        with pytest.raises(ClassSetError, match="room"):
            told += list(bring_in(folder, files_in([tmp_path / "in"])))
        monkeypatch.undo()
    with open_folder(tmp_path / "7b", tmp_path / "data") as again:
        assert len(again.class_set.brought) == 1
        for each in again.class_set.brought:
            again.read_picture(each.digest)


def test_open_elsewhere_is_said(tmp_path: Path) -> None:
    with (
        made_folder(tmp_path),
        pytest.raises(ClassSetError, match="open in another window"),
    ):
        open_folder(tmp_path / "7b", tmp_path / "data")


def test_somebody_elses_change_is_not_overwritten(tmp_path: Path) -> None:
    with made_folder(tmp_path) as folder:
        file = folder.path / "class-set.json"
        file.write_bytes(file.read_bytes().replace(b'"7b"', b'"8c"'))
        with pytest.raises(ClassSetError, match="Somebody else"):
            folder.save(edits.with_title(folder.class_set, "9d"))
        assert b'"8c"' in file.read_bytes()


@pytest.mark.parametrize(
    ("change", "words"),
    [
        ({"version": 2}, "newer"),
        ({"format": "something"}, "no class set"),
        ({"surprise": 1}, "cannot be right"),
        ({"students": [{"number": 1, "code": "1"}, {"number": 1, "code": "2"}]}, "cannot be right"),
        ({"photo": "../../etc"}, "cannot be right"),
    ],
)
def test_a_damaged_or_newer_file_is_refused(tmp_path: Path, change: dict, words: str) -> None:
    with made_folder(tmp_path) as folder:
        file = folder.path / "class-set.json"
    kept = json.loads(file.read_bytes())
    file.write_text(json.dumps(kept | change))
    with pytest.raises(ClassSetError, match=words):
        open_folder(tmp_path / "7b", tmp_path / "data")


def test_pictures_nobody_speaks_of_go_and_missing_ones_are_named(tmp_path: Path) -> None:
    with made_folder(tmp_path) as folder:
        bring(folder, *pictures(tmp_path / "in", Ticket(TAG, 1, "1")))
        stray = folder.path / "pictures" / ("a" * 64)
        stray.write_bytes(b"half brought in")
        foreign = folder.path / "pictures" / "holiday.jpg"
        foreign.write_bytes(b"not ours")
        folder.picture_path(folder.class_set.brought[0].digest).unlink()
    with open_folder(tmp_path / "7b", tmp_path / "data") as again:
        assert again.missing == ("IMG_2000.jpg",)
        assert not stray.exists()
        assert foreign.exists()


def test_a_study_goes_out_and_comes_in_again(tmp_path: Path) -> None:
    with made_folder(tmp_path) as folder:
        bring(folder, *pictures(tmp_path / "in", Ticket(TAG, 2, "1"), Ticket(TAG, 2, "2")))
        page = SheetPage(OwnScores(7, 8, 5), "Less water.", "value")
        worksheet = Worksheet(pages=(page, SheetPage()))
        folder.save(edits.with_worksheet(folder.class_set, 2, worksheet))
        said = Marking("Good greys.", "Wetter paper.", "", "9")
        folder.save(edits.with_marking(folder.class_set, 2, said))
        opened = study_from_bytes(study_bytes(folder, 2))
        study = opened.study
        assert study.worksheet.student_code == "02"
        assert "Good greys." in study.worksheet.remark
        assert "9" not in study.worksheet.remark
        assert with_study(folder.class_set, 2, study_of(folder.class_set, 2)).entry(2) == (
            folder.class_set.entry(2)
        )
        file = tmp_path / "handed in.gradewash"
        file.write_bytes(study_bytes(folder, 2))
    (tmp_path / "other").mkdir()
    with made_folder(tmp_path / "other") as other:
        assert bring(other, file) == []
        assert place_all(other.class_set).digest_at(Slot(2, 1)) is not None
        assert other.class_set.entry(2).worksheet == worksheet
        assert other.class_set.entry(2).marking == Marking()


def test_a_study_of_nobody_or_of_another_photo_is_asked_about(tmp_path: Path) -> None:
    with made_folder(tmp_path) as folder:
        study = study_of(folder.class_set, 1)
        photo = folder.read_picture(study.photo.digest)
        from core.study_file.document import study_to_bytes

        nobody = replace(study, worksheet=Worksheet(student_code="zz"))
        files = []
        for name, one in (("nobody", nobody), ("other", replace(study, photo=None))):
            files.append(tmp_path / f"{name}.gradewash")
            files[-1].write_bytes(study_to_bytes(one, {study.photo.digest: photo}))
        wrong = bring(folder, *files)
        assert ["code of this class" in wrong[0], "another photo" in wrong[1]] == [True, True]


def test_delete_leaves_the_folder_empty(tmp_path: Path) -> None:
    with made_folder(tmp_path) as folder:
        bring(folder, *pictures(tmp_path / "in", Ticket(TAG, 1, "1")))
    delete_class_set(tmp_path / "7b", tmp_path / "data")
    assert list((tmp_path / "7b").iterdir()) == []
    assert list((tmp_path / "data" / "open").iterdir()) == []


@pytest.mark.skipif(os.name == "nt", reason="links need rights there")
def test_delete_touches_nothing_foreign_and_follows_no_link(tmp_path: Path) -> None:
    outside = tmp_path / "outside"
    outside.mkdir()
    (outside / ("b" * 64)).write_bytes(b"theirs")
    with made_folder(tmp_path) as folder:
        bring(folder, *pictures(tmp_path / "in", Ticket(TAG, 1, "1")))
    top = tmp_path / "7b"
    (top / "notes.txt").write_text("mine")
    (top / "pictures" / ("c" * 64)).write_bytes(b"named as ours are, but not ours")
    (top / "pictures" / ("d" * 64)).symlink_to(outside / ("b" * 64))
    (top / "checks").symlink_to(outside)
    delete_class_set(top, tmp_path / "data")
    assert (outside / ("b" * 64)).read_bytes() == b"theirs"
    assert sorted(each.name for each in top.iterdir()) == ["checks", "notes.txt", "pictures"]
    assert sorted(each.name for each in (top / "pictures").iterdir()) == ["c" * 64, "d" * 64]


def test_delete_of_what_is_no_class_set_removes_nothing(tmp_path: Path) -> None:
    (tmp_path / "class-set.json").write_text('{"format": "another program"}')
    with pytest.raises(ClassSetError, match="nothing was removed"):
        delete_class_set(tmp_path, tmp_path / "data")
    assert (tmp_path / "class-set.json").exists()


def test_json_does_not_change_from_save_to_save(tmp_path: Path) -> None:
    with made_folder(tmp_path) as folder:
        data = class_set_to_json(folder.class_set)
        photo = folder.read_picture(folder.class_set.exercise.photo.digest)
        again = class_set_to_json(class_set_from_json(data, photo))
        assert class_set_to_json(class_set_from_json(again, photo)) == again


@pytest.mark.skipif(os.name == "nt", reason="kills as POSIX does")
def test_kills_lose_nothing_acknowledged(tmp_path: Path) -> None:
    """A small version of `benchmarks/class_set.py kills`: while adding, placing and marking."""
    rng = random.Random(5)
    with made_folder(tmp_path):
        pass
    pictures(tmp_path / "in", *(Ticket(TAG, k, "1") for k in (1, 2, 3, 4)))
    with parent_of("simulator.class_worker", "main", str(tmp_path)) as parent:
        for _ in range(8):
            # It says first that it is ready.
            lines = parent.kill_one(1 + rng.randrange(6), rng.uniform(0.0, 0.1))
            told = [(what, value) for what, value in (line.split(" ", 1) for line in lines[1:])]
            with open_folder(tmp_path / "7b", tmp_path / "data") as again:
                assert_all_kept(again, told)


def assert_all_kept(folder: ClassFolder, told: list[tuple[str, str]]) -> None:
    """Every step told is there, and no picture is there twice."""
    held = {each.digest for each in folder.class_set.brought}
    assert len(held) == len(folder.class_set.brought)
    for what, value in told:
        if what.startswith("added"):
            assert value in held
            folder.read_picture(value)
        if what == "mark":
            assert int(folder.class_set.entry(1).marking.mark) >= int(value)
    if told and told[-1][0].startswith("placed"):
        # What is saved next, told or not, is a mark: this place must still be held.
        number, index = map(int, told[-1][0].removeprefix("placed"))
        assert folder.class_set.picture(told[-1][1]).hand == Slot(number, index)
