"""The house rules that a machine can check: what is where, and who may import whom."""

from __future__ import annotations

import ast
import graphlib
import hashlib
import os
import re
import shutil
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[1]

TOP_LEVEL = {
    ".ci",
    ".gitignore",
    "DEVELOPERS.md",
    "LICENSE",
    "README.md",
    "app",
    "benchmarks",
    "core",
    "docs",
    "locks",
    "pyproject.toml",
    "run",
    "run.ps1",
    "sample_scenes",
    "test",
    "test.ps1",
    "tests",
    "tools",
}

# Written so that this file does not find itself.
MACHINE_PATH = re.compile(r"(^|[^a-zA-Z0-9_.])/" + r"(work|tmp|root|farm|home)/")
TEXT = {
    ".py",
    ".md",
    ".toml",
    ".json",
    ".csv",
    ".txt",
    ".svg",
    ".ts",
    ".sh",
    ".ps1",
    ".qss",
    ".spec",
    "",
}


# Makers of paint, paper and brushes, as the start of the SHA-256 of their names in lower case: a
# list in the open would be the very thing it forbids.
MAKERS = {
    "0015bdf1b4ce",
    "03080cf4d614",
    "10d09206b617",
    "11939eb65774",
    "1b356656407d",
    "2ab0ceed63cc",
    "36d91157618e",
    "39b2d8951cdb",
    "3a843727f209",
    "400434da5a0d",
    "421f136c2fb4",
    "56f203d4ec74",
    "6d869000cb14",
    "8883c1aa9084",
    "8aaf2b0423e7",
    "b43071f10e67",
    "c2d43ae25fe2",
    "cd9a73f09eec",
    "df8b063a3faa",
    "ee030f4cf17d",
    "f7a86da5ca57",
}


def tracked() -> list[Path]:
    """The files git keeps; skips where there is no git, as in an unpacked archive."""
    if shutil.which("git") is None or not (ROOT / ".git").exists():
        pytest.skip("not a git checkout")
    listed = subprocess.run(
        ["git", "-c", f"safe.directory={ROOT}", "ls-files", "-z"],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=True,
    )
    return [Path(name) for name in listed.stdout.split("\0") if name and (ROOT / name).is_file()]


def texts() -> dict[Path, str]:
    return {
        path: (ROOT / path).read_text(encoding="utf-8") for path in tracked() if path.suffix in TEXT
    }


def test_top_level_holds_only_what_it_should() -> None:
    assert {path.parts[0] for path in tracked()} - TOP_LEVEL == set()


def test_import_contracts_hold() -> None:
    lint = Path(sys.executable).with_name("lint-imports")
    done = subprocess.run(
        [lint, "--no-cache"], cwd=ROOT, capture_output=True, text=True, timeout=300, check=False
    )
    assert done.returncode == 0, done.stdout[-3000:]
    # Each contract of pyproject.toml was looked at, and all are kept.
    for contract in (
        "app stands on core, never the other way",
        "core knows no Qt",
        "app holds no colour arithmetic",
        "the floors of core",
        "the floors of core.paint",
        "the floors of core.sheet",
        "the floors of app",
        "the floors of app.drawing",
    ):
        assert f"{contract} KEPT" in done.stdout


def modules() -> dict[str, ast.Module]:
    """Dotted name and tree of every module of `app`, `core` and `sample_scenes`."""
    found = {}
    for top in ("app", "core", "sample_scenes"):
        for path in sorted((ROOT / top).rglob("*.py")):
            name = ".".join(path.relative_to(ROOT).with_suffix("").parts).removesuffix(".__init__")
            found[name] = ast.parse(path.read_text(encoding="utf-8"))
    return found


def statements(tree: ast.AST) -> Iterator[ast.AST]:
    """Every statement, however deep; the expressions in them are many times as many."""
    for part in ("body", "orelse", "finalbody", "handlers", "cases"):
        for inner in getattr(tree, part, ()):
            yield inner
            yield from statements(inner)


def test_no_import_is_overlooked() -> None:
    """However deep it stands: in a function, a branch, a loop's else, a handler, a case."""
    text = """
import a
def one():
    class Two:
        import b
    try:
        import c
    except OSError:
        import d
    else:
        import e
    finally:
        import f
async def three():
    async for _ in ():
        import g
    else:
        import h
    with open("x"):
        import i
    match 1:
        case 1:
            import j
    if 1:
        pass
    elif 2:
        while 1:
            import k
    else:
        import m
"""
    tree = ast.parse(text)
    found = [node for node in statements(tree) if isinstance(node, ast.Import)]
    assert sorted(node.names[0].name for node in found) == list("abcdefghijkm")
    walked = [node for node in ast.walk(tree) if isinstance(node, ast.Import)]
    assert set(found) == set(walked)


