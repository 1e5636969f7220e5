# Runs the tests on Windows, installing first what they need; arguments go to pytest.
# Never run by its makers on a Windows machine: please say what it does on yours.
. "$PSScriptRoot\tools\set_up.ps1"
Initialize-Gradewash test
if (-not $env:QT_QPA_PLATFORM) { $env:QT_QPA_PLATFORM = "offscreen" }
if (-not $env:OMP_NUM_THREADS) { $env:OMP_NUM_THREADS = "1" }
$wanted = if ($args.Count) { $args } else { "-n", "logical", "--dist", "loadfile" }
Push-Location $PSScriptRoot
& "$venv\Scripts\python.exe" -m pytest @wanted
$code = $LASTEXITCODE
Pop-Location
exit $code
