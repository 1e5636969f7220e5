"""What the stage of scraps shows."""

from __future__ import annotations

from dataclasses import dataclass

from app.drawing.mix.scrap import ScrapPictureView, TryChip


@dataclass(frozen=True, eq=False)
class ScrapStageView:
    """Everything the stage shows.

    Attributes
    ----------
    title, lead, words : str
        The title; what to do; what the stroke is, and what else to know.
    picture : ScrapPictureView or None
    said : str
        Of the picture, for a screen reader.
    chips : tuple of TryChip
    letter : str or None
        The chosen stroke's band.
    letters : tuple of str
        Bands it could be for.
    busy, mixed_before, fresh, can_keep : bool
    teach : str
        The question whether the stroke shall teach the box its own paints; empty where it cannot.
    take_out : str
        What the button says that takes the last kept scrap out; empty without one.
    """

    title: str = ""
    lead: str = ""
    words: str = ""
    picture: ScrapPictureView | None = None
    said: str = ""
    chips: tuple[TryChip, ...] = ()
    letter: str | None = None
    letters: tuple[str, ...] = ()
    busy: bool = False
    mixed_before: bool = False
    fresh: bool = False
    can_keep: bool = False
    take_out: str = ""
    teach: str = ""

    @property
    def spoken_chips(self) -> tuple[str, ...]:
        """The chips in words."""
        return tuple(f"{chip.name}: {chip.note}." for chip in self.chips)
