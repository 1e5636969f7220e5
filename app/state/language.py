"""The language of everything the user reads: Qt's own catalogues, for `core`'s words too."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QTranslator

from core.i18n import set_catalogue

FOLDER = Path(__file__).parents[1] / "translations"

LANGUAGES = {"en": "English", "es": "Español"}
"""By code, each named in its own language."""

_LOCALES = {"en": "en", "es": "es_MX"}
"""For dates and numbers. Our sentences write 4.4 in every language, as both points and commas are
right in Spanish; a locale with a point keeps number fields in step with them."""

_installed: list[QTranslator] = []


def system_language() -> str:
    """The code of the system's language if there is a catalogue for it, else "en"."""
    code = QLocale.system().name().split("_")[0]
    return code if code in LANGUAGES else "en"


def spoken_for(choice: str) -> str:
    """The code of a preference, where "system" follows the system."""
    return choice if choice in LANGUAGES else system_language()


def use_language(code: str) -> None:
    """Speak this language from now on; texts already on the screen stay as they are.

    Raises
    ------
    ValueError
        Not one of LANGUAGES.
    """
    if code not in LANGUAGES:
        raise ValueError(f"no catalogue for {code!r}")
    for translator in _installed:
        QCoreApplication.removeTranslator(translator)
    _installed.clear()
    QLocale.setDefault(QLocale(_LOCALES[code]))
    if code == "en":
        set_catalogue(None)
        return
    _install(str(FOLDER / f"gradewash_{code}.qm"))
    qt_folder = QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath)
    _install(f"{qt_folder}/qtbase_{code}.qm")
    set_catalogue(QCoreApplication.translate)


def speak_without_window(code: str) -> None:
    """Speak this language in a process that has no application: one that checks pictures."""
    if code == "en":
        return
    translator = QTranslator()
    if translator.load(str(FOLDER / f"gradewash_{code}.qm")):

        def found(context: str, text: str) -> str:
            return translator.translate(context, text) or text

        set_catalogue(found)


def language_in_use() -> str:
    """The code of the language spoken now, one of LANGUAGES."""
    code = QLocale().name().split("_")[0]
    return code if code in LANGUAGES else "en"


def _install(path: str) -> None:
    translator = QTranslator()
    # Qt's own catalogue may be missing from a system's packages: its dialogs stay English then.
    if translator.load(path):
        QCoreApplication.installTranslator(translator)
        _installed.append(translator)
