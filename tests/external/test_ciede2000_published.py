"""CIEDE2000 against the published pairs of Sharma, Wu and Dalal (2005), table 1."""

from pathlib import Path

import numpy as np
import pytest

from core.colour import delta_E_2000

TABLE = Path(__file__).parents[1] / "data" / "ciede2000_sharma2005.csv"
PAIRS = np.loadtxt(TABLE, delimiter=",", comments="#", skiprows=4)


def test_the_table_is_whole():
    assert PAIRS.shape == (34, 7)


@pytest.mark.parametrize("row", PAIRS, ids=[f"pair {i + 1}" for i in range(len(PAIRS))])
def test_each_pair_to_its_printed_digits(row):
    Lab1, Lab2, published = row[:3], row[3:6], row[6]
    # Four printed decimals, so half a unit of the fourth.
    assert abs(delta_E_2000(Lab1, Lab2) - published) <= 5e-5
    assert abs(delta_E_2000(Lab2, Lab1) - published) <= 5e-5


def test_the_whole_table_at_once():
    assert np.allclose(delta_E_2000(PAIRS[:, :3], PAIRS[:, 3:6]), PAIRS[:, 6], rtol=0, atol=5e-5)
