"""How far a bringing in or a check of many pictures is."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from core.class_set.time_left import time_left


@dataclass(frozen=True)
class Underway:
    """Work on many pictures.

    Attributes
    ----------
    what : "bringing" or "checking"
    done, of : int
        Pictures.
    seconds : float
        Since it began.
    stopping : bool
        It was called off, and ends with what it is at.
    """

    what: Literal["bringing", "checking"]
    done: int
    of: int
    seconds: float = 0.0
    stopping: bool = False

    @property
    def left(self) -> str:
        """How long the rest will take, in words; empty until that can be told."""
        if self.done == 0 or self.done >= self.of:
            return ""
        return time_left(self.done, self.of, self.seconds)
