"""Sort: what could not be placed, each with its reason and a proposal."""

from __future__ import annotations

from app.classset.part import ClassPart


class SortPart(ClassPart):
    """Left what is to be placed, right a row a student."""

    ready = True
