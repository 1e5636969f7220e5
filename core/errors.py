"""The errors a user may see: each message is one clear sentence and what to do about it."""

from __future__ import annotations


class GradewashError(Exception):
    """Base of every error whose message is meant for the user."""


class PhotoError(GradewashError):
    """A picture could not be opened."""


class StudyFileError(GradewashError):
    """A study file could not be read or written."""


class BoxError(GradewashError):
    """A paint box could not be read, or names a paint nobody measured."""


class SheetError(GradewashError):
    """A practice sheet could not be checked."""


class SwatchCardError(GradewashError):
    """A painted swatch card could not be read."""


class CardError(GradewashError):
    """A card cannot be printed of this study."""


class ClassSetError(GradewashError):
    """A class set could not be opened, written, or made of what was given."""


class UsageError(GradewashError):
    """What was asked for on the command line does not fit together."""


class Cancelled(Exception):
    """Raised by long work when `should_stop` answered True."""
