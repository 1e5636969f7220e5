"""What leaves a class set, and what stays in it, says nothing of place, person or camera.

Pictures of every usual kind come in full of it; then every file below the folder, every table,
every print, every study and the next lesson are searched, inside zips and packed streams too.
"""

from __future__ import annotations

import io
import shutil
import tempfile
import zipfile
from collections.abc import Iterator
from pathlib import Path

import pypdf
import pytest
from class_set_tools import TAG, made_folder, phone_exif, sheet_jpeg
from hypothesis import given, settings
from hypothesis import strategies as st
from PIL import Image, PngImagePlugin

import core.cli
from app.cards.class_command import CLASS_KINDS
from app.main import COMMANDS
from core.class_set import edits
from core.class_set.bringing import bring_in, files_in
from core.class_set.checking import check_folder
from core.class_set.folder import open_folder
from core.class_set.kept_checks import found_checks
from core.class_set.model import Marking
from core.class_set.table import COLUMNS
from core.class_set.ticket import Slot, Ticket
from core.class_set.tidying import tidy
from core.places import data_folder
from core.worksheet.worksheet import OwnScores, SheetPage, Worksheet

NAMES = ("Petra", "Beispiel", "Lumenix", "Model Nine", "2027:03", "10:15", "Klasse Sieben Bee")
"""Of people, places and cameras, and the moment, as they are put into the pictures below."""

XMP = (
    b'<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syn'
    b'tax-ns#"><rdf:Description xmlns:exif="http://ns.adobe.com/exif/1.0/" exif:GPSLatitude="48,12'
    b'.5N" xmlns:dc="http://purl.org/dc/elements/1.1/" dc:creator="Petra Beispiel"/></rdf:RDF>'
    b"</x:xmpmeta>"
)


def as_kind(jpeg: bytes, kind: str) -> bytes:
    """The picture as another kind of file, with all that such a file can say."""
    image, notes, out = (
        Image.open(io.BytesIO(jpeg)),
        phone_exif("2027:03:18 10:15:00"),
        io.BytesIO(),
    )
    if kind == "jpg":
        image.save(out, "JPEG", quality=92, exif=notes, xmp=XMP, comment=b"Klasse Sieben Bee")
    elif kind == "png":
        said = PngImagePlugin.PngInfo()
        said.add_text("Author", "Petra Beispiel")
        said.add_itxt("Description", "Klasse Sieben Bee", zip=True)
        image.save(out, "PNG", exif=notes, pnginfo=said)
    elif kind == "webp":
        image.save(out, "WEBP", exif=notes, xmp=XMP, quality=92)
    else:
        image.save(out, "TIFF", exif=notes, tiffinfo={315: "Petra Beispiel", 272: "Model Nine"})
    data = out.getvalue()
    assert b"Petra" in data
    return data


