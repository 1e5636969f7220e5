"""A class's tests bring in the same few sheets again and again: each is checked once."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from class_set_tools import check_once

from core.class_set import check_all


@pytest.fixture(scope="session", autouse=True)
def sheets_checked_once() -> Iterator[None]:
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(check_all, "check_one", check_once)
        yield
