"""From a plan to the paint that is drawn of its sky: the same in class view and on the Mix page."""

from __future__ import annotations

from collections.abc import Collection, Sequence

from app.drawing.painting import WashView
from core.paint.planned import MixPlan
from core.paint.preview import painted_sky


def wash_views(
    plan: MixPlan | None,
    edges: Sequence[float],
    laid: Collection[str] | None = None,
    now: tuple[str, float] | None = None,
) -> tuple[WashView, ...]:
    """The paint of a sky; none while there is no plan for these bands.

    Parameters
    ----------
    plan : MixPlan or None
    edges : sequence of float
        Where the bands begin and end.
    laid : collection of str, optional
        Bands that are laid; all of them without it.
    now : (letter, share), optional
        A band that is being laid, and how much of its width the brush has covered.
    """
    if plan is None or len(plan.bands) != len(edges) - 1:
        return ()
    views = tuple(WashView(w.top, w.bottom, w.colours) for w in painted_sky(plan, edges, laid))
    if now is None or laid is None:
        return views
    letter, share = now
    # What the band changes, its wet edges too, comes over what was there.
    coming = [w for w in painted_sky(plan, edges, {*laid, letter}) if letter in w.letters]
    return (*views, *(WashView(w.top, w.bottom, w.colours, share) for w in coming))
