"""Make the TrueType files of app/fonts from the web fonts of an npm package.

Usage: npm pack @fontsource/atkinson-hyperlegible-next, unpack it, then
`python tools/build_fonts.py package app/fonts` (needs fontTools, here alone).

The package holds latin and latin-ext apart, and a family name for each weight; here the two
are merged and all weights share one family, so that Qt finds them by weight.
"""

from __future__ import annotations

import argparse
import shutil
import tempfile
from pathlib import Path

from fontTools.merge import Merger
from fontTools.subset import Options, Subsetter
from fontTools.ttLib import TTFont

FAMILY = "Atkinson Hyperlegible Next"
WEIGHTS = {400: "Regular", 500: "Medium", 600: "SemiBold", 700: "Bold"}


def build(package: Path, target: Path) -> None:
    """Write one TTF a weight, and the licence, into `target`."""
    for weight, style in WEIGHTS.items():
        with tempfile.TemporaryDirectory() as folder:
            parts = []
            taken: set[int] = set()
            for subset in ("latin", "latin-ext"):
                name = f"atkinson-hyperlegible-next-{subset}-{weight}-normal"
                font = TTFont(package / "files" / f"{name}.woff")
                font.flavor = None
                # A letter in both would come out as a second glyph that no code points to, and
                # text copied from a PDF would lack it.
                letters = set(font.getBestCmap()) - taken
                taken |= letters
                options = Options(layout_features=["*"], glyph_names=True, notdef_outline=True)
                subsetter = Subsetter(options)
                subsetter.populate(unicodes=letters)
                subsetter.subset(font)
                parts.append(str(Path(folder) / f"{name}.ttf"))
                font.save(parts[-1])
            merged = Merger().merge(parts)
        for name_id, text in {1: FAMILY, 2: style, 16: FAMILY, 17: style}.items():
            merged["name"].setName(text, name_id, 3, 1, 0x409)
        merged.save(target / f"AtkinsonHyperlegibleNext-{style}.ttf")
    shutil.copyfile(package / "LICENSE", target / "OFL.txt")


if __name__ == "__main__":
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("package", type=Path)
    parser.add_argument("target", type=Path)
    arguments = parser.parse_args()
    build(arguments.package, arguments.target)
