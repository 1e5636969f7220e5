"""The chapters on the work itself, from the photo to the second sheet."""

from __future__ import annotations

from app.guide.blocks import Chapter, Figure, Heading, Lead, Points, Steps, Text
from app.guide.glossary import glossary
from app.guide.keys import keys
from app.guide.reference import cautions, licences, numbers
from core.i18n import translate


def chapters() -> tuple[Chapter, ...]:
    """All chapters in reading order, in the language in use."""
    return (
        _the_job(),
        _read(),
        _mix(),
        _sheets(),
        _worksheet(),
        _class_view(),
        _class_set(),
        _files_and_cards(),
        glossary(),
        keys(),
        numbers(),
        cautions(),
        licences(),
    )


def _the_job() -> Chapter:
    return Chapter(
        "job",
        translate("guide", "The whole job"),
        (
            Lead(
                translate(
                    "guide",
                    "You choose a photo of a sky. Your class sees it as a few bands, names each "
                    "band's hue, value and intensity, mixes the colours and paints the sky. When "
                    "the sheets are dry you hold them against the photo, and everybody paints "
                    "again. Gradewash does the measuring and the arithmetic; the eye decides.",
                )
            ),
            Figure(
                "sky",
                translate(
                    "guide",
                    "The sample sky as the Read page shows it: lines between the bands, a letter "
                    "and a hue for each, and the horizon line that ends the sky.",
                ),
            ),
            Steps(
                (
                    translate("guide", "Read: open a photo and set the lines between the bands."),
                    translate("guide", "Mix: tick the paints you have; look at the mixes."),
                    translate("guide", "Print the plan card and the worksheets."),
                    translate("guide", "Class view: ask the questions before you show answers."),
                    translate("guide", "Paint sheet 1, let it dry, photograph or scan it."),
                    translate("guide", "Worksheet: the student scores the sheet first."),
                    translate("guide", "Sheets: see what was measured, and one thing to try."),
                    translate("guide", "Paint sheet 2, and see whether the change helped."),
                ),
                ("read", "mix", "", "class view", "", "worksheet", "sheets", ""),
            ),
        ),
    )


def _read() -> Chapter:
    return Chapter(
        "read",
        translate("guide", "Read a photo"),
        (
            Text(
                translate(
                    "guide",
                    "Open a photo by the Study menu, drop one on the window, or paste one. The "
                    "lines between the bands are proposed, and so is the horizon line that ends "
                    "the sky. Drag a line, or go to it with Tab and move it with the arrow keys.",
                )
            ),
            Text(
                translate(
                    "guide",
                    "Which photo of many? Choose a sky, in the Study menu, lays a folder's photos "
                    "on the wall and says of each what it would teach, and what speaks against it.",
                )
            ),
            Figure(
                "charts",
                translate(
                    "guide",
                    "On the painter's wheel a letter's direction is its hue; the nearer the "
                    "middle, the duller. Where a band is toned down, the arrow shows where that "
                    "leads, the dashes go on to the complement. On the value ladder both ends are "
                    "named, since classes count both ways.",
                ),
            ),
            Points(
                (
                    translate(
                        "guide",
                        "Values shows the photo in greys of true value; Value steps in 3, 5 or 9 "
                        "of them; Squint blurs it, as half-closed eyes do.",
                    ),
                    translate(
                        "guide",
                        "Other eyes shows what somebody sees who lacks one kind of cone. About 1 "
                        "boy in 12 sees reds and greens less well.",
                    ),
                    translate(
                        "guide",
                        "Two colours one above the other want a line: split the band with Insert. "
                        "Clouds that no line could part are its second colour: named with what "
                        "they cover, and marked small on wheel and ladder.",
                    ),
                )
            ),
        ),
    )


