"""What has to be said of the picture of a sheet: its light, its corners, how it lies."""

from __future__ import annotations

from typing import Literal, assert_never

import numpy as np

from core.colour.working_space import shrunk
from core.i18n import translate
from core.sheet.find.corners import SURE, FoundCorners
from core.sheet.light.light import SHADOW_RESIDUAL, Lit
from core.sheet.light.straighten import Flat
from core.sheet.light.tape import shows_tape
from core.sheet.match.orientation import Orientation
from core.sheet.result import Light, Notice, SheetOptions, Washes

Scene = Literal["several", "whole picture", "paper edge"]
"""What a picture shows otherwise than one painting on its paper."""

NOT_FOUND = 1e-6
"""Confidence below which nothing like a sheet was found: no straight edges at all."""
ASPECT_TOLERANCE = 0.12
"""Share by which the shape may differ from the one expected: perspective is undone roughly."""

_CLIPPED = 0.985  # linear; the last two steps of 8 bits
_CLIPPED_SHARE = 0.2
_WARM = 2.0  # red over blue of the border
_DARK = 0.10  # the border's brightest channel
_GLARE = 1.10  # over paper white
_GLARE_SHARE = 0.002
_SPOT, _AROUND = 1.12, 41  # glare is a spot: brighter than what is around, of 160 along the side
_COLOURED = 2.0


def judge_light(flat: Flat, lit: Lit, scan: bool) -> tuple[Light, bool]:
    """The light in words, and whether the border could undo it."""
    notices: list[Notice] = []
    white = (float(lit.white[0]), float(lit.white[1]), float(lit.white[2]))
    tape = shows_tape(flat)
    if tape:
        notices.append(
            Notice(
                "tape",
                translate(
                    "sheet",
                    "The tape seems to be on still, so the light could not be measured from the "
                    "paper: peel it off, then take the photo.",
                ),
            )
        )
    if lit.residual is None:
        notices.append(
            Notice(
                "no border",
                translate(
                    "sheet",
                    "No unpainted paper shows around the painting, so its light could not be "
                    "corrected: colours are judged loosely, left against right not at all.",
                ),
            )
        )
        return Light(None, False, white, (*notices, *_phone(scan))), False
    clipped = float((lit.border.max(axis=1) >= _CLIPPED).mean())
    over = clipped > _CLIPPED_SHARE
    if over:
        notices.append(
            Notice(
                "over-exposed",
                translate(
                    "sheet",
                    "The paper is over-exposed, so the light could not be measured from it: "
                    "photograph the sheet a little darker.",
                ),
            )
        )
    elif max(white) < _DARK:
        notices.append(
            Notice(
                "dark",
                translate(
                    "sheet",
                    "The photo is very dark, and dark photos are noisy: take it near a window.",
                ),
            )
        )
    shadow = lit.residual > SHADOW_RESIDUAL or lit.soft_shadow
    if shadow:
        notices.append(
            Notice(
                "shadow",
                translate(
                    "sheet",
                    "A shadow falls across the sheet, so left and right are not compared: take "
                    "the photo again in even light.",
                ),
            )
        )
    notices += _tint(white, over or tape)
    if not over and not tape and _glare(lit):
        notices.append(
            Notice(
                "glare",
                translate(
                    "sheet",
                    "Light glares on the paint, and there it hides the colour: tilt the sheet "
                    "or wait until it is dry.",
                ),
            )
        )
    corrected = not over and not shadow and not tape
    sides = corrected
    return Light(lit.residual, sides, white, (*notices, *_phone(scan))), corrected


def _tint(white: tuple[float, float, float], over: bool) -> list[Notice]:
    red, green, blue = (max(part, 1e-4) for part in white)
    if over:
        return []
    if red / blue > _WARM and red > green > blue:
        return [
            Notice(
                "warm light",
                translate(
                    "sheet",
                    "The light was very warm, as from a lamp: hues are less certain than by "
                    "daylight.",
                ),
            )
        ]
    if max(red, green, blue) / min(red, green, blue) > _COLOURED:
        return [
            Notice(
                "coloured light",
                translate(
                    "sheet",
                    "The border does not look white: if it is tape, peel it off first; if the "
                    "light was coloured, hues are less certain.",
                ),
            )
        ]
    return []