@pytest.fixture(scope="module")
def checked(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A class set of three with everything in it; made once, since checking takes seconds."""
    tmp_path = tmp_path_factory.mktemp("checked")
    brought = tmp_path / "Petra Beispiel"
    brought.mkdir()
    for k, kind in enumerate(("jpg", "png", "webp", "tif")):
        ticket = Ticket(TAG, 1 + k // 2, "12"[k % 2])
        data = as_kind(sheet_jpeg(ticket, seed=k), kind)
        (brought / f"Petra Beispiel sheet {k}.{kind}").write_bytes(data)
    (brought / "IMG_2063.jpg").write_bytes(as_kind(sheet_jpeg(None, seed=9), "jpg"))
    with made_folder(tmp_path, 3) as folder:
        assert not [
            told.sentence for told in bring_in(folder, files_in([brought])) if told.sentence
        ]
        class_set = folder.class_set
        assert len(class_set.brought) == 5
        loose = next(each.digest for each in class_set.brought if not each.tickets)
        class_set = edits.place(class_set, loose, Slot(3, 0))
        page = SheetPage(OwnScores(7, 8, 6, 4), "Less water.", "value", "2027-05-01")
        for number in (1, 2):
            class_set = edits.with_worksheet(class_set, number, Worksheet(pages=(page, page)))
            said = Marking("Good greys.", "Wetter paper.", "Well done.", "B+", ("late", ""), True)
            class_set = edits.with_marking(class_set, number, said)
        folder.save(class_set)
        assert all(outcome.sentence == "" for outcome in check_folder(folder))
    return tmp_path / "7b"


@pytest.fixture
def evening(checked: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A copy of it, where the user's own name is somebody's too."""
    for name in ("XDG_DATA_HOME", "LOCALAPPDATA", "HOME"):
        monkeypatch.setenv(name, str(tmp_path / "home"))
    for name in ("USER", "USERNAME", "LOGNAME"):
        monkeypatch.setenv(name, "Petra Beispiel")
    return shutil.copytree(checked, tmp_path / "7b")


def run(*argv: object) -> None:
    assert core.cli.run([str(each) for each in argv], COMMANDS) == 0


def test_no_file_below_the_folder_tells_of_anybody(evening: Path) -> None:
    found = search_all([evening])
    assert found == []
    with open_folder(evening, data_folder()) as folder:
        tidy(folder, found_checks(folder.path, folder.class_set))
    assert search_all([evening]) == []


def test_no_print_tells_of_anybody(qapp, evening: Path, tmp_path: Path) -> None:
    out = tmp_path / "out"
    out.mkdir()
    for kind in CLASS_KINDS:
        for paper in ("a4", "letter"):
            run("card", evening, "--kind", kind, "--paper", paper, "-o", out / f"{kind}{paper}.pdf")
    assert len(list(out.iterdir())) == 2 * len(CLASS_KINDS)
    assert search_all([out]) == []
    for file in out.iterdir():
        told = pypdf.PdfReader(file).metadata
        assert told is None or not told.author


def test_no_table_study_or_next_lesson_tells_of_anybody(evening: Path, tmp_path: Path) -> None:
    out = tmp_path / "out"
    out.mkdir()
    columns = ",".join(column for column in COLUMNS if column != "id")
    for name in ("all.csv", "all.xlsx"):
        run("class", "table", evening, "-o", out / name, "--columns", columns)
        run("class", "table", evening, "-o", out / f"import {name}", "--columns", "import")
    run("class", "studies", evening, "-o", out / "studies")
    run("class", "new", out / "next", "--from", evening)
    assert len(list((out / "studies").iterdir())) == 3
    assert search_all([out]) == []


def test_the_search_finds_what_is_hidden(tmp_path: Path) -> None:
    """Each way of hiding that the search looks through, with a name in it."""
    with zipfile.ZipFile(tmp_path / "a.xlsx", "w", zipfile.ZIP_DEFLATED) as book:
        book.writestr("docProps/core.xml", "<dc:creator>Petra</dc:creator>")
    writer = pypdf.PdfWriter()
    writer.add_blank_page(72, 72)
    writer.add_metadata({"/Author": "Petra"})
    writer.write(tmp_path / "b.pdf")
    (tmp_path / "c.png").write_bytes(as_kind(sheet_jpeg(None), "png"))
    (tmp_path / "d.txt").write_bytes("Petra".encode("utf-16-le"))
    found = {name for name, _ in search_all([tmp_path])}
    assert found == {"a.xlsx", "b.pdf", "c.png", "d.txt"}


_words = st.text("abcdefghkmnprstuvwxyz", max_size=20).map(lambda text: f"Qz7{text}")
"""Words that no file of ours holds by chance."""


@settings(deadline=None, max_examples=25)
@given(
    st.dictionaries(st.sampled_from((0x010E, 0x010F, 0x0110, 0x0131, 0x013B, 0x8298)), _words),
    st.tuples(_words, _words),
)
def test_whatever_a_picture_says_is_gone_on_the_way_in(notes: dict[int, str], names) -> None:
    """Description, maker, model, software, artist and copyright; a comment and the file's name."""
    comment, name = names
    exif = Image.Exif()
    for tag, text in notes.items():
        exif[tag] = text
    out = io.BytesIO()
    Image.open(io.BytesIO(SHEET)).save(out, "JPEG", exif=exif, comment=comment.encode())
    with tempfile.TemporaryDirectory() as where:
        file = Path(where) / f"{name}.jpg"
        file.write_bytes(out.getvalue())
        with made_folder(Path(where)) as folder:
            list(bring_in(folder, [file]))
            assert len(folder.class_set.brought) == 1
        assert search_all([Path(where) / "7b"], (*notes.values(), comment, name)) == []


SHEET = sheet_jpeg(None, seed=3)


# Searching


def search_all(places: list[Path], words: tuple[str, ...] = NAMES) -> list[tuple[str, str]]:
    """(file, word) wherever a word is found in a file, its name, or anything packed in it."""
    found = []
    for place in places:
        for file in sorted(place.rglob("*")):
            if file.is_file():
                for layer in (file.name.encode(), *layers(file.read_bytes())):
                    found += [(file.name, word) for word in words if holds(layer, word)]
                    if words is NAMES and says_where(layer):
                        found.append((file.name, "GPS"))
    return sorted(set(found))


def holds(data: bytes, word: str) -> bool:
    low = data.lower()
    return any(
        word.lower().encode(encoding) in low for encoding in ("utf-8", "utf-16-le", "utf-16-be")
    )


def layers(data: bytes) -> Iterator[bytes]:
    """The bytes themselves, and what is packed in them."""
    yield data
    if data[:4] == b"PK\x03\x04":
        with zipfile.ZipFile(io.BytesIO(data)) as packed:
            yield packed.comment
            for info in packed.infolist():
                yield info.filename.encode() + info.comment + info.extra
                yield from layers(packed.read(info))
    elif data[:5] == b"%PDF-":
        yield from pdf_layers(data)
    else:
        yield from picture_layers(data)


def pdf_layers(data: bytes) -> Iterator[bytes]:
    reader = pypdf.PdfReader(io.BytesIO(data))
    yield repr(reader.metadata).encode()
    for page in reader.pages:
        yield page.extract_text().encode()
    for number in reader.xref[0]:
        thing = reader.get_object(number)
        yield repr(thing).encode()
        if hasattr(thing, "get_data"):
            if thing.get("/Filter") == "/DCTDecode":
                yield from picture_layers(thing._data)
            elif thing.get("/Subtype") != "/Image":
                yield thing.get_data()


def picture_layers(data: bytes) -> Iterator[bytes]:
    try:
        image = Image.open(io.BytesIO(data))
    except OSError:
        return
    image.load()
    yield repr({key: value for key, value in image.info.items() if key != "icc_profile"}).encode()
    yield repr(dict(image.getexif())).encode()


def says_where(layer: bytes) -> bool:
    """A GPS directory in a picture's EXIF, or a latitude in its XMP."""
    if b"GPSLatitude" in layer:
        return True
    try:
        return bool(Image.open(io.BytesIO(layer)).getexif().get_ifd(0x8825))
    except (OSError, SyntaxError):
        return False