def _mix() -> Chapter:
    return Chapter(
        "mix",
        translate("guide", "Plan the mixes"),
        (
            Text(
                translate(
                    "guide",
                    "Tick the paints your class owns. Each band gets a classroom mix: two "
                    "primaries or paints on either side of its hue, toned down by the paint "
                    "nearest its complement; blues by a brown earth, which is a dull orange. Where "
                    "another mix comes clearly closer it is shown too, with what is odd about it.",
                )
            ),
            Figure(
                "toning",
                translate(
                    "guide",
                    "Toning down: the same mix with more and more of its complement. One step "
                    "matches the band; past it is mud, hatched here.",
                ),
            ),
            Points(
                (
                    translate(
                        "guide",
                        "A part is one measure, kept the same: a dot of tube paint, or a rub of "
                        "the brush on a pan. Count the parts into the well, then add water.",
                    ),
                    translate(
                        "guide",
                        "Strength is named after drinks: tea is thin, coffee fuller, milk and "
                        "cream are strong.",
                    ),
                    translate(
                        "guide",
                        "Pin a paint that must be used, leave one out of a band or of every mix, "
                        "or set the parts by hand: the colour follows at once.",
                    ),
                    translate(
                        "guide",
                        "On a scrap: paint a stroke of the mix on white paper, let it dry, and "
                        "drop a photo of it there. It says what to add to the puddle, or to begin "
                        "again. Wet paint is darker: only dry strokes are judged.",
                    ),
                    translate(
                        "guide",
                        "Paints of your own: print a swatch card from the box's menu (...), let "
                        "the class paint it, and drop its photo on the window. Where a mix holds "
                        "such a paint, a scrap may teach the box what it is, if you say so.",
                    ),
                    translate(
                        "guide",
                        "A band's second colour has a mix of its own: open the band and press "
                        "Second colour. It also says when to lay it.",
                    ),
                    translate(
                        "guide",
                        "Between two rows you see what their wet edge becomes, and whether the "
                        "photo has that colour too.",
                    ),
                    translate(
                        "guide",
                        "The colours are dry colours. Wet paint looks darker.",
                    ),
                    translate("guide", "A new study begins with the box you used last."),
                )
            ),
        ),
    )


def _sheets() -> Chapter:
    return Chapter(
        "sheets",
        translate("guide", "Check the sheets"),
        (
            Steps(
                (
                    translate("guide", "Let the sheet dry and take the tape off."),
                    translate(
                        "guide",
                        "Photograph it from straight above in even daylight, with some white "
                        "border on every side; or scan it.",
                    ),
                    translate("guide", "Add it as sheet 1 and look at the four corners."),
                    translate("guide", "Read the findings: what works first, then what to try."),
                )
            ),
            Figure(
                "board",
                translate(
                    "guide",
                    "The sky and a sheet, level. Dashes show where a line should be, an arrow "
                    "points from where it is to where it should be.",
                ),
            ),
            Text(
                translate(
                    "guide",
                    "The white border tells what the light did to the picture; without a border "
                    "less can be said, and it is said so. A photo cannot show small differences "
                    "of colour: they are not mentioned.",
                )
            ),
        ),
    )


def _worksheet() -> Chapter:
    return Chapter(
        "worksheet",
        translate("guide", "Keep the worksheet"),
        (
            Text(
                translate(
                    "guide",
                    "The student scores hue, value and intensity from 1 to 10 before anything "
                    "measured is shown: who sees the measurement first judges less well. Then the "
                    "page says in which direction the eye and the measurement differ. It gives no "
                    "mark and no ranking.",
                )
            ),
            Figure(
                "scale",
                translate(
                    "guide",
                    "One stroke along the strip, or one key, is a score. The triangle comes "
                    "afterwards: it shows what was measured.",
                ),
            ),
            Text(
                translate(
                    "guide",
                    "Use a code for each student, never a name; the list of names stays with you.",
                )
            ),
        ),
    )


