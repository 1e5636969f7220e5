"""What the marking column shows of one student: values only, made from the desk."""

from __future__ import annotations

from dataclasses import dataclass, field, replace

from app.classset import headline
from app.classset.read_scores import ReadScoresView, read_scores_view
from app.classset.views import tile_of
from app.drawing.classset.scores import ScoresView
from app.drawing.classset.wall import PairView
from app.drawing.pyramid import Pyramid
from app.look import look
from app.services.class_set.desk import ClassDesk
from app.widgets.strip import StripView
from core.class_set.drafts import next_steps, strengths
from core.class_set.model import ClassSet, Marking, State
from core.class_set.questions import Sorted
from core.class_set.ticket import Slot
from core.i18n import translate
from core.pipeline import Checks, change_between
from core.reading.quality import QUALITIES
from core.sheet.findings.words import quality_word
from core.sheet.result import Change
from core.words.verdicts import outcome_word
from core.worksheet.compare import shown_score
from core.worksheet.words import sheet_title


@dataclass(frozen=True)
class Draft:
    """A sentence in its field."""

    text: str = ""
    is_draft: bool = False
    more: bool = False


@dataclass(frozen=True)
class SheetState:
    """What was said of a sheet, and whether its picture is there."""

    state: State = ""
    placed: bool = False


@dataclass(frozen=True)
class Drafts:
    """The sentences the findings give for a student, and the change between the sheets."""

    strengths: tuple[str, ...] = ()
    next_steps: tuple[str, ...] = ()
    change: Change | None = None
    checks: Checks = (None, None)


@dataclass(frozen=True, eq=False)
class MarkingView:
    """One student in the marking column."""

    title: str = ""
    count: str = ""
    has_before: bool = False
    has_after: bool = False
    pair: PairView = field(default_factory=PairView)
    states: tuple[SheetState, SheetState] = (SheetState(), SheetState())
    strength: Draft = Draft()
    next_step: Draft = Draft()
    scores: ScoresView = ScoresView()
    read: ReadScoresView | None = None
    change: str = ""
    words_title: str = ""
    words: str = ""
    crop: Pyramid | None = None
    remark: str = ""
    mark: str = ""
    doubts: tuple[StripView | None, StripView | None] = (None, None)


def drafts_of(desk: ClassDesk, class_set: ClassSet, found: Sorted, number: int) -> Drafts:
    """What the findings give; takes some milliseconds, so ask when the checks are others."""
    both = []
    for index in (0, 1):
        kept = desk.checks.get(found.placement.digest_at(Slot(number, index)) or "")
        both.append(None if kept is None else kept.check)
    checks: Checks = (both[0], both[1])
    pages = class_set.entry(number).worksheet.pages
    change = change_between(checks, pages[0].change_first)
    return Drafts(strengths(checks, change), next_steps(checks, change), change, checks)


def marking_view(
    desk: ClassDesk,
    class_set: ClassSet,
    found: Sorted,
    place: int,
    drafts: Drafts,
    *,
    cleared: frozenset[str] = frozenset(),
    crop: tuple[int, Pyramid] | None = None,
) -> MarkingView:
    """The column for the student at a place of the list.

    Parameters
    ----------
    cleared : set of str
        Fields the teacher emptied: no draft comes back into them.
    crop : (int, Pyramid), optional
        Which sheet's page is cropped, and its lines of writing.
    """
    student, scale = class_set.students[place], look().type
    entry = class_set.entry(student.number)
    marking, pages = entry.marking, entry.worksheet.pages
    slots = [Slot(student.number, index) for index in (0, 1)]
    tiles = [tile_of(desk, class_set, found, slot) for slot in slots]
    states = [
        SheetState(marking.states[slot.index], found.placement.digest_at(slot) is not None)
        for slot in slots
    ]
    answered = [index for index in (1, 0) if pages[index].answer]
    if not answered and crop is not None:
        answered = [crop[0]]
    top = None if desk.sky is None else desk.sky.levels[0]
    title = translate("class set page", "Student {code}").format(code=student.code)
    said = ""
    if answered:
        said = translate("class set page", "In the student's own words, {sheet}").format(
            sheet=sheet_title(answered[0]).lower()
        )
    return MarkingView(
        title,
        headline.marked(class_set),
        place > 0,
        place + 1 < len(class_set.students),
        PairView(
            (tiles[0], tiles[1]),
            1.5 if top is None else top.width() / max(1, top.height()),
            scale.px("note"),
        ),
        (states[0], states[1]),
        draft(marking, "strength", drafts.strengths, cleared=cleared),
        draft(marking, "next_step", drafts.next_steps, cleared=cleared),
        _scores(class_set, student.number, drafts),
        read_scores_view(desk, class_set, found.placement, student.number),
        _change(drafts.change),
        said,
        pages[answered[0]].answer if answered else "",
        None if crop is None or not answered or pages[answered[0]].answer else crop[1],
        marking.remark,
        marking.mark,
        (_doubt(desk, class_set, found, slots[0]), _doubt(desk, class_set, found, slots[1])),
    )


