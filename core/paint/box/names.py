"""Names of paints and boxes as shown."""

from __future__ import annotations

from typing import assert_never

from core.i18n import translate
from core.paint.box.box import Box
from core.paint.pigment.catalogue import Paint
from core.paint.pigment.paint import Group


def paint_name(paint: Paint) -> str:
    """A paint's name; a paint the teacher named keeps that name."""
    names = {
        "lemon yellow": translate("paint", "lemon yellow"),
        "cadmium yellow": translate("paint", "cadmium yellow"),
        "raw sienna": translate("paint", "raw sienna"),
        "cadmium red": translate("paint", "cadmium red"),
        "alizarin crimson": translate("paint", "alizarin crimson"),
        "burnt sienna": translate("paint", "burnt sienna"),
        "sap green": translate("paint", "sap green"),
        "cerulean blue": translate("paint", "cerulean blue"),
        "cobalt blue": translate("paint", "cobalt blue"),
        "ultramarine": translate("paint", "ultramarine"),
        "prussian blue": translate("paint", "prussian blue"),
        "ivory black": translate("paint", "ivory black"),
        "chinese white": translate("paint", "chinese white"),
        "mid yellow": translate("paint", "mid yellow"),
        "yellow ochre": translate("paint", "yellow ochre"),
        "warm red": translate("paint", "warm red"),
        "crimson": translate("paint", "crimson"),
        "cool blue": translate("paint", "cool blue"),
        "black": translate("paint", "black"),
        "white": translate("paint", "white"),
    }
    return names.get(paint.name, paint.name)


def box_name(box: Box) -> str:
    """A box's name; a box the teacher named keeps that name."""
    names = {
        "twelve-pan school box": translate("paint", "twelve-pan school box"),
        "six-colour split primary box": translate("paint", "six-colour split primary box"),
        "thirteen measured paints": translate("paint", "thirteen measured paints"),
    }
    return names.get(box.name, box.name)


def group_name(group: Group) -> str:
    """The everyday plural for a group of paints: "blues"."""
    match group:
        case "yellow":
            return translate("paint", "yellows")
        case "orange":
            return translate("paint", "oranges")
        case "red":
            return translate("paint", "reds")
        case "violet":
            return translate("paint", "violets")
        case "blue":
            return translate("paint", "blues")
        case "green":
            return translate("paint", "greens")
        case "brown":
            return translate("paint", "browns")
        case "black":
            return translate("paint", "blacks")
        case "white":
            return translate("paint", "whites")
        case _:
            assert_never(group)
