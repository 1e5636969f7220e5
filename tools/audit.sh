#!/bin/sh
# Asks whether a known weakness is published of any version in the lock files. Needs the network; a
# package that could not be asked about fails it: silence must not look like an answer.
set -eu
cd "$(dirname -- "$0")/.."
tool=$(mktemp -d)
trap 'rm -rf "$tool"' EXIT
python3 -m venv "$tool"
"$tool/bin/pip" install -q pip-audit
exec "$tool/bin/pip-audit" --strict --require-hashes --disable-pip -r locks/test.txt "$@"
