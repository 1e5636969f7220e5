"""Sound files of every kind the program opens, small, made in memory."""

from __future__ import annotations

import io
import json
import zlib
from pathlib import Path

import numpy as np
import pillow_heif
import tifffile
from photo_files import encode, jpeg, png_chunk, rgb_profile, scene
from PIL import Image

from core.bands.lines import Bands
from core.paint.box.box import GENERIC_BOXES
from core.paint.box.box_file import box_to_json
from core.pictures import PictureStore
from core.sheet.result import SheetOptions
from core.study import SheetEntry, Study
from core.study_file.container import pack, unpack
from core.study_file.contents import Contents
from core.study_file.document import study_to_bytes
from core.worksheet.worksheet import OwnScores, SheetPage, Worksheet

_NOISE = np.random.default_rng(3).integers(0, 256, (60, 80, 3), dtype=np.uint8)
_PROFILE = rgb_profile(np.diag([0.9642, 1.0, 0.8249]) @ np.full((3, 3), 1 / 3) + np.eye(3) * 0.02)


def pictures() -> dict[str, bytes]:
    """One or more of each format, with what decides how it is read."""
    exif = Image.Exif()
    exif[0x0112] = 6
    palette = Image.fromarray(scene()).quantize(8)
    grey16 = (scene()[..., 0].astype(np.uint16) * 257).astype(np.uint16)
    alpha = np.dstack([_NOISE, _NOISE[..., :1]])
    return {
        "jpeg": jpeg(_NOISE, exif=exif, icc_profile=_PROFILE),
        "jpeg progressive": jpeg(_NOISE, progressive=True, subsampling=2),
        "jpeg grey": encode(Image.fromarray(_NOISE[..., 0]), "JPEG"),
        "jpeg cmyk": encode(Image.fromarray(_NOISE).convert("CMYK"), "JPEG"),
        "png": encode(scene(), "PNG", exif=exif, icc_profile=_PROFILE),
        "png alpha": encode(alpha, "PNG"),
        "png palette": encode(palette, "PNG"),
        "png 16 bits": encode(Image.fromarray(grey16), "PNG"),
        "png text": _with_text(encode(scene(), "PNG")),
        "webp": encode(_NOISE, "WEBP", exif=exif.tobytes(), icc_profile=_PROFILE),
        "webp lossless": encode(alpha, "WEBP", lossless=True),
        "tiff": encode(_NOISE, "TIFF"),
        "tiff lzw": encode(scene(), "TIFF", compression="tiff_lzw", icc_profile=_PROFILE),
        "tiff deflate": encode(scene(), "TIFF", compression="tiff_adobe_deflate"),
        "tiff tiles": _tiff(_NOISE, tile=(16, 16)),
        "tiff float": _tiff((scene() / 255).astype(np.float32)),
        "tiff float packed": _tiff((scene() / 255).astype(np.float32), compression="zlib"),
        "tiff big": _tiff(scene(), bigtiff=True),
        "heic": _heic(_NOISE),
        "avif": encode(_NOISE, "AVIF", exif=exif.tobytes()),
        "gif": encode(palette, "GIF"),
        "gif animated": encode(
            palette, "GIF", save_all=True, append_images=[palette.transpose(1), palette]
        ),
        "bmp": encode(scene(), "BMP"),
        "bmp palette": encode(palette, "BMP"),
        "mpo": encode(
            _NOISE, "MPO", save_all=True, append_images=[Image.fromarray(_NOISE[::-1].copy())]
        ),
    }


def studies() -> dict[str, bytes]:
    """Study files: a whole lesson, an empty one, and the text alone, packed again when hurt."""
    store = PictureStore()
    study = Study(
        "Dusk over Harrow Water",
        store.add("dusk.jpg", jpeg(_NOISE)),
        Bands(0.62, (0.2, 0.41)),
        sheets=(
            SheetEntry(store.add("first.png", encode(scene(), "PNG")), SheetOptions(turned=1)),
            SheetEntry(store.add("second.jpg", jpeg(_NOISE[::-1].copy()))),
        ),
        worksheet=Worksheet(
            "7b 14",
            "7b",
            (SheetPage(OwnScores(6, 7, 5), "Keep it wetter.", "edges", "2027-03-04"), SheetPage()),
            "A brave sky.",
        ),
    )
    return {
        "lesson": study_to_bytes(study, store),
        "empty": study_to_bytes(Study(), PictureStore()),
    }


def with_text_of(study: bytes, text: bytes) -> bytes:
    """A study file whose check sums hold, with another text."""
    return pack(Contents(text, unpack(study).pictures))


def text_of(study: bytes) -> bytes:
    """The text of a study file."""
    return unpack(study).json


def boxes() -> dict[str, bytes]:
    """Paint boxes as files."""
    found = {
        name: json.dumps(box_to_json(box), indent=2).encode() for name, box in GENERIC_BOXES.items()
    }
    own = {"gradewash_box": 1, "name": "Ours", "paints": [{"name": "sky", "like": "cerulean_blue"}]}
    return {**found, "own": json.dumps(own).encode()}


def class_set(folder: Path) -> Path:
    """The file of a class set, made in `folder`."""
    # Imported here: the others run without it.
    from class_set_tools import made_folder

    with made_folder(folder) as made:
        return made.path / "class-set.json"


def _with_text(png: bytes) -> bytes:
    packed = b"Comment\0\0" + zlib.compress(b"words " * 400)
    return png[:33] + png_chunk(b"zTXt", packed) + png[33:]


def _tiff(array: np.ndarray, **options: object) -> bytes:
    buffer = io.BytesIO()
    tifffile.imwrite(buffer, array, photometric="rgb", **options)
    return buffer.getvalue()


def _heic(array: np.ndarray) -> bytes:
    buffer = io.BytesIO()
    pillow_heif.from_pillow(Image.fromarray(array)).save(buffer, quality=60)
    return buffer.getvalue()
