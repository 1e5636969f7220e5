"""Take a picture of every page and of the scenes in `screenshot_scenes`, to look at them.

    python -m tools.screenshots FOLDER [--only TEXT] [--quick]

Every page of `app.window.pages.PAGES` at two window sizes, in the light and the dark theme, with
text at 100 and 150 %, in English and in the other languages; the scenes in three of these.
`--quick` is 1366 x 768, light, 100 %, English alone; `--only` takes the scenes whose name holds
TEXT. Nothing is shown: the window is drawn offscreen, with settings of its own.
"""

from __future__ import annotations

import argparse
import sys
import tempfile
from collections.abc import Iterator
from functools import partial
from pathlib import Path

from PySide6.QtWidgets import QApplication

from app.window.pages import PAGES
from tools import (  # noqa: F401 - they register scenes
    screenshot_class,
    screenshot_dialogs,
    screenshot_first,
    screenshot_lesson,
    screenshot_mix,
)
from tools.screenshot_scenes import page_of_sample_study
from tools.screenshot_stage import EVERY, PLAIN, SCENES, Act, Stage, Variation


def wanted(only: str, quick: bool) -> Iterator[tuple[str, Act, Variation]]:
    """Every picture to take."""
    pages: dict[str, tuple[Act, tuple[Variation, ...]]] = {
        kind.key: (partial(page_of_sample_study, key=kind.key), EVERY) for kind in PAGES
    }
    for name, (act, variations) in {**pages, **SCENES}.items():
        if only in name:
            for variation in (PLAIN,) if quick else variations:
                yield name, act, variation


def main() -> int:
    """Take the pictures; 1 when a scene failed."""
    parser = argparse.ArgumentParser(description=__doc__.partition("\n")[0])
    parser.add_argument("folder", type=Path)
    parser.add_argument("--only", default="", metavar="TEXT")
    parser.add_argument("--quick", action="store_true")
    args = parser.parse_args()
    args.folder.mkdir(parents=True, exist_ok=True)
    app = QApplication([])
    failed = 0
    for name, act, variation in wanted(args.only, args.quick):
        with tempfile.TemporaryDirectory() as folder:
            stage = Stage(variation, Path(folder))
            try:
                widget = act(stage) or stage.window
                app.processEvents()
                widget.grab().save(str(args.folder / f"{name}_{variation.name}.png"))
            except Exception as error:  # the other pictures are still wanted
                failed += 1
                print(f"{name} {variation.name}: {error!r}", file=sys.stderr)
            stage.close()
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
