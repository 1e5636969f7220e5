"""The kit list on paper: one page, nothing cut, and asked for by command, dialog and class."""

from __future__ import annotations

from pathlib import Path

import pytest
from card_tools import outside, overlaps, page_texts, pdf_text, plan_data
from class_set_tools import made_folder

import core.cli
import sample_scenes
from app.cards.kit import lay_out_kit
from app.cards.paper import PAPERS
from app.main import COMMANDS

pytestmark = pytest.mark.usefixtures("qapp")


@pytest.mark.parametrize("paper", PAPERS.values(), ids=PAPERS)
@pytest.mark.parametrize("bw", [False, True], ids=["colour", "bw"])
@pytest.mark.parametrize("long", [False, True], ids=["usual", "longest"])
@pytest.mark.parametrize(("count", "students"), [(1, 1), (5, 30), (7, 99)])
def test_it_is_one_page_with_nothing_overlapping_or_cut(paper, bw, long, count, students) -> None:
    pages = lay_out_kit(plan_data(count, long=long), students, paper, bw=bw)
    assert len(pages) == 1
    assert overlaps(pages[0]) == []
    assert outside(pages[0]) == []


def test_every_paint_of_the_plan_is_on_it_by_name() -> None:
    data = plan_data(5)
    said = " ".join(page_texts(lay_out_kit(data, 30, PAPERS["a4"])).split()).lower()
    used = {key for mix in data.plan.chosen_mixes for key in mix.keys}
    assert used
    for key in used:
        paint = data.plan.box.paint(key)
        assert paint.name in said
        assert not paint.colour_index or paint.colour_index[0].lower() in said


def test_of_a_photo_and_of_a_class(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    out = tmp_path / "kit.pdf"
    dusk = str(sample_scenes.path("dusk"))
    asked = ["card", dusk, "--kind", "kit", "--students", "24", "-o", str(out)]
    assert core.cli.run(asked, COMMANDS) == 0
    text = " ".join(pdf_text(out.read_bytes()).split())
    assert "For 24 students" in text
    with made_folder(tmp_path, 17):
        pass
    assert (
        core.cli.run(["card", str(tmp_path / "7b"), "--kind", "kit", "-o", str(out)], COMMANDS) == 0
    )
    text = " ".join(pdf_text(out.read_bytes()).split())
    assert "For 17 students" in text
    assert "Class 7b" in text
    capsys.readouterr()
    assert core.cli.run([*asked[:5], "0", "-o", str(tmp_path / "no.pdf")], COMMANDS) == 2
    told = capsys.readouterr().err
    assert "--students takes 1 to 99" in told
    assert told.count("\n") == 1
    assert not (tmp_path / "no.pdf").exists()
