"""What swatch cards say, as plain JSON values in a box file of version 2.

Of a paint: `{"K": [41], "S": [41], "directions": [[82], ...], "spread": 2.1, "trust": "roughly",
"light": "window", "prior": 1, "readings": [[field, at, partner, L, a, b], ...]}`. K and S are per
hundredth of a millilitre, 380 to 780 nm. Where scraps taught it more: `"scraps": [[{"own_sky_blue":
2, "crimson": 1}, L, a, b], ...]`. Of a printed card: `{"code": "GWS...", "rows": [{"name":
"sky blue", "like": "cerulean_blue", "partners": ["own_ultramarine", "own_mid_yellow"]}]}`.
"""

from __future__ import annotations

import math

from core.errors import BoxError
from core.file_sentences import clean_text
from core.i18n import translate
from core.paint.box.swatch_card import ROWS, SwatchCard, SwatchRow, is_code
from core.paint.pigment.card_paint import (
    LIGHTS,
    MOST_TAUGHT,
    TRUSTS,
    CardPaint,
    Reading,
    TaughtScrap,
)
from core.paint.pigment.catalogue import CATALOGUE

MAX_CARDS = 20
_BANDS = 41
_MOST_DIRECTIONS, _MOST_READINGS = 4, 60
_MOST, _MOST_LOG = 1e4, 20.0
_MAX_NAME, _MAX_KEY = 80, 120
_MOST_MIXED = 12


def damaged_card() -> str:
    """What is said of a card in a box file that cannot be read."""
    return translate(
        "box",
        "What a swatch card said of a paint of this box is damaged: read the card's picture again.",
    )


def card_to_json(card: CardPaint) -> dict[str, object]:
    """A fitted paint as plain JSON values; five digits are more than the fit knows."""
    value: dict[str, object] = {
        "K": [_short(value) for value in card.K],
        "S": [_short(value) for value in card.S],
        "directions": [[_short(value) for value in way] for way in card.directions],
        "spread": round(card.spread, 3),
        "trust": card.trust,
        "light": card.light,
        "prior": card.prior,
        "readings": [
            [one.field, one.at, one.partner, *(round(value, 2) for value in one.Lab)]
            for one in card.readings
        ],
    }
    if card.scraps:
        value["scraps"] = [[dict(one.parts), *one.Lab] for one in card.scraps]
    return value


def card_from_json(value: object) -> CardPaint:
    """A fitted paint from plain JSON values.

    Raises
    ------
    BoxError
        Anything that is not one.
    """
    if not isinstance(value, dict):
        raise BoxError(damaged_card())
    K = _numbers(value.get("K"), _BANDS, 0.0, _MOST)
    S = _numbers(value.get("S"), _BANDS, 0.0, _MOST)
    ways = value.get("directions")
    readings, scraps = value.get("readings", []), value.get("scraps", [])
    trust, light, prior = value.get("trust"), value.get("light"), value.get("prior")
    spread = _numbers([value.get("spread")], 1, 0.0, _MOST)[0]
    if (
        min(*K, *S) <= 0
        or not isinstance(ways, list)
        or len(ways) > _MOST_DIRECTIONS
        or not isinstance(readings, list)
        or len(readings) > _MOST_READINGS
        or not isinstance(scraps, list)
        or len(scraps) > MOST_TAUGHT
        or trust not in TRUSTS
        or light not in LIGHTS
        or not isinstance(prior, int)
    ):
        raise BoxError(damaged_card())
    return CardPaint(
        K,
        S,
        tuple(_numbers(way, 2 * _BANDS, -_MOST_LOG, _MOST_LOG) for way in ways),
        spread,
        trust,
        light,
        prior,
        tuple(map(_reading, readings)),
        tuple(map(_taught, scraps)),
    )


def swatch_card_to_json(card: SwatchCard) -> dict[str, object]:
    """A printed card as plain JSON values."""
    return {
        "code": card.code,
        "rows": [
            {"name": row.name, "like": row.like, "partners": list(row.partners)}
            for row in card.rows
        ],
    }


def swatch_card_from_json(value: object) -> SwatchCard:
    """A printed card from plain JSON values.

    Raises
    ------
    BoxError
        Anything that is not one.
    """
    if not isinstance(value, dict):
        raise BoxError(damaged_card())
    code, rows = value.get("code"), value.get("rows")
    if not isinstance(code, str) or not is_code(code):
        raise BoxError(damaged_card())
    if not isinstance(rows, list) or not 1 <= len(rows) <= ROWS:
        raise BoxError(damaged_card())
    return SwatchCard(code, tuple(map(_row, rows)))


def _row(value: object) -> SwatchRow:
    if not isinstance(value, dict):
        raise BoxError(damaged_card())
    name, like, partners = value.get("name"), value.get("like"), value.get("partners")
    if (
        not isinstance(name, str)
        or not 0 < len(name.strip()) <= _MAX_NAME
        or not isinstance(like, str)
        or like not in CATALOGUE
        or not isinstance(partners, list)
        or len(partners) != 2
        or not all(isinstance(key, str) and len(key) <= _MAX_KEY for key in partners)
    ):
        raise BoxError(damaged_card())
    return SwatchRow(clean_text(name.strip()), like, (partners[0], partners[1]))


def _reading(value: object) -> Reading:
    if not isinstance(value, list) or len(value) != 6:
        raise BoxError(damaged_card())
    field, at, partner, *Lab = value
    if field not in (0, 1, 2) or not isinstance(partner, str) or len(partner) > _MAX_KEY:
        raise BoxError(damaged_card())
    L, a, b = _numbers(Lab, 3, -500.0, 500.0)
    return Reading(int(field), _numbers([at], 1, 0.0, 1.0)[0], (L, a, b), partner)


def _taught(value: object) -> TaughtScrap:
    if not isinstance(value, list) or len(value) != 4 or not isinstance(value[0], dict):
        raise BoxError(damaged_card())
    parts, *Lab = value
    keys = list(parts)
    if not 1 <= len(keys) <= _MOST_MIXED or not all(
        isinstance(key, str) and len(key) <= _MAX_KEY for key in keys
    ):
        raise BoxError(damaged_card())
    counts = _numbers(list(parts.values()), len(keys), 0.0, _MOST)
    L, a, b = _numbers(Lab, 3, -500.0, 500.0)
    return TaughtScrap(tuple(zip(keys, counts, strict=True)), (L, a, b))


def _numbers(value: object, many: int, least: float, most: float) -> tuple[float, ...]:
    if not isinstance(value, list) or len(value) != many:
        raise BoxError(damaged_card())
    if not all(_is_number(one) and least <= one <= most for one in value):
        raise BoxError(damaged_card())
    return tuple(map(float, value))


def _is_number(value: object) -> bool:
    return isinstance(value, int | float) and not isinstance(value, bool) and math.isfinite(value)


def _short(value: float) -> float:
    return float(f"{value:.5g}")
