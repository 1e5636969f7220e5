"""The examples in the docstrings hold."""

import doctest

import pytest

from core.cli import layout
from core.colour import munsell, srgb
from core.reading import wheel
from core.words import toning


@pytest.mark.parametrize("module", [wheel, munsell, srgb, toning, layout], ids=lambda m: m.__name__)
def test_examples(module):
    result = doctest.testmod(module)
    assert result.attempted > 0
    assert result.failed == 0
