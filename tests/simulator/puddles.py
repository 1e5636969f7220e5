"""Puddles that came out wrong, painted by another film than the product's, with fixed seeds.

Nature here: a film with another inner reflection (0.4 instead of 0.6), a load that is uneven by
35%, and paints fitted so that each alone looks as measured; mixtures then differ from what the
product says, by about 1 to 2 (CIEDE2000). The spreads are those of the design of the check of
scraps: another maker's strength 0.3, camera 1, additions 20% off, load 20% off.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache

import numpy as np
from numpy.typing import NDArray

from core.colour import delta_E_2000
from core.paint.box.box import TWELVE_PAN, Box
from core.paint.mixture.mix import Mix, make_mix
from core.paint.pigment.film import film_over
from core.paint.pigment.measured import load_reflectance, measured_paints, spectrum_to_Lab

Floats = NDArray[np.float64]

INNER = 0.4
UNEVEN = 0.35
# Gauss-Hermite, three nodes: means over a normal spread of the log of the load.
_NODES = np.exp(UNEVEN * np.array([-np.sqrt(3), 0.0, np.sqrt(3)]))
_NODE_WEIGHTS = np.array([1, 4, 1]) / 6


def _film(K: Floats, S: Floats, paper: Floats) -> Floats:
    ground = paper / (1 - INNER + INNER * paper)
    inner = film_over(K, S, ground)
    return (1 - INNER) * inner / (1 - INNER * inner)


def _uneven(K: Floats, S: Floats, paper: Floats) -> Floats:
    parts = [
        weight * _film(node * K, node * S, paper)
        for node, weight in zip(_NODES, _NODE_WEIGHTS, strict=True)
    ]
    return np.sum(parts, axis=0)


@cache
def nature() -> tuple[Floats, Floats]:
    """K and S, (paints, bands) per millilitre, by which this film paints each paint as measured."""
    data = measured_paints()
    loads = np.geomspace(1e-4, 0.16, 9)
    seen = np.stack([load_reflectance(load * np.eye(len(data.keys))) for load in loads])
    theta = np.log(np.stack([data.K, data.S]) * 100 + 1e-6)

    def paint(at: Floats) -> Floats:
        K, S = np.exp(at)
        thin = 1 / (1 + data.crowding * 100 * loads[:, None, None])
        return _uneven(loads[:, None, None] * K, loads[:, None, None] * S * thin, data.paper)

    start = theta.copy()
    for _ in range(12):
        now = paint(theta)
        J = np.stack([(paint(theta + 1e-3 * turn) - now) / 1e-3 for turn in _turns()])
        H = np.einsum("ilpb,jlpb->pbij", J, J) + 1e-5 * np.eye(2)
        g = np.einsum("ilpb,lpb->pbi", J, now - seen) + 1e-5 * np.moveaxis(theta - start, 0, -1)
        step = np.linalg.solve(H, g[..., None])[..., 0]
        theta = theta - np.clip(np.moveaxis(step, -1, 0), -1, 1)
    K, S = np.exp(theta)
    return K, S


def _turns() -> Floats:
    turns = np.zeros((2, 2, 1, 1))
    turns[0, 0], turns[1, 1] = 1, 1
    return turns


def nature_Lab(loads: Floats) -> Floats:
    """CIELAB, (..., 3), of loads (..., 13) of the measured paints, in millilitres."""
    data = measured_paints()
    K, S = nature()
    total = loads.sum(axis=-1)[..., None]
    thin = 1 / (1 + data.crowding * 100 * total)
    return spectrum_to_Lab(_uneven(loads @ K, (loads @ S) * thin, data.paper))


@dataclass(frozen=True)
class Case:
    """A row of the design's table: parts off by a spread, and how often a colour got in."""

    name: str
    miscounted: float
    got_in: float


CASES = (
    Case("parts off by 35%", 0.35, 0.0),
    Case("the same, another colour got in", 0.35, 1.0),
    Case("parts off by 70%, other colour in 30%", 0.70, 0.3),
)


