# Opens Gradewash on Windows, installing first what it needs: .\run.ps1 [PHOTO | COMMAND ...]
# Never run by its makers on a Windows machine: please say what it does on yours.
. "$PSScriptRoot\tools\set_up.ps1"
Initialize-Gradewash run
& "$venv\Scripts\gradewash.exe" @args
exit $LASTEXITCODE
