"""Every format, depth and turn gives the same upright picture."""

from __future__ import annotations

import io
import struct
import threading
import warnings
import zlib

import numpy as np
import pillow_heif
import pytest
import tifffile
from photo_files import (
    BOTTOM,
    HEIGHT,
    MIDDLE,
    TOP,
    WIDTH,
    assert_scene,
    encode,
    exif_of,
    jpeg,
    png_chunk,
    scene,
    turned,
    with_jpeg_segment,
    with_png_chunk,
)
from PIL import Image

from core.errors import Cancelled
from core.photo import WORK_PIXELS, open_full, open_photo
from core.photo.reduce import wanted_factor


def heif(array=None, **options):
    buffer = io.BytesIO()
    image = Image.fromarray(scene() if array is None else array)
    pillow_heif.from_pillow(image).save(buffer, quality=95, chroma=444, **options)
    return buffer.getvalue()


def tiff(array, **options):
    buffer = io.BytesIO()
    tifffile.imwrite(buffer, array, **options)
    return buffer.getvalue()


PLAIN = {
    "jpeg": (lambda: jpeg(), 3),
    "progressive jpeg": (lambda: jpeg(progressive=True), 3),
    "png": (lambda: encode(scene(), "PNG"), 0),
    "interlaced": (lambda: encode(scene(), "PNG", interlace=1), 0),
    "webp lossless": (lambda: encode(scene(), "WEBP", lossless=True), 0),
    "webp": (lambda: encode(scene(), "WEBP", quality=95), 4),
    "tiff": (lambda: encode(scene(), "TIFF"), 0),
    "tiff lzw": (lambda: encode(scene(), "TIFF", compression="tiff_lzw"), 0),
    "bmp": (lambda: encode(scene(), "BMP"), 0),
    "gif": (lambda: encode(Image.fromarray(scene()).quantize(16), "GIF"), 1),
    "palette png": (lambda: encode(Image.fromarray(scene()).quantize(16), "PNG"), 1),
    "heic": (heif, 4),
    "avif": (lambda: encode(scene(), "AVIF", quality=95, subsampling="4:4:4"), 4),
    "16-bit tiff": (lambda: tiff(scene(dtype=np.uint16) * 257, photometric="rgb"), 0),
    "16-bit deflated tiff": (
        lambda: tiff(scene(dtype=np.uint16) * 257, photometric="rgb", compression="zlib"),
        0,
    ),
    "16-bit big-endian tiff": (
        lambda: tiff(scene(dtype=np.uint16) * 257, photometric="rgb", byteorder=">"),
        0,
    ),
    "planar tiff": (
        lambda: tiff(np.moveaxis(scene(), 2, 0), photometric="rgb", planarconfig="separate"),
        0,
    ),
}


@pytest.mark.parametrize("kind", PLAIN)
def test_every_format_gives_the_scene(kind):
    make, tolerance = PLAIN[kind]
    photo = open_photo(make(), name="whatever.txt")
    assert_scene(photo, tolerance)
    assert photo.notices == ()
    assert photo.opaque is None
    assert not photo.pixels.flags.writeable
    assert photo.pixels.dtype == np.uint8


def test_content_counts_and_not_the_name(tmp_path):
    path = tmp_path / "photo.jpeg"
    path.write_bytes(encode(scene(), "PNG"))
    photo = open_photo(path)
    assert_scene(photo, 0)
    assert photo.name == "photo.jpeg"
    assert open_photo(str(path), name="mine").name == "mine"


@pytest.mark.parametrize("orientation", range(1, 9))
@pytest.mark.parametrize("form", ["JPEG", "PNG", "WEBP", "TIFF"])
def test_exif_turn_is_applied_once(form, orientation):
    options = {"JPEG": {"quality": 95}, "WEBP": {"lossless": True}}.get(form, {})
    data = encode(turned(scene(), orientation), form, exif=exif_of(orientation), **options)
    assert_scene(open_photo(data), 4)


def test_impossible_turn_is_upright():
    exif = exif_of(9)
    assert_scene(open_photo(jpeg(exif=exif)), 3)


