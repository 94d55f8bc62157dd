#!/usr/bin/env bash
# Times cutting plans, ours beside glpsol and cbc on the same jobs in one run; see src/jmh/README.md.
# Needs a JDK 17 and Maven; glpsol (glpk-utils) and cbc (coinor-cbc) where they are to run. Not part of the server's run.
#
#   .ci/bench-stock.sh
set -euo pipefail

root=$(dirname "$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)")
cd "$root"
mvn -q -B -ntp -Dstyle.color=never -Pquick,bench test-compile </dev/null >&2
exec java -cp "$root/target/bench/classes:$root/target/bench/test-classes" collarwright.bench.StockRace
