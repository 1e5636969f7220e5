"""`gradewash class`, with the verb that has to know how worksheets are printed."""

from __future__ import annotations

import argparse

import core.cli.class_set as of_core

VERBS = {"scores": "app.cards.scores_command"}
"""Verbs that need Qt, and their modules, which import it when they run; `core` has the others."""


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """The verbs of `gradewash class`."""
    of_core.add_arguments(parser, VERBS)


def run(args: argparse.Namespace) -> int:
    """Do what the verb asks."""
    return of_core.run(args, VERBS)
