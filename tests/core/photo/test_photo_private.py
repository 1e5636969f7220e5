"""Nothing that says where or who stays in a picture's bytes, and no pixel changes."""

from __future__ import annotations

import io
import struct
import zlib

import numpy as np
import pillow_heif
import pytest
import tifffile
from photo_files import encode, jpeg, png_chunk, rgb_profile, scene, turned, with_jpeg_segment
from PIL import Image, ImageCms

from core.errors import PhotoError
from core.photo import open_photo, strip_private
from core.photo.bare_jpeg import minimal_exif

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
SRGB_COLUMNS = np.array([[0.436, 0.385, 0.143], [0.222, 0.717, 0.061], [0.014, 0.097, 0.714]])
ICC = rgb_profile(SRGB_COLUMNS)


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
    """Pillow, as an independent reader, finds a turn at most, and no words in the profile."""
    stripped = strip_private(FILES[kind]())
    with Image.open(io.BytesIO(stripped)) as reread:
        assert set(reread.getexif()) <= {0x0112}
        assert not reread.getexif().get_ifd(0x8825)
        assert set(reread.info) <= ALLOWED
        profile = reread.info.get("icc_profile")
        if profile:
            assert (
                ImageCms.getProfileDescription(
                    ImageCms.ImageCmsProfile(io.BytesIO(profile))
                ).strip()
                == "colours"
            )


ALLOWED = {
    *("jfif", "jfif_version", "jfif_density", "jfif_unit", "dpi", "adobe", "adobe_transform"),
    *("icc_profile", "exif", "progressive", "progression"),
    *("loop", "background", "timestamp", "duration"),  # what Pillow says of every WebP
}


@pytest.mark.parametrize("progressive", [False, True])
def test_a_jpeg_keeps_its_compressed_picture_bit_for_bit(progressive):
    data = private_jpeg(progressive=progressive)
    end = data.rindex(b"\xff\xd9") + 2
    scan = data[data.rindex(b"\xff\xda") : end]
    stripped = strip_private(data)
    assert stripped.endswith(scan)
    assert stripped.count(b"\xff\xda") == data[:end].count(b"\xff\xda")


NOISE = np.random.default_rng(3).integers(0, 256, (90, 120, 3), dtype=np.uint8)


def in_tiff(array, **options):
    buffer = io.BytesIO()
    tifffile.imwrite(buffer, array, **options)
    return buffer.getvalue()


def heic_with_spare_room():
    free = b"secretnote Wilhelmina"
    boxes = b"".join(
        struct.pack(">I", 8 + len(free)) + name + free
        for name in (b"free", b"skip", b"mdat", b"uuid", b"abcd")
    )
    return heic() + boxes


def gif_with_plain_text():
    gif = encode(Image.fromarray(scene()).quantize(8), "GIF")
    at = gif.index(b"\x2c\0\0\0\0")
    plain = b"\x21\x01\x0c" + bytes(12) + b"\x15secretnote Wilhelmina\0"
    return gif[:at] + plain + gif[at:] + b"secretnote after the end"


def bmp_with_gaps():
    bmp = bytearray(encode(scene(), "BMP"))
    start = int.from_bytes(bmp[10:14], "little")
    note = b"secretnote Wilhelmina "
    bmp[10:14] = struct.pack("<I", start + len(note))
    return bytes(bmp[:start] + note + bmp[start:] + b"secretnote")


def png_with_words_in_its_profile():
    profile = zlib.compress(ICC) + b"secretnote"
    chunk = png_chunk(b"iCCP", b"Wilhelmina\0\0" + profile)
    data = encode(scene(), "PNG")
    return data[:33] + chunk + data[33:] + b"secretnote"


def tiff_with_sub_directory():
    sub = in_tiff(scene(), photometric="rgb", description="secretnote Wilhelmina")
    buffer = io.BytesIO()
    with tifffile.TiffWriter(buffer) as writer:
        writer.write(scene(), photometric="rgb", subifds=1)
        writer.write(scene()[::2, ::2], photometric="rgb", description="Lerchenweg 12")
    return buffer.getvalue() + b"secretnote" + sub


def worded_profile():
    words = b"desc\0\0\0\0" + struct.pack(">I", 20) + b"Wilhelmina's screen\0"
    return rgb_profile(SRGB_COLUMNS, more={b"desc": words, b"abcd": b"text\0\0\0\0secretnote"})


