"""What README.md and DEVELOPERS.md say can be relied on."""

from __future__ import annotations

import json
import re
from pathlib import Path

import pytest

import core.cli
import sample_scenes

ROOT = Path(__file__).parents[1]
REFERENCE = ROOT / "docs" / "command_line.md"


def shape_of(value: object) -> object:
    """Keys and kinds, without the values: what "the form" of a JSON document is."""
    if isinstance(value, dict):
        return {key: shape_of(item) for key, item in value.items()}
    if isinstance(value, list):
        return [shape_of(item) for item in value[:1]]
    return "number" if isinstance(value, int | float) else type(value).__name__


def test_json_of_read_is_as_the_documents_show(capsys: pytest.CaptureFixture[str]) -> None:
    block = re.search(r"```json\n(.*?)```", REFERENCE.read_text("utf-8"), re.DOTALL)
    assert block is not None
    shown = json.loads(block.group(1))
    assert core.cli.run(["read", str(sample_scenes.path("dusk")), "--json"]) == 0
    printed = json.loads(capsys.readouterr().out)
    assert shape_of(printed) == shape_of(shown)
    # Words are shown as they are, numbers to about what a reader would compare.
    for key, value in shown["bands"][0].items():
        if isinstance(value, str) and key not in {"munsell", "srgb"}:
            assert printed["bands"][0][key] == value
    assert printed["bands"][0]["Lab"] == pytest.approx(shown["bands"][0]["Lab"], abs=1.0)


@pytest.mark.parametrize("document", ["README.md", "DEVELOPERS.md", "docs/licences.md"])
def test_files_that_are_named_exist(document: str) -> None:
    text = (ROOT / document).read_text("utf-8")
    named = re.findall(
        r"\b((?:app|benchmarks|core|docs|sample_scenes|tests|tools)/[\w./]*\w)", text
    )
    # The screenshot's place is marked in the README until there is one.
    wanted = {name for name in named if not name.endswith(".png") and "NAME" not in name}
    assert len(wanted) > 0
    assert {name for name in wanted if not (ROOT / name).exists()} == set()
