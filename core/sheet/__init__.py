"""Checking a practice sheet against its reference sky."""

from core.sheet.change import compare_checks
from core.sheet.check import check_sheet
from core.sheet.reference import Reference, make_reference

__all__ = ["Reference", "check_sheet", "compare_checks", "make_reference"]