def test_turn_named_only_by_xmp():
    xmp = b'<x:xmpmeta><rdf:Description tiff:Orientation="8"/></x:xmpmeta>'
    body = b"XML:com.adobe.xmp\0\0\0\0\0" + xmp
    data = with_png_chunk(encode(turned(scene(), 8), "PNG"), b"iTXt", body)
    assert_scene(open_photo(data), 0)


def test_exif_header_written_twice_still_counts():
    block = b"Exif\0\0" + b"Exif\0\0" + exif_of(6).tobytes().removeprefix(b"Exif\0\0")
    data = with_jpeg_segment(jpeg(turned(scene(), 6)), 0xE1, block)
    assert_scene(open_photo(data), 3)


def test_xmp_before_exif():
    data = jpeg(turned(scene(), 3), exif=exif_of(3))
    data = with_jpeg_segment(data, 0xE1, b"http://ns.adobe.com/xap/1.0/\0<x/>")
    assert_scene(open_photo(data), 3)


@pytest.mark.parametrize("orientation", [1, 3, 6, 8])
def test_heic_turn_of_container_and_exif_is_applied_once(orientation):
    """pillow-heif writes the turn into the container (irot), as phones do; EXIF repeats it."""
    buffer = io.BytesIO()
    image = Image.fromarray(turned(scene(), orientation))
    written = pillow_heif.from_pillow(image)
    written.info["exif"] = exif_of(orientation).tobytes()
    written.save(buffer, quality=95, chroma=444)
    data = buffer.getvalue()
    assert orientation == 1 or b"irot" in data
    assert_scene(open_photo(data), 5)


def test_avif_turn_of_the_container_alone():
    data = encode(turned(scene(), 6), "AVIF", quality=95, exif=exif_of(6))
    assert b"irot" in data
    assert_scene(open_photo(data), 6)


def test_colours_never_come_from_a_thumbnail():
    thumbnail = jpeg(np.full((48, 64, 3), (255, 0, 255), np.uint8))
    first = struct.pack("<HHHIII", 1, 0x0112, 3, 1, 1, 26)
    second = struct.pack("<H", 2) + struct.pack("<HHII", 0x0201, 4, 1, 56)
    second += struct.pack("<HHII", 0x0202, 4, 1, len(thumbnail)) + struct.pack("<I", 0)
    block = b"Exif\0\0II*\0\x08\0\0\0" + first + second + thumbnail
    assert_scene(open_photo(with_jpeg_segment(jpeg(), 0xE1, block)), 3)


class TestDepth:
    def test_16_bit_png_keeps_its_lower_bytes(self):
        """Samples half a code above: reading only the upper byte would give the code below."""
        array = scene(dtype=np.uint16) * 257 + 130
        rows = b"".join(b"\0" + row.astype(">u2").tobytes() for row in array)
        assert_scene(
            open_photo(_png(rows, 16, 2)), 0, [np.add(c, 1) for c in (TOP, MIDDLE, BOTTOM)]
        )

    def test_16_bit_grey_is_scaled_not_clipped(self):
        grey = scene(190, 120, 30)[..., 0].astype(np.uint16) * 257
        photo = open_photo(encode(Image.fromarray(grey), "PNG"))
        assert_scene(photo, 0, [(v, v, v) for v in (190, 120, 30)])

    def test_one_bit(self):
        array = scene(255, 0, 255)[..., 0] > 128
        array[:16, :16] = True
        photo = open_photo(encode(Image.fromarray(array), "PNG"))
        assert_scene(photo, 0, [(v, v, v) for v in (255, 0, 255)], mark=None)

    def test_min_is_white(self):
        grey = scene(190, 120, 30)[..., 0]
        for data in (255 - grey, 65535 - grey.astype(np.uint16) * 257):
            photo = open_photo(tiff(data, photometric="miniswhite"))
            assert_scene(photo, 0, [(v, v, v) for v in (190, 120, 30)])

    def test_decimal_numbers_are_linear_light_and_nan_is_left_out(self):
        encoded = scene() / 255
        # IEC 61966-2-1, written out here apart from the program's own.
        linear = np.where(encoded <= 0.04045, encoded / 12.92, ((encoded + 0.055) / 1.055) ** 2.4)
        linear = linear.astype(np.float32)
        linear[60:64, 60:70] = np.nan
        linear[64, 64] = np.inf
        photo = open_photo(tiff(linear, photometric="rgb"))
        assert_scene(photo, 1)
        assert photo.opaque is not None
        assert np.count_nonzero(~photo.opaque) == 41
        assert (photo.pixels[61, 65] == 255).all()
        assert any("decimal" in notice for notice in photo.notices)


