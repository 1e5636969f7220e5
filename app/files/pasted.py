"""A picture from the clipboard, made into bytes that can be opened as a file is."""

from __future__ import annotations

from PySide6.QtCore import QBuffer, QIODevice
from PySide6.QtGui import QImage

from core.errors import PhotoError
from core.i18n import translate


def png_of(image: QImage) -> bytes:
    """The picture as PNG.

    Raises
    ------
    PhotoError
        Qt could not write it.
    """
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    # Quality 100 is the least compression: this is only a way into `open_photo`. PySide wants the
    # format as str, though its stubs say bytes.
    if not image.save(buffer, "PNG", 100):  # type: ignore[call-overload]
        raise PhotoError(
            translate("opening", "The pasted picture could not be read: save it to a file first.")
        )
    return bytes(buffer.data().data())
