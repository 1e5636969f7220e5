# Sourced by ./run and ./test: makes sure that Python, the venv, the packages and Qt's system
# libraries are there. What cannot be installed here is named in one line, and we stop.
#
#   set_up run     what Gradewash needs
#   set_up test    the same, with the tools of the tests

say() { printf '%s\n' "$*" >&2; }

stop() {
    say "$*"
    exit 1
}

can_install() { [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null 2>&1; }

# Root installs Debian packages; anybody else is told the command. $1 says what is missing.
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

find_or_install_python() {
    find_python && return
    if command -v python3 >/dev/null 2>&1; then
        stop "Gradewash needs Python 3.11 or newer, and this machine has $(python3 -V 2>&1). Please" \
            "install a newer one (on Ubuntu 22.04: sudo apt install python3.11 python3.11-venv)."
    fi
    need_packages "Gradewash needs Python 3.11 or newer" python3 python3-venv
    find_python || stop "Gradewash needs Python 3.11 or newer, and apt offers $(python3 -V 2>&1)."
}

make_venv() {
    "$venv/bin/python" -c 'import pip' 2>/dev/null && new_enough "$venv/bin/python" && return
    find_or_install_python
    if ! "$python" -c 'import venv, ensurepip' 2>/dev/null; then
        case $python in
            python3) package=python3-venv ;;
            *) package=$python-venv ;;
        esac
        need_packages "Python's venv module is missing" "$package"
    fi
    mkdir -p "$venv" 2>/dev/null || stop "You may not write in $root: please copy Gradewash to a folder of yours."
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
    cksum <"$root/pyproject.toml"
}

install_packages() {
    stamp="$venv/gradewash-$1"
    if [ "$(cat "$stamp" 2>/dev/null)" = "$(stamp_of "$1")" ]; then
        return
    fi
    say "Installing the Python packages that Gradewash needs (a few minutes, only this once) ..."
    case $1 in
        test) what="$root[dev]" ;;
        *) what=$root ;;
    esac
    "$venv/bin/python" -m pip install --disable-pip-version-check --no-input -q -e "$what" \
        </dev/null >"$log" 2>&1 || {
        tail -n 20 "$log" >&2
        stop "The Python packages could not be installed (see above). Is the network reachable?"
    }
    stamp_of "$1" >"$stamp"
}

install_libraries() {
    packages=$("$venv/bin/python" "$root/tools/system_libraries.py") || stop "tools/system_libraries.py failed."
    [ -z "$packages" ] && return
    # shellcheck disable=SC2086  # one word a package
    need_packages "Qt needs system libraries that are missing" $packages
    packages=$("$venv/bin/python" "$root/tools/system_libraries.py")
    [ -z "$packages" ] || stop "Still missing after the installation: $packages"
}

set_up() {
    venv=$root/.venv
    log=$(mktemp)
    trap 'rm -f "$log"' EXIT
    make_venv
    install_libraries
    install_packages "$1"
    rm -f "$log"
    trap - EXIT
}