def _png(rows, bits, colour):

    header = struct.pack(">IIBBBBB", WIDTH, HEIGHT, bits, colour, 0, 0, 0)
    parts = [(b"IHDR", header), (b"IDAT", zlib.compress(rows)), (b"IEND", b"")]
    return b"\x89PNG\r\n\x1a\n" + b"".join(png_chunk(*part) for part in parts)


class TestTransparency:
    @pytest.mark.parametrize("form", ["PNG", "WEBP", "TIFF"])
    def test_hidden_colour_is_never_read(self, form):
        rgba = np.dstack([scene(top=(255, 0, 255)), np.full((HEIGHT, WIDTH), 255, np.uint8)])
        rgba[:48, :, 3] = 0
        options = {"lossless": True} if form == "WEBP" else {}
        photo = open_photo(encode(rgba, form, **options))
        assert_scene(photo, 0, [(255, 255, 255), MIDDLE, BOTTOM], mark=255)
        assert not photo.opaque[:48].any()
        assert photo.opaque[48:].all()
        assert not photo.opaque.flags.writeable
        assert any("transparent" in notice for notice in photo.notices)

    def test_palette_with_a_transparent_colour(self):
        image = Image.fromarray(scene()).quantize(8)
        image.info["transparency"] = image.getpixel((80, 24))
        photo = open_photo(encode(image, "PNG", transparency=image.getpixel((80, 24))))
        assert not photo.opaque[24, 80]
        assert photo.opaque[60, 80]

    def test_one_colour_named_transparent(self):
        data = with_png_chunk(encode(scene(), "PNG"), b"tRNS", struct.pack(">3H", *TOP))
        photo = open_photo(data)
        assert not photo.opaque[24, 80]
        assert photo.opaque[60:, :].all()

    def test_opaque_throughout_needs_no_mask(self):
        rgba = np.dstack([scene(), np.full((HEIGHT, WIDTH), 255, np.uint8)])
        photo = open_photo(encode(rgba, "PNG"))
        assert photo.opaque is None
        assert photo.notices == ()

    def test_mask_turns_with_the_picture(self):
        rgba = np.dstack([scene(), np.full((HEIGHT, WIDTH), 255, np.uint8)])
        rgba[:16, :16, 3] = 0
        data = encode(turned(rgba, 6), "PNG", exif=exif_of(6))
        photo = open_photo(data)
        assert not photo.opaque[:16, :16].any()
        assert np.count_nonzero(~photo.opaque) == 256


class TestSeveralPictures:
    @pytest.mark.parametrize("form", ["GIF", "PNG", "WEBP", "TIFF", "MPO"])
    def test_first_is_taken_and_told(self, form):
        other = Image.new("RGB", (WIDTH, HEIGHT), (255, 0, 255))
        options = {"WEBP": {"lossless": True}, "MPO": {"quality": 95}}.get(form, {})
        data = encode(scene(), form, save_all=True, append_images=[other], **options)
        photo = open_photo(data)
        assert_scene(photo, 4)
        assert len(photo.notices) == 1

    def test_heic_main_picture_stored_second(self):
        other = np.full((HEIGHT, WIDTH, 3), (255, 0, 255), np.uint8)
        container = pillow_heif.from_pillow(Image.fromarray(other))
        container.add_from_pillow(Image.fromarray(scene()))
        buffer = io.BytesIO()
        container.save(buffer, quality=95, chroma=444, primary_index=1, save_all=True)
        assert_scene(open_photo(buffer.getvalue()), 5)


