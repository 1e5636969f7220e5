"""Which colour of a sheet's band stands beside which of the photo's, where one of them holds two.

A cloud is compared with the cloud and the sky with the sky. A band of one colour in the photo is
compared with all the paint of its band on the sheet: streaks and blooms are no second colour.
"""

from __future__ import annotations

from dataclasses import replace

from core.colour.difference import delta_E_2000
from core.reading.reading import BandReading, ColourReading, SecondColour


def like_with_like(wanted: BandReading, found: BandReading) -> BandReading:
    """The sheet's band as it compares with the photo's.

    Parameters
    ----------
    wanted, found : BandReading
        Of the photo and of the sheet.

    Returns
    -------
    BandReading
        `found`, its main colour the one beside the photo's main colour, and its second the one
        beside the second; without a second where the photo has none.
    """
    if found.second is None or found.colour is None:
        return found
    if wanted.second is None or wanted.colour is None:
        return replace(found, colour=found.as_one, second=None, overall=None)
    kept = _apart(wanted.colour, found.colour) + _apart(wanted.second.colour, found.second.colour)
    turned = _apart(wanted.colour, found.second.colour) + _apart(wanted.second.colour, found.colour)
    if turned >= kept:
        return found
    other = SecondColour(found.colour, 1 - found.second.share, found.second.soft)
    return replace(found, colour=found.second.colour, second=other)


def _apart(one: ColourReading, other: ColourReading) -> float:
    return float(delta_E_2000(one.Lab, other.Lab))