def jpeg_with_a_tail_in_its_scan():
    data = jpeg(NOISE)
    return data[:-2] + b"secretnote Wilhelmina secretnote Wilhelmina" + data[-2:]


def jpeg_with_room_in_a_segment(marker):
    data = jpeg(NOISE)
    at = data.index(bytes([0xFF, marker]))
    size = int.from_bytes(data[at + 2 : at + 4], "big")
    longer = struct.pack(">H", size + 10) + data[at + 4 : at + 2 + size] + b"secretnote"
    return data[: at + 2] + longer + data[at + 2 + size :]


HIDING_PLACES = {
    "TIFF sub-directory and bytes nobody refers to": tiff_with_sub_directory,
    "BigTIFF": lambda: in_tiff(scene(), photometric="rgb", bigtiff=True, description="secretnote"),
    "HEIC free, skip and spare boxes": heic_with_spare_room,
    "GIF plain text and tail": gif_with_plain_text,
    "BMP gap and tail": bmp_with_gaps,
    "PNG profile name and tail": png_with_words_in_its_profile,
    "PNG profile text": lambda: encode(scene(), "PNG", icc_profile=worded_profile()),
    "JPEG profile text": lambda: jpeg(NOISE, icc_profile=worded_profile()),
    "WebP profile text": lambda: encode(
        scene(), "WEBP", lossless=True, icc_profile=worded_profile()
    ),
    "JPEG end of the scan": jpeg_with_a_tail_in_its_scan,
    "JPEG JFIF segment": lambda: jpeg_with_room_in_a_segment(0xE0),
    "WebP unknown chunk": lambda: webp_with(b"abcd", b"secretnote Wilhelmina "),
}


def webp_with(name, content):
    webp = encode(scene(), "WEBP", lossless=True)
    body = webp[8:] + name + struct.pack("<I", len(content)) + content
    return b"RIFF" + struct.pack("<I", len(body)) + body + b"secretnote"


@pytest.mark.parametrize("place", HIDING_PLACES)
def test_nothing_but_the_picture_leaves(place):
    data = HIDING_PLACES[place]()
    photo = open_photo(data)
    stripped = strip_private(data)
    for secret in SECRETS:
        assert secret not in stripped
        assert secret.decode().encode("utf-16-be") not in stripped
    np.testing.assert_array_equal(open_photo(stripped).pixels, photo.pixels)


@pytest.mark.parametrize("alpha", [False, True])
def test_transparent_stays_transparent(alpha):
    array = np.dstack([NOISE, np.full(NOISE.shape[:2], 255, np.uint8)])
    if alpha:
        array[10:30, 20:50, 3] = 0
    before = open_photo(encode(array, "PNG"))
    after = open_photo(strip_private(encode(array, "PNG")))
    np.testing.assert_array_equal(before.pixels, after.pixels)
    assert (before.opaque is None) == (after.opaque is None) == (not alpha)
    if alpha:
        np.testing.assert_array_equal(before.opaque, after.opaque)


def test_a_panorama_too_long_for_a_webp():
    long = np.broadcast_to(np.arange(40, dtype=np.uint8)[:, None, None], (40, 20_000, 3))
    data = encode(np.ascontiguousarray(long), "PNG")
    np.testing.assert_array_equal(open_photo(strip_private(data)).pixels, open_photo(data).pixels)


def test_one_damaged_byte_never_costs_the_picture():
    """What is kept opens, and reads as what was opened, wherever a byte is damaged."""
    whole = private_jpeg(progressive=False)
    end = len(whole) - len(b"film that a phone appends: secretnote")
    rng = np.random.default_rng(7)
    opened = 0
    for at in rng.integers(2, end, 250):
        for byte in (0x00, 0xFF, 0xD9):
            data = whole[:at] + bytes([byte]) + whole[at + 1 :]
            try:
                photo = open_photo(data)
            except PhotoError:
                continue
            opened += 1
            kept = open_photo(strip_private(data))
            np.testing.assert_array_equal(kept.pixels, photo.pixels)
    assert opened > 100


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


def test_no_picture():
    with pytest.raises(PhotoError):
        strip_private(b"just text")
