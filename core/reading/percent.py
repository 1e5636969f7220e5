"""How a percentage is written: here and nowhere else, so that it is written one way everywhere."""

from __future__ import annotations

from core.i18n import translate


def percent_text(number: float, decimals: int = 0) -> str:
    """A number of percent: "6%", and in Spanish "6 %".

    Parameters
    ----------
    number : float
        In percent, not a share.
    decimals : int
        Only where they mean something to the reader.

    Examples
    --------
    >>> percent_text(6.4), percent_text(0.2, 1), percent_text(-0.2)
    ('6%', '0.2%', '0%')
    """
    rounded = round(number, decimals) + 0.0  # never "-0"
    return translate("percent", "{number}%").format(number=f"{rounded:.{decimals}f}")


def percent_sign() -> str:
    """What stands behind the number, with its gap if the language has one."""
    return translate("percent", "{number}%").format(number="")
