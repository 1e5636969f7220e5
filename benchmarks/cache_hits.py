"""What each `lru_cache` saved in an hour's work: how often it was asked, and what an answer costs.

The work is that of `benchmarks/memories.py` in a window (edits of a plan, a drag, the pages), then
the class view, a card, and a sheet checked and scored. A hit saves at most the processor time that
a miss took on average in the same run; where caches are nested the outer one's figure holds the
inner one's. The table is what the comments beside the caches are taken from.

    python benchmarks/cache_hits.py
"""

from __future__ import annotations

import functools
import os
import sys
import tempfile
import time
from collections.abc import Callable
from pathlib import Path
from typing import Any

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
os.environ.setdefault("OMP_NUM_THREADS", "1")

ROOT = Path(__file__).parents[1]
sys.path[:0] = [str(ROOT), str(ROOT / "benchmarks"), str(ROOT / "tests")]

_asked: dict[str, list[float]] = {}
"""By name: calls, misses, seconds of the misses."""

_plain = functools.lru_cache


def _counting(maxsize: Any = 128, typed: bool = False) -> Any:
    """`lru_cache` that also counts, for functions of core and app."""

    def wrap(function: Callable[..., Any]) -> Any:
        if not function.__module__.startswith(("core.", "app.")):
            return _plain(maxsize, typed)(function)
        counted = _asked.setdefault(f"{function.__module__}.{function.__qualname__}", [0, 0, 0.0])

        @functools.wraps(function)
        def timed(*args: Any, **kwargs: Any) -> Any:
            counted[1] += 1
            began = time.thread_time()
            try:
                return function(*args, **kwargs)
            finally:
                counted[2] += time.thread_time() - began

        cache = _plain(maxsize, typed)(timed)

        @functools.wraps(function)
        def ask(*args: Any, **kwargs: Any) -> Any:
            counted[0] += 1
            return cache(*args, **kwargs)

        ask.cache_clear = cache.cache_clear  # type: ignore[attr-defined]
        ask.cache_info = cache.cache_info  # type: ignore[attr-defined]
        return ask

    if callable(maxsize):
        function, maxsize = maxsize, 128
        return wrap(function)
    return wrap


def more_work(folder: Path) -> None:
    """A card, the class view, and a sheet checked and scored."""
    from PySide6.QtWidgets import QApplication, QWidget
    from simulator import REPORT_SEED, measure, scene

    import sample_scenes
    from app.cards.card import CardChoice, lay_out_card
    from app.cards.paper import PAPERS
    from app.cards.pdf import pdf_of
    from app.window.window import Window
    from core.cards import gather
    from core.photo import open_photo
    from core.pipeline import Worked
    from core.sheet import check_sheet
    from core.sheet.findings.findings import in_plan_terms
    from core.sheet.findings.planned import Planned

    app = QApplication.instance()
    assert isinstance(app, QApplication)
    window = Window(folder / "second")
    window.show()
    window.opener.open_sample(sample_scenes.names()[0])
    while window.reader.working or window.planner.working or window.planner.plan is None:
        app.processEvents()
        time.sleep(0.002)
    window.class_room.toggle()
    for _ in range(20):
        app.processEvents()
        for widget in app.topLevelWidgets():
            if isinstance(widget, QWidget) and widget.isVisible():
                widget.grab()
    window.class_room.toggle()
    known = Worked(photo=window.reader.photo)
    wording = window.preferences.settings.wording
    data = gather("plan", window.document.study, dict(window.pictures), wording, known=known)
    pdf_of(lay_out_card(data, CardChoice("plan", PAPERS["a4"])), "plan")
    one = scene(REPORT_SEED)
    photo, reference = open_photo(one.jpeg, name="sheet.jpg"), measure.reference_of(one)
    for _ in range(2):  # as when a line was moved in between
        check = check_sheet(photo, reference)
        for _ in range(3):  # the page, its card and the change ask for the cures again
            in_plan_terms(check, Planned(window.planner.plan))


def main() -> None:
    functools.lru_cache = _counting  # type: ignore[assignment]
    import memories

    with tempfile.TemporaryDirectory() as name:
        work = memories.window_work(Path(name))
        began = time.process_time()
        work()
        more_work(Path(name))
        spent = time.process_time() - began
    print(f"{spent * 1000:.0f} ms of the processor in all")
    print(f"{'calls':>8}{'misses':>8}{'ms a miss':>11}{'saved ms':>10}  cache")
    rows = []
    for cache, (calls, misses, seconds) in _asked.items():
        each = 1000 * seconds / misses if misses else 0.0
        rows.append(((calls - misses) * each, calls, misses, each, cache))
    for saved, calls, misses, each, cache in sorted(rows, reverse=True):
        print(f"{calls:8.0f}{misses:8.0f}{each:11.3f}{saved:10.1f}  {cache}")
    sys.stdout.flush()
    os._exit(0)  # nothing is to be saved, and no window asks


if __name__ == "__main__":
    main()
