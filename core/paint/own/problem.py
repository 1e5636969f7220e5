"""All readings of a card as one problem: what is unknown, and how far a guess is from them.

Unknown are each own paint's spectra (15 numbers along the prior's directions), the load of every
reading (a stroke runs from thick to water, nobody knows how thick), the true ratio of every mix
(brush loads are counted by hand), and perhaps the phone's curve; each with a normal prior of
spread 1 in its own unit. A reading's misfit counts by Huber's rule: a streak does not pull.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

from core.colour import XYZ_to_linear, linear_to_XYZ
from core.paint.own.layer import Lab_slopes, film_slopes
from core.paint.own.phone import UNKNOWNS, PhonePrior, phone_slopes, seen_by_phone
from core.paint.own.prior import BANDS, Prior
from core.paint.pigment.film import paper_inside
from core.paint.pigment.pigments import Floats, Pigments

HUBER = 3.0
"""Standard deviations from which a reading pulls no harder."""

CHROMA_BLUR = 0.03
"""Colour counts less where there is much of it: CIELAB is too fine there."""


@dataclass(frozen=True, eq=False)
class Samples:
    """Readings as arrays, n of them.

    Attributes
    ----------
    Lab : ndarray, shape (n, 3), float
    first, second : ndarray, shape (n,), int
        Rows of the stored pigments, then the own paints; `second` is -1 for a paint alone.
    field : ndarray, shape (n,), int
        Which painted field it is of: a field shares one ratio.
    load : ndarray, shape (n,), float
        Likely load, hundredths of a millilitre.
    log_ratio : ndarray, shape (n,), float
        Natural logarithm of the ratio that was asked for, first to second.
    weight : ndarray, shape (n,), float
        0 leaves a reading out.
    """

    Lab: Floats
    first: NDArray[np.int64]
    second: NDArray[np.int64]
    field: NDArray[np.int64]
    load: Floats
    log_ratio: Floats
    weight: Floats


@dataclass(frozen=True)
class Spreads:
    """Standard deviations of what nobody measured.

    Attributes
    ----------
    reading : float
        Of a reading, CIELAB.
    log_load, log_ratio : float
        Natural logarithms, of a load and of a mix's ratio.
    """

    reading: float = 2.5
    log_load: float = 2.0
    log_ratio: float = 0.3


class Problem:
    """The readings of one card.

    Parameters
    ----------
    stored : Pigments
        Paints that are known.
    priors : sequence of Prior
        One an own paint.
    samples : Samples
    spreads : Spreads
    phone : PhonePrior, optional
        What is likely of the phone's curve, where it is unknown too.
    """

    def __init__(
        self,
        stored: Pigments,
        priors: Sequence[Prior],
        samples: Samples,
        spreads: Spreads,
        phone: PhonePrior | None = None,
    ) -> None:
        self.stored, self.priors, self.samples = stored, list(priors), samples
        self._ground = paper_inside(stored.paper)
        self._mix = samples.second >= 0
        fields = np.unique(samples.field[self._mix])
        self._ratio_slot = np.where(self._mix, np.searchsorted(fields, samples.field), 0)
        self.ratio_fields = fields
        self._other = np.where(self._mix, samples.second, 0)
        self._spreads, self._phone = spreads, phone
        n, width = len(samples.Lab), [prior.B.shape[1] for prior in self.priors]
        ends = np.concatenate([[0], np.cumsum(width)]).astype(int)
        self.paint_slices = [slice(a, b) for a, b in pairwise(ends.tolist())]
        self.load_slice = slice(int(ends[-1]), int(ends[-1]) + n)
        self.ratio_slice = slice(self.load_slice.stop, self.load_slice.stop + len(fields))
        self.phone_slice = slice(
            self.ratio_slice.stop, self.ratio_slice.stop + (UNKNOWNS if phone else 0)
        )
        self.size = self.phone_slice.stop
        blur = 1 / (1 + CHROMA_BLUR * np.hypot(samples.Lab[:, 1], samples.Lab[:, 2]))
        scale = np.stack([np.ones(n), blur, blur], axis=1) / spreads.reading
        self._scale = scale * np.sqrt(samples.weight)[:, None]

    def spectra(self, x: Floats) -> tuple[Floats, Floats]:
        """K and S of the stored and the own paints, shape (paints, 41)."""
        rows_K, rows_S = [self.stored.K], [self.stored.S]
        for prior, place in zip(self.priors, self.paint_slices, strict=True):
            theta = np.exp(np.clip(prior.mean + prior.B @ x[place], -9, 6))
            rows_K.append(theta[None, :BANDS])
            rows_S.append(theta[None, BANDS:])
        return np.concatenate(rows_K), np.concatenate(rows_S)

    def ratio_spreads(self, x: Floats) -> Floats:
        """How far each mixed field's ratio is from what was asked, in standard deviations."""
        return x[self.ratio_slice]

    def cost(self, x: Floats) -> float:
        """What the guess costs: misfits, and how unlikely it is itself."""
        return float(self._huber(self._misfit(self._seen(x))).sum() + (x**2).sum())

    def field_costs(self, x: Floats) -> dict[int, float]:
        """What each field's own readings, loads and ratio cost."""
        each = self._huber(self._misfit(self._seen(x))) + x[self.load_slice] ** 2
        costs: dict[int, float] = {}
        for field in np.unique(self.samples.field).tolist():
            costs[field] = float(each[self.samples.field == field].sum())
        for slot, field in enumerate(self.ratio_fields.tolist()):
            costs[field] += float(x[self.ratio_slice][slot] ** 2)
        return costs

    def normal(self, x: Floats) -> tuple[float, Floats, Floats]:
        """The cost, its half gradient (size,) and half Hessian (size, size)."""
        Lab, J = self._slopes(x)
        misfit = self._misfit(Lab)
        size = np.linalg.norm(misfit, axis=1)
        calm = np.sqrt(np.minimum(1.0, HUBER / np.maximum(size, 1e-9)))[:, None]
        r = (misfit * calm).ravel()
        A = (J * (self._scale * calm)[:, :, None]).reshape(-1, self.size)
        cost = float(self._huber(misfit).sum() + (x**2).sum())
        return cost, A.T @ r + x, A.T @ A + np.eye(self.size)

    def _misfit(self, Lab: Floats) -> Floats:
        off: Floats = (Lab - self.samples.Lab) * self._scale
        return off

    def _huber(self, misfit: Floats) -> Floats:
        size = np.linalg.norm(misfit, axis=1)
        cost: Floats = np.where(size < HUBER, size**2, 2 * HUBER * size - HUBER**2)
        return cost

    def _loads(self, x: Floats) -> tuple[Floats, Floats, Floats]:
        """Whole load, the first paint's and the second's, of each reading."""
        log_load = np.log(self.samples.load) + x[self.load_slice] * self._spreads.log_load
        whole = np.exp(np.clip(log_load, -12, 7))
        ratio = self.samples.log_ratio
        if len(self.ratio_fields):
            ratio = ratio + x[self.ratio_slice][self._ratio_slot] * self._spreads.log_ratio
        share = np.where(self._mix, 1 / (1 + np.exp(-ratio)), 1.0)
        return whole, whole * share, whole * (1 - share)

    def _layers(self, x: Floats) -> tuple[Floats, ...]:
        K, S = self.spectra(x)
        whole, one, other = self._loads(x)
        thin = 1 + self.stored.crowding * whole
        first, second = self.samples.first, self._other
        layer_K = one[:, None] * K[first] + other[:, None] * K[second]
        layer_S = (one[:, None] * S[first] + other[:, None] * S[second]) / thin[:, None]
        return K, S, whole, one, other, thin, layer_K, layer_S

    def _shown(self, R: Floats) -> tuple[Floats, Floats, NDArray[np.bool_]]:
        """CIELAB as a picture in sRGB can hold it, its slopes by R, and what was clipped."""
        XYZ = R @ self.stored.weights
        linear = XYZ_to_linear(XYZ)
        clipped: NDArray[np.bool_] = np.less(linear, 0.0)
        some: NDArray[np.bool_] = np.logical_or.reduce(clipped, axis=1)
        XYZ = np.where(some[:, None], linear_to_XYZ(np.maximum(linear, 1e-7)), XYZ)
        Lab, by_XYZ = Lab_slopes(XYZ)
        return Lab, by_XYZ, clipped

    def _seen(self, x: Floats) -> Floats:
        *_, layer_K, layer_S = self._layers(x)
        Lab = self._shown(film_slopes(layer_K, layer_S, self._ground)[0])[0]
        if self._phone is None:
            return Lab
        return seen_by_phone(Lab, x[self.phone_slice], self._phone)

    def _slopes(self, x: Floats) -> tuple[Floats, Floats]:
        """What is seen, (n, 3), and its slopes by every unknown, (n, 3, size)."""
        K, S, whole, one, other, thin, layer_K, layer_S = self._layers(x)
        R, by_K, by_S = film_slopes(layer_K, layer_S, self._ground)
        Lab, by_XYZ, clipped = self._shown(R)
        into_XYZ = self.stored.weights.T  # (3, 41)
        by_R = by_XYZ @ into_XYZ
        bad = np.flatnonzero(clipped.any(axis=1))
        if len(bad):
            to_linear, to_XYZ = XYZ_to_linear(np.eye(3)).T, linear_to_XYZ(np.eye(3)).T
            kept = np.where(clipped[bad], 0.0, 1.0)[:, :, None]
            by_R[bad] = by_XYZ[bad] @ (to_XYZ @ (kept * (to_linear @ into_XYZ)[None]))
        n = len(Lab)
        J = np.zeros((n, 3, self.size))
        if self._phone is not None:
            Lab, by_Lab, by_phone = phone_slopes(Lab, x[self.phone_slice], self._phone)
            by_R = by_Lab @ by_R
            J[:, :, self.phone_slice] = by_phone
        stored = len(self.stored.keys)
        for number, (prior, place) in enumerate(zip(self.priors, self.paint_slices, strict=True)):
            row = stored + number
            load = np.where(self.samples.first == row, one, 0.0)
            load += np.where(self._mix & (self._other == row), other, 0.0)
            at = np.flatnonzero(load > 0)
            move_K = by_K[at] * load[at, None] * K[row]
            move_S = by_S[at] * (load[at] / thin[at])[:, None] * S[row]
            both = np.concatenate([by_R[at] * move_K[:, None], by_R[at] * move_S[:, None]], axis=2)
            J[at, :, place] = both @ prior.B
        crowd = (self.stored.crowding * whole / thin)[:, None]
        by_load = by_K * layer_K + by_S * (layer_S - layer_S * crowd)
        each = np.arange(n)
        J[each, :, self.load_slice.start + each] = self._spreads.log_load * np.einsum(
            "ncb,nb->nc", by_R, by_load
        )
        at = np.flatnonzero(self._mix)
        if len(at):
            turn = (one * other / whole)[at, None]
            first, second = self.samples.first[at], self._other[at]
            by_ratio = by_K[at] * turn * (K[first] - K[second])
            by_ratio += by_S[at] * turn / thin[at, None] * (S[first] - S[second])
            J[at, :, self.ratio_slice.start + self._ratio_slot[at]] = (
                self._spreads.log_ratio * np.einsum("ncb,nb->nc", by_R[at], by_ratio)
            )
        return Lab, J
