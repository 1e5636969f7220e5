"""Dates as a reader writes them."""

from __future__ import annotations

from PySide6.QtCore import QDate, QLocale, Qt

from core.i18n import translate


def date_text(iso: str) -> str:
    """ "2027-03-04" as "4 March 2027", in the language in use."""
    date = QDate.fromString(iso, Qt.DateFormat.ISODate)
    if not date.isValid():
        return iso
    # The months' names come from the locale, their order from the catalogue.
    return QLocale().toString(date, translate("cards", "d MMMM yyyy"))


def today() -> str:
    """Today, as "2027-03-04"."""
    return QDate.currentDate().toString(Qt.DateFormat.ISODate)
