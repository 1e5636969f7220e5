"""Which corners the editor shows of a sheet, and where they come from, in words."""

from __future__ import annotations

from app.corners.geometry import WHOLE
from core.i18n import translate
from core.sheet.find.corners import SURE
from core.sheet.result import Corners, SheetCheck, SheetOptions


def corners_shown(options: SheetOptions, check: SheetCheck | None) -> Corners:
    """Those set by hand, else those proposed, else ones to begin with."""
    if options.corners is not None:
        return options.corners
    return WHOLE if check is None else check.corners


def corners_status(options: SheetOptions, check: SheetCheck | None) -> str:
    """Where the corners come from; empty while nobody knows."""
    if options.corners is not None:
        return translate("sheets page", "These corners are set by hand.")
    if check is None:
        return ""
    if any(notice.key == "corners not found" for notice in check.notices):
        return translate("sheets page", "Not found: drag each ring to its corner.")
    if check.corner_confidence >= SURE:
        return translate("sheets page", "Proposed, and fairly sure.")
    return translate("sheets page", "Proposed, but not sure: look at each of them.")
