# The peer of BulkStaticsBenchmark: numpy over a million scenarios at once.
import time

import numpy as np
H = 1.75; G = 9.80665
M = [.093, .2, .578, .056, .032, .012]; MF = .029
L = [H * x for x in (.246, .245, .288, .186, .146, .108)]
C = [.567 * L[0], .567 * L[1], .66 * L[2], .436 * L[3], .43 * L[4], .506 * L[5]]
AX, AY, FCX = .055, .08, .11


def solve(sin, cos, a, mb, bar, fx, fy):
    s = [sin(x) for x in a]; c = [cos(x) for x in a]
    mg = mb * G; bg = bar * G
    W = M[5] * mg - fy; m6 = s[5] * C[5] * W - c[5] * C[5] * fx
    W5 = W; W = W + M[4] * mg; m5 = m6 + s[4] * L[4] * W5 - c[4] * L[4] * fx + M[4] * mg * s[4] * C[4]
    W4 = W; W = W + M[3] * mg; m4 = m5 + s[3] * L[3] * W4 - c[3] * L[3] * fx + M[3] * mg * s[3] * C[3]
    W3 = W + bg; W = W3 + M[2] * mg; m3 = m4 + s[2] * L[2] * W3 + c[2] * L[2] * fx + M[2] * mg * s[2] * C[2]
    W2 = W; W = W + M[1] * mg; m2 = m3 + s[1] * L[1] * W2 + c[1] * L[1] * fx + M[1] * mg * s[1] * C[1]
    W1 = W; W = W + M[0] * mg; m1 = m2 + s[0] * L[0] * W1 + c[0] * L[0] * fx + M[0] * mg * s[0] * C[0]
    cop = (m1 + AX * W + AY * fx + MF * mg * FCX) / (W + MF * mg)
    return m1, m2, m3, m4, m5, m6, cop


if __name__ == "__main__":
    rng = np.random.default_rng(1); n = 1_000_000
    lo = np.array([0, -1.6, 0, -.5, -.5, -.5, 45, 0, -200, -200.]); hi = np.array([.6, 0, 1, 3, 3, 3, 120, 200, 200, 200.])
    X = [rng.uniform(a, b, n) for a, b in zip(lo, hi)]
    best = 1e9
    for _ in range(4):
        t = time.perf_counter(); r = solve(np.sin, np.cos, X[:6], *X[6:]); best = min(best, time.perf_counter() - t)
    print(f"RATE numpy_1e6 {n/best:.6g}")
