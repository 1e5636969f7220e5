"""How fast Munsell hue, value and chroma of a million pixels are, beside CIELAB of the same.

Run from the root of a checkout: python -m benchmarks.munsell
"""

from __future__ import annotations

import time
from collections.abc import Callable

import numpy as np

from core.colour import srgb_to_Lab, srgb_to_munsell
from core.colour.munsell import _table
from core.photo.views import cvd_view, squint_view, value_steps_view, values_view

PIXELS = 1_000_000
RUNS = 5


def best_of(run: Callable[[], object]) -> float:
    """Seconds of the fastest of a few runs: the machine's other work counts least there."""
    times = []
    for _ in range(RUNS):
        start = time.perf_counter()
        run()
        times.append(time.perf_counter() - start)
    return min(times)


def main() -> None:
    start = time.perf_counter()
    _table()
    print(f"load the table            {(time.perf_counter() - start) * 1e3:7.1f} ms")

    rgb = np.random.default_rng(0).random((PIXELS, 3))
    srgb_to_munsell(rgb[:10])
    munsell = best_of(lambda: srgb_to_munsell(rgb))
    lab = best_of(lambda: srgb_to_Lab(rgb))
    print(f"Munsell of 1 M pixels     {munsell * 1e3:7.1f} ms   (limit 500 ms)")
    print(f"CIELAB of 1 M pixels      {lab * 1e3:7.1f} ms   Munsell / CIELAB = {munsell / lab:.2f}")
    _beside_the_reference(munsell)

    picture = np.random.default_rng(1).integers(0, 256, (1000, 1500, 3), dtype=np.uint8)
    views: dict[str, Callable[[], object]] = {
        "values": lambda: values_view(picture),
        "values in 5 steps": lambda: value_steps_view(picture, 5),
        "squint": lambda: squint_view(picture, 0.01),
        "deutan eyes": lambda: cvd_view(picture, "deutan"),
    }
    for name, view in views.items():
        view()
        print(f"{name:<18} 1.5 MP {best_of(view) * 1e3:7.1f} ms")


def _beside_the_reference(munsell: float) -> None:
    """colour-science inverts one colour at a time, by iteration; only for comparison."""
    try:
        import colour
    except ImportError:
        print("colour-science is not installed: no comparison with its inverse")
        return
    xyY = np.array([0.27, 0.29, 0.35])
    colour.notation.munsell.xyY_to_munsell_specification(xyY)
    one = best_of(lambda: colour.notation.munsell.xyY_to_munsell_specification(xyY))
    ratio = one * PIXELS / munsell
    print(f"colour-science, 1 colour  {one * 1e3:7.1f} ms   {ratio:,.0f} times as long a colour")


if __name__ == "__main__":
    main()
