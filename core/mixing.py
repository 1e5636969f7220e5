"""Edits of the paint box and of what was asked of the plan, as pure functions on a study."""

from __future__ import annotations

from dataclasses import replace

from core.errors import BoxError
from core.i18n import translate
from core.paint.box.box import GENERIC_BOXES, Box
from core.paint.box.own_paint import MAX_NAME
from core.paint.mixture.mix import Mix
from core.paint.options import BandChoice, MixOptions
from core.paint.pigment.catalogue import CATALOGUE, Paint
from core.paint.wash.amounts import PaintSheet
from core.study import Study

MOST_PARTS = 12
"""Of one paint: more cannot be counted."""

MOST_PINNED = 3
"""Paints a search puts into one mix."""

LOAD_STEP = 1.25
"""One press on stronger or weaker: a quarter more paint, or a quarter more water."""


def choose_box(study: Study, box: Box) -> Study:
    """The study with another box; wishes about paints it lacks are dropped."""
    return replace(study, box=box, mix=_only_with(study.mix, box))


def tick_paint(study: Study, key: str, owned: bool) -> Study:
    """The box with a paint of the catalogue put in, or with a paint taken out.

    Raises
    ------
    BoxError
        It is the last one.
    KeyError
        There is no such paint.
    """
    box = study.box
    if owned == (key in box.by_key):
        return study
    if owned:
        return put_paint(study, CATALOGUE[key])
    paints = tuple(paint for paint in box.paints if paint.key != key)
    if not paints:
        raise BoxError(translate("box", "A box needs at least one paint: tick another one first."))
    return choose_box(study, replace(box, paints=paints))


def put_paint(study: Study, paint: Paint) -> Study:
    """The box with one more paint, at the place where it stood or belongs.

    Raises
    ------
    BoxError
        A paint of that name is in the box.
    """
    box = study.box
    if paint.key in box.by_key:
        raise BoxError(
            translate("box", "{paint} is in the box: choose another name.").format(paint=paint.name)
        )
    places = _places(box, paint)
    own, last = places.get(paint.key, len(places)), len(places)
    at = next(
        (i for i, other in enumerate(box.paints) if places.get(other.key, last) > own),
        len(box.paints),
    )
    return replace(study, box=replace(box, paints=(*box.paints[:at], paint, *box.paints[at:])))


def _places(box: Box, paint: Paint) -> dict[str, int]:
    """The order paints are put in: that of the box as it came, else stand-ins by their like."""
    for generic in GENERIC_BOXES.values():
        if generic.name == box.name and paint.key in generic.by_key:
            return {key: place for place, key in enumerate(generic.keys)}
    keys = list(CATALOGUE)
    order = sorted(keys, key=lambda key: keys.index(CATALOGUE[key].measured_as))
    return {key: place for place, key in enumerate(order)}


def name_box(study: Study, name: str) -> Study:
    """The same box under another name.

    Raises
    ------
    BoxError
        No name, or one too long.
    """
    name = " ".join(name.split())
    if not name or len(name) > MAX_NAME:
        raise BoxError(translate("box", "A box needs a name of 1 to 80 letters."))
    return replace(study, box=replace(study.box, name=name))


def _only_with(options: MixOptions, box: Box) -> MixOptions:
    choices = []
    for letter, choice in options.choices:
        parts = choice.parts
        if parts is not None and any(key not in box.by_key for key, _ in parts):
            parts = None
        kept = BandChoice(
            tuple(key for key in choice.pinned if key in box.by_key),
            tuple(key for key in choice.forbidden if key in box.by_key),
            parts,
            choice.load_ml if parts is not None else None,
        )
        if kept != BandChoice():
            choices.append((letter, kept))
    forbidden = tuple(key for key in options.forbidden if key in box.by_key)
    return replace(options, choices=tuple(choices), forbidden=forbidden)


# What is asked for one band


def pin(study: Study, letter: str, key: str, on: bool) -> Study:
    """Ask for a paint in a band's mix, or no longer; parts set by hand give way to the search.

    Raises
    ------
    BoxError
        More are pinned than a mix can hold.
    """
    choice = study.mix.choice(letter)
    pinned = _with(choice.pinned, key, on)
    if len(pinned) > MOST_PINNED:
        raise BoxError(
            translate("box", "A mix holds three paints at most: let go of a pinned one first.")
        )
    forbidden = _with(choice.forbidden, key, False) if on else choice.forbidden
    return _wish(study, letter, BandChoice(pinned, forbidden))


def forbid(study: Study, letter: str, key: str, on: bool) -> Study:
    """Keep a paint out of a band's mix, or no longer; parts set by hand give way to the search."""
    choice = study.mix.choice(letter)
    pinned = _with(choice.pinned, key, False) if on else choice.pinned
    return _wish(study, letter, BandChoice(pinned, _with(choice.forbidden, key, on)))


