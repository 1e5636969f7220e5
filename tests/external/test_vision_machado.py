"""Simulated colour vision against colour-science's table of Machado et al. (2009)."""

import numpy as np
import pytest

from core.colour.vision import CVD_MATRICES


@pytest.mark.parametrize(
    ("kind", "name"),
    [("protan", "Protanomaly"), ("deutan", "Deuteranomaly"), ("tritan", "Tritanomaly")],
)
def test_matrices_at_severity_one(kind, name):
    from colour.blindness import CVD_MATRICES_MACHADO2010

    assert np.allclose(CVD_MATRICES[kind], CVD_MATRICES_MACHADO2010[name][1.0], rtol=0, atol=5e-7)


@pytest.mark.parametrize("kind", CVD_MATRICES)
def test_greys_stay_grey(kind):
    """The rows of each printed matrix add up to 1."""
    assert np.allclose(CVD_MATRICES[kind].sum(axis=1), 1.0, atol=1e-6)
