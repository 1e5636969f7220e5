"""Whatever is wrong with a file, the user gets one sentence, soon, and nothing else happens."""

from __future__ import annotations

import contextlib
import io
import struct
import time
import zlib

import numpy as np
import pillow_heif
import pytest
import tifffile
from photo_files import assert_scene, encode, jpeg, png_chunk, scene, with_jpeg_segment
from PIL import Image

from core.errors import PhotoError
from core.photo import MAX_PIXELS, open_photo, strip_private


def noise():
    """A picture whose compressed data does not fit into a few bytes."""
    return np.random.default_rng(3).integers(0, 256, (90, 120, 3), dtype=np.uint8)


def heif(array):
    buffer = io.BytesIO()
    pillow_heif.from_pillow(Image.fromarray(array)).save(buffer, quality=60)
    return buffer.getvalue()


def float_tiff():
    buffer = io.BytesIO()
    tifffile.imwrite(buffer, (scene() / 255).astype(np.float32), photometric="rgb")
    return buffer.getvalue()


def refusal(source):
    """The sentence; anything but a PhotoError fails the test."""
    with pytest.raises(PhotoError) as caught:
        open_photo(source)
    sentence = str(caught.value)
    assert sentence.endswith(".")
    assert "\n" not in sentence
    assert "Error" not in sentence
    return sentence


NOT_PICTURES = {
    "empty": (b"", "empty"),
    "web page": (b"\n<!DOCTYPE html><html><body>404</body></html>", "web page"),
    "text": (b"not a picture at all", "text"),
    "drawing": (b'<?xml version="1.0"?><svg xmlns="x"></svg>', "SVG"),
    "jpeg xl": (b"\xff\x0a" + bytes(60), "JPEG XL"),
    "jpeg xl in boxes": (b"\0\0\0\x0cJXL \r\n\x87\n", "JPEG XL"),
    "jpeg 2000": (b"\0\0\0\x0cjP  \r\n\x87\n", "JPEG 2000"),
    "pdf": (b"%PDF-1.7\n%\xe2\xe3", "document"),
    "raw": (b"II*\0\x10\0\0\0CR\x02\0" + bytes(40), "raw"),
    "film": (b"\0\0\0\x18ftypisom\0\0\0\0isommp42", "film"),
    "zeros": (bytes(5000), "not a picture"),
}


@pytest.mark.parametrize("kind", NOT_PICTURES)
def test_what_is_no_picture(kind):
    data, word = NOT_PICTURES[kind]
    assert word in refusal(data)


def test_paths(tmp_path):
    assert "gone.jpg" in refusal(tmp_path / "gone.jpg")
    assert "folder" in refusal(tmp_path)
    assert "name of a file" in refusal("a\0b")
    (tmp_path / "empty.jpg").write_bytes(b"")
    assert "empty" in refusal(str(tmp_path / "empty.jpg"))


def png_header(width, height):
    header = struct.pack(">IIBBBBB", width, height, 8, 2, 0, 0, 0)
    parts = [(b"IHDR", header), (b"IDAT", zlib.compress(b"")), (b"IEND", b"")]
    return b"\x89PNG\r\n\x1a\n" + b"".join(png_chunk(*part) for part in parts)


class TestTooLarge:
    """Decided from the header: no time and no memory is spent."""

    def files(self):
        bmp = bytearray(encode(scene(), "BMP"))
        bmp[18:26] = struct.pack("<ii", 60_000, 60_000)
        frame = jpeg().find(b"\xff\xc0")
        big_jpeg = bytearray(jpeg())
        big_jpeg[frame + 5 : frame + 9] = struct.pack(">HH", 65_000, 65_000)
        tiff = encode(scene(), "TIFF")
        for tag, size in ((256, 160), (257, 144)):
            entry = struct.pack("<HHII", tag, 4, 1, size)
            assert tiff.count(entry) == 1
            tiff = tiff.replace(entry, struct.pack("<HHII", tag, 4, 1, 60_000))
        return {
            "png": png_header(50_000, 50_000),
            "gif": b"GIF89a" + struct.pack("<HH", 65_535, 65_535) + bytes(16),
            "bmp": bytes(bmp),
            "jpeg": bytes(big_jpeg),
            "tiff": tiff,
        }

    @pytest.mark.parametrize("kind", ["png", "gif", "bmp", "jpeg", "tiff"])
    def test_refused_with_its_size(self, kind):
        sentence = refusal(self.files()[kind])
        assert "too large" in sentence
        assert "000 x " in sentence or "65535 x 65535" in sentence

    def test_the_limit_admits_100_megapixels(self):
        assert MAX_PIXELS >= 100_000_000


