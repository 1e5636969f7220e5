"""Mark list: the table as it will be exported, edited in place."""

from __future__ import annotations

from app.classset.part import ClassPart


class MarkListPart(ClassPart):
    """A row a student."""

    ready = False