def set_parts(
    study: Study,
    letter: str,
    parts: tuple[tuple[str, int], ...],
    load_ml: float | None = None,
) -> Study:
    """A band's mix set by hand; its pinned and forbidden paints are kept for afterwards.

    Parameters
    ----------
    parts : tuple of (paint key, parts)
        Paints of no parts are dropped.
    load_ml : float or None
        None: the load that comes nearest the band.

    Raises
    ------
    BoxError
        No part is left, or a paint has too many.
    """
    kept = tuple((key, count) for key, count in parts if count > 0)
    if not kept:
        raise BoxError(translate("mix", "A mix needs at least one part: give some paint a part."))
    if max(count for _, count in kept) > MOST_PARTS:
        raise BoxError(
            translate("mix", "Up to {most} parts of a paint can be counted: use fewer.").format(
                most=MOST_PARTS
            )
        )
    choice = study.mix.choice(letter)
    return _wish(study, letter, replace(choice, parts=kept, load_ml=load_ml))


def set_part(study: Study, letter: str, mix: Mix, key: str, count: int) -> Study:
    """One paint's parts set by hand, the others left as they are.

    Parameters
    ----------
    mix : Mix
        What the band's mix is now; taken as it is for the other paints when nothing was set by
        hand before.
    key : str
    count : int
        0 takes the paint out. A paint that was not there is added last.

    Raises
    ------
    BoxError
        See `set_parts`.
    """
    choice = study.mix.choice(letter)
    parts = dict(choice.parts if choice.parts is not None else mix.parts)
    parts[key] = count
    return set_parts(study, letter, tuple(parts.items()), choice.load_ml)


def set_load(study: Study, letter: str, mix: Mix, steps: int) -> Study:
    """A band's wash made stronger or weaker by hand.

    Parameters
    ----------
    mix : Mix
        What the band's mix is now.
    steps : int
        Presses on "stronger"; negative: on "weaker".
    """
    choice = study.mix.choice(letter)
    parts = choice.parts if choice.parts is not None else mix.parts
    load = choice.load_ml if choice.load_ml is not None else mix.load_ml
    return set_parts(study, letter, parts, load * LOAD_STEP**steps)


def use_mix(study: Study, letter: str, mix: Mix) -> Study:
    """Take another mix for a band, parts and load."""
    return set_parts(study, letter, mix.parts, mix.load_ml)


def search_again(study: Study, letter: str) -> Study:
    """Parts set by hand given up: the search proposes again, its pinned paints kept."""
    return _wish(study, letter, replace(study.mix.choice(letter), parts=None, load_ml=None))


def forget_wishes(study: Study, letter: str) -> Study:
    """Nothing asked for a band any more."""
    return _wish(study, letter, BandChoice())


def _wish(study: Study, letter: str, choice: BandChoice) -> Study:
    return replace(study, mix=study.mix.with_choice(letter, choice))


def _with(keys: tuple[str, ...], key: str, on: bool) -> tuple[str, ...]:
    others = tuple(other for other in keys if other != key)
    return (*others, key) if on else others


# What is asked for the whole plan


def forbid_everywhere(study: Study, key: str, on: bool) -> Study:
    """Keep a paint of the box out of every band's mix, or no longer.

    A band that was to hold it does no longer, pinned or counted by hand; one may pin it again
    there, as an exception.

    Raises
    ------
    BoxError
        No other paint is left to mix with.
    """
    options = study.mix
    forbidden = _with(options.forbidden, key, on)
    if on:
        if set(study.box.keys) <= set(forbidden):
            raise BoxError(translate("mix", "No paint is left to mix with: allow one again."))
        for letter, choice in options.choices:
            parts = choice.parts
            if parts is not None and key in dict(parts):
                choice = replace(choice, parts=None, load_ml=None)
            choice = replace(choice, pinned=_with(choice.pinned, key, False))
            options = options.with_choice(letter, choice)
    return replace(study, mix=replace(options, forbidden=forbidden))


def set_sheet(study: Study, sheet: PaintSheet) -> Study:
    """Another size of paper."""
    return replace(study, mix=replace(study.mix, sheet=sheet))


def set_own_figure(study: Study, ml_per_1000_cm2: float | None) -> Study:
    """What the class measured that a sheet takes; None is the rule of thumb."""
    return replace(study, mix=replace(study.mix, own_ml_per_1000_cm2=ml_per_1000_cm2))


def set_drying(study: Study, steps: float) -> Study:
    """By how many Munsell steps a wash lightens while it dries."""
    return replace(study, mix=replace(study.mix, drying_steps=steps))


def allow_white(study: Study, allowed: bool) -> Study:
    """White paint in washes, or only paper as the white."""
    return replace(study, mix=replace(study.mix, allow_white=allowed))
