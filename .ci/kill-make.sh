#!/usr/bin/env bash
# Kills `make` at random moments and looks at what is left: the old or the new complete pack under its name, or both
# beside it as NAME.old~ and NAME.new~, and the next command mends it. Not part of the build server's run.
#
#   .ci/kill-make.sh [HOW-MANY, default 200] [SEED, default 1]
set -euo pipefail

root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
jar=$root/target/collarwright.jar
many=${1:-200}
RANDOM=${2:-1}
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

make() { java -jar "$jar" make "$work/$1.toml" --out "$work/pack" >/dev/null 2>&1; }
complete() { [ -f "$1/files.sha256" ] && (cd "$1" && sha256sum --quiet -c files.sha256) >/dev/null 2>&1; }

cp "$root/output-samples/cloche/job.toml" "$work/one.toml"
sed 's/nursery bed/herb bed/' "$work/one.toml" >"$work/two.toml"
start=$(date +%s%N)
make one
span=$(( ($(date +%s%N) - start) / 1000000 ))

faults=0 whole=0 beside=0
for ((i = 1; i <= many; i++)); do
    job=$([ $((i % 2)) = 0 ] && echo one || echo two)
    java -jar "$jar" make "$work/$job.toml" --out "$work/pack" >/dev/null 2>&1 &
    pid=$!
    # The last fifth of a run is where files are written; most kills go there.
    if [ $((RANDOM % 3)) = 0 ]; then wait_ms=$((RANDOM % span)); else wait_ms=$((span * 3 / 4 + RANDOM % (span / 3 + 1))); fi
    sleep "$(printf '%d.%03d' $((wait_ms / 1000)) $((wait_ms % 1000)))"
    kill -9 "$pid" 2>/dev/null || true
    wait "$pid" 2>/dev/null || true
    if complete "$work/pack"; then
        whole=$((whole + 1))
    elif [ ! -e "$work/pack" ] && complete "$work/pack.old~" && complete "$work/pack.new~"; then
        beside=$((beside + 1))
    else
        faults=$((faults + 1))
        echo "kill $i at $wait_ms ms left:"; ls -a "$work"
    fi
done
make one || { faults=$((faults + 1)); echo "the next make failed"; }
complete "$work/pack" || { faults=$((faults + 1)); echo "the next make left no complete pack"; }
left=$(find "$work" -mindepth 1 -maxdepth 1 ! -name '*.toml' ! -name pack | wc -l)
[ "$left" = 0 ] || { faults=$((faults + 1)); echo "something was left behind:"; ls -a "$work"; }
echo "$many kills within $span ms or so: $whole complete under the name, $beside beside it, $faults faults"
[ "$faults" = 0 ]
