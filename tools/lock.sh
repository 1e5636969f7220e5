#!/bin/sh
# Writes the lock files anew: the newest versions that pyproject.toml admits, each with the sums
# of its files, for Python 3.11 and newer on Linux, Windows and macOS. Needs the network.
#
#   tools/lock.sh          all of them
#
# Then run .ci/run, and look at what changed before it lands: git diff locks
set -eu
cd "$(dirname -- "$0")/.."
tool=$(mktemp -d)
trap 'rm -rf "$tool"' EXIT
python3 -m venv "$tool"
"$tool/bin/pip" install -q uv
lock() {
    out=$1
    shift
    "$tool/bin/uv" pip compile pyproject.toml locks/build.in "$@" --universal --upgrade \
        --python-version 3.11 --generate-hashes --no-header --no-annotate -q -o "locks/$out.txt"
}
lock run
lock speech --extra speech
lock test --extra speech --extra dev
