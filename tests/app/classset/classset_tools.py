"""A small class in the window: a plain sky, flat sheets with tickets, checked in order."""

from __future__ import annotations

import shutil
from pathlib import Path

from class_set_tools import TAG, made_folder, plain_class_set, sheet_jpeg

from app.classset.page import ClassSetPage
from app.services.class_set import checker
from core.class_set import bringing
from core.class_set.checking import check_folder
from core.class_set.ticket import Ticket


class InOrder:
    """In place of processes, whose start costs seconds: sheets are checked in the worker."""

    executor = None

    def __init__(self, begin: object = None) -> None:
        self.begin = begin

    def renew(self) -> None:
        raise AssertionError("nothing to renew")

    def __enter__(self) -> InOrder:
        return self

    def __exit__(self, *_: object) -> None:
        pass


def check_in_order(monkeypatch) -> None:
    """No processes."""
    monkeypatch.setattr(checker, "CheckingPool", InOrder)


def write_pictures(folder: Path) -> tuple[Path, ...]:
    """Sheet 1 of 01 and 02, sheet 2 of 01, one without a ticket."""
    folder.mkdir(exist_ok=True)
    wanted = {
        "IMG_1.jpg": (Ticket(TAG, 1, "1"), 1),
        "IMG_2.jpg": (Ticket(TAG, 1, "2"), 2),
        "IMG_3.jpg": (Ticket(TAG, 2, "1"), 3),
        "IMG_4.jpg": (None, 4),
    }
    for name, (ticket, seed) in wanted.items():
        (folder / name).write_bytes(sheet_jpeg(ticket, seed=seed))
    return tuple(sorted(folder.iterdir()))


def checked_class_of(where: Path, pictures: tuple[Path, ...], students: int = 4) -> Path:
    """The folder of a class set with these pictures, brought in and checked."""
    with made_folder(where, students) as folder:
        for _ in bringing.bring_in(folder, pictures):
            pass
        for _ in check_folder(folder):
            pass
        return folder.path


def open_copy(window, qtbot, monkeypatch, source: Path, target: Path) -> ClassSetPage:
    """The page with a copy of a class set's folder, nothing under way."""
    check_in_order(monkeypatch)
    shutil.copytree(source, target)
    window.desk.open(target)
    qtbot.waitUntil(lambda: window.desk.class_set is not None, timeout=20_000)
    page = window.page("classset")
    assert isinstance(page, ClassSetPage)
    settle(window, qtbot)
    return page


def make_class(window, qtbot, folder: Path, students: int = 4) -> ClassSetPage:
    """A new class set without pictures in the window."""
    class_set, photo = plain_class_set(students)
    window.desk.create(folder, class_set, photo)
    qtbot.waitUntil(lambda: window.desk.class_set is not None, timeout=20_000)
    page = window.page("classset")
    assert isinstance(page, ClassSetPage)
    return page


def settle(window, qtbot) -> None:
    """Until nothing is under way and all is saved."""
    qtbot.waitUntil(lambda: not window.desk.working, timeout=60_000)


def bring_in(window, qtbot, paths) -> None:
    """Bring pictures in, and wait until they are checked."""
    window.desk.add(paths)
    qtbot.waitUntil(lambda: not window.desk.working, timeout=60_000)