def test_no_modules_import_each_other_in_a_circle() -> None:
    """Not for a type alone either, nor inside a function."""
    trees = modules()
    graph: dict[str, set[str]] = {}
    for name, tree in trees.items():
        used = graph.setdefault(name, set())
        for node in statements(tree):
            if isinstance(node, ast.Import):
                used.update(alias.name for alias in node.names)
            elif isinstance(node, ast.ImportFrom) and node.module:
                whole = {f"{node.module}.{alias.name}" for alias in node.names}
                used.update({one if one in trees else node.module for one in whole})
        used &= trees.keys() - {name}
    assert sum(map(len, graph.values())) > 1000
    try:
        graphlib.TopologicalSorter(graph).prepare()
    except graphlib.CycleError as error:
        pytest.fail(" -> ".join(error.args[1]))


def test_every_folder_says_what_it_is_and_who_may_import_it() -> None:
    silent = []
    for path in [*(ROOT / "app").rglob("__init__.py"), *(ROOT / "core").rglob("__init__.py")]:
        text = ast.get_docstring(ast.parse(path.read_text(encoding="utf-8"))) or ""
        if "import" not in text.lower():
            silent.append(str(path.relative_to(ROOT)))
    assert silent == []


@pytest.mark.parametrize(
    ("package", "banned"),
    [
        ("core", {"PySide6", "shiboken6", "app", "colour", "matplotlib", "skimage"}),
        ("app", {"scipy", "skimage", "colour", "matplotlib"}),
        ("sample_scenes/__init__.py", {"PySide6", "scipy", "skimage", "colour", "PIL"}),
    ],
)
def test_no_banned_import_even_inside_a_function(package: str, banned: set[str]) -> None:
    """A second look, by the text of each file: the contracts above see only what resolves."""
    where = ROOT / package
    files = [where] if where.is_file() else sorted(where.rglob("*.py"))
    assert files
    line = re.compile(r"^\s*(?:from|import)\s+(\w+)", re.MULTILINE)
    found = {
        f"{file.relative_to(ROOT)}: {name}"
        for file in files
        for name in line.findall(file.read_text(encoding="utf-8"))
        if name in banned
    }
    assert found == set()


def test_of_scipy_only_its_pictures_are_used() -> None:
    """The build to hand out leaves the rest of SciPy away (tools/bundle/gradewash.spec)."""
    line = re.compile(r"^\s*(?:from|import)\s+(scipy[\w.]*)(?: import (\w+))?", re.MULTILINE)
    used = {
        f"{module}.{name}" if module == "scipy" else module
        for file in (ROOT / "core").rglob("*.py")
        for module, name in line.findall(file.read_text(encoding="utf-8"))
    }
    assert used == {"scipy.ndimage"}


def test_start_up_imports_stay_light() -> None:
    """Importing core's own modules brings in none of the slow libraries."""
    code = (
        "import sys, core.photo, core.colour, core.bands.propose, core.reading.wheel\n"
        "import sample_scenes\n"
        "print(*{'scipy', 'skimage', 'colour', 'matplotlib', 'PySide6'} & set(sys.modules))"
    )
    done = subprocess.run(
        [sys.executable, "-c", code], cwd=ROOT, capture_output=True, text=True, check=True
    )
    assert done.stdout.split() == []


def test_no_path_of_somebodys_machine() -> None:
    found = {
        f"{path}: {match.group(0)}"
        for path, text in texts().items()
        if path.parts[0] != ".ci"
        for match in [MACHINE_PATH.search(text)]
        if match
    }
    assert found == set()


def test_no_maker_of_paint_is_named() -> None:
    found = {
        f"{path}: {word}"
        for path, text in texts().items()
        for word in set(re.findall(r"[^\W\d_]{4,}", text.lower()))
        if hashlib.sha256(word.encode()).hexdigest()[:12] in MAKERS
    }
    assert found == set()


def test_test_files_have_names_of_their_own() -> None:
    """Without __init__.py files pytest cannot hold two test modules of one name."""
    names = [path.name for path in tracked() if path.name.startswith("test_")]
    assert len(names) == len(set(names))


def test_every_module_says_what_it_is() -> None:
    silent = [
        str(path)
        for path, text in texts().items()
        if path.suffix == ".py"
        and path.parts[0] != "tests"
        and text.strip()
        and not text.startswith(('"""', 'r"""', "#!"))
    ]
    assert silent == []


def test_scripts_can_be_run() -> None:
    for script in ("run", "test", ".ci/run"):
        assert os.access(ROOT / script, os.X_OK)
        subprocess.run(["sh", "-n", str(ROOT / script)], check=True)
