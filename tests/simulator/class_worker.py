"""A process that adds, places and marks without end, telling each step once it is safe: to be
killed at any moment."""

from __future__ import annotations

import itertools
import sys
from dataclasses import replace
from pathlib import Path

from core.class_set import edits
from core.class_set.bringing import bring_in, files_in
from core.class_set.folder import open_folder
from core.class_set.ticket import Slot


def main(folder_name: str) -> None:
    """Work in the class set below a folder, with the pictures below it."""
    where = Path(folder_name)
    with open_folder(where / "7b", where / "data") as folder:
        print("ready", flush=True)
        files = files_in([where / "in"])
        start = int(folder.class_set.entry(1).marking.mark or 0)
        for step in itertools.count(start + 1):
            for told in bring_in(folder, [files[step % len(files)]]):
                print(f"added{told.digest[:8]} {told.digest}", flush=True)
                slot = Slot(1 + step % 4, step % 2)
                folder.save(edits.place(folder.class_set, told.digest, slot))
                print(f"placed{slot.number}{slot.index} {told.digest}", flush=True)
            marking = folder.class_set.entry(1).marking
            marked = edits.with_marking(folder.class_set, 1, replace(marking, mark=str(step)))
            folder.save(marked)
            print(f"mark {step}", flush=True)


if __name__ == "__main__":
    main(sys.argv[1])
