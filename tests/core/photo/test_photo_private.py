"""Nothing that says where or who stays in a picture's bytes, and no pixel changes."""

from __future__ import annotations

import io

import numpy as np
import pillow_heif
import pytest
import tifffile
from photo_files import encode, jpeg, png_chunk, rgb_profile, scene, turned, with_jpeg_segment
from PIL import Image

from core.errors import PhotoError
from core.photo import open_photo, strip_private
from core.photo.private import minimal_exif

SECRETS = (
    b"Wilhelmina",
    b"SN-4711-0815",
    b"Lerchenweg 12",
    b"secretnote",
    b"52deg31",
    b"PrivateXMP",
)
XMP = b'<x:xmpmeta xmlns:x="adobe:ns:meta/"><a>PrivateXMP Wilhelmina</a></x:xmpmeta>'
# Published primaries of sRGB to XYZ under D50, rounded; any other matrix would do here.
ICC = rgb_profile(np.array([[0.436, 0.385, 0.143], [0.222, 0.717, 0.061], [0.014, 0.097, 0.714]]))


def private_exif(orientation=1):
    exif = Image.Exif()
    exif[0x0112] = orientation
    exif[0x010E] = "Lerchenweg 12"  # description
    exif[0x013B] = "Wilhelmina"  # artist
    exif[0x8298] = "Wilhelmina"  # copyright
    inner = exif.get_ifd(0x8769)
    inner[0xA431] = "SN-4711-0815"  # body serial number
    inner[0x927C] = b"secretnote" * 4  # maker note
    inner[0x9286] = b"ASCII\0\0\0secretnote"  # user comment
    gps = exif.get_ifd(0x8825)
    gps[1], gps[2], gps[29] = "N", (52.0, 31.0, 12.0), "52deg31"
    return exif.tobytes()


def heic():
    buffer = io.BytesIO()
    image = pillow_heif.from_pillow(Image.fromarray(turned(scene(), 6)))
    image.info["exif"], image.info["xmp"] = private_exif(6), XMP
    image.save(buffer, quality=90)
    return buffer.getvalue()


def private_jpeg(**options):
    data = jpeg(turned(scene(), 6), exif=private_exif(6), icc_profile=ICC, **options)
    data = with_jpeg_segment(data, 0xE1, b"http://ns.adobe.com/xap/1.0/\0" + XMP)
    data = with_jpeg_segment(data, 0xFE, b"secretnote")
    data = with_jpeg_segment(data, 0xED, b"Photoshop 3.0\x008BIM Wilhelmina")
    return data + b"film that a phone appends: secretnote"


def private_png():
    data = encode(turned(scene(), 6), "PNG", exif=private_exif(6), icc_profile=ICC)
    notes = png_chunk(b"tEXt", b"Author\0Wilhelmina")
    notes += png_chunk(b"iTXt", b"XML:com.adobe.xmp\0\0\0\0\0" + XMP)
    return data[:33] + notes + data[33:] + b"secretnote"


def private_tiff(**options):
    tags = {270: "Lerchenweg 12", 315: "Wilhelmina", 700: XMP, 42033: "SN-4711-0815"}
    exif = Image.Exif()
    exif.load(private_exif(6))
    for tag, value in tags.items():
        exif[tag] = value
    return encode(turned(scene(), 6), "TIFF", exif=exif, icc_profile=ICC, **options)


def private_gif():
    return encode(Image.fromarray(scene()).quantize(8), "GIF", comment=b"secretnote Wilhelmina")


FILES = {
    "jpeg": private_jpeg,
    "progressive": lambda: private_jpeg(progressive=True),
    "png": private_png,
    "webp": lambda: encode(
        turned(scene(), 6), "WEBP", lossless=True, exif=private_exif(6), xmp=XMP, icc_profile=ICC
    ),
    "tiff": private_tiff,
    "tiff lzw": lambda: encode(
        turned(scene(), 6),
        "TIFF",
        compression="tiff_lzw",
        tiffinfo={270: "Lerchenweg 12", 315: "Wilhelmina", 274: 6},
        icc_profile=ICC,
    ),
    "gif": private_gif,
    "heic": heic,
    "avif": lambda: encode(turned(scene(), 6), "AVIF", exif=private_exif(6), xmp=XMP),
}


