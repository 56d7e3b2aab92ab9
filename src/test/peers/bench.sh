#!/bin/bash
# Builds and runs the peers of StaticSolveBenchmark (hand-written C++ free-body recursion with Eigen vectors, one scenario at a time)
# and SharingBenchmark (C++ dual Newton, one problem at a time: the rate cpp_dual_newton_1) on one pinned core.
# and BulkStaticsBenchmark (plain C over arrays; numpy). Needs gcc, numpy, g++ and Eigen (Debian: g++ libeigen3-dev python3-numpy), for sharing a processor with AVX-512. Builds in a temporary folder.
# Usage: REPS=3 CORE=1 ./bench.sh        Run it in the same minutes as the benchmark: the machine drifts.
set -e
here=$(cd "$(dirname "$0")" && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
g++ -O2 "$here/static_eigen.cpp" -I/usr/include/eigen3 -o "$work/static_eigen"
g++ -O3 -march=native -mprefer-vector-width=512 -fno-math-errno -fno-trapping-math -ffp-contract=fast "$here/share.cpp" \
  -o "$work/share" 2>"$work/share.log" || echo "no sharing peer: $(head -1 "$work/share.log")"
gcc -O3 -march=native -mprefer-vector-width=512 -ffast-math "$here/static_c.c" -o "$work/static_c" -lmvec -lm \
  2>"$work/c.log" || echo "no C peer: $(head -1 "$work/c.log")"
cp "$here/static_np.py" "$work"
export OMP_NUM_THREADS=1 OPENBLAS_NUM_THREADS=1
cp "$here"/share*.bin "$work"
cd "$work"
for _ in $(seq "${REPS:-3}"); do
  taskset -c "${CORE:-1}" "$work/static_eigen"
  [ ! -x "$work/static_c" ] || taskset -c "${CORE:-1}" "$work/static_c" 4096
  taskset -c "${CORE:-1}" /usr/bin/python3 "$work/static_np.py" 2>/dev/null || echo "no numpy peer"
  [ ! -x "$work/share" ] || taskset -c "${CORE:-1}" "$work/share"
done
