"""A class's evening: the same sky painted by many, each with a ticket beside the sheet.

The ticket is in the sheet's own plane, 60 by 26 mm with a 20 mm code, on paper 297 mm wide.
"""

from __future__ import annotations

from dataclasses import replace

import numpy as np
from numpy.typing import NDArray
from scipy.ndimage import gaussian_filter

from core.class_set.codes import code_modules
from core.class_set.ticket import Ticket
from simulator.camera import (
    Shot,
    desk_picture,
    distort,
    homography,
    jpeg_of,
    light_field,
    project,
)
from simulator.scenes import Scene, random_shot, scene, vary
from simulator.sheets import Floats, Painting, paint
from simulator.strips import cover_of, lay, sheet_places, strips

PAPER_MM = 297.0
TICKET_MM = (60.0, 26.0)
CODE_MM = 20.0
_PX_PER_MM = 8


def ticket_picture(ticket: Ticket) -> Floats:
    """The ticket as printed: the code at the left, marks where its words stand; (h, w) linear."""
    w, h = (round(v * _PX_PER_MM) for v in TICKET_MM)
    card = np.full((h, w), 0.85)
    modules = code_modules(ticket)
    side = round(CODE_MM * _PX_PER_MM)
    rows = np.minimum((np.arange(side) + 0.5) / side * len(modules), len(modules) - 1).astype(int)
    at = round((TICKET_MM[1] - CODE_MM) / 2 * _PX_PER_MM)
    card[at : at + side, at : at + side] = np.where(modules[np.ix_(rows, rows)], 0.05, 0.85)
    for k, x in enumerate(range(at + side + 50, w - 30, 40)):
        card[h // 3 : h // 2 + 10 * (k % 3), x : x + 22] = 0.06
    return card


def photograph_with_ticket(
    painting: Painting, shot: Shot, ticket: Ticket | None, beside: float = 8.0
) -> tuple[bytes, NDArray[np.float64]]:
    """As `simulator.camera.photograph`, with a ticket below the sheet, `beside` mm away.

    Returns
    -------
    bytes
        The JPEG file.
    (4, 2) float64
        The painted rectangle's corners in pixels.
    """
    rng = np.random.default_rng([99, shot.seed])
    w, h = shot.size
    ph, pw = painting.paper.shape[:2]
    outline = np.array([[0, 0], [pw, 0], [pw, ph], [0, ph]], dtype=float)
    turned_w, turned_h = (ph, pw) if shot.turn % 2 else (pw, ph)
    scale = shot.fill * min(w / turned_w, h / turned_h)
    half = np.array([turned_w, turned_h]) * scale / 2
    corners = np.array([[-1, -1], [1, -1], [1, 1], [-1, 1]]) * half
    corners = corners + rng.uniform(-1, 1, (4, 2)) * shot.perspective * half.mean() * 2
    t = np.radians(shot.tilt_deg)
    corners = corners @ np.array([[np.cos(t), np.sin(t)], [-np.sin(t), np.cos(t)]])
    corners = corners + np.array([w, h]) / 2
    H = homography(np.roll(outline, shot.turn, axis=0), corners)
    left, top, right, bottom = painting.box
    box = np.array([[left, top], [right, top], [right, bottom], [left, bottom]])
    truth = distort(project(H, box), shot.size, shot.distortion)
    inverse = np.linalg.inv(H)
    shrink = max(1.0, 0.5 / scale)
    layers = [gaussian_filter(painting.paper[..., c], 0.35 * shrink) for c in range(3)]
    picture = desk_picture(shot, rng)
    along = rng.uniform(0.2, 0.8)  # drawn in any case: all else is then the same without a ticket
    light = light_field(shot, truth, rng)
    red, blue = shot.white_balance
    white = float(np.max(np.asarray(painting.spec.tint) * [red, 1.0, blue]))
    mm = pw / PAPER_MM
    if ticket is not None:
        card = gaussian_filter(ticket_picture(ticket), 0.3 * _PX_PER_MM / (mm * scale))
    for rows in strips(h):
        x, y = (place - 0.5 for place in sheet_places(inverse, rows, shot.size, shot.distortion))
        part = picture[rows]
        if ticket is not None:
            tx = x - (0.5 * pw - TICKET_MM[0] * mm * along)
            ty = y - (ph + beside * mm)
            on = cover_of(tx, ty, TICKET_MM[0] * mm, TICKET_MM[1] * mm, scale)
            lay(part, [card] * 3, tx / mm * _PX_PER_MM, ty / mm * _PX_PER_MM, on)
        lay(part, layers, x, y, cover_of(x, y, pw - 1, ph - 1, scale))
        part *= light[rows][..., None]
        part *= np.array([red, 1.0, blue])
        part *= shot.exposure / white
    return jpeg_of(picture, shot, rng), truth


def class_sheet(
    base: Scene,
    seed: int,
    ticket: Ticket | None,
    *,
    turn: int = 0,
    size: tuple[int, int] = (1600, 1200),
    stronger: float = 1.0,
) -> tuple[bytes, NDArray[np.float64]]:
    """One student's photo of their painting of a scene's sky.

    Parameters
    ----------
    base : Scene
        Its reference is the class's photo.
    seed : int
        The student's hand and the shot.
    """
    rng = np.random.default_rng([41, seed])
    washes = tuple(
        {key: amount * stronger for key, amount in vary(rng, wash, 0.2).items()}
        for wash in base.spec.washes
    )
    moved = np.add(base.lines, np.clip(rng.normal(0, 0.02, len(base.lines)), -0.04, 0.04))
    lines = np.sort(np.clip(moved, 0.06, 0.94))
    if len(lines) > 1 and np.diff(lines).min() < 0.07:
        lines = np.asarray(base.lines)
    spec = replace(
        base.spec,
        seed=seed,
        washes=washes,
        lines=tuple(float(v) for v in lines),
        granulation=float(rng.uniform(0.01, 0.06)),
    )
    shot = random_shot(rng, seed)
    shot = replace(
        shot,
        scan=False,
        size=size,
        fill=float(rng.uniform(0.55, 0.68)),
        tilt_deg=float(np.clip(shot.tilt_deg, -8, 8)),
        turn=turn,
        seed=seed,
    )
    return photograph_with_ticket(paint(spec), shot, ticket)


def class_scene(seed: int) -> Scene:
    """A sky without faults, to be painted by a class."""
    return scene(seed, faults=False, copy=True)
