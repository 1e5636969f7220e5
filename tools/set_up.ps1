# Dot-sourced by run.ps1 and test.ps1: makes .venv and installs the packages, once for each state of
# pyproject.toml. What cannot be done here is named in one line, and we stop.
$ErrorActionPreference = "Stop"
$root = Split-Path -Parent $PSScriptRoot
$venv = Join-Path $root ".venv"

function Stop-Here($message) { [Console]::Error.WriteLine($message); exit 1 }

# "py -3" is the launcher that Python's installer brings; "python" what the store brings.
function Find-Python {
    foreach ($try in @(@("py", "-3"), @("python"), @("python3"))) {
        $name, $rest = $try
        if (-not (Get-Command $name -ErrorAction SilentlyContinue)) { continue }
        & $name @rest -c "import sys; sys.exit(sys.version_info < (3, 11))" 2>$null
        if ($LASTEXITCODE -eq 0) { return ,$try }
    }
    Stop-Here "Gradewash needs Python 3.11 or newer: please install it from python.org, then try again."
}

function Initialize-Gradewash($kind) {
    $python = Join-Path $venv "Scripts\python.exe"
    if (-not (Test-Path $python)) {
        Write-Host "Making a Python environment in .venv (only this once) ..."
        $name, $rest = Find-Python
        & $name @rest -m venv $venv
        if ($LASTEXITCODE -ne 0) { Stop-Here "The Python environment could not be made (see above)." }
    }
    $lock = Join-Path $root "locks\$kind.txt"
    $state = "$kind " + (Get-FileHash (Join-Path $root "pyproject.toml")).Hash + (Get-FileHash $lock).Hash
    $stamp = Join-Path $venv "gradewash-$kind"
    if ((Test-Path $stamp) -and ((Get-Content $stamp) -eq $state)) { return }
    Write-Host "Installing the Python packages that Gradewash needs (a few minutes, only this once) ..."
    & $python -m pip install --disable-pip-version-check --no-input -q --require-hashes -r $lock
    if ($LASTEXITCODE -eq 0) {
        & $python -m pip install --disable-pip-version-check --no-input -q --no-deps --no-build-isolation -e $root
    }
    if ($LASTEXITCODE -ne 0) { Stop-Here "The Python packages could not be installed (see above). Is the network reachable?" }
    Set-Content $stamp $state
}
