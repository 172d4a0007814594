#!/bin/sh
# Times the engine and pyAgrum on the same graph and the same readings, one
# after the other: the shipped graph, or an invented one with the word `invented`.
# Needs the Python packages of requirements.txt.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
cd "$here/../.."
cargo run --release -q -p returnline-tests --example export_cases -- "$folder" ${1:-}
python "$here/inference.py" time "$folder/visit.bif"
