"""A small class set for tests: a plain sky, a few students, pictures drawn flat."""

from __future__ import annotations

import io
from functools import lru_cache
from pathlib import Path

import numpy as np
from PIL import Image
from shared_work import content_of, shared
from sheet_pictures import PAINT, sheet_picture
from simulator.camera import encode
from simulator.evening import ticket_picture

from core.bands.lines import Bands
from core.class_set.check_one import Job, Outcome, check_one
from core.class_set.folder import ClassFolder, create_folder
from core.class_set.model import ClassSet, new_class_set
from core.class_set.students import ClassList, Student
from core.class_set.ticket import Ticket
from core.memory import Memory
from core.photo import strip_private
from core.pictures import Picture, digest_of
from core.sheet import Reference
from core.study import study_of

TAG = "7K3Q"
LINES = (1 / 3, 2 / 3)


def class_list(n: int = 4) -> ClassList:
    return ClassList(TAG, tuple(Student(k, f"{k:02d}") for k in range(1, n + 1)))


def sky_photo() -> bytes:
    """The sky of `sheet_picture`: three bands, each a third of the height."""
    linear = np.repeat(np.asarray(PAINT), 100, axis=0)[:, None] * np.ones((1, 240, 1))
    return as_png(encode(linear))


def as_png(encoded: np.ndarray) -> bytes:
    buffer = io.BytesIO()
    Image.fromarray(_to_codes(encoded)).save(buffer, "PNG")
    return buffer.getvalue()


def plain_class_set(n: int = 4) -> tuple[ClassSet, bytes]:
    """A class set without pictures, and its photo."""
    photo = strip_private(sky_photo())
    exercise = study_of(Picture("sky.png", digest_of(photo)), Bands(1.0, LINES))
    return new_class_set("7b", class_list(n), exercise), photo


def made_folder(where: Path, n: int = 4) -> ClassFolder:
    """The same, in a folder that is held open."""
    class_set, photo = plain_class_set(n)
    return create_folder(where / "7b", class_set, photo, where / "data")


def sheet_jpeg(ticket: Ticket | None, *, seed: int = 1, exif: Image.Exif | None = None) -> bytes:
    """A flat sheet of the class's sky on a table, with grain of its own, its ticket beside it."""
    pixels = _sheet_on_table(seed).copy()
    if ticket is not None:
        card = _to_codes(encode(ticket_picture(ticket)[::2, ::2]))
        pixels[20 : 20 + card.shape[0], 20 : 20 + card.shape[1]] = card[..., None]
    buffer = io.BytesIO()
    Image.fromarray(pixels).save(buffer, "JPEG", quality=92, **({"exif": exif} if exif else {}))
    return buffer.getvalue()


@lru_cache(maxsize=12)
def _sheet_on_table(seed: int) -> np.ndarray:
    linear = np.kron(sheet_picture(), np.ones((2, 2, 1)))
    rng = np.random.default_rng(seed)
    linear *= 1 + 0.05 * rng.standard_normal((*linear.shape[:2], 1))
    return _to_codes(encode(linear))


def _to_codes(encoded: np.ndarray) -> np.ndarray:
    return (np.clip(encoded, 0, 1) * 255 + 0.5).astype(np.uint8)


def phone_exif(when: str) -> Image.Exif:
    """What a phone writes: moment, camera, place, and a name."""
    exif = Image.Exif()
    exif[0x010F], exif[0x0110], exif[0x013B] = "Lumenix", "Model Nine", "Petra Beispiel"
    exif.get_ifd(0x8769)[0x9003] = when
    exif.get_ifd(0x8825).update({1: "N", 2: (48.0, 12.0, 30.0), 3: "E", 4: (11.0, 34.0, 30.0)})
    return exif


def cut_sheet_jpeg(ticket: Ticket | None, *, seed: int = 1) -> bytes:
    """The same, photographed without its lower edge: where its corners are, nobody can be sure."""
    with Image.open(io.BytesIO(sheet_jpeg(ticket, seed=seed))) as whole:
        cut = whole.crop((0, 0, whole.width, whole.height * 3 // 4))
    buffer = io.BytesIO()
    cut.save(buffer, "JPEG", quality=92)
    return buffer.getvalue()


_outcomes: Memory[Outcome] = Memory(200)


def check_once(job: Job, reference: Reference) -> Outcome:
    """`check_one`, of what was not checked yet: a job's key changes with all an outcome needs."""
    key = (job.key, job.name, job.options)
    return _outcomes.either(
        key, lambda: shared(("check_one", content_of(key)), lambda: check_one(job, reference))
    )
