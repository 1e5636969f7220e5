"""The chapter that lists every key."""

from __future__ import annotations

from app.guide.blocks import Chapter, Heading, Terms
from core.i18n import translate
from core.reading.percent import percent_text


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
                        "F6",
                        translate("keys", "Wheel on the photo: drag it, size it by its rim"),
                    ),
                    (
                        translate("keys", "Ctrl+1 to Ctrl+9"),
                        translate("keys", "Colour, values, steps, squint, other eyes"),
                    ),
                )
            ),
            Heading(translate("guide", "Mix")),
            Terms(
                (
                    (
                        translate("keys", "Up, Down"),
                        translate("keys", "Walk through the rows, or the paints of the box"),
                    ),
                    (translate("keys", "Space"), translate("keys", "Open the row, tick the paint")),
                    (
                        translate("keys", "Menu key, Shift+F10"),
                        translate("keys", "What may be asked for a band or a paint"),
                    ),
                    (
                        translate("keys", "Arrows, a letter, Delete, Insert"),
                        translate(
                            "keys",
                            "On a scrap: another stroke, its band, leave it out, draw a box",
                        ),
                    ),
                    (translate("keys", "Escape"), translate("keys", "Close the plan")),
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
            Heading(translate("guide", "Class")),
            Terms(
                (
                    (
                        translate("keys", "Alt+1 to Alt+4"),
                        translate("keys", "Sort, pin-up, found hard, mark list"),
                    ),
                    (
                        translate("keys", "Arrows"),
                        translate("keys", "Walk over the students, the places, the table"),
                    ),
                    (
                        translate("keys", "Enter"),
                        translate("keys", "Take the proposal, go to the mark, place the picture"),
                    ),
                    (
                        translate("keys", "Delete"),
                        translate("keys", "In a place: lay its picture aside"),
                    ),
                    (
                        "Ctrl+Shift+1, Ctrl+Shift+2",
                        translate("keys", "Set the corners of sheet 1, sheet 2"),
                    ),
                    (
                        "F7, F8, F9",
                        translate("keys", "This student's sheets, worksheet; back to the class"),
                    ),
                    (
                        "Alt+Left, Alt+Right",
                        translate("keys", "There: the student before, the next one"),
                    ),
                    (
                        "Ctrl+T",
                        translate("keys", "Take the scores read from the worksheet"),
                    ),
                    (
                        "Ctrl+Enter",
                        translate("keys", "This student is marked, on to the next"),
                    ),
                )
            ),
            Heading(translate("guide", "Class view")),
            Terms(
                (
                    (translate("keys", "Space"), translate("keys", "Show the next answer")),
                    (translate("keys", "Backspace"), translate("keys", "Cover it again")),
                    (translate("keys", "Arrows"), translate("keys", "Another band")),
                    ("T", translate("keys", "Count hands; Left and Right: another question")),
                    (
                        "V",
                        translate("keys", "Viewfinder: arrows slide it, Space opens it again"),
                    ),
                    (
                        "W",
                        translate("keys", "Watch the sky being painted, beside the photo"),
                    ),
                    ("C", translate("keys", "The scraps kept of a band, try by try")),
                    (
                        "F6",
                        translate("keys", "Photo full height, wheel and questions over it"),
                    ),
                    (
                        "P, Shift+P",
                        translate("keys", "Demonstration on the whole screen, its next step, back"),
                    ),
                    ("+, -", translate("keys", "Longer or shorter drying")),
                    ("D", translate("keys", "Bell when the drying is over, on or off")),
                    ("S", translate("keys", "Say it, where the system has a voice")),
                    ("F1", translate("keys", "These keys on the screen")),
                    (
                        translate("keys", "Escape"),
                        translate("keys", "Back to the questions, leave the class view"),
                    ),
                )
            ),
        ),
    )