def _doubt(desk: ClassDesk, class_set: ClassSet, found: Sorted, slot: Slot) -> StripView | None:
    """What is not sure of a sheet's corners, with the ways to settle it; None where they are."""
    digest = found.placement.digest_at(slot)
    kept = desk.checks.get(digest or "")
    if digest is None or kept is None:
        return None
    if class_set.picture(digest).options.corners is not None:
        if desk.checking(digest):
            text = translate("class set page", "{sheet} is being checked again.")
            return StripView(text.format(sheet=sheet_title(slot.index)))
        if kept.check is not None:
            return None
    set_them = ("corners", translate("class set page", "Set the corners"))
    if kept.check is None:
        text = translate("class set page", "{sheet} could not be checked.")
        return StripView(text.format(sheet=sheet_title(slot.index)), (set_them,))
    if any(notice.key == "corners not found" for notice in kept.check.notices):
        text = translate("class set page", "{sheet}: no painting was found in it.")
        return StripView(text.format(sheet=sheet_title(slot.index)), (set_them,))
    if kept.check.provisional:
        text = translate("class set page", "{sheet}: its corners are not sure.")
        right = ("keep", translate("class set page", "They are right"))
        return StripView(text.format(sheet=sheet_title(slot.index)), (set_them, right))
    return None


def draft(
    marking: Marking, name: str, drafts: tuple[str, ...], *, cleared: frozenset[str]
) -> Draft:
    """What stands in a field: what the teacher took or wrote, else the first draft."""
    taken: str = getattr(marking, name)
    more = any(each != taken for each in drafts)
    if taken or marking.done or name in cleared or not drafts:
        return Draft(taken, False, more)
    return Draft(drafts[0], True, len(drafts) > 1)


def with_words(marking: Marking, name: str, text: str) -> Marking:
    """The marking with another text in one of its fields."""
    match name:
        case "strength":
            return replace(marking, strength=text)
        case "next_step":
            return replace(marking, next_step=text)
        case "remark":
            return replace(marking, remark=text)
        case "mark":
            return replace(marking, mark=text)
        case _:
            raise ValueError(f"no such field: {name}")


def another(now: str, drafts: tuple[str, ...]) -> str:
    """The draft after the one that stands there; after the last, the first."""
    if not drafts:
        return now
    if now not in drafts:
        return drafts[0]
    return drafts[(drafts.index(now) + 1) % len(drafts)]


def _scores(class_set: ClassSet, number: int, drafts: Drafts) -> ScoresView:
    pages = class_set.entry(number).worksheet.pages
    scale, theme = look().type, look().theme
    own, measured = [], []
    for quality in QUALITIES:
        mine = [pages[index].scores.of(quality) for index in (0, 1)]
        found = [
            None
            if check is None or not check.readable
            else shown_score(getattr(check.scores, quality))
            for check in drafts.checks
        ]
        own.append((_number(mine[0]), _number(mine[1])))
        measured.append((_number(found[0]), _number(found[1])))
    return ScoresView(
        tuple(quality_word(quality) for quality in QUALITIES),
        (
            (translate("class set page", "Own"), tuple(own)),
            (translate("class set page", "Measured"), tuple(measured)),
        ),
        scale.px("note"),
        theme.ink,
        theme.second,
    )


def _number(score: int | None) -> str:
    return "" if score is None else str(score)


def _change(change: Change | None) -> str:
    if change is None or change.intended is None or change.worked is None:
        return ""
    text = translate("class set page", "Set out to change: {what}. On sheet 2: {outcome}.")
    return text.format(what=quality_word(change.intended), outcome=outcome_word(change.worked))