def _class_view() -> Chapter:
    return Chapter(
        "class view",
        translate("guide", "In front of the class"),
        (
            Text(
                translate(
                    "guide",
                    "F5 fills the screen, the second one if there is one. One band is lit. Ask the "
                    "questions; Space shows one answer at a time. Nothing on the screen tells an "
                    "answer early.",
                )
            ),
            Figure(
                "viewfinder",
                translate(
                    "guide",
                    "The viewfinder: the class judges the pure colour, before its neighbours "
                    "change how it looks.",
                ),
            ),
            Points(
                (
                    translate("guide", "Arrows go to another band, or click it."),
                    translate(
                        "guide",
                        "T counts hands: choose a guess, type how many. They are kept in the study "
                        "and stand beside the answer.",
                    ),
                    translate(
                        "guide",
                        "V holds a viewfinder before the sky: judge the pure colour first. The "
                        "arrows slide it; Space opens it, and the same colour has its neighbours.",
                    ),
                    translate(
                        "guide",
                        "P begins the demonstration, which takes the screen: water, one band after "
                        "another, pull, stop, dry. Clocks show how long the sheet is wet and what "
                        "is left of the drying; D rings a bell when it ends.",
                    ),
                    translate(
                        "guide",
                        "W lets the sky paint itself, from the mixes alone, until photo and paint "
                        "stand edge to edge.",
                    ),
                    translate(
                        "guide",
                        "F6 gives the photo the full height of a small screen, with wheel and "
                        "questions over it. Drag the wheel where you want it.",
                    ),
                    translate("guide", "A presenter's remote works: Page Down goes on."),
                )
            ),
        ),
    )


def _class_set() -> Chapter:
    return Chapter(
        "class set",
        translate("guide", "A whole class in an evening"),
        (
            Text(
                translate(
                    "guide",
                    "A class set keeps both sheets of every student in one folder. Students go by "
                    "codes. Nothing is ranked, averaged or marked for you.",
                )
            ),
            Steps(
                (
                    translate(
                        "guide",
                        "Print the tickets: Study, Class set, Print. Lay one beside each sheet "
                        "when you photograph it. They serve all year.",
                    ),
                    translate(
                        "guide",
                        "With the lesson's study open, choose New class set, give it a name and "
                        "codes, then drop all pictures on the Class tab.",
                    ),
                    translate(
                        "guide",
                        "Sort: press Enter where the proposal is right, or type 14 1 for the first "
                        "sheet of student 14, or drag the picture to its place.",
                    ),
                    translate(
                        "guide",
                        "Where corners are not sure, say that they are right, or set them: in "
                        "Sort, and in Pin-up beside each sheet.",
                    ),
                    translate(
                        "guide",
                        "Pin-up: look across the class, light one band with its letter, then mark "
                        "one student after the other. Ctrl+Enter goes on.",
                    ),
                    translate(
                        "guide",
                        "F7 and F8 show that student on the Sheets and the Worksheet page, where "
                        "own scores are written in; F9 comes back.",
                    ),
                    translate(
                        "guide",
                        "Scores crossed on a printed worksheet are read beside their rows: look, "
                        "mend what is wrong, then take them with Ctrl+T. Nothing is taken by "
                        "itself.",
                    ),
                    translate(
                        "guide",
                        "Found hard: see what to teach next, and show it with F5. Mark list: the "
                        "table as it will be written.",
                    ),
                    translate(
                        "guide",
                        "When all is marked, Tidy keeps the paintings alone, without the room "
                        "around them.",
                    ),
                )
            ),
            Text(
                translate(
                    "guide",
                    "Sheets are checked beside your work, two at a time. Stop when you like; "
                    "nothing that was checked is lost. Every edit is saved at once and can be "
                    "undone.",
                )
            ),
        ),
    )


def _files_and_cards() -> Chapter:
    return Chapter(
        "files",
        translate("guide", "Studies and cards"),
        (
            Text(
                translate(
                    "guide",
                    "A study keeps everything about one sky in one file: photo, lines, paints, "
                    "sheets, scores and answers. Places and personal notes in the pictures are "
                    "taken out before they are kept. Work you have not saved is kept aside and "
                    "offered to you if the program or the computer stops.",
                )
            ),
            Heading(translate("guide", "Cards")),
            Points(
                (
                    translate("guide", "Plan: the bands, the mixes, how much, in which order."),
                    translate("guide", "Worksheet: for two sheets, with room to write."),
                    translate("guide", "Findings: both sheets beside the photo."),
                    translate(
                        "guide",
                        "Each also comes without colour, for a black-and-white printer.",
                    ),
                )
            ),
        ),
    )
