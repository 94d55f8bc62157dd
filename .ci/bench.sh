#!/usr/bin/env bash
# Times the plan of the largest sphere beside three.js and the tilt limits of holes; see src/jmh/README.md.
# Needs a JDK 17, Maven, Node and npm. It is not part of the build server's run.
#
#   .ci/bench.sh
set -euo pipefail

here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
root=$(dirname "$here")
cd "$root"

if [ ! -d "$here/node_modules/three" ]; then
    (cd "$here" && npm ci --no-audit --no-fund --ignore-scripts >&2 </dev/null)
fi
mvn -q -B -ntp -Dstyle.color=never -Pquick,bench test-compile </dev/null >&2
exec node "$here/bench/race.mjs" "$root/target/bench/classes" "$root/target/bench/test-classes"
