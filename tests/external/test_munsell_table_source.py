"""The shipped table is what the build script makes of colour-science's renotation."""

import numpy as np

from core.colour.munsell import _table
from tools.build_munsell_table import UNIT, munsell_vectors


def test_random_nodes_of_the_table():
    nodes, table = _table()
    rng = np.random.default_rng(11)
    node = rng.integers(0, nodes, (500, 3))
    node = node[(node != node[:, :1]).any(axis=1)]
    from core.colour import srgb_to_linear

    made = munsell_vectors(srgb_to_linear(node / (nodes - 1)))
    shipped = table.reshape(nodes, nodes, nodes)[tuple(node.T)]
    # Stored as whole counts of UNIT in both directions.
    assert np.abs(made - shipped).max() <= UNIT
