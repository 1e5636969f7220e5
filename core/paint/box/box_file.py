"""Boxes a teacher named, as small JSON files.

`{"gradewash_box": 1, "name": "Our cupboard", "paints": ["ultramarine", {"name": "sky blue",
"like": "cerulean_blue"}]}`: a paint is a key of the catalogue, or a name of one's own with the
measured paint it behaves like. Version 2 adds what swatch cards say: `"card": {...}` of a paint
(see `card_json`), and `"cards"`, those that were printed. A box without either is written as
version 1, which every program opens.
"""

from __future__ import annotations

import json
from pathlib import Path

from core.errors import BoxError
from core.file_sentences import clean_text, shown_name, why_not_read, why_not_written
from core.files import TooLargeError, read_file, write_file
from core.i18n import translate
from core.paint.box.box import Box
from core.paint.box.card_json import (
    MAX_CARDS,
    card_from_json,
    card_to_json,
    damaged_card,
    swatch_card_from_json,
    swatch_card_to_json,
)
from core.paint.box.own_paint import MAX_NAME, own_paint, paint_of_card
from core.paint.box.swatch_card import SwatchCard
from core.paint.pigment.catalogue import CATALOGUE, Paint

VERSION = 2
PLAIN_VERSION = 1
MAX_BYTES = 400_000
MAX_PAINTS = 40


def box_to_json(box: Box) -> dict[str, object]:
    """The box as plain JSON values."""
    paints: list[object] = []
    for paint in box.paints:
        if CATALOGUE.get(paint.key) == paint:
            paints.append(paint.key)
        else:
            entry: dict[str, object] = {"name": paint.name, "like": paint.measured_as}
            if paint.card is not None:
                entry["card"] = card_to_json(paint.card)
            paints.append(entry)
    own = bool(box.cards) or any(paint.card is not None for paint in box.paints)
    value: dict[str, object] = {
        "gradewash_box": VERSION if own else PLAIN_VERSION,
        "name": box.name,
        "paints": paints,
    }
    if box.cards:
        value["cards"] = [swatch_card_to_json(card) for card in box.cards]
    return value


def box_from_json(value: object) -> Box:
    """A box from plain JSON values.

    Raises
    ------
    BoxError
        Anything that is not a box, said in one sentence.
    """
    if not isinstance(value, dict) or "gradewash_box" not in value:
        raise BoxError(translate("box", "This file holds no paint box: choose a box file."))
    if value["gradewash_box"] not in (PLAIN_VERSION, VERSION):
        raise BoxError(
            translate(
                "box", "This paint box comes from a newer version: update the program to open it."
            )
        )
    name, entries = value.get("name"), value.get("paints")
    if not isinstance(name, str) or not name.strip() or len(name) > MAX_NAME:
        raise BoxError(
            translate("box", "This paint box has no usable name: give it one of 1 to 80 letters.")
        )
    name = clean_text(name)
    if not isinstance(entries, list) or not 1 <= len(entries) <= MAX_PAINTS:
        raise BoxError(
            translate("box", "The paint box {name} must list 1 to 40 paints.").format(name=name)
        )
    paints = [_paint(entry) for entry in entries]
    keys = [paint.key for paint in paints]
    twice = next((paint.name for paint in paints if keys.count(paint.key) > 1), None)
    if twice is not None:
        raise BoxError(
            translate("box", "{paint} stands twice in the paint box {name}: keep one.").format(
                paint=twice, name=name
            )
        )
    return Box(name, tuple(paints), _cards(value.get("cards", [])))


def _cards(value: object) -> tuple[SwatchCard, ...]:
    if not isinstance(value, list) or len(value) > MAX_CARDS:
        raise BoxError(damaged_card())
    return tuple(map(swatch_card_from_json, value))


def _paint(entry: object) -> Paint:
    if isinstance(entry, str):
        if entry not in CATALOGUE:
            raise BoxError(
                translate(
                    "box",
                    "There is no paint {paint} here: write its own name and a paint it behaves "
                    "like.",
                ).format(paint=clean_text(entry[:MAX_NAME]))
            )
        return CATALOGUE[entry]
    if isinstance(entry, dict):
        name, like = entry.get("name"), entry.get("like")
        if isinstance(name, str) and isinstance(like, str):
            if "card" in entry:
                return paint_of_card(name, like[:MAX_NAME], card_from_json(entry["card"]))
            return own_paint(name, like[:MAX_NAME])
    raise BoxError(
        translate("box", "A paint of this box cannot be read: give a name and what it is like.")
    )


def save_box(box: Box, path: Path) -> None:
    """Write a box; what stood there before survives a failure.

    Raises
    ------
    BoxError
        The file cannot be written.
    """
    text = json.dumps(box_to_json(box), ensure_ascii=False, indent=2) + "\n"
    try:
        write_file(path, text.encode())
    except OSError as error:
        raise BoxError(why_not_written(path, error)) from error


def open_box(path: Path) -> Box:
    """Read a box.

    Raises
    ------
    BoxError
        Missing, unreadable, too large, or not a box.
    """
    try:
        data = read_file(path, MAX_BYTES)
    except TooLargeError as error:
        raise BoxError(
            translate("box", "{file} is too large for a paint box: choose a box file.").format(
                file=shown_name(path)
            )
        ) from error
    except OSError as error:
        raise BoxError(why_not_read(path, error)) from error
    try:
        value = json.loads(data.decode("utf-8-sig"))
    except (ValueError, RecursionError) as error:
        raise BoxError(
            translate("box", "{file} is not a paint box, or is damaged: choose a box file.").format(
                file=shown_name(path)
            )
        ) from error
    return box_from_json(value)
