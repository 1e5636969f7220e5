"""Studies and photos opened lately, newest first."""

from __future__ import annotations

from pathlib import Path

from app.state.settings import read_json, write_json
from core.study_file.opening import SUFFIX

MOST = 10


class Recent:
    """The list, kept in a file of its own because it changes with every file."""

    def __init__(self, folder: Path) -> None:
        self._path = folder / "recent.json"

    def paths(self) -> tuple[Path, ...]:
        """Files that are still there."""
        listed = read_json(self._path).get("files", [])
        texts = [t for t in listed if isinstance(t, str)] if isinstance(listed, list) else []
        return tuple(path for path in map(Path, texts[:MOST]) if path.is_file())

    def studies(self) -> tuple[Path, ...]:
        """The studies among them."""
        return tuple(path for path in self.paths() if path.suffix.lower() == SUFFIX)

    def add(self, path: Path) -> None:
        """Put `path` first."""
        path = path.absolute()
        paths = [path, *(other for other in self.paths() if other != path)]
        write_json({"files": [str(each) for each in paths[:MOST]]}, self._path)

    def clear(self) -> None:
        """Forget all."""
        write_json({"files": []}, self._path)
