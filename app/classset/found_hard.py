"""Found hard: what many sheets are off in the same way, with one thing to teach each."""

from __future__ import annotations

from app.classset.part import ClassPart


class FoundHardPart(ClassPart):
    """At most three sentences, one that came right, and the field of dots."""

    ready = False
