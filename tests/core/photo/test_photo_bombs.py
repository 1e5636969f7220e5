"""Files of a few kilobytes that claim gigabytes: refused from their header, or opened in bounds.

All are tried in one child process, so that the most memory it ever took can be asked for.
"""

from __future__ import annotations

import io
import os
import struct
import subprocess
import sys
import zlib
from functools import cache
from pathlib import Path

import numpy as np
import pytest
import tifffile
from photo_files import encode, jpeg, png_chunk, scene
from PIL import Image

from core.errors import PhotoError
from core.photo import open_photo
from core.photo.decoded import MAX_SIDE

ROOT = Path(__file__).resolve().parents[3]


def zipped_zeros(count: int) -> bytes:
    """What zlib makes of so many zeros; their block is packed once and repeated."""
    size = 1 << 22
    packer = zlib.compressobj(9, zlib.DEFLATED, -15)
    block = packer.compress(bytes(size)) + packer.flush(zlib.Z_FULL_FLUSH)
    end = packer.compress(bytes(count % size)) + packer.flush()
    # The sum of zeros, Adler-32 of RFC 1950: how many there were, and one.
    return b"\x78\xda" + block * (count // size) + end + struct.pack(">HH", count % 65521, 1)


def png(width: int, height: int, bits: int = 8, colour: int = 0) -> bytes:
    """A PNG of zeros, packed as small as can be."""
    channels = {0: 1, 2: 3, 3: 1, 4: 2, 6: 4}[colour]
    row = 1 + (width * channels * bits + 7) // 8
    header = struct.pack(">IIBBBBB", width, height, bits, colour, 0, 0, 0)
    chunks = [(b"IHDR", header), (b"IDAT", zipped_zeros(row * height)), (b"IEND", b"")]
    return b"\x89PNG\r\n\x1a\n" + b"".join(png_chunk(*chunk) for chunk in chunks)


def test_zeros_are_zipped_as_zlib_reads_them() -> None:
    for count in (0, 1, 65_521, 1 << 22, (9 << 20) + 5):
        assert zlib.decompress(zipped_zeros(count)) == bytes(count)


def tiff(*entries: tuple[int, int, int, int], more: bytes = b"") -> bytes:
    """A TIFF of one directory: tag, type, count, value."""
    table = b"".join(struct.pack("<HHII", *entry) for entry in entries)
    return b"II*\0" + struct.pack("<IH", 8, len(entries)) + table + bytes(4) + more


def tiled(across: int, down: int) -> bytes:
    """The kind that names tiles far larger than its picture, in two hundred bytes."""
    return tiff(
        (256, 4, 1, 64),
        (257, 4, 1, 64),
        (258, 3, 1, 8),
        (259, 3, 1, 1),
        (262, 3, 1, 1),
        (277, 3, 1, 1),
        (322, 4, 1, across),
        (323, 4, 1, down),
        (324, 4, 1, 150),
        (325, 4, 1, 40),
        more=bytes(80),
    )


def bmp_of_short_rows(width: int, height: int) -> bytes:
    body = b"\x01\x05\0\0" * height
    head = struct.pack("<IiiHHIIiiII", 40, width, height, 1, 8, 1, len(body), 0, 0, 256, 0)
    return b"BM" + struct.pack("<IHHI", 1078 + len(body), 0, 0, 1078) + head + bytes(1024) + body


def zipped_float_tiff() -> bytes:
    """Strips that unpack to a hundred times the picture."""
    buffer = io.BytesIO()
    tifffile.imwrite(
        buffer, np.zeros((64, 64, 3), np.float32), photometric="rgb", compression="zlib"
    )
    data = bytearray(buffer.getvalue())
    bomb = zipped_zeros(400 << 20)
    with tifffile.TiffFile(io.BytesIO(bytes(data))) as file:
        tags = file.pages[0].tags
        where = {code: tags[code].valueoffset for code in (273, 279)}
    data[where[273] : where[273] + 4] = struct.pack("<I", len(data))
    data[where[279] : where[279] + 4] = struct.pack("<I", len(bomb))
    return bytes(data) + bomb


def chain_of_pages(count: int) -> bytes:
    pages = bytearray()
    for number in range(count):
        at = 8 + 18 * number
        entry = struct.pack("<HHHII", 1, 254, 4, 1, 1)
        pages += entry + struct.pack("<I", at + 18 if number < count - 1 else 0)
    return b"II*\0" + struct.pack("<I", 8) + bytes(pages)


@cache
def _progressive() -> bytes:
    return encode(Image.new("RGB", (4000, 4000), (90, 120, 200)), "JPEG", progressive=True)


def progressive_with_many_scans() -> bytes:
    data = _progressive()
    last = data[data.rindex(b"\xff\xda") : -2]
    return data[:-2] + last * 400 + b"\xff\xd9"


def overlapping_tags(count: int, size: int) -> bytes:
    """Many tags that all point to the same stretch: a reader would copy it for each."""
    start = 8 + 2 + 12 * (count + 2) + 4
    many = tuple((300 + n, 1, size, start) for n in range(count))
    return tiff((256, 4, 1, 10), (257, 4, 1, 10), *many, more=bytes(size))


REFUSED = {
    "a row of 129 million": lambda: png(129_000_000, 1),
    "a column of 129 million": lambda: png(1, 129_000_000),
    "just too long": lambda: png(MAX_SIDE + 1, 2),
    "tiles 22 million high": lambda: tiled(16, 22_000_000),
    "tiles 22 million wide": lambda: tiled(22_000_000, 16),
    "tiles of 60000 squared": lambda: tiled(60_000, 60_000),
    "tags that overlap": lambda: overlapping_tags(900, 500_000),
    "more tags than a picture has": lambda: overlapping_tags(20_000, 8),
    "a long column in a TIFF": lambda: tiff((256, 4, 1, 1), (257, 4, 1, 129_000_000)),
    "a hundred channels of 64 bits": lambda: tiff(
        (256, 4, 1, 9000), (257, 4, 1, 9000), (258, 3, 1, 64), (277, 3, 1, 100)
    ),
    "fifty thousand pages": lambda: chain_of_pages(50_000),
    "packed decimal numbers": zipped_float_tiff,
    "run lengths that end early": lambda: bmp_of_short_rows(65_535, 1983),
    "scan upon scan": progressive_with_many_scans,
    "weighed opacity": lambda: png(11_000, 11_000, 1 * 8, 6),
}
OPENED = {
    "129 million of grey": lambda: png(11_357, 11_357, 1),
    "a row of 65535": lambda: png(MAX_SIDE, 40),
}


@pytest.mark.parametrize("kind", REFUSED)
def test_refused_in_one_sentence(kind: str) -> None:
    data = REFUSED[kind]()
    assert len(data) < 1_400_000
    with pytest.raises(PhotoError) as caught:
        open_photo(data)
    assert str(caught.value).endswith(".")


CHILD = """
import sys, time
from pathlib import Path
from core.errors import PhotoError
from core.photo import open_photo
for file in sorted(Path(sys.argv[1]).iterdir()):
    began = time.process_time()
    try:
        open_photo(file)
    except PhotoError:
        pass
    print(f"{time.process_time() - began:.2f}", file.name)
# Not ru_maxrss: that one remembers the size of the process that began this one.
print(Path("/proc/self/status").read_text().split("VmHWM:")[1].split()[0])
"""


@pytest.mark.skipif(
    not os.path.exists("/proc/self/status"), reason="asks Linux for the memory used"
)
def test_no_file_under_a_megabyte_takes_much(tmp_path: Path) -> None:
    for name, made in {**REFUSED, **OPENED}.items():
        (tmp_path / name).write_bytes(made())
    found = subprocess.run(
        [sys.executable, "-c", CHILD, str(tmp_path)],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=True,
        timeout=300,
    )
    *times, most = found.stdout.split("\n")[:-1]
    assert len(times) == len(REFUSED) + len(OPENED)
    # Processor time, which a busy machine does not lengthen much.
    assert max(float(line.split()[0]) for line in times) < 5.0, found.stdout
    assert int(most) < 1_500_000


@pytest.mark.parametrize("suffix", [".jpg", ".tif", ".png"])
def test_a_file_and_its_bytes_open_alike(tmp_path: Path, suffix: str) -> None:
    buffer = io.BytesIO()
    tifffile.imwrite(buffer, (scene() / 255).astype(np.float32), photometric="rgb")
    data = {".jpg": jpeg(), ".png": encode(scene(), "PNG"), ".tif": buffer.getvalue()}[suffix]
    path = tmp_path / f"sky{suffix}"
    path.write_bytes(data)
    np.testing.assert_array_equal(open_photo(path).pixels, open_photo(data).pixels)
