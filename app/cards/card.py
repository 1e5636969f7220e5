"""The one door to the cards: from what was asked for to pages."""

from __future__ import annotations

from app.cards.choice import CardChoice
from app.cards.findings import lay_out_findings
from app.cards.kit import lay_out_kit
from app.cards.page import Page
from app.cards.plan import lay_out_plan
from app.cards.worksheet import lay_out_worksheet
from core.cards import words
from core.cards.data import CardData, Kind


def lay_out_card(data: CardData, choice: CardChoice) -> tuple[Page, ...]:
    """The pages of a card; touches no widget, so it may run in a worker.

    Parameters
    ----------
    data : CardData
        Gathered for the same kind.
    choice : CardChoice
    """
    if choice.kind == "plan":
        return lay_out_plan(data, choice.paper, bw=choice.bw)
    if choice.kind == "worksheet":
        return lay_out_worksheet(data, choice.paper, bw=choice.bw, blank=choice.blank)
    if choice.kind == "findings":
        return lay_out_findings(data, choice.paper, bw=choice.bw)
    return lay_out_kit(data, choice.students, choice.paper, bw=choice.bw)


def card_title(data: CardData, kind: Kind) -> str:
    """What the card is called in a file's description and for the printer."""
    titles = {
        "plan": words.plan_title,
        "worksheet": words.worksheet_title,
        "findings": words.findings_title,
        "kit": words.kit_title,
    }
    return titles[kind](data.study)


__all__ = ["CardChoice", "card_title", "lay_out_card"]
