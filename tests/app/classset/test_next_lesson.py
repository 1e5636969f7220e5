"""A new lesson from the class set that is open: the task stays, nobody's work does."""

from __future__ import annotations

from pathlib import Path

from class_set_tools import TAG, made_folder, sheet_jpeg
from PySide6.QtWidgets import QApplication

from app.classset.new_class import NewClassDialog
from core.class_set import edits
from core.class_set.bringing import bring_in, files_in
from core.class_set.folder import read_class_set
from core.class_set.model import Marking, new_class_set
from core.class_set.ticket import Ticket


def test_it_takes_the_task_and_the_list_and_is_opened(window, qtbot, tmp_path: Path) -> None:
    (tmp_path / "in").mkdir()
    (tmp_path / "in" / "IMG_1.jpg").write_bytes(sheet_jpeg(Ticket(TAG, 1, "1")))
    with made_folder(tmp_path) as folder:
        list(bring_in(folder, files_in([tmp_path / "in"])))
        said = Marking("Good greys.", "Wetter paper.", "Well done.", "B+")
        folder.save(edits.with_marking(folder.class_set, 1, said))
        before = folder.class_set
    desk = window.desk
    desk.open(tmp_path / "7b")
    qtbot.waitUntil(lambda: desk.class_set is not None and not desk.working, timeout=30_000)
    window.page("classset").actions_of_class.next_lesson()

    def dialogs() -> list[NewClassDialog]:
        return [
            each
            for each in QApplication.topLevelWidgets()
            if isinstance(each, NewClassDialog) and each.isVisible()
        ]

    qtbot.waitUntil(lambda: bool(dialogs()), timeout=30_000)
    (dialog,) = dialogs()
    assert dialog.title.text() == "7b"
    assert dialog.same.isChecked()
    assert dialog.target == tmp_path / "7b 2"  # the other one stays
    dialog.accept()
    qtbot.waitUntil(lambda: desk.path == tmp_path / "7b 2", timeout=30_000)
    qtbot.waitUntil(lambda: not desk.working, timeout=30_000)
    assert desk.class_set == new_class_set("7b", before.class_list, before.exercise)
    assert read_class_set(tmp_path / "7b") == before
    assert len(list((tmp_path / "7b 2" / "pictures").iterdir())) == 1
