#!/usr/bin/env bash
# Times our DXF writer beside ezdxf on the same 10,000 holes in one run; see src/jmh/README.md.
# Needs a JDK 17, Maven, and Python with ezdxf (python3-ezdxf). Not part of the server's run.
#
#   .ci/bench-dxf.sh
set -euo pipefail

here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
root=$(dirname "$here")
cd "$root"
mvn -q -B -ntp -Dstyle.color=never -Pquick,bench test-compile </dev/null >&2
exec "${PYTHON:-/usr/bin/python3}" "$here/bench/dxf-race.py" "$root/target/bench/classes" "$root/target/bench/test-classes"
