"""Checking a practice sheet against its reference sky."""
