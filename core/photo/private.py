"""A picture's bytes without what they say about people: place, owner, camera, words.

Two ways, and both are opened again before they are trusted. A JPEG's compressed picture is
copied into a new file that holds nothing else (`bare_jpeg`): nothing is lost, and phones' photos
stay small. Everything else, and every JPEG that is not wholly ordinary, is written anew from its
pixels, as they are read, into a WebP without loss (`written_anew`): a parser that follows every
corner of six formats could still leave one out.
"""

from __future__ import annotations

import io

import numpy as np

from core.errors import PhotoError
from core.photo.bare_jpeg import bare_jpeg, ends_with_picture
from core.photo.decoded import damaged
from core.photo.model import Photo
from core.photo.open import open_photo
from core.photo.sniff import kind_of

# libwebp cannot write a longer side; a PNG can.
_MOST_WEBP_SIDE = 16_383


def strip_private(data: bytes) -> bytes:
    """The same picture, and nothing but the picture.

    Parameters
    ----------
    data : bytes
        Content of a picture file that `open_photo` opens.

    Returns
    -------
    bytes
        A file that `open_photo` reads as exactly the same pixels. An ordinary JPEG keeps its
        compressed picture bit for bit, its turn and the numbers of its colour profile; anything
        else becomes a lossless WebP (a PNG where a side is too long for that) of the working
        copy, in sRGB and upright.

    Raises
    ------
    PhotoError
        Not a picture, or one that cannot be opened.
    """
    kind = kind_of(data[:4096])
    photo = open_photo(data)
    if kind == "jpeg":
        try:
            bare = bare_jpeg(data)
            if _same(open_photo(bare), photo) and ends_with_picture(bare):
                return bare
        except (ValueError, IndexError, PhotoError):
            pass  # built too unusually, or damaged: its pixels are written anew
    anew = written_anew(photo)
    again = open_photo(anew)
    same_cut = (again.opaque is None) == (photo.opaque is None)
    if not np.array_equal(again.pixels, photo.pixels) or not same_cut:
        raise PhotoError(damaged())
    return anew


def written_anew(photo: Photo) -> bytes:
    """A file of these pixels, without loss: WebP, or PNG where a side is too long for it."""
    from PIL import Image  # deferred: start-up time

    image = Image.fromarray(photo.pixels)
    if photo.opaque is not None:
        image.putalpha(Image.fromarray(photo.opaque))
    buffer = io.BytesIO()
    if max(image.size) <= _MOST_WEBP_SIDE:
        # The quickest setting: it is smaller than a PNG and takes a third of its time.
        image.save(buffer, "WEBP", lossless=True, quality=0, method=0, exact=True)
    else:
        image.save(buffer, "PNG")
    return buffer.getvalue()


def _same(one: Photo, other: Photo) -> bool:
    return (one.width, one.height) == (other.width, other.height) and np.array_equal(
        one.pixels, other.pixels
    )
