"""Gather every text a user reads into the catalogues, and compile them.

    python tools/translations.py          gather, keep what is translated, compile
    python tools/translations.py --check  fail if a text has no translation or is out of date

Uses Qt's own tools (lupdate and lrelease, which PySide6 brings).
"""

from __future__ import annotations

import argparse
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as ET
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
FOLDER = ROOT / "app" / "translations"
LANGUAGES = ("es",)


def sources() -> list[str]:
    """Every module that may hold a text."""
    files = [
        *ROOT.glob("app/**/*.py"),
        *ROOT.glob("core/**/*.py"),
        *ROOT.glob("sample_scenes/*.py"),
    ]
    return sorted(str(file.relative_to(ROOT)) for file in files)


def gather(catalogue: Path) -> None:
    """Bring the catalogue up to date with the sources; texts that are gone go."""
    command = ["pyside6-lupdate", "-no-obsolete", "-locations", "none"]
    run([*command, *sources(), "-ts", str(catalogue)])


def run(command: list[str]) -> None:
    """Run one of Qt's tools, which are beside Python, from the project's top folder."""
    tool = Path(sys.executable).parent / command[0]
    found = [str(tool) if tool.exists() else command[0], *command[1:]]
    result = subprocess.run(found, cwd=ROOT, capture_output=True, text=True, check=False)
    if result.returncode:
        sys.exit(f"{command[0]} failed:\n{result.stdout}{result.stderr}")


def texts(catalogue: Path) -> dict[tuple[str, str], list[str]]:
    """(context, text) -> its translations, one a plural form; empty where there is none."""
    found = {}
    for context in ET.parse(catalogue).iter("context"):
        name = context.findtext("name") or ""
        for message in context.iter("message"):
            translation = message.find("translation")
            forms = (
                []
                if translation is None
                else [f.text or "" for f in translation.iter("numerusform")]
            )
            if translation is not None and not forms:
                forms = [translation.text or ""]
            if translation is not None and translation.get("type") == "unfinished":
                forms = [form for form in forms if form]
            found[name, message.findtext("source") or ""] = [form for form in forms if form]
    return found


def check() -> int:
    """0 when every text of the sources is in every catalogue, translated."""
    bad = 0
    for language in LANGUAGES:
        kept = texts(FOLDER / f"gradewash_{language}.ts")
        with tempfile.TemporaryDirectory() as folder:
            fresh = Path(folder) / "fresh.ts"
            gather(fresh)
            wanted = texts(fresh)
        missing = [key for key in wanted if not kept.get(key)]
        gone = [key for key in kept if key not in wanted]
        for word, keys in (("no translation", missing), ("no longer used", gone)):
            for context, text in keys:
                print(f"{language}: {word}: [{context}] {text}")
        bad += len(missing) + len(gone)
    return 1 if bad else 0


def main() -> int:
    """Gather and compile, or check."""
    parser = argparse.ArgumentParser(description=__doc__.split("\n")[0])
    parser.add_argument("--check", action="store_true")
    if parser.parse_args().check:
        return check()
    for language in LANGUAGES:
        catalogue = FOLDER / f"gradewash_{language}.ts"
        gather(catalogue)
        run(["pyside6-lrelease", str(catalogue), "-qm", str(catalogue.with_suffix(".qm"))])
    return 0


if __name__ == "__main__":
    sys.exit(main())
