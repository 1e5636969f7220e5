"""The Read page's entries in the menus, with their keys."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtGui import QAction, QActionGroup, QKeySequence
from PySide6.QtWidgets import QWidget

from app.canvas.canvas import PhotoCanvas
from app.widgets.actions import make_action
from app.workspace import Menu
from core.bands.lines import Bands, can_split
from core.i18n import translate

_ZOOM = 1.4


class ReadActions:
    """Made once by the page."""

    def __init__(
        self,
        page: QWidget,
        canvas: PhotoCanvas,
        split: Callable[[], None],
        remove: Callable[[], None],
        propose_again: Callable[[], None],
        look_at: Callable[[str], None],
        wheel_on_photo: Callable[[bool], None],
    ) -> None:
        """`page` owns the actions; the callables do them."""
        self._split = make_action(page, translate("menu", "S&plit the band"), split)
        self._remove = make_action(page, translate("menu", "Re&move the line"), remove)
        self._propose = make_action(
            page, translate("menu", "Pr&opose the bands again"), propose_again, "Ctrl+R"
        )
        group = QActionGroup(page)
        self._views: dict[str, QAction] = {}
        for key, text, keys in (
            ("colour", translate("menu", "Colo&ur"), "Ctrl+1"),
            ("values", translate("menu", "&Values"), "Ctrl+2"),
            ("steps 3", translate("menu", "Values in &3 steps"), "Ctrl+3"),
            ("steps 5", translate("menu", "Values in &5 steps"), "Ctrl+4"),
            ("steps 9", translate("menu", "Values in &9 steps"), "Ctrl+5"),
            ("squint", translate("menu", "S&quint"), "Ctrl+6"),
            ("eyes protan", translate("menu", "As seen without &red cones"), "Ctrl+7"),
            ("eyes deutan", translate("menu", "As seen without &green cones"), "Ctrl+8"),
            ("eyes tritan", translate("menu", "As seen without &blue cones"), "Ctrl+9"),
        ):
            action = make_action(page, text, partial(look_at, key), keys)
            action.setCheckable(True)
            group.addAction(action)
            self._views[key] = action
        self._views["colour"].setChecked(True)
        zoom_in, zoom_out = QKeySequence.StandardKey.ZoomIn, QKeySequence.StandardKey.ZoomOut
        self._zooms = (
            make_action(page, translate("menu", "Zoom &in"), lambda: canvas.zoom(_ZOOM), zoom_in),
            make_action(
                page, translate("menu", "Zoom &out"), lambda: canvas.zoom(1 / _ZOOM), zoom_out
            ),
            make_action(page, translate("menu", "W&hole photo"), canvas.zoom_to_fit, "Ctrl+0"),
        )
        self._wheel = make_action(
            page,
            translate("menu", "Wheel on the &photo"),
            lambda: wheel_on_photo(self._wheel.isChecked()),
            "F6",
        )
        self._wheel.setCheckable(True)
        self._shown: tuple[int, int, bool] | None = None
        self.show_bands(None, 0)

    def in_menu(self, menu: Menu) -> tuple[QAction, ...]:
        """What stands in a menu while the page is shown."""
        if menu == "edit":
            return (self._split, self._remove, self._propose)
        if menu == "view":
            return (*self._views.values(), *self._zooms, self._wheel)
        return ()

    def show_view(self, key: str) -> None:
        """Tick the way of looking in use."""
        self._views[key].setChecked(True)

    def show_wheel(self, shown: bool) -> None:
        """Tick whether the wheel lies over the photo."""
        self._wheel.setChecked(shown)

    def show_bands(self, bands: Bands | None, chosen: int) -> None:
        """Name the chosen band, and switch off what cannot be done to it."""
        split = bands is not None and can_split(bands, chosen)
        shown = (bands.count if bands else 0, chosen, split)
        if shown == self._shown:
            return  # called at every move of a line
        self._shown = shown
        self._propose.setEnabled(bands is not None)
        for action in (*self._views.values(), *self._zooms, self._wheel):
            action.setEnabled(bands is not None)
        self._split.setEnabled(split)
        self._remove.setEnabled(bands is not None and chosen < len(bands.lines))
        if bands is not None:
            letter = bands.letters[chosen]
            self._split.setText(translate("menu", "Sp&lit band {letter}").format(letter=letter))
            self._remove.setText(
                translate("menu", "Re&move the line below band {letter}").format(letter=letter)
            )