def test_side_chunk_that_unpacks_to_64_megabytes():
    bomb = b"Comment\0\0" + zlib.compress(bytes(64 << 20), 9)
    data = encode(scene(), "PNG")
    data = data[:33] + png_chunk(b"zTXt", bomb) + png_chunk(b"iCCP", b"x" + bomb[7:]) + data[33:]
    photo = open_photo(data)
    assert_scene(photo, 0)


def test_a_camera_raw_file_shows_no_thumbnail():
    buffer = io.BytesIO()
    tifffile.imwrite(buffer, scene(), photometric="rgb", subfiletype=1)
    assert "raw" in refusal(buffer.getvalue())
    buffer = io.BytesIO()
    dng = [(50706, "B", 4, (1, 4, 0, 0), True)]
    tifffile.imwrite(buffer, scene(), photometric="rgb", extratags=dng)
    assert "raw" in refusal(buffer.getvalue())


class TestIncomplete:
    def test_cut_in_the_middle(self):
        files = {
            "jpeg": jpeg(noise()),
            "progressive": jpeg(noise(), progressive=True),
            "png": encode(noise(), "PNG"),
            "webp": encode(noise(), "WEBP"),
            "tiff": encode(noise(), "TIFF"),
            "heic": heif(noise()),
            "avif": encode(noise(), "AVIF"),
            "gif": encode(noise(), "GIF"),
            "bmp": encode(noise(), "BMP"),
        }
        for data in files.values():
            assert "incomplete" in refusal(data[: len(data) * 6 // 10])

    def test_header_alone(self):
        data = jpeg()
        assert "incomplete" in refusal(data[: data.index(b"\xff\xda")])

    @pytest.mark.parametrize("progressive", [False, True])
    def test_only_the_end_marker_is_missing(self, progressive):
        data = jpeg(noise(), progressive=progressive)
        assert data.endswith(b"\xff\xd9")
        whole, cut = open_photo(data), open_photo(data[:-2])
        np.testing.assert_array_equal(whole.pixels, cut.pixels)
        assert "incomplete" in refusal(data[: len(data) - 300])


def test_wholly_transparent():
    assert "transparent" in refusal(encode(np.zeros((20, 30, 4), np.uint8), "PNG"))


def test_damaged_side_segments_do_not_stop_a_picture():
    for marker, body in (
        (0xE1, b"Exif\0\0II*\0\xff\xff\xff\x7f"),
        (0xE1, b"Exif\0\0MM\0*\0\0\0\x08\xff\xff"),
        (0xE2, b"MPF\0garbage"),
        (0xED, b"Photoshop 3.0\x008BIM\xff\xff\xff"),
        (0xE2, b"ICC_PROFILE\0\x01\x01garbage"),
    ):
        assert_scene(open_photo(with_jpeg_segment(jpeg(), marker, body)), 3)


FUZZED = {
    "jpeg": lambda: jpeg(),
    "progressive": lambda: jpeg(progressive=True),
    "png": lambda: encode(scene(), "PNG"),
    "rgba": lambda: encode(np.dstack([noise(), noise()[..., :1]]), "PNG"),
    "palette": lambda: encode(Image.fromarray(scene()).quantize(8), "PNG"),
    "webp": lambda: encode(scene(), "WEBP"),
    "tiff": lambda: encode(scene(), "TIFF", compression="tiff_lzw"),
    "raw tiff": lambda: encode(scene(), "TIFF"),
    "float tiff": float_tiff,
    "heic": lambda: heif(scene()),
    "avif": lambda: encode(scene(), "AVIF"),
    "gif": lambda: encode(Image.fromarray(scene()).quantize(8), "GIF"),
    "bmp": lambda: encode(scene(), "BMP"),
}


@pytest.mark.parametrize("kind", FUZZED)
def test_cut_and_flipped_files_give_a_photo_or_a_sentence(kind, capfd):
    """Warnings are errors in this suite, so none may leak either; nothing is printed."""
    rng = np.random.default_rng(zlib.crc32(kind.encode()))
    whole = FUZZED[kind]()
    started = time.monotonic()
    for i in range(60):
        data = bytearray(whole)
        if i % 3 == 0:
            data = data[: rng.integers(len(data))]
        for _ in range(rng.integers(0 if i % 3 == 0 else 1, 12)):
            if data:
                data[rng.integers(min(len(data), 700))] = rng.integers(256)
        for use in (open_photo, strip_private):
            with contextlib.suppress(PhotoError):
                use(bytes(data))
    # 120 calls of some milliseconds; a single one that runs away would show.
    assert time.monotonic() - started < 60
    assert capfd.readouterr().err == ""
