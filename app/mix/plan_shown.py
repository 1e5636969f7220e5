"""What the plan panel shows."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class AmountRow:
    """One mix: its band, its strength, its measure without a syringe, and millilitres, in words."""

    letter: str
    strength: str
    measure: str
    ml: str


@dataclass(frozen=True)
class PlanView:
    """The plan in words.

    Attributes
    ----------
    line : str
        All in one line, for the foot of a narrow window.
    sheets : tuple of str
        Sizes to choose among.
    sheet : int
        Which it is; -1 for one that is not in the list.
    painted : str
        The painted rectangle.
    amounts : tuple of AmountRow
    total : str
        In all, with the margin said.
    total_ml : str
    notes : tuple of str
        Water, brush, where the figures come from, what drying does.
    own_figure : float or None
        What the class measured, mL on 1000 cm2.
    usual_figure : float
    kind : str
        Flat, graded or variegated.
    steps : tuple of str
    cautions : tuple of str
    """

    line: str
    sheets: tuple[str, ...]
    sheet: int
    painted: str
    amounts: tuple[AmountRow, ...]
    total: str
    total_ml: str
    notes: tuple[str, ...]
    own_figure: float | None
    usual_figure: float
    kind: str
    steps: tuple[str, ...]
    cautions: tuple[str, ...]
