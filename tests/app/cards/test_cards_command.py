"""`gradewash card`: a PDF of a study or a photo, and one line for every error."""

from __future__ import annotations

import io
import os
import subprocess
import sys
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from card_tools import filled_worksheet, painted, pdf_text
from PIL import Image

import sample_scenes
from app.main import main
from core.bands.lines import Bands
from core.paint.box.box import TWELVE_PAN, Box
from core.paint.box.box_file import save_box
from core.pictures import PictureStore
from core.study import SheetEntry, Study, study_of
from core.study_file.document import study_to_bytes

ROOT = Path(__file__).parents[3]
DUSK = str(sample_scenes.path("dusk"))

pytestmark = pytest.mark.usefixtures("qapp")


@pytest.fixture
def card(capsys, tmp_path: Path):
    """Run the command; exit status, stdout, stderr."""

    def run(*arguments: str) -> tuple[int, str, str]:
        code = main(["card", *arguments])
        out, err = capsys.readouterr()
        return code, out, err

    return run


def png(pixels: np.ndarray) -> bytes:
    buffer = io.BytesIO()
    Image.fromarray(pixels).save(buffer, "PNG")
    return buffer.getvalue()


@pytest.fixture(scope="module")
def lesson(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A study of a sky with one painted sheet, scored and answered."""
    sheet = painted()
    store = PictureStore()
    study = study_of(store.add("sky.png", png(sheet.reference)), Bands(1.0, sheet.lines))
    entry = SheetEntry(store.add("sheet.jpg", sheet.jpeg))
    study = replace(study, title="Harbour", sheets=(entry, None), worksheet=filled_worksheet())
    return written(study, store, tmp_path_factory.mktemp("lesson") / "harbour.gradewash")


def written(study: Study, store: PictureStore, path: Path) -> Path:
    path.write_bytes(study_to_bytes(study, store))
    return path


@pytest.mark.parametrize("paper", ["a4", "Letter"])
@pytest.mark.parametrize("bw", [[], ["--bw"]])
def test_plan_of_a_photo(card, tmp_path, paper, bw) -> None:
    out = tmp_path / "plan.pdf"
    code, said, err = card(DUSK, "-o", str(out), "--paper", paper, *bw)
    assert (code, said, err) == (0, "Wrote plan.pdf.\n", "")
    text = pdf_text(out.read_bytes())
    assert "Plan: dusk" in text
    assert "Order of work" in text
    assert [path.name for path in tmp_path.iterdir()] == ["plan.pdf"]


def test_plan_of_a_photo_with_another_box(card, tmp_path) -> None:
    out = tmp_path / "plan.pdf"
    assert card(DUSK, "-o", str(out), "--box", "primary")[0] == 0
    assert "six-colour split primary box" in pdf_text(out.read_bytes())


@pytest.mark.parametrize("scene", ["fell", "marsh", "pines"])
def test_plan_with_a_box_that_tones_nothing_down(card, tmp_path, scene) -> None:
    """Ultramarine and crimson once ended in KeyError: "too dull"."""
    box, out = tmp_path / "two.json", tmp_path / "plan.pdf"
    save_box(Box("Two", TWELVE_PAN.only(("ultramarine", "crimson")).paints), box)
    code, _, err = card(str(sample_scenes.path(scene)), "-o", str(out), "--box", str(box))
    assert (code, err) == (0, "")
    assert "Duller than the box can reach" in pdf_text(out.read_bytes())


def test_every_kind_of_a_study(card, tmp_path, lesson) -> None:
    out = tmp_path / "card.pdf"
    for kind, told in (
        ("plan", "Plan: Harbour"),
        ("worksheet", "Worksheet: Harbour"),
        ("findings", "Findings: Harbour"),
    ):
        code, _, err = card(str(lesson), "--kind", kind, "-o", str(out))
        assert (code, err) == (0, "")
        assert told in pdf_text(out.read_bytes())
    # The last one holds what was measured of the sheet.
    text = pdf_text(out.read_bytes())
    assert "Scores, 1 to 10" in text
    assert "The second sheet will show what the change did." in text
    assert "Matches" in text or "Close" in text or "Off" in text


def test_worksheet_filled_and_blank(card, tmp_path, lesson) -> None:
    out = tmp_path / "sheet.pdf"
    assert card(str(lesson), "--kind", "worksheet", "-o", str(out))[0] == 0
    assert "Keep the sheet wetter." in pdf_text(out.read_bytes())
    assert card(str(lesson), "--kind", "worksheet", "--blank", "-o", str(out))[0] == 0
    text = pdf_text(out.read_bytes())
    assert "Keep the sheet wetter." not in text
    assert "far from it" in text


@pytest.mark.parametrize(
    ("arguments", "told"),
    [
        (
            [DUSK, "--kind", "findings", "-o", "{}/x.pdf"],
            "findings need a study with painted sheets",
        ),
        ([DUSK, "--kind", "poster", "-o", "{}/x.pdf"], "--kind poster is not known"),
        ([DUSK, "--paper", "a5", "-o", "{}/x.pdf"], "--paper a5 is not known"),
        ([DUSK, "-o", "{}/gone/x.pdf"], "make it first"),
        ([DUSK, "-o", "{}"], "is a folder"),
        (["{}/none.gradewash", "-o", "{}/x.pdf"], "There is no file none.gradewash"),
        (["{}/none.jpg", "-o", "{}/x.pdf"], "There is no file none.jpg"),
        ([DUSK, "--box", "nobody", "-o", "{}/x.pdf"], "There is no box nobody"),
        ([DUSK], "Missing: -o FILE"),
    ],
)
def test_errors_are_one_line_and_write_nothing(card, tmp_path, arguments, told) -> None:
    code, out, err = card(*(argument.format(tmp_path) for argument in arguments))
    assert (code, out) == (2, "")
    assert told in err
    assert err.count("\n") == 1
    assert "Traceback" not in err
    assert list(tmp_path.iterdir()) == []


def test_what_is_printed_is_never_replaced(card, lesson) -> None:
    before = lesson.read_bytes()
    code, _, err = card(str(lesson), "-o", str(lesson))
    assert code == 2
    assert "would replace" in err
    assert lesson.read_bytes() == before


def test_a_card_that_was_there_survives_a_failure(card, tmp_path, monkeypatch) -> None:
    out = tmp_path / "card.pdf"
    out.write_bytes(b"the card of yesterday")

    def full(*arguments: object) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr("core.files.os.fsync", full)
    code, _, err = card(DUSK, "-o", str(out))
    assert code == 2
    assert "no room left for card.pdf" in err
    assert out.read_bytes() == b"the card of yesterday"
    assert [path.name for path in tmp_path.iterdir()] == ["card.pdf"]


def test_a_study_without_a_photo(card, tmp_path) -> None:
    path = written(Study(title="Empty"), PictureStore(), tmp_path / "empty.gradewash")
    code, _, err = card(str(path), "-o", str(tmp_path / "x.pdf"))
    assert code == 2
    assert "no photo yet" in err
    code, _, _ = card(str(path), "--kind", "worksheet", "-o", str(tmp_path / "x.pdf"))
    assert code == 0


def test_it_is_listed_and_explains_itself(capsys) -> None:
    assert main(["--help"]) == 0
    assert "card" in capsys.readouterr().out
    assert main(["card", "--help"]) == 0
    assert "--kind" in capsys.readouterr().out


def test_without_a_screen_and_a_window(tmp_path) -> None:
    """As a program of its own, with no display to speak of."""
    environment = {k: v for k, v in os.environ.items() if k not in ("DISPLAY", "QT_QPA_PLATFORM")}
    out = tmp_path / "plan.pdf"
    done = subprocess.run(
        [sys.executable, "-m", "app", "card", DUSK, "-o", str(out)],
        cwd=ROOT,
        env=environment,
        capture_output=True,
        text=True,
        timeout=60,
        check=False,
    )
    assert (done.returncode, done.stderr) == (0, "")
    assert "Plan: dusk" in pdf_text(out.read_bytes())
