"""`gradewash card FOLDER`: what is printed of a class set."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

from app.state.settings import config_folder, load_settings
from core.cards import CardData, gather
from core.class_set.folder import read_class_set, read_picture
from core.class_set.model import ClassSet

CLASS_KINDS = ("tickets", "worksheets")


def class_pdf(folder: Path, kind: str, paper_name: str, *, bw: bool) -> bytes:
    """The PDF of a class set's tickets or worksheets; Qt must have begun (`begin_drawing`).

    Raises
    ------
    ClassSetError
        No class set, or one that cannot be read.
    PhotoError
        Its photo cannot be opened.
    """
    # deferred: start-up time
    from app.cards.class_pages import lay_out_tickets, lay_out_worksheets
    from app.cards.paper import PAPERS
    from app.cards.pdf import pdf_of

    class_set, paper = read_class_set(folder), PAPERS[paper_name]
    class_list = class_set.class_list
    if kind == "tickets":
        pages = lay_out_tickets(class_list.tag, class_set.title, class_list.students, paper)
    else:
        data = _data(folder, class_set)
        pages = lay_out_worksheets(data, class_list.tag, class_list.students, paper, bw=bw)
    return pdf_of(pages, class_set.title or class_set.exercise.title)


def _data(folder: Path, class_set: ClassSet) -> CardData:
    """What the exercise's worksheet shows: the photo with its lines, and the class's code."""
    study = class_set.exercise
    sheet = replace(study.worksheet, class_code=class_set.title)
    wording = load_settings(config_folder() / "settings.json").wording
    pictures = (
        {}
        if study.photo is None
        else {study.photo.digest: read_picture(folder, study.photo.digest)}
    )
    return gather("worksheet", replace(study, worksheet=sheet), pictures, wording)
