"""The chapter that explains the words of the trade."""

from __future__ import annotations

from app.guide.blocks import Chapter, Terms
from core.i18n import translate


def glossary() -> Chapter:
    """The trade's words."""
    return Chapter("glossary", translate("guide", "Words of the trade"), (Terms(_terms()),))


def _terms() -> tuple[tuple[str, str], ...]:
    return (
        (
            translate("glossary", "Hue"),
            translate("glossary", "Which colour it is, as a place on the wheel: red, blue-green."),
        ),
        (
            translate("glossary", "Primary"),
            translate("glossary", "Yellow, red, blue: they cannot be mixed from others."),
        ),
        (
            translate("glossary", "Secondary"),
            translate("glossary", "Orange, violet, green: two primaries mixed."),
        ),
        (
            translate("glossary", "Tertiary, intermediate"),
            translate("glossary", "The six between a primary and a secondary, as red-orange."),
        ),
        (
            translate("glossary", "Value"),
            translate("glossary", "How light or dark it is, whatever the hue."),
        ),
        (
            translate("glossary", "Intensity, chroma"),
            translate("glossary", "How strong the hue is: from intense to dull to grey."),
        ),
        (
            translate("glossary", "Complement"),
            translate("glossary", "The hue opposite on the painter's wheel."),
        ),
        (
            translate("glossary", "Tone down"),
            translate("glossary", "Make duller by a little of the complement."),
        ),
        (
            translate("glossary", "Near neutral"),
            translate("glossary", "So dull that it has no hue of its own, only a leaning."),
        ),
        (
            translate("glossary", "Mud"),
            translate("glossary", "A mix that was to have a hue and has lost it."),
        ),
        (
            translate("glossary", "Wash"),
            translate(
                "glossary",
                "Thinned paint over an area. Flat: even. Graded: growing lighter or darker. "
                "Variegated: colours that run into each other.",
            ),
        ),
        (
            translate("glossary", "Wet in wet"),
            translate("glossary", "Paint laid where the sheet still shines, so that edges melt."),
        ),
        (
            translate("glossary", "Hard edge"),
            translate("glossary", "A line where paint dried before the next wash reached it."),
        ),
        (
            translate("glossary", "Backrun, bloom"),
            translate("glossary", "A ragged pale patch: wetter paint ran into drier."),
        ),
        (
            translate("glossary", "Granulating"),
            translate("glossary", "The pigment settles in the paper's hollows and looks grainy."),
        ),
        (
            translate("glossary", "Staining"),
            translate("glossary", "It sinks into the paper and cannot be lifted."),
        ),
        (
            translate("glossary", "Transparent, opaque"),
            translate("glossary", "Whether the paper shines through a strong wash."),
        ),
        (
            translate("glossary", "Colour Index name"),
            translate("glossary", "The pigment's code on the label, such as PB29."),
        ),
        (
            translate("glossary", "K and S"),
            translate("glossary", "How much light a paint takes away, and how much it scatters."),
        ),
    )
