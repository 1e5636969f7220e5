#!/bin/sh
# Asks whether a known weakness is published of any version in the lock files. Needs the network.
set -eu
cd "$(dirname -- "$0")/.."
tool=$(mktemp -d)
trap 'rm -rf "$tool"' EXIT
python3 -m venv "$tool"
"$tool/bin/pip" install -q pip-audit
exec "$tool/bin/pip-audit" --require-hashes --disable-pip -r locks/test.txt "$@"
