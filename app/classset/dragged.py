"""A picture of the class set on its way by mouse, from a card or a place to another place."""

from __future__ import annotations

from PySide6.QtCore import QByteArray, QMimeData, Qt
from PySide6.QtGui import QDrag, QPixmap
from PySide6.QtWidgets import QWidget

from app.drawing.pyramid import Pyramid

MIME = "application/x-gradewash-picture"


def begin_drag(source: QWidget, digest: str, picture: Pyramid | None) -> None:
    """Take a picture along with the mouse until it is let go."""
    drag, mime = QDrag(source), QMimeData()
    mime.setData(MIME, QByteArray(digest.encode("ascii")))
    drag.setMimeData(mime)
    if picture is not None:
        drag.setPixmap(QPixmap.fromImage(picture.levels[-1]))
    drag.exec(Qt.DropAction.MoveAction)


def digest_in(mime: QMimeData) -> str | None:
    """The picture that is dragged; None where it is something else."""
    if not mime.hasFormat(MIME):
        return None
    return bytes(mime.data(MIME).data()).decode("ascii", "replace")
