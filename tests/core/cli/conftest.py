"""The commands are tried on the same few skies and sheets: each is worked out once.

What is remembered are functions of values alone, whose own tests are elsewhere in the core.
"""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from once import check_sheet_once, once

import core.bands.careful
import core.bands.propose
import core.cli.check
import core.cli.read
from core import pipeline
from core.class_set import check_one

# Looked up when they are called: a test may put something in their place.
_propose = once(lambda *given, **options: core.bands.propose.propose(*given, **options))
_read = once(lambda *given, **options: core.bands.careful.read_bands(*given, **options))
_check = check_sheet_once()


@pytest.fixture(autouse=True, scope="module")
def work_done_once() -> Iterator[None]:
    """What commands work out of a photo, and checks of sheets, are made once each."""
    with pytest.MonkeyPatch.context() as patch:
        for module in (pipeline, core.cli.read):
            patch.setattr(module, "propose", _propose)
        patch.setattr(pipeline, "read_bands", _read)
        for module in (core.cli.check, check_one):
            patch.setattr(module, "check_sheet", _check)
        yield
