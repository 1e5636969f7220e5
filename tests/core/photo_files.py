"""Picture files of known content, made in memory for the tests of opening photos."""

from __future__ import annotations

import io
import struct
import zlib

import numpy as np
from PIL import Image

TOP, MIDDLE, BOTTOM = (70, 120, 190), (235, 205, 110), (170, 95, 70)
WIDTH, HEIGHT = 160, 144


def scene(top=TOP, middle=MIDDLE, bottom=BOTTOM, dtype=np.uint8):
    """Three flat stretches and a pale mark in the upper left corner, shape (144, 160, 3)."""
    array = np.empty((HEIGHT, WIDTH, 3), dtype=dtype)
    array[:48], array[48:96], array[96:] = top, middle, bottom
    array[:16, :16] = 245
    return array


def encode(array, form, **options):
    image = array if isinstance(array, Image.Image) else Image.fromarray(array)
    buffer = io.BytesIO()
    image.save(buffer, form, **options)
    return buffer.getvalue()


def jpeg(array=None, **options):
    options = {"quality": 95, "subsampling": 0, **options}
    return encode(scene() if array is None else array, "JPEG", **options)


def exif_of(orientation):
    exif = Image.Exif()
    exif[0x0112] = orientation
    return exif


def turned(array, orientation):
    """What a camera stores so that `orientation` brings `array` back upright (EXIF tag 0x0112)."""
    back = {
        2: Image.Transpose.FLIP_LEFT_RIGHT,
        3: Image.Transpose.ROTATE_180,
        4: Image.Transpose.FLIP_TOP_BOTTOM,
        5: Image.Transpose.TRANSPOSE,
        6: Image.Transpose.ROTATE_90,
        7: Image.Transpose.TRANSVERSE,
        8: Image.Transpose.ROTATE_270,
    }
    image = Image.fromarray(array)
    return np.asarray(image.transpose(back[orientation]) if orientation in back else image)


def codes(photo):
    """Colour at the middle of each stretch, and at the mark."""
    height, width = photo.pixels.shape[:2]
    rows = (height // 6, height // 2, 5 * height // 6)
    found = [photo.pixels[row, width // 2].astype(float) for row in rows]
    mark = photo.pixels[height // 20, width // 20].astype(float)
    return np.array(found), mark


def assert_scene(photo, tolerance, colours=(TOP, MIDDLE, BOTTOM), mark=245):
    assert (photo.width, photo.height) == (WIDTH, HEIGHT)
    found, at_mark = codes(photo)
    np.testing.assert_allclose(found, colours, atol=tolerance)
    if mark is not None:
        np.testing.assert_allclose(at_mark, mark, atol=tolerance + 2)


def _tag(content):
    return content + b"\0" * (-len(content) % 4)


def icc_profile(space, tags, pcs=b"XYZ ", device=b"mntr"):
    """An ICC version 2 profile of these tags (ICC.1:2001-04, clauses 6.1 to 6.3)."""
    table, body, at = b"", b"", 132 + 12 * len(tags)
    for name, content in tags.items():
        table += struct.pack(">4sII", name, at + len(body), len(content))
        body += _tag(content)
    size = at + len(body)
    head = struct.pack(">I4sI4s4s4s", size, b"lcms", 0x02400000, device, space, pcs)
    head += struct.pack(">6H", 2026, 1, 1, 0, 0, 0) + b"acsp" + bytes(28)
    head += struct.pack(">3i", 63190, 65536, 54061)  # D50
    return head.ljust(128, b"\0") + struct.pack(">I", len(tags)) + table + body


def _xyz(values):
    return b"XYZ \0\0\0\0" + struct.pack(">3i", *(round(v * 65536) for v in values))


def _gamma(gamma):
    return b"curv\0\0\0\0" + struct.pack(">IH", 1, round(gamma * 256))


def srgb_curve():
    """The curve of IEC 61966-2-1 as a parametric tag of kind 3."""
    values = (2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045)
    return b"para\0\0\0\0" + struct.pack(">HH5i", 3, 0, *(round(v * 65536) for v in values))


def rgb_profile(to_XYZ_D50, gamma=None, more=None):
    """A profile of a 3x3 matrix and one curve; the curve of sRGB when `gamma` is None."""
    curve = srgb_curve() if gamma is None else _gamma(gamma)
    columns = {n: _xyz(to_XYZ_D50[:, i]) for i, n in enumerate((b"rXYZ", b"gXYZ", b"bXYZ"))}
    head = {b"desc": b"desc\0\0\0\0\0\0\0\x05test\0", b"wtpt": _xyz((0.9642, 1, 0.8249))}
    curves = {b"rTRC": curve, b"gTRC": curve, b"bTRC": curve}
    return icc_profile(b"RGB ", {**head, **columns, **curves, **(more or {})})


def grey_profile(gamma):
    tags = {b"wtpt": _xyz((0.9642, 1, 0.8249)), b"kTRC": _gamma(gamma)}
    return icc_profile(b"GRAY", tags)


def cmyk_profile(Lab_of_ink):
    """A press profile with a table of the 16 full-ink corners (ICC.1:2001-04, lut8Type)."""
    identity = struct.pack(">9i", *(65536 * v for v in (1, 0, 0, 0, 1, 0, 0, 0, 1)))
    line = bytes(range(256))
    corners = b""
    for i in range(16):
        ink = [(i >> bit) & 1 for bit in (3, 2, 1, 0)]
        L, a, b = Lab_of_ink(*ink)
        corners += bytes([round(L * 2.55), round(a + 128), round(b + 128)])
    table = b"mft1\0\0\0\0" + bytes([4, 3, 2, 0]) + identity + line * 4 + corners + line * 3
    tags = {b"wtpt": _xyz((0.9642, 1, 0.8249)), b"A2B0": table, b"B2A0": _lab_to_cmyk()}
    return icc_profile(b"CMYK", tags, pcs=b"Lab ", device=b"prtr")


def _lab_to_cmyk():
    identity = struct.pack(">9i", *(65536 * v for v in (1, 0, 0, 0, 1, 0, 0, 0, 1)))
    line = bytes(range(256))
    return b"mft1\0\0\0\0" + bytes([3, 4, 2, 0]) + identity + line * 3 + bytes(8 * 4) + line * 4


def png_chunk(name, content):

    check = struct.pack(">I", zlib.crc32(name + content))
    return struct.pack(">I", len(content)) + name + content + check


def with_png_chunk(png, name, content):
    """The PNG with one more chunk right after its header."""
    return png[:33] + png_chunk(name, content) + png[33:]


def with_jpeg_segment(data, marker, body):
    """The JPEG with one more segment right after its start."""
    return data[:2] + bytes([0xFF, marker]) + struct.pack(">H", len(body) + 2) + body + data[2:]
