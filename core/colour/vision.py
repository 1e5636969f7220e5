"""What colours look like to eyes that lack one kind of cone."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

# G. M. Machado, M. M. Oliveira, L. A. F. Fernandes, 2009, "A physiologically-based model for
# simulation of color vision deficiency", IEEE Transactions on Visualization and Computer
# Graphics 15(6), 1291-1298; the matrices for severity 1.0, for linear sRGB.
CVD_MATRICES: dict[str, NDArray[np.float64]] = {
    "protan": np.array(
        [
            [0.152286, 1.052583, -0.204868],
            [0.114503, 0.786281, 0.099216],
            [-0.003882, -0.048116, 1.051998],
        ]
    ),
    "deutan": np.array(
        [
            [0.367322, 0.860646, -0.227968],
            [0.280085, 0.672501, 0.047413],
            [-0.011820, 0.042940, 0.968881],
        ]
    ),
    "tritan": np.array(
        [
            [1.255528, -0.076749, -0.178779],
            [-0.078411, 0.930809, 0.147602],
            [0.004733, 0.691367, 0.303900],
        ]
    ),
}