class Wrong:
    """A puddle that came out wrong: what is in it is known here, and to nobody else.

    Parameters
    ----------
    case : Case
    rng : numpy Generator
    box : Box
        Its black and white stay out.
    camera : float
        Spread of a reading, CIELAB; 0 for one that errs in nothing.
    """

    def __init__(
        self,
        case: Case,
        rng: np.random.Generator,
        box: Box = TWELVE_PAN,
        camera: float = 1.0,
    ) -> None:
        self.box, self.rng, self.case, self.camera = box, rng, case, camera
        self.keys = [paint.key for paint in box.paints if paint.group not in ("black", "white")]
        self.units = np.stack([box.load_vector({key: 1.0}) for key in self.keys])
        count = int(rng.integers(2, 4))
        chosen = list(rng.choice(self.keys, count, replace=False))
        parts = {str(key): int(rng.integers(1, 5)) for key in chosen}
        load = float(np.exp(rng.uniform(np.log(0.004), np.log(0.05))))
        self.mix: Mix = make_mix(box, parts, load)
        self.parts = dict(self.mix.parts)
        self.target = np.array(self.mix.Lab)
        self.strength = np.exp(rng.normal(0, 0.3, len(self.keys)))
        self.amounts = self._mixed()
        self.got_in: str | None = None
        if rng.random() < case.got_in:
            other = str(rng.choice([key for key in self.keys if key not in self.parts]))
            self.got_in = other
            self.amounts[self.keys.index(other)] = 0.15 * sum(self.parts.values())

    def _mixed(self) -> Floats:
        amounts = np.zeros(len(self.keys))
        for key, count in self.parts.items():
            off = self.rng.normal(0, self.case.miscounted)
            amounts[self.keys.index(key)] = count * np.exp(off)
        return amounts

    def begin_again(self) -> None:
        """The same mix by the same hand and the same paints, in a clean dish."""
        self.amounts = self._mixed()

    def add(self, parts: Mapping[str, float], off: float = 0.2) -> None:
        """Add parts of paints, each off by a spread."""
        for key, count in parts.items():
            self.amounts[self.keys.index(key)] += count * np.exp(self.rng.normal(0, off))

    def stroke(self, load_ml: float, off: float) -> tuple[float, float, float]:
        """Paint a stroke, let it dry, photograph it: CIELAB as the camera says."""
        load = load_ml * np.exp(self.rng.normal(0, off))
        Lab = self.Lab_at(np.array([load]))[0] + self.camera * self.rng.normal(0, 1, 3)
        return float(Lab[0]), float(Lab[1]), float(Lab[2])

    def Lab_at(self, loads: Floats) -> Floats:
        """The puddle's colours at loads (n,)."""
        share = self.amounts / self.amounts.sum()
        return nature_Lab(loads[:, None] * ((share * self.strength) @ self.units))

    def off(self) -> float:
        """CIEDE2000 from the band at the best thinning."""
        return float(best_thinning(self, self.amounts[None])[0])

    def reachable(self, additions: Floats) -> float:
        """The same after the best of some additions (n, paints), exactly carried out."""
        grown = self.amounts + additions[additions.sum(1) <= 2 * self.amounts.sum() + 1e-9]
        return float(best_thinning(self, grown).min())


def best_thinning(puddle: Wrong, amounts: Floats) -> Floats:
    """CIEDE2000 from the band, (n,), of puddles (n, paints), each at its best load."""
    loads = np.geomspace(2e-4, 0.2, 25)
    share = amounts / amounts.sum(axis=1, keepdims=True)
    layer = (share * puddle.strength) @ puddle.units
    Lab = nature_Lab(loads[:, None, None] * layer)
    off = np.asarray(delta_E_2000(Lab, puddle.target))
    low = np.clip(off.argmin(axis=0), 1, len(loads) - 2)
    near = np.geomspace(loads[low - 1], loads[low + 1], 9)
    Lab = nature_Lab(near[:, :, None] * layer)
    return np.minimum(off.min(0), np.asarray(delta_E_2000(Lab, puddle.target)).min(0))