@pytest.mark.parametrize("kind", FILES)
def test_secrets_go_and_the_picture_stays(kind):
    data = FILES[kind]()
    assert any(secret in data for secret in SECRETS)
    stripped = strip_private(data)
    for secret in SECRETS:
        assert secret not in stripped
    before, after = open_photo(data), open_photo(stripped)
    np.testing.assert_array_equal(before.pixels, after.pixels)
    assert (before.width, before.height) == (after.width, after.height)
    assert strip_private(stripped) == stripped


@pytest.mark.parametrize("kind", FILES)
def test_other_readers_agree(kind):
    """Pillow and pillow-heif, as independent readers, find no place and the same profile."""
    stripped = strip_private(FILES[kind]())
    if kind == "heic":
        info = pillow_heif.open_heif(stripped).info
        exif = Image.Exif()
        exif.load(info["exif"] or b"")
        assert not exif.get_ifd(0x8825)
        return
    with Image.open(io.BytesIO(stripped)) as reread:
        assert not reread.getexif().get_ifd(0x8825)
        if kind not in ("gif", "avif"):
            assert reread.info.get("icc_profile") == ICC


def test_compressed_pixels_are_bit_exact():
    data = private_jpeg()
    scan = data[data.rindex(b"\xff\xda") : data.rindex(b"\xff\xd9") + 2]
    assert strip_private(data).endswith(scan)
    png = private_png()
    at = png.index(b"IDAT")
    size = int.from_bytes(png[at - 4 : at], "big")
    assert png[at : at + size + 8] in strip_private(png)


def test_kinds_that_keep_their_length():
    for data in (heic(), private_tiff(), FILES["avif"]()):
        assert len(strip_private(data)) == len(data)


def test_a_thumbnail_goes():
    exif = Image.Exif()
    exif.load(private_exif())
    block = b"Exif\0\0" + exif.tobytes().removeprefix(b"Exif\0\0") + jpeg(scene(top=(255, 0, 255)))
    data = with_jpeg_segment(jpeg(), 0xE1, block)
    stripped = strip_private(data)
    assert stripped.count(b"\xff\xd8\xff") == 1


def test_adobe_rgb_mark_stays():

    marked = with_jpeg_segment(jpeg(), 0xE1, b"Exif\0\0" + minimal_exif(1, adobe_rgb=True))
    before, after = open_photo(marked), open_photo(strip_private(marked))
    np.testing.assert_array_equal(before.pixels, after.pixels)
    assert not np.array_equal(before.pixels, open_photo(jpeg()).pixels)


def test_second_pictures_go():
    other = Image.new("RGB", (160, 144), (255, 0, 255))
    data = encode(scene(), "MPO", save_all=True, append_images=[other], quality=95)
    stripped = strip_private(data)
    assert len(stripped) < len(data)
    assert open_photo(stripped).notices == ()
    np.testing.assert_array_equal(open_photo(stripped).pixels, open_photo(data).pixels)


def test_what_cannot_be_stripped_in_place_becomes_a_png():
    buffer = io.BytesIO()
    tifffile.imwrite(buffer, scene(), photometric="rgb", bigtiff=True, description="secretnote")
    stripped = strip_private(buffer.getvalue())
    assert stripped.startswith(b"\x89PNG")
    assert b"secretnote" not in stripped
    np.testing.assert_array_equal(open_photo(stripped).pixels, scene())


def test_bmp_has_nothing_to_hide():
    data = encode(scene(), "BMP")
    assert strip_private(data) == data


def test_no_picture():
    with pytest.raises(PhotoError):
        strip_private(b"just text")
