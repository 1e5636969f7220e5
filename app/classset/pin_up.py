"""Pin-up: all sheets level beside the photo, and the marking of one student."""

from __future__ import annotations

from app.classset.part import ClassPart


class PinUpPart(ClassPart):
    """Left the wall, right the marking column."""

    ready = True
