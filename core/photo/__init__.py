"""Opening a photo: any common picture format to upright sRGB pixels.

May import `reading` and `colour`; `bands` and the sheet import it.

>>> import numpy as np, io
>>> from PIL import Image
>>> buffer = io.BytesIO()
>>> Image.new("RGB", (30, 20), (70, 120, 190)).save(buffer, "PNG")
>>> photo = open_photo(buffer.getvalue(), name="sky.png")
>>> photo.width, photo.height, photo.pixels[0, 0].tolist()
(30, 20, [70, 120, 190])
"""

from __future__ import annotations

from core.photo.decoded import MAX_PIXELS
from core.photo.model import Photo
from core.photo.open import WORK_PIXELS, open_full, open_photo
from core.photo.private import strip_private

__all__ = ["MAX_PIXELS", "WORK_PIXELS", "Photo", "open_full", "open_photo", "strip_private"]
