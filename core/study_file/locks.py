"""Who has a study open: a lock the system itself lets go when its holder dies."""

from __future__ import annotations

import hashlib
import os
from pathlib import Path
from types import TracebackType

from core.files import PRIVATE_FILE, make_private_folder


class OpenLock:
    """Says to other windows of this user that a study is open here.

    The lock is in a folder of the user's own data folder, never beside the study, so that
    nothing stray is left on a shared drive and a folder that may only be read is no trouble.
    """

    def __init__(self, folder: Path, key: str) -> None:
        from filelock import FileLock  # deferred: start-up time

        for private in (folder.parent, folder):
            make_private_folder(private)
        # Taken in a worker, let go by the window: the lock belongs to the program, not a thread.
        self._lock = FileLock(
            folder / f"{key}.lock", mode=PRIVATE_FILE, blocking=False, thread_local=False
        )

    def take(self) -> bool:
        """Try to hold it; False when somebody else does."""
        from filelock import Timeout  # deferred: start-up time

        try:
            self._lock.acquire()
        except Timeout:
            return False
        return True

    @property
    def held(self) -> bool:
        """Whether it is held here."""
        return self._lock.is_locked

    def let_go(self) -> None:
        """Let others have it, and leave no file behind."""
        if self._lock.is_locked:
            # Removed while held: nobody can take the old file between the two steps on
            # Windows (it refuses), and elsewhere a fresh file is made for the next holder.
            path = Path(self._lock.lock_file)
            if os.name != "nt":
                path.unlink(missing_ok=True)
            self._lock.release(force=True)
            if os.name == "nt":
                path.unlink(missing_ok=True)

    def __enter__(self) -> OpenLock:
        self.take()
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        self.let_go()


def study_lock(data_folder: Path, study_path: Path) -> OpenLock:
    """The lock of the study at `study_path`, whichever way it was reached."""
    real = os.path.normcase(study_path.resolve())
    key = hashlib.sha256(real.encode("utf-8", "surrogatepass")).hexdigest()[:32]
    return OpenLock(data_folder / "open", key)
