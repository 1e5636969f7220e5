"""The stylesheet for what Qt draws: menus, fields, boxes, scroll bars, plain buttons.

What has a widget of its own in app/widgets paints itself; this gives everything else the same
edges, radius and states. Unavailable is a dashed edge, never a paler colour alone.
"""

from __future__ import annotations

from string import Template

from PySide6.QtCore import QDir

from app.look.icons import FOLDER
from app.look.space import CONTROL, RADIUS
from app.look.theme import Theme
from app.look.type import TypeScale

_SHEET = Template("""
QMainWindow, QDialog, QMessageBox { background: $paper; }
QWidget[ground="wall"] { background: $wall; color: $wall_ink; }
QWidget[ground="paper"] { background: $paper; }
QWidget[ground="raised"] { background: $raised; }
QWidget[ground="bar"] { background: $bar; }
QLabel { background: transparent; }
QLabel[role="second"] { color: $second; }
QLabel[role="heading"] { font-size: ${heading}px; font-weight: 700; }
QLabel[role="label"] { font-size: ${label}px; font-weight: 600; }
QLabel[role="note"] { font-size: ${note}px; color: $second; }
QLabel[role="medium"] { font-size: ${control}px; font-weight: 500; }
QLabel[role="strong"] { font-size: ${control}px; font-weight: 600; }
QLabel[role="number"] { font-size: ${label}px; font-weight: 700; }
QLabel[role="line"] { font-size: ${row}px; font-weight: 700; }
QLabel[role="said"] { font-size: ${said}px; }
QPlainTextEdit { font-size: ${said}px; }
QLabel[on="wall"] { color: $wall_ink; }

QMenuBar { background: $bar; color: $ink; padding: 0; spacing: 0; }
QMenuBar::item { background: transparent; padding: ${p8}px ${p10}px; border-radius: 5px; }
QMenuBar::item:selected { background: $raised; }
QMenuBar::item:pressed { background: $ink; color: $on_ink; }
QMenu { background: $raised; color: $ink; border: 1px solid $edge; padding: 4px; }
QMenu::item { padding: ${p7}px ${p24}px ${p7}px ${p12}px; border-radius: 4px; margin: 0; }
QMenu::item:selected { background: $ink; color: $on_ink; }
QMenu::item:disabled { color: $second; font-style: normal; }
QMenu::item:disabled:selected { background: $paper; color: $second; }
QMenu::icon { padding-left: 8px; }
QMenu::separator { height: 1px; background: $rule; margin: 4px 8px; }
QMenu::indicator { width: ${p20}px; height: ${p20}px; padding-left: 6px; }
QMenu::indicator:checked { image: url("lookicons:check.$name.svg"); }
QMenu::indicator:checked:selected { image: url("lookicons:check.$other.svg"); }
QMenu::right-arrow { image: url("lookicons:chevron_right.$name.svg"); width: 16px; height: 16px; }
QMenu::right-arrow:selected { image: url("lookicons:chevron_right.$other.svg"); }
QToolTip { background: $ink; color: $on_ink; border: 1px solid $on_ink; padding: 6px 8px;
  font-size: ${control}px; }

QPushButton { background: $raised; color: $ink; border: 1px solid $edge; border-radius: ${radius}px;
  min-height: ${inner}px; padding: 0 ${p14}px; font-weight: 500; }
QPushButton:hover { border-color: $ink; }
QPushButton:pressed { background: $rule; }
QPushButton:default, QPushButton:checked { background: $ink; color: $on_ink; border-color: $ink;
  font-weight: 700; }
QPushButton:disabled { background: transparent; color: $second; border: 1px dashed $edge;
  font-weight: 500; }

QLineEdit, QPlainTextEdit, QTextEdit, QSpinBox, QDoubleSpinBox, QDateEdit, QComboBox {
  background: $raised; color: $ink; border: 1px solid $edge; border-radius: ${radius}px;
  selection-background-color: $ink; selection-color: $on_ink; }
QLineEdit, QSpinBox, QDoubleSpinBox, QDateEdit, QComboBox { min-height: ${inner}px;
  padding: 0 ${p10}px; }
QPlainTextEdit, QTextEdit { padding: ${p8}px ${p10}px; }
QLineEdit, QPlainTextEdit, QTextEdit { placeholder-text-color: $second; }
QLineEdit:hover, QPlainTextEdit:hover, QTextEdit:hover, QSpinBox:hover, QDoubleSpinBox:hover,
QComboBox:hover { border-color: $ink; }
QLineEdit:disabled, QPlainTextEdit:disabled, QTextEdit:disabled, QSpinBox:disabled,
QDoubleSpinBox:disabled, QDateEdit:disabled, QComboBox:disabled { background: transparent;
  color: $second; border: 1px dashed $edge; }
QComboBox { padding-right: ${p30}px; }
QComboBox::drop-down { border: none; width: ${p28}px; }
QComboBox::down-arrow { image: url("lookicons:chevron_down.$name.svg"); width: ${p20}px;
  height: ${p20}px; }
QComboBox QAbstractItemView { background: $raised; color: $ink; border: 1px solid $edge;
  outline: 0; padding: 4px; selection-background-color: $ink; selection-color: $on_ink; }
QComboBox QAbstractItemView::item { min-height: ${inner}px; padding: 0 8px; border: none; }
QComboBox QAbstractItemView::item:selected { background: $ink; color: $on_ink; }
QSpinBox, QDoubleSpinBox, QDateEdit { padding: 0 ${p24}px 0 0; }
QAbstractSpinBox { qproperty-alignment: "AlignCenter"; }
QAbstractSpinBox::up-button, QAbstractSpinBox::down-button { border: none; background: transparent;
  width: ${p24}px; subcontrol-origin: border; }
QAbstractSpinBox::up-button { subcontrol-position: top right; height: ${half}px; }
QAbstractSpinBox::down-button { subcontrol-position: bottom right; height: ${half}px; }
QAbstractSpinBox::up-arrow { image: url("lookicons:chevron_up.$name.svg"); width: ${p16}px;
  height: ${p16}px; }
QAbstractSpinBox::down-arrow { image: url("lookicons:chevron_down.$name.svg"); width: ${p16}px;
  height: ${p16}px; }

QCheckBox, QRadioButton { spacing: 8px; min-height: ${p24}px; background: transparent; }
QCheckBox::indicator, QRadioButton::indicator { width: ${p20}px; height: ${p20}px;
  background: $raised; border: 1px solid $edge; }
QCheckBox::indicator { border-radius: 4px; }
QRadioButton::indicator { border-radius: ${round}px; }
QCheckBox::indicator:hover, QRadioButton::indicator:hover { border-color: $ink; }
QCheckBox::indicator:checked { background: $ink; border-color: $ink;
  image: url("lookicons:check.$other.svg"); }
QRadioButton::indicator:checked { image: url("lookicons:radio.$name.svg"); border-color: $ink; }
QCheckBox::indicator:disabled, QRadioButton::indicator:disabled { background: transparent;
  border: 1px dashed $edge; }
QCheckBox:disabled, QRadioButton:disabled { color: $second; }
QGroupBox { border: none; font-weight: 700; margin-top: ${p28}px; padding: 0; }
QGroupBox::title { subcontrol-origin: margin; left: 0; padding: 0; }

QSlider::groove:horizontal { height: 4px; background: $edge; border-radius: 2px; }
QSlider::sub-page:horizontal { background: $ink; border-radius: 2px; }
QSlider::handle:horizontal { width: 22px; height: 22px; margin: -10px 0; border-radius: 12px;
  background: $ink; border: 2px solid $raised; }
QSlider { min-height: 26px; }
QProgressBar { background: $raised; border: 1px solid $edge; border-radius: 4px; height: 10px;
  text-align: center; color: transparent; }
QProgressBar::chunk { background: $ink; border-radius: 3px; }

QScrollArea { border: none; background: transparent; }
QScrollBar:vertical { background: transparent; width: 14px; margin: 0; }
QScrollBar:horizontal { background: transparent; height: 14px; margin: 0; }
QScrollBar::handle { background: $edge; border-radius: 4px; margin: 3px; }
QScrollBar::handle:vertical { min-height: 32px; }
QScrollBar::handle:horizontal { min-width: 32px; }
QScrollBar::handle:hover, QScrollBar::handle:pressed { background: $ink; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; border: none; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
QAbstractScrollArea::corner { background: transparent; border: none; }

QListView, QTreeView, QTableView { background: $raised; color: $ink; border: 1px solid $edge;
  border-radius: ${radius}px; outline: 0; selection-background-color: $ink;
  selection-color: $on_ink; }
QListView::item { padding: ${p6}px 8px; border: none; }
QListView::item:selected { background: $ink; color: $on_ink; }
QListView[role="chapters"] { background: transparent; border: none; border-radius: 0; }
QListView[role="chapters"]::item { padding: ${p8}px ${p20}px ${p8}px ${p14}px;
  border-left: 6px solid $bar; }
QListView[role="chapters"]::item:hover { background: $paper; }
QListView[role="chapters"]::item:selected { background: $paper; color: $ink;
  border-left: 6px solid $ink; }
QTableView { gridline-color: $rule; }
QTableView::item { padding: 2px 8px; border: none; }
QTableView::item:selected { background: $ink; color: $on_ink; }
QTableView QLineEdit, QTableView QComboBox { border-radius: 0; min-height: 0; }
QHeaderView { background: $paper; border: none; }
QHeaderView::section { background: $paper; color: $second; border: none;
  border-bottom: 1px solid $rule; padding: 4px 6px; font-size: ${note}px; }
QHeaderView::section:vertical { color: $ink; font-size: ${control}px; font-weight: 600;
  border-right: 1px solid $rule; padding: 4px 8px; }
QTableCornerButton::section { background: $paper; border: none; }
QTextBrowser { background: $paper; border: none; padding: 0; }
QSplitter::handle { background: $rule; }
""")

_PADDINGS = (6, 7, 8, 10, 12, 14, 16, 20, 24, 28, 30)


def stylesheet(theme: Theme, scale: TypeScale) -> str:
    """Qt style sheet text for a theme and a type scale."""
    QDir.setSearchPaths("lookicons", [str(FOLDER)])
    inner = scale.grow(CONTROL) - 2
    return _SHEET.substitute(
        {f"p{n}": scale.grow(n) for n in _PADDINGS},
        name=theme.name,
        other="dark" if theme.name == "light" else "light",
        paper=theme.paper,
        raised=theme.raised,
        bar=theme.bar,
        ink=theme.ink,
        on_ink=theme.on_ink,
        second=theme.second,
        rule=theme.rule,
        edge=theme.edge,
        wall=theme.wall,
        wall_ink=theme.wall_ink,
        heading=scale.px("heading"),
        label=scale.px("label"),
        said=scale.px("row_second"),
        row=scale.px("row"),
        note=scale.px("note"),
        control=scale.px("control"),
        inner=inner,
        half=inner // 2 + 1,
        round=(scale.grow(20) + 2) // 2,
        radius=round(RADIUS),
    )