def _phone(scan: bool) -> list[Notice]:
    if scan:
        return []
    return [
        Notice(
            "phone",
            translate(
                "sheet",
                "A phone photo does not show small differences of colour: what comes near "
                "enough is called a match.",
            ),
        )
    ]


def _glare(lit: Lit) -> bool:
    """Spots in the paint brighter than its paper in every channel, and than what is around.

    A pale wash where the light was undone too far is as bright, but over a wide area.
    """
    from scipy.ndimage import median_filter  # deferred: start-up time

    small, _ = shrunk(lit.painted, 160)
    least = small.min(axis=2)
    bright = least > _GLARE
    if float(bright.mean()) <= _GLARE_SHARE:
        return False
    around = median_filter(least[::2, ::2], _AROUND // 2, mode="nearest")
    around = np.repeat(np.repeat(around, 2, axis=0), 2, axis=1)[: len(least), : least.shape[1]]
    return float((bright & (least > _SPOT * around)).mean()) > _GLARE_SHARE


def _scene_notice(scene: Scene) -> Notice:
    match scene:
        case "several":
            text = translate(
                "sheet",
                "There is more than one sheet in this picture: is it this one? If not, drag the "
                "corners to the other.",
            )
        case "whole picture":
            text = translate(
                "sheet",
                "The painting seems to fill the whole picture, without its paper: is that so? If "
                "not, drag the corners to it.",
            )
        case "paper edge":
            text = translate(
                "sheet",
                "The paint seems to reach the edge of the paper: is that so? If not, drag the "
                "corners to where it ends.",
            )
        case _:
            assert_never(scene)
    return Notice(scene, text)


def corner_notices(
    found: FoundCorners,
    options: SheetOptions,
    aspect: float,
    scene: Scene | None = None,
    washes: Washes | None = None,
) -> list[Notice]:
    """What to say of the corners, of what else the picture shows and of the painting's shape."""
    if (
        options.corners is None
        and found.confidence < SURE
        and washes is not None
        and washes.kind == "blank"
    ):
        text = translate(
            "sheet",
            "No paint is to be seen in this picture. If there is a painting, drag the corners to "
            "it.",
        )
        return [Notice("corners not found", text)]
    if options.corners is None and found.confidence < NOT_FOUND and scene is None:
        return [
            Notice(
                "corners not found",
                translate(
                    "sheet",
                    "The painted rectangle could not be found: drag its four corners into place.",
                ),
            )
        ]
    notices = [] if scene is None else [_scene_notice(scene)]
    if options.corners is None and found.confidence < SURE and scene is None:
        notices.append(
            Notice(
                "corners unsure",
                translate(
                    "sheet",
                    "The corners of the painting are not sure, so what is found here is "
                    "provisional: look at them first.",
                ),
            )
        )
    if options.aspect is not None and abs(np.log(aspect / options.aspect)) > ASPECT_TOLERANCE:
        notices.append(
            Notice(
                "aspect",
                translate(
                    "sheet",
                    "The painted rectangle has not the shape expected: are the corners right, "
                    "and is the tape off?",
                ),
            )
        )
    return notices


def orientation_notices(orientation: Orientation, washes: Washes) -> list[Notice]:
    """What to say of how the sheet lies, and of the sky on it."""
    if washes.kind == "blank":
        return []
    if orientation.turn == 2:
        return [
            Notice(
                "turn",
                translate(
                    "sheet", "The sheet seems to be upside down: turn it round if that is so."
                ),
            )
        ]
    if orientation.turn:
        return [
            Notice(
                "turn",
                translate("sheet", "The sheet seems to be on its side: turn it if that is so."),
            )
        ]
    if orientation.other_sky and washes.kind != "one":
        text = translate("sheet", "This does not look like the same sky: is it the right picture?")
        return [Notice("other sky", text)]
    if orientation.mirrored:
        return [
            Notice(
                "mirrored",
                translate(
                    "sheet",
                    "Left and right seem to be swapped: the picture of the sheet is mirrored, or "
                    "the sky was painted the other way round.",
                ),
            )
        ]
    return []
