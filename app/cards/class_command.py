"""`gradewash card FOLDER`: what is printed of a class set."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

from app.cards.dates import date_text, today
from app.cards.page import Page
from app.cards.paper import Paper
from app.state.settings import config_folder, load_settings
from core.cards import CardData, Kind, gather
from core.cards.words.titles import class_text
from core.class_set.folder import read_class_set, read_picture
from core.class_set.hard import found_hard
from core.class_set.kept_checks import found_checks
from core.class_set.kept_scores import Forms
from core.class_set.model import ClassSet
from core.class_set.page_crop import Box
from core.class_set.prints import shown_students, sky_of
from core.class_set.questions import sort_pictures
from core.class_set.score_marks.form import ScoreForm
from core.class_set.spread import spreads_of
from core.class_set.ticket import PAGE_KINDS

CLASS_KINDS = ("tickets", "worksheets", "contact", "slips", "hard", "kit")


def class_pdf(
    folder: Path,
    kind: str,
    paper_name: str,
    *,
    bw: bool,
    students: int | None = None,
    language: str = "en",
) -> bytes:
    """The PDF of one kind of a class set's prints; Qt must have begun (`begin_drawing`).

    Parameters
    ----------
    students : int, optional
        For how many a kit list is; as many as the class has otherwise.
    language : str
        Of the checks that are kept.

    Raises
    ------
    ClassSetError
        No class set, or one that cannot be read.
    PhotoError
        Its photo cannot be opened.
    """
    # deferred: start-up time
    from app.cards.class_pages import lay_out_tickets, lay_out_worksheets
    from app.cards.kit import lay_out_kit
    from app.cards.paper import PAPERS
    from app.cards.pdf import pdf_of

    class_set, paper = read_class_set(folder), PAPERS[paper_name]
    class_list = class_set.class_list
    if kind == "tickets":
        pages = lay_out_tickets(class_list.tag, class_set.title, class_list.students, paper)
    elif kind == "worksheets":
        data = _data(folder, class_set, "worksheet")
        pages = lay_out_worksheets(data, class_list.tag, class_list.students, paper, bw=bw)
    elif kind == "kit":
        data = _data(folder, class_set, "kit")
        pages = lay_out_kit(data, students or len(class_list.students), paper, bw=bw)
    else:
        pages = _prints(folder, class_set, kind, paper, language)
    return pdf_of(pages, class_set.title or class_set.exercise.title)


def answer_boxes(folder: Path, class_set: ClassSet, paper_name: str) -> tuple[Box, Box]:
    """Where the lines for the student's own words are printed, on either worksheet page, in mm."""
    # deferred: start-up time
    from app.cards.class_pages import lay_out_worksheets
    from app.cards.paper import MM, PAPERS
    from app.drawing.cards.marks import paint_writing

    data = _data(folder, class_set, "worksheet")
    class_list = class_set.class_list
    pages = lay_out_worksheets(data, class_list.tag, class_list.students[:1], PAPERS[paper_name])

    def box(page: Page) -> Box:
        rect = next(piece.rect for piece in page.pieces if piece.paint is paint_writing)
        return Box(rect.x() / MM, rect.y() / MM, rect.width() / MM, rect.height() / MM)

    return box(pages[0]), box(pages[1])


def score_forms(folder: Path, class_set: ClassSet) -> Forms:
    """What is printed where scores are crossed, on either worksheet page and size of paper.

    Raises
    ------
    ClassSetError, PhotoError
        The exercise's photo cannot be read.
    """
    # deferred: start-up time
    from app.cards.class_pages import lay_out_worksheets
    from app.cards.paper import PAPERS
    from app.cards.score_form import score_form

    data, class_list = _data(folder, class_set, "worksheet"), class_set.class_list
    forms: tuple[list[ScoreForm], list[ScoreForm]] = ([], [])
    for paper in PAPERS.values():
        pages = lay_out_worksheets(data, class_list.tag, class_list.students[:1], paper)
        for index, page in enumerate(pages[:2]):
            forms[index].append(score_form(page, index))
    return tuple(forms[0]), tuple(forms[1])


def code_boxes(paper_name: str) -> dict[str, Box]:
    """Where a worksheet's codes are printed, by a ticket's kind, in mm."""
    # deferred: start-up time
    from app.cards.class_pages import INSET, PAGE_CODE
    from app.cards.paper import MM, PAPERS

    paper, inset, side = PAPERS[paper_name], INSET / MM, PAGE_CODE / MM
    right, bottom = paper.width_mm - inset - side, paper.height_mm - inset - side
    corners = ((inset, inset), (right, inset), (right, bottom), (inset, bottom))
    return {
        kind: Box(x, y, side, side)
        for kinds in PAGE_KINDS
        for kind, (x, y) in zip(kinds, corners, strict=True)
    }


def _data(folder: Path, class_set: ClassSet, kind: Kind) -> CardData:
    """What a card of the exercise shows, with the class's code."""
    study = class_set.exercise
    sheet = replace(study.worksheet, class_code=class_set.title)
    wording = load_settings(config_folder() / "settings.json").wording
    pictures = (
        {}
        if study.photo is None
        else {study.photo.digest: read_picture(folder, study.photo.digest)}
    )
    return gather(kind, replace(study, worksheet=sheet), pictures, wording, date=today())


def _prints(
    folder: Path, class_set: ClassSet, kind: str, paper: Paper, language: str
) -> tuple[Page, ...]:
    """What is printed of the paintings."""
    # deferred: start-up time
    from app.cards.class_prints import lay_out_contact, lay_out_hard, lay_out_slips
    from app.drawing.pyramid import image_of

    study = class_set.exercise
    assert study.photo is not None, "a class set has a photo"
    assert study.bands is not None, "and lines"
    checks = found_checks(folder, class_set, language)
    placement = sort_pictures(class_set, checks).placement
    students = shown_students(folder, class_set, placement, checks)
    sky = image_of(sky_of(read_picture(folder, study.photo.digest), study.bands.horizon))
    day = date_text(today())
    if kind == "contact":
        of_class = class_text(class_set.title) + ": " if class_set.title else ""
        return lay_out_contact(of_class + study.title, day, sky, students, paper)
    if kind == "slips":
        return lay_out_slips(study.title, class_set.title, sky, students, paper)
    spreads = spreads_of(class_set, placement, checks)
    info = [class_text(class_set.title)] if class_set.title else []
    return lay_out_hard(
        study.title, [*info, day], sky, study.bands, spreads, found_hard(*spreads), paper
    )
