"""What kind of file this is, told by its first bytes and never by its name."""

from __future__ import annotations

from typing import Literal

from core.errors import PhotoError
from core.i18n import translate

Kind = Literal["jpeg", "png", "webp", "tiff", "heif", "avif", "gif", "bmp"]

_AVIF_BRANDS = (b"avif", b"avis")
_HEIF_BRANDS = (b"heic", b"heix", b"hevc", b"hevx", b"heim", b"heis", b"mif1", b"msf1")
_RAW_STARTS = (
    b"FUJIFILMCCD-RAW",
    b"IIRO",
    b"IIRS",
    b"MMOR",
    b"IIU\0",
    b"FOVb",
)


def kind_of(head: bytes) -> Kind:
    """The format of a picture file.

    Parameters
    ----------
    head : bytes
        The first bytes of the file; 4096 are plenty.

    Raises
    ------
    PhotoError
        Not a picture this program opens; the sentence says what it seems to be.
    """
    if not head:
        raise PhotoError(
            translate(
                "photo",
                "This file is empty (0 bytes): it may not have finished copying or downloading.",
            )
        )
    if head.startswith(b"\xff\xd8\xff"):
        return "jpeg"
    if head.startswith(b"\x89PNG\r\n\x1a\n"):
        return "png"
    if head.startswith(b"RIFF") and head[8:12] == b"WEBP":
        return "webp"
    if head.startswith((b"GIF87a", b"GIF89a")):
        return "gif"
    if head[4:8] == b"ftyp":
        return _kind_of_box_file(head)
    if head.startswith((b"II*\0", b"MM\0*", b"II+\0", b"MM\0+")) and head[8:10] != b"CR":
        return "tiff"
    if head.startswith(b"BM") and len(head) >= 18 and head[15:18] == b"\0\0\0":
        return "bmp"
    raise PhotoError(_why_not(head))


def suffix_of(data: bytes) -> str:
    """How the name of a file with this content ends; empty for what is no picture.

    >>> suffix_of(b"GIF89a")
    '.gif'
    """
    try:
        return _SUFFIXES[kind_of(data[:4096])]
    except PhotoError:
        return ""


_SUFFIXES: dict[Kind, str] = {
    "jpeg": ".jpg",
    "png": ".png",
    "webp": ".webp",
    "tiff": ".tif",
    "heif": ".heic",
    "avif": ".avif",
    "gif": ".gif",
    "bmp": ".bmp",
}


def _kind_of_box_file(head: bytes) -> Kind:
    """HEIF or AVIF: both are boxes; the brands tell. The main brand may be the common one."""
    size = min(int.from_bytes(head[:4], "big"), 256)
    brands = [head[8:12], *(head[i : i + 4] for i in range(16, max(size, 12), 4))]
    if any(brand in _AVIF_BRANDS for brand in brands):
        return "avif"
    if any(brand in _HEIF_BRANDS for brand in brands):
        return "heif"
    if brands[0] == b"crx ":
        raise PhotoError(raw_sentence())
    raise PhotoError(
        translate("photo", "This is a film, not a picture: save one still from it and open that.")
    )


def raw_sentence() -> str:
    """What to say about a camera's raw file."""
    return translate(
        "photo",
        "This is a camera's raw file, which this program does not develop: export it as a JPEG "
        "and open that.",
    )


def _why_not(head: bytes) -> str:
    if head.startswith((b"\xff\x0a", b"\0\0\0\x0cJXL ")):
        return translate(
            "photo", "JPEG XL pictures are not supported: export this one as a JPEG or PNG."
        )
    if head.startswith((b"\0\0\0\x0cjP  ", b"\xff\x4f\xff\x51")):
        return translate(
            "photo", "JPEG 2000 pictures are not supported: export this one as a JPEG or PNG."
        )
    if head.startswith(_RAW_STARTS) or head[8:10] == b"CR":
        return raw_sentence()
    if head.startswith((b"8BPS", b"%PDF", b"PK\x03\x04")):
        return translate(
            "photo", "This is a document, not a picture: export the picture as a JPEG or PNG."
        )
    text = head[:512].lstrip(b"\xef\xbb\xbf \t\r\n").lower()
    if text.startswith((b"<!doctype html", b"<html", b"<head", b"<body")):
        return translate(
            "photo",
            "This is a web page, not a picture file: the download failed, so download it again.",
        )
    if b"<svg" in text:
        return translate(
            "photo", "This is a drawing made of lines (SVG): export it as a PNG and open that."
        )
    if all(byte >= 32 or byte in b"\t\r\n\f" for byte in head[:512]):
        return translate(
            "photo", "This is not a picture file, it looks like text: choose a photo instead."
        )
    return translate(
        "photo", "This is not a picture file that can be opened: save it as a JPEG or PNG first."
    )
