"""When a picture was taken, read before it is stripped; of the moments only their order is kept."""

from __future__ import annotations

import io
import re
from collections.abc import Sequence
from dataclasses import dataclass

from core.photo.quiet import quiet
from core.photo.sniff import kind_of

_EXIF = 0x8769
_MAKE, _MODEL, _CHANGED = 0x010F, 0x0110, 0x0132
_TAKEN, _FRACTION = 0x9003, 0x9291
_STAMP = re.compile(r"\d{4}:\d\d:\d\d \d\d:\d\d:\d\d")
_DISTINCT = 0.9  # of the moments: fewer, and they were not written when the shutter opened


@dataclass(frozen=True)
class Moment:
    """When a picture was taken, and by which kind of camera: never kept, never shown.

    Attributes
    ----------
    when : str
        Sorts as time does ("2027:03:18 10:15:02.50").
    camera : str
        Pictures of two cameras are not put in one order: their clocks differ.
    """

    when: str
    camera: str


def moment_of(data: bytes) -> Moment | None:
    """The moment a picture's own notes tell; None where they do not.

    Parameters
    ----------
    data : bytes
        The picture as it came, not stripped.

    Notes
    -----
    EXIF 3.0 (CIPA DC-008): DateTimeOriginal, SubSecTimeOriginal, Make, Model.
    """
    from PIL import Image  # deferred: start-up time

    try:
        with quiet():
            if kind_of(data[:4096]) in ("heif", "avif"):
                import pillow_heif  # deferred: start-up time

                exif = Image.Exif()
                exif.load(pillow_heif.open_heif(data).info.get("exif") or b"")
            else:
                with Image.open(io.BytesIO(data)) as image:
                    exif = image.getexif()
            within = exif.get_ifd(_EXIF)
            camera = f"{exif.get(_MAKE, '')}/{exif.get(_MODEL, '')}"
            when = str(within.get(_TAKEN) or exif.get(_CHANGED) or "")
            fraction = str(within.get(_FRACTION) or "").strip("\0 ")
    except Exception:  # whatever is wrong with the notes, the picture is opened all the same
        return None
    when = when.strip("\0 ")
    if not _STAMP.fullmatch(when) or when.startswith("0000"):
        return None
    return Moment(f"{when}.{fraction if fraction.isdecimal() else '0'}", camera)


def orders_by_time(moments: Sequence[Moment | None]) -> list[tuple[int, int] | None]:
    """(series, place) of each picture: a series a camera, in the order they were taken.

    Two of the same second stay in the order given. Where many have the same, the clock tells
    nothing and none of that camera's is put in order; nor is a picture without notes.

    >>> a, b = Moment("2027:03:18 10:15:02.0", "x"), Moment("2027:03:18 10:15:01.0", "x")
    >>> orders_by_time([a, None, b])
    [(0, 1), None, (0, 0)]
    """
    cameras: dict[str, list[int]] = {}
    for number, moment in enumerate(moments):
        if moment is not None:
            cameras.setdefault(moment.camera, []).append(number)
    orders: list[tuple[int, int] | None] = [None] * len(moments)
    series = 0
    for members in cameras.values():
        whens = [moment.when for k in members if (moment := moments[k]) is not None]
        if len(set(whens)) < _DISTINCT * len(whens):
            continue
        for place, (_, number) in enumerate(sorted(zip(whens, members, strict=True))):
            orders[number] = (series, place)
        series += 1
    return orders
