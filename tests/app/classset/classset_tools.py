"""A small class in the window: a plain sky, flat sheets with tickets, checked in order."""

from __future__ import annotations

from pathlib import Path

from class_set_tools import TAG, plain_class_set, sheet_jpeg

from app.classset.page import ClassSetPage
from app.services.class_set import checker
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
