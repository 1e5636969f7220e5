"""Paints a school is likely to own: generic names, usual pigments, and what they behave like.

A paint is measured when the dataset holds a paint of its name; otherwise it stands in, by the
measurements of its nearest relative, and says so. Colour Index names are the usual ones for these
names (common practice); the label of the tube in hand decides. Transparency, staining and
granulation: common practice, as usually printed for these pigments. No manufacturer is meant.
"""

from __future__ import annotations

from types import MappingProxyType
from typing import Final

from core.paint.pigment.paint import Degree, Group, Paint, Transparency

__all__ = ["CATALOGUE", "Degree", "Group", "Paint", "Transparency"]

_T: Final = "transparent"
_HT: Final = "half transparent"
_HO: Final = "half opaque"
_O: Final = "opaque"

# key, name, measured as, Colour Index, group, transparency, staining, granulation, lists, leans
_ROWS: tuple[Paint, ...] = (
    Paint(
        "lemon_yellow",
        "lemon yellow",
        "lemon_yellow",
        (),
        "yellow",
        _HT,
        "medium",
        "low",
        (),
        "green",
    ),
    Paint(
        "cadmium_yellow",
        "cadmium yellow",
        "cadmium_yellow",
        ("PY35",),
        "yellow",
        _O,
        "medium",
        "low",
        ("cadmium",),
        "orange",
    ),
    Paint(
        "raw_sienna",
        "raw sienna",
        "raw_sienna",
        ("PBr7",),
        "yellow",
        _HT,
        "low",
        "medium",
        (),
        "orange",
    ),
    Paint(
        "cadmium_red",
        "cadmium red",
        "cadmium_red",
        ("PR108",),
        "red",
        _O,
        "high",
        "low",
        ("cadmium",),
        "orange",
    ),
    Paint(
        "alizarin_crimson",
        "alizarin crimson",
        "alizarin_crimson",
        ("PR83",),
        "red",
        _T,
        "high",
        "low",
        (),
        "violet",
    ),
    Paint(
        "burnt_sienna",
        "burnt sienna",
        "burnt_sienna",
        ("PBr7",),
        "brown",
        _HT,
        "low",
        "medium",
        (),
        "orange",
    ),
    Paint("sap_green", "sap green", "sap_green", (), "green", _HT, "medium", "low", (), ""),
    Paint(
        "cerulean_blue",
        "cerulean blue",
        "cerulean_blue",
        ("PB35",),
        "blue",
        _HO,
        "low",
        "high",
        ("cobalt",),
        "green",
    ),
    Paint(
        "cobalt_blue",
        "cobalt blue",
        "cobalt_blue",
        ("PB28",),
        "blue",
        _HT,
        "low",
        "medium",
        ("cobalt",),
        "",
    ),
    Paint(
        "ultramarine",
        "ultramarine",
        "ultramarine",
        ("PB29",),
        "blue",
        _T,
        "low",
        "high",
        (),
        "violet",
    ),
    Paint(
        "prussian_blue",
        "prussian blue",
        "prussian_blue",
        ("PB27",),
        "blue",
        _T,
        "high",
        "low",
        (),
        "green",
    ),
    Paint(
        "ivory_black",
        "ivory black",
        "ivory_black",
        ("PBk9",),
        "black",
        _HO,
        "medium",
        "medium",
        (),
        "",
    ),
    Paint(
        "chinese_white",
        "chinese white",
        "chinese_white",
        ("PW4",),
        "white",
        _HO,
        "low",
        "low",
        (),
        "",
    ),
    # Stand-ins: school paints nobody measured, by their nearest measured relative.
    Paint(
        "mid_yellow",
        "mid yellow",
        "cadmium_yellow",
        ("PY74",),
        "yellow",
        _HT,
        "medium",
        "low",
        (),
        "orange",
    ),
    Paint(
        "yellow_ochre",
        "yellow ochre",
        "raw_sienna",
        ("PY43",),
        "yellow",
        _HO,
        "low",
        "medium",
        (),
        "orange",
    ),
    Paint(
        "warm_red", "warm red", "cadmium_red", ("PR112",), "red", _HO, "high", "low", (), "orange"
    ),
    Paint("crimson", "crimson", "alizarin_crimson", (), "red", _T, "high", "low", (), "violet"),
    Paint(
        "cool_blue", "cool blue", "prussian_blue", ("PB15",), "blue", _T, "high", "low", (), "green"
    ),
    Paint("black", "black", "ivory_black", ("PBk7",), "black", _HO, "medium", "low", (), ""),
    Paint("white", "white", "chinese_white", ("PW6",), "white", _O, "low", "low", (), ""),
)

CATALOGUE: MappingProxyType[str, Paint] = MappingProxyType({paint.key: paint for paint in _ROWS})
"""Every paint known, by key."""
