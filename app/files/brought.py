"""What a drop or a paste brings: files by their real names, or a picture."""

from __future__ import annotations

import os
from pathlib import Path
from urllib.parse import unquote_to_bytes

from PySide6.QtCore import QMimeData, QUrl
from PySide6.QtGui import QImage

_REPLACED = "\ufffd"


def paths_in(mime: QMimeData) -> tuple[Path, ...]:
    """The local files in what was dropped or copied."""
    urls = [QUrl(url) for url in mime.urls()] if mime.hasUrls() else []
    return tuple(_path_of(url) for url in urls if url.isLocalFile())


def image_in(mime: QMimeData) -> QImage | None:
    """The picture in what was dropped or copied; None where there is none, or an empty one."""
    if not mime.hasImage():
        return None
    found = mime.imageData()
    image = QImage(found) if isinstance(found, QImage) else QImage()
    return None if image.isNull() else image


def as_on_disk(path: Path) -> Path:
    """The file that Qt means by a name with a replacement character in it.

    Qt's names are Unicode: of a name that is not UTF-8 it tells the wrong bytes by that one sign.
    Where exactly one file of the folder reads so, it is that one.
    """
    if _REPLACED not in path.name or path.exists():
        return path
    try:
        alike = [
            entry
            for entry in os.listdir(path.parent)
            if os.fsencode(entry).decode("utf-8", "replace") == path.name
        ]
    except OSError:
        return path
    return path.with_name(alike[0]) if len(alike) == 1 else path


def _path_of(url: QUrl) -> Path:
    if os.name == "nt" or url.host():
        return Path(url.toLocalFile())
    # Not `toLocalFile`, which loses what is not UTF-8.
    encoded = url.path(QUrl.ComponentFormattingOption.FullyEncoded)
    return as_on_disk(Path(os.fsdecode(unquote_to_bytes(encoded))))
