"""A million trials of eight inputs with their quantiles, in numpy: the same as measures.ts. Prints medians of processor time as JSON."""
import json
import platform
import statistics
import sys
import time

import numpy as np

ROUNDS = int(sys.argv[1])
N = 10**6


def trials(r):
    y = np.full(N, 27.0)
    y += r.normal(0, 0.1, N)
    y += r.uniform(-0.2, 0.2, N)
    y += 0.15 * np.cos(np.pi * r.random(N))
    y += r.triangular(-0.1, 0, 0.1, N)
    y += 0.05 * r.standard_t(9, N)
    y += r.normal(0, 0.05, N)
    y += r.uniform(-0.1, 0.1, N)
    y += 0.05 * np.cos(np.pi * r.random(N))
    return y.mean(), y.std(ddof=1), np.quantile(y, [0.025, 0.975])


def median_ms(run):
    run()
    samples = []
    for _ in range(ROUNDS):
        start = time.process_time()
        run()
        samples.append(time.process_time() - start)
    return 1000 * statistics.median(samples)


generator = np.random.default_rng(1)
print(
    json.dumps(
        {
            "version": np.__version__,
            "python": platform.python_version(),
            "1e6 trials, 8 inputs": median_ms(lambda: trials(generator)),
        }
    )
)