class TestSize:
    def test_factor_of_common_cameras(self):
        jpeg_scales = (1, 2, 4, 8)
        assert wanted_factor(6000, 4000, WORK_PIXELS, jpeg_scales) == 4
        assert wanted_factor(4000, 3000, WORK_PIXELS, jpeg_scales) == 2
        assert wanted_factor(1600, 1200, WORK_PIXELS, jpeg_scales) == 1
        # A narrow panorama keeps more rows.
        assert wanted_factor(30_000, 3000, WORK_PIXELS, jpeg_scales) == 4
        assert wanted_factor(40_000, 300, WORK_PIXELS) == 2

    def test_large_jpeg_is_reduced_and_full_is_not(self):
        array = np.asarray(Image.fromarray(scene()).resize((2403, 1805)))
        data = jpeg(array)
        photo = open_photo(data)
        assert (photo.width, photo.height) == (2403, 1805)
        assert photo.pixels.shape == (903, 1202, 3)
        full = open_full(data)
        assert full.pixels.shape == (1805, 2403, 3)
        small = open_photo(data, max_work_pixels=50_000)
        assert small.pixels.shape[0] * small.pixels.shape[1] <= 50_000
        for at in (0.1, 0.5, 0.9):
            a, b = (
                p.pixels[int(at * p.pixels.shape[0]), p.pixels.shape[1] // 2]
                for p in (photo, small)
            )
            np.testing.assert_allclose(a.astype(int), b.astype(int), atol=3)

    def test_reduction_averages_light_not_codes(self):
        """Black and white stripes send out half the light: code 188, not 128 (IEC 61966-2-1)."""
        array = np.zeros((300, 400, 3), np.uint8)
        array[::2] = 255
        photo = open_photo(encode(array, "PNG"), max_work_pixels=400 * 300 // 4)
        assert photo.pixels.shape == (150, 200, 3)
        assert (photo.pixels == 188).all()

    def test_ragged_edge_keeps_its_colour(self):
        array = np.full((301, 403, 3), TOP, np.uint8)
        photo = open_photo(encode(array, "PNG"), max_work_pixels=400 * 300 // 9)
        assert photo.pixels.shape == (76, 101, 3)
        assert (photo.pixels == np.array(TOP)).all()

    @pytest.mark.parametrize("size", [(1, 1), (300, 1), (1, 300), (300, 2), (157, 91)])
    def test_small_and_odd(self, size):
        image = Image.new("RGB", size, TOP)
        for form in ("PNG", "JPEG", "TIFF", "BMP"):
            photo = open_photo(encode(image, form))
            assert (photo.width, photo.height) == size
            assert photo.pixels.shape == (size[1], size[0], 3)

    def test_panorama_of_40000_pixels(self):
        array = np.full((300, 40_000, 3), TOP, np.uint8)
        array[:, -2000:] = BOTTOM
        photo = open_photo(encode(array, "PNG"))
        assert (photo.width, photo.height) == (40_000, 300)
        assert tuple(photo.pixels[5, -5]) == BOTTOM
        assert tuple(photo.pixels[5, 5]) == TOP


def test_progress_and_stop():
    seen = []
    data = encode(np.asarray(Image.fromarray(scene()).resize((1600, 1440))), "PNG")
    open_photo(data, progress=seen.append)
    assert seen == sorted(seen)
    assert seen[0] == 0.0
    assert seen[-1] == 1.0
    with pytest.raises(Cancelled):
        open_photo(data, should_stop=lambda: len(seen) > 0)
    with pytest.raises(ValueError, match="positive"):
        open_photo(data, max_work_pixels=0)


def test_threads_leave_the_warning_filters_as_they_were():
    before = list(warnings.filters)
    data = jpeg()
    threads = [threading.Thread(target=open_photo, args=(data,)) for _ in range(8)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert warnings.filters == before
