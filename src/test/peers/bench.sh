#!/bin/bash
# Builds and runs the peer of StaticSolveBenchmark on one pinned core: hand-written C++ free-body recursion with Eigen vectors,
# one scenario at a time. Needs g++ and Eigen (Debian: g++ libeigen3-dev). Builds in a temporary folder.
# Usage: REPS=3 CORE=1 ./bench.sh        Run it in the same minutes as the benchmark: the machine drifts.
set -e
here=$(cd "$(dirname "$0")" && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
g++ -O2 "$here/static_eigen.cpp" -I/usr/include/eigen3 -o "$work/static_eigen"
for _ in $(seq "${REPS:-3}"); do
  taskset -c "${CORE:-1}" "$work/static_eigen"
done
