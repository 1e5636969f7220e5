"""The typeface shipped with the program: Atkinson Hyperlegible Next, SIL OFL 1.1.

Drawn for poor sight: B and 8, O and 0 stay apart from the back row of a class. The files are
made by tools/build_fonts.py from the npm package @fontsource/atkinson-hyperlegible-next; the
licence is OFL.txt beside them.

Imports nothing of ours; `look` and the start import it.
"""

from __future__ import annotations

import logging
from pathlib import Path

from PySide6.QtGui import QFontDatabase

FAMILY = "Atkinson Hyperlegible Next"
STYLES = ("Regular", "Medium", "SemiBold", "Bold")

_log = logging.getLogger(__name__)
_loaded = False


def load_fonts() -> bool:
    """Register the typeface with Qt, once; needs a QGuiApplication.

    Returns
    -------
    bool
        False when a file could not be read: the system's own font then stands in.
    """
    global _loaded
    if _loaded:
        return True
    folder = Path(__file__).parent
    for style in STYLES:
        path = folder / f"AtkinsonHyperlegibleNext-{style}.ttf"
        if QFontDatabase.addApplicationFont(str(path)) < 0:
            _log.warning("The font file %s could not be read.", path.name)
            return False
    _loaded = True
    return True
