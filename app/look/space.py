"""The 4 px grid and the sizes of controls, in device-independent pixels.

Lengths that hold text grow with the text size: take them from `TypeScale.grow`.
"""

from __future__ import annotations

from typing import Final

WITHIN: Final = 8
GROUP: Final = 16
MARGIN: Final = 20
INSIDE: Final = 24

HEADER: Final = 52
CONTROL: Final = 34
RADIUS: Final = 5.0
EDGE: Final = 1.25

FOCUS_WIDTH: Final = 2.5
FOCUS_CLEAR: Final = 3.0

# Wall between paper and photo: bright paper shifts the value one sees.
PHOTO_CLEAR: Final = 16

# One motion only: a row opening. None when the system asks for none.
OPEN_MS: Final = 120
