# Sourced by ./run and ./test: makes sure that Python, the venv, the packages and Qt's system
# libraries are there. What cannot be installed here is named in one line, and we stop.
#
#   set_up run LIBRARIES     what Gradewash needs
#   set_up speech  the same, with what reads aloud
#   set_up test    the same, with the tools of the tests

say() { printf '%s\n' "$*" >&2; }

stop() {
    say "$*"
    exit 1
}

can_install() { [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null 2>&1; }

# Root installs Debian packages; anybody else is told the one command. $1 says what is missing.
need_packages() {
    missing=$1
    shift
    can_install || stop "$missing. Please run this, then try again: sudo apt install $*"
    say "Installing $* ..."
    { apt-get update -qq && DEBIAN_FRONTEND=noninteractive \
        apt-get install -y -qq --no-install-recommends "$@"; } </dev/null >"$log" 2>&1 || {
        tail -n 20 "$log" >&2
        stop "The packages could not be installed (see above). Please run: apt install $*"
    }
}

new_enough() { "$1" -c 'import sys; sys.exit(sys.version_info < (3, 11))' 2>/dev/null; }

find_python() {
    for python in python3 python3.14 python3.13 python3.12 python3.11; do
        if new_enough "$python"; then
            return 0
        fi
    done
    return 1
}

# What apt has to bring, all of it at once: Python, its venv module, Qt's system libraries.
system_packages() {
    if ! find_python; then
        if command -v python3 >/dev/null 2>&1; then
            stop "Gradewash needs Python 3.11 or newer, and this machine has $(python3 -V 2>&1)." \
                "Please install a newer one (on Ubuntu 22.04: sudo apt install python3.11 python3.11-venv)."
        fi
        echo python3 python3-venv
        # Without Python nothing can look which libraries are there: name them all.
        [ "$libraries" = none ] ||
            sed -n 's/^    "lib.*": "\(.*\)",$/\1/p' "$root/tools/system_libraries.py"
        return
    fi
    if ! venv_fits && ! "$python" -c 'import venv, ensurepip' 2>/dev/null; then
        echo "$python-venv"
    fi
    "$python" "$root/tools/system_libraries.py" "$libraries" || stop "tools/system_libraries.py failed."
}

install_system_packages() {
    packages=$(system_packages) || exit 1
    [ -n "$packages" ] || return 0
    # shellcheck disable=SC2086  # one word a package
    need_packages "Some system packages are missing" $packages
    find_python || stop "Gradewash needs Python 3.11 or newer, and apt offers $(python3 -V 2>&1)."
    packages=$("$python" "$root/tools/system_libraries.py" "$libraries")
    [ -z "$packages" ] || stop "Still missing after the installation: $packages"
}

venv_fits() { "$venv/bin/python" -c 'import pip' 2>/dev/null && new_enough "$venv/bin/python"; }

make_venv() {
    venv_fits && return
    find_python
    mkdir -p "$venv" 2>/dev/null ||
        stop "You may not write in $root: please copy Gradewash to a folder of yours."
    say "Making a Python environment in .venv (only this once) ..."
    "$python" -m venv --clear "$venv" >"$log" 2>&1 || {
        cat "$log" >&2
        stop "The Python environment could not be made (see above)."
    }
}

# The stamp holds everything that decides whether the installed packages still fit.
stamp_of() {
    printf '%s %s ' "$1" "$root"
    "$venv/bin/python" -V
    # Up to where the settings of the development tools begin.
    sed '/^\[tool\.ruff/,$d' "$root/pyproject.toml" | cksum
    cksum <"$root/locks/$1.txt"
}

pip_install() {
    "$venv/bin/python" -m pip install --disable-pip-version-check --no-input -q "$@"
}

install_packages() {
    # Speech, once it is there, stays and keeps the version of the rest.
    [ "$1" = run ] && [ -e "$venv/gradewash-speech" ] && set -- speech
    # What the tests need includes all of it.
    for kind in "$1" test; do
        if [ "$(cat "$venv/gradewash-$kind" 2>/dev/null)" = "$(stamp_of "$kind")" ]; then
            return
        fi
    done
    say "Installing the Python packages that Gradewash needs (a few minutes, only this once) ..."
    # Exactly the versions of the lock file, and only files whose sums stand there. Our own
    # package comes last, with nothing fetched for it.
    { pip_install --require-hashes -r "$root/locks/$1.txt" &&
        pip_install --no-deps --no-build-isolation -e "$root"; } </dev/null >"$log" 2>&1 || {
        tail -n 20 "$log" >&2
        stop "The Python packages could not be installed (see above). Is the network reachable?"
    }
    stamp_of "$1" >"$venv/gradewash-$1"
}

set_up() {
    libraries=${2:-screen}
    venv=$root/.venv
    log=$(mktemp)
    trap 'rm -f "$log"' EXIT
    install_system_packages
    make_venv
    install_packages "$1"
    rm -f "$log"
    trap - EXIT
}
