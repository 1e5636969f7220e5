"""What each cache saves: every one is taken out in turn, and the same work is done again.

Two kinds of work. `plan`: a sky is planned, then as a teacher edits it (a paint forbidden, pinned,
parts by hand, a line moved, the sheet changed, all undone). `window`: the same edits, a drag and a
walk through the pages, each painted. Processor time, so that other work on the machine counts
little. Printed are milliseconds and how many times as long it takes without the cache; a cache
that saves nothing is not worth its place.

    python benchmarks/memories.py [plan|window] [--only NAME]
"""

from __future__ import annotations

import argparse
import gc
import os
import statistics
import sys
import tempfile
import time
from collections.abc import Callable, Iterator
from contextlib import ExitStack, contextmanager
from dataclasses import replace
from pathlib import Path
from typing import Any

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
os.environ.setdefault("OMP_NUM_THREADS", "1")

sys.path.insert(0, str(Path(__file__).parents[1]))

import sample_scenes
from core.bands.lines import move_line
from core.memory import Memory
from core.mixing import choose_box
from core.paint.box.box import DEFAULT_BOX, GENERIC_BOXES
from core.paint.options import BandChoice
from core.paint.wash.amounts import SHEETS
from core.photo import open_photo
from core.pictures import Picture
from core.pipeline import plan_sky, propose_for, read_sky, transitions_of
from core.study import Study, study_of, with_bands

PAIRS = 3


def edits(study: Study) -> list[Study]:
    """What a teacher tries, one after the other, and takes back."""
    letter = "B"
    ban, hold = "ultramarine", "burnt_sienna"
    with_choice = [
        replace(study, mix=study.mix.with_choice(letter, BandChoice(forbidden=(ban,)))),
        replace(study, mix=study.mix.with_choice(letter, BandChoice(pinned=(hold,)))),
        *(
            replace(
                study,
                mix=study.mix.with_choice(
                    letter, BandChoice(parts=(("ultramarine", 2), ("crimson", n)))
                ),
            )
            for n in (1, 2, 3)
        ),
    ]
    moved = with_bands(study, move_line(study.bands, 0, study.bands.lines[0] + 0.02))
    larger = replace(study, mix=replace(study.mix, sheet=SHEETS["A3"]))
    other = choose_box(study, GENERIC_BOXES["primary"])
    return [study, *with_choice, study, moved, study, larger, other, study]


def plan_work() -> Callable[[], None]:
    """Plans of two skies and their edits; photos opened and read before."""
    jobs = []
    for name in ("dusk", "pines"):
        photo = open_photo(sample_scenes.path(name))
        proposal = propose_for(photo)
        study = replace(study_of(Picture("sky.jpg"), proposal.bands), box=DEFAULT_BOX)
        for edited in edits(study):
            sky = read_sky(photo, proposal, edited.bands)
            jobs.append((sky, edited, transitions_of(sky)))

    def work() -> None:
        for sky, study, transitions in jobs:
            plan_sky(sky, study.box, study.mix, transitions)

    return work


def window_work(folder: Path) -> Callable[[], None]:
    """A window that shows the edits, a drag, and its pages; open and settled before."""
    from PySide6.QtWidgets import QApplication

    from app.window.pages import PAGES
    from app.window.window import Window

    app = QApplication.instance() or QApplication([])
    window = Window(folder)
    window.resize(1366, 768)
    window.show()
    window.opener.open_sample("dusk")

    def settle() -> None:
        while True:
            app.processEvents()
            busy = window.reader.working or window.planner.working
            if not busy and window.planner.plan is not None:
                break
            time.sleep(0.002)
        window.grab()

    settle()
    first = window.document.study

    def work() -> None:
        # A drag is as long as a hand makes it, and repaints without waiting for plans.
        window.show_page(0)
        for move in range(20):
            moved = move_line(first.bands, 1, first.bands.lines[1] + 0.001 * (move % 10))
            window.document.change("benchmark", with_bands(first, moved))
            window.grab()
        window.document.change("benchmark", first)
        settle()
        for number in range(len(PAGES)):
            window.show_page(number)
            window.grab()
        window.show_page(next(i for i, kind in enumerate(PAGES) if kind.key == "mix"))
        for study in edits(first):
            window.document.change("benchmark", study)
            settle()
        window.document.mark_saved()

    return work


def lru_caches() -> Iterator[tuple[str, Any]]:
    """Every `lru_cache` of a function with arguments in core and app, by its name."""
    seen = set()
    for module in list(sys.modules.values()):
        if not getattr(module, "__name__", "").startswith(("core.", "app.")):
            continue
        for value in list(vars(module).values()):
            if hasattr(value, "cache_parameters") and id(value) not in seen:
                seen.add(id(value))
                if value.__wrapped__.__code__.co_argcount:
                    yield f"{value.__module__}.{value.__name__}", value


def memories() -> Iterator[tuple[str, Memory[Any]]]:
    """Every memory that a module of core holds."""
    for name, module in list(sys.modules.items()):
        if name.startswith("core."):
            for key, value in vars(module).items():
                if isinstance(value, Memory):
                    yield f"{name}.{key}", value


@contextmanager
def without(cache: Any) -> Iterator[None]:
    """Take a cache out for a while, wherever its name was imported."""
    if isinstance(cache, Memory):
        most, cache._most = cache._most, 0
        yield
        cache._most = most
        return
    places = [
        (module, key)
        for name, module in list(sys.modules.items())
        if name.startswith(("core.", "app."))
        for key, value in vars(module).items()
        if value is cache
    ]
    for module, key in places:
        setattr(module, key, cache.__wrapped__)
    yield
    for module, key in places:
        setattr(module, key, cache)


def timed(work: Callable[[], None], tables: set[str]) -> float:
    """Milliseconds of the processor, from empty caches; tables made once stay."""
    for name, cache in lru_caches():
        if name not in tables:
            cache.cache_clear()
    for _, memory in memories():
        memory.forget()
    gc.collect()
    began = time.process_time()
    work()
    return (time.process_time() - began) * 1000


def saved(work: Callable[[], None], tables: set[str], caches: list[Any]) -> float:
    """How many times as long it takes without: the middle of pairs, one right after the other."""
    ratios = []
    for _ in range(PAIRS):
        whole = timed(work, tables)
        with ExitStack() as stack:
            for cache in caches:
                stack.enter_context(without(cache))
            ratios.append(timed(work, tables) / whole)
    return statistics.median(ratios)


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("kind", nargs="?", choices=("plan", "window"), default="plan")
    parser.add_argument("--only", default="", help="caches with this in their name")
    parser.add_argument("--without", default="", help="take all these out: NAME,NAME")
    asked = parser.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        work = plan_work() if asked.kind == "plan" else window_work(Path(folder))
        work()  # all modules are there now
        found = [*lru_caches(), *memories()]
        # Bounded by what there is to know, such as one entry a measured paint: tables.
        tables = {
            name
            for name, one in found
            if not isinstance(one, Memory) and one.cache_parameters()["maxsize"] is None
        }
        chosen = [(name, cache) for name, cache in found if asked.only in name]
        if asked.without:
            ends = tuple(asked.without.split(","))
            together = [cache for name, cache in found if name.endswith(ends)]
            print(f"{saved(work, tables, together):7.2f} times as long without {asked.without}")
            return
        rows = [(saved(work, tables, [cache]), name) for name, cache in chosen]
        for ratio, name in sorted(rows, reverse=True):
            print(f"{ratio:7.2f} times as long without {name}")


if __name__ == "__main__":
    main()
