"""Checking one picture: values in, values out, so that it runs in any process, here or elsewhere.

A job and an outcome can be pickled, and the same job gives the same outcome, byte for byte,
in order, in a pool of processes or through a scheduler.
"""

from __future__ import annotations

import io
import logging
from dataclasses import dataclass, replace
from pathlib import Path

from core.class_set.grain import grain_of
from core.class_set.kept_checks import FORMAT, check_to_json
from core.errors import GradewashError
from core.i18n import translate
from core.photo import Photo, open_photo
from core.sheet import check_sheet
from core.sheet.match.reference import Reference
from core.sheet.result import SheetCheck, SheetOptions

logger = logging.getLogger(__name__)

_QUALITY = 90  # of the straightened picture as it is kept


@dataclass(frozen=True)
class Job:
    """One picture to be checked.

    Attributes
    ----------
    key : str
        What its outcome is kept under: it changes with everything the outcome depends on.
    digest : str
        The picture's.
    source : Path or bytes
        Where the picture is, or the picture itself for a worker elsewhere.
    name : str
        What to call it.
    options : SheetOptions
    """

    key: str
    digest: str
    source: Path | bytes
    name: str
    options: SheetOptions = SheetOptions()


@dataclass(frozen=True)
class Outcome:
    """What came of a job.

    Attributes
    ----------
    key, digest : str
        The job's.
    check : bytes
        The check as JSON (`core.class_set.kept_checks`); empty when it failed.
    jpeg : bytes
        The painting straightened, as a JPEG; empty when it failed.
    grain : bytes
        Tells the same painting from another (`core.class_set.grain`); may be empty.
    sentence : str
        Why it could not be checked; empty when it could.
    """

    key: str
    digest: str
    check: bytes = b""
    jpeg: bytes = b""
    grain: bytes = b""
    sentence: str = ""


def check_one(job: Job, reference: Reference) -> Outcome:
    """Check a picture; one that is turned is turned and checked again.

    What is wrong with the picture becomes the outcome's sentence: one bad picture does not stop
    the others.

    Parameters
    ----------
    job : Job
    reference : Reference
        `slim_reference` is enough, and travels lightly.
    """
    try:
        photo = open_photo(job.source, name=job.name)
        check = _turned(photo, reference, job.options)
    except GradewashError as error:
        return Outcome(job.key, job.digest, sentence=str(error))
    except MemoryError:
        text = translate(
            "class set", "There is not enough memory to check this picture: use a smaller copy."
        )
        return Outcome(job.key, job.digest, sentence=text)
    except Exception:  # one picture nobody foresaw must not lose the evening
        logger.exception("%s could not be checked", job.digest)
        return Outcome(job.key, job.digest, sentence=failed())
    return Outcome(job.key, job.digest, check_to_json(check), _jpeg(check), grain_of(check.picture))


def failed() -> str:
    """What is said of a picture whose check ended in a way nobody foresaw."""
    return translate(
        "class set",
        "This picture could not be checked: save it again as a JPEG, or photograph the sheet "
        "again.",
    )


def _turned(photo: Photo, reference: Reference, options: SheetOptions) -> SheetCheck:
    check = check_sheet(photo, reference, options)
    # With the corners the teacher has said which way up it is, too.
    if check.better_turn is None or options.corners is not None:
        return check
    again = check_sheet(photo, reference, replace(options, turned=check.better_turn))
    return again if again.better_turn is None else check


def _jpeg(check: SheetCheck) -> bytes:
    from PIL import Image  # deferred: start-up time

    buffer = io.BytesIO()
    # The comment says whose file it is: only such a one is ever removed.
    Image.fromarray(check.picture).save(buffer, "JPEG", quality=_QUALITY, comment=FORMAT.encode())
    return buffer.getvalue()
