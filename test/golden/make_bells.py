"""Where the tail of a bell cut into 256 layers of equal area begins, and the area of a layer (Marsaglia and Tsang 2000).

Bells are those of Student's t, height 1 at the peak; "Infinity" is the normal one. By bisection at 40 digits, apart from the program
under test. Writes bells.json beside this file.

Run: python3 test/golden/make_bells.py
"""
import json
import pathlib
import platform

import mpmath
from mpmath import betainc, erfc, exp, expm1, log, log1p, mp, mpf, pi, sqrt

mp.dps = 40
LAYERS = 256
DEGREES = ["1", "1.5", "2", "4", "9", "30", "1000", "Infinity"]


def bell(degrees):
    if degrees == "Infinity":
        return (
            lambda x: exp(-x * x / 2),
            lambda h: sqrt(-2 * log(h)),
            lambda x: sqrt(pi / 2) * erfc(x / sqrt(2)),
        )
    n = mpf(degrees)
    # The integral of (1 + x^2/n)^(-(n+1)/2) beyond x, by the incomplete beta function.
    return (
        lambda x: exp(-(n + 1) / 2 * log1p(x * x / n)),
        lambda h: sqrt(n * expm1(-2 / (n + 1) * log(h))),
        lambda x: sqrt(n) / 2 * betainc(n / 2, mpf(1) / 2, 0, n / (n + x * x)),
    )


def layer(degrees):
    height, place, beyond = bell(degrees)
    half = beyond(mpf(0))

    def area(tail_from):
        return tail_from * height(tail_from) + beyond(tail_from)

    def reaches(tail_from):
        """Whether the last layer's top is at the peak or above it."""
        thick, x, top = area(tail_from), tail_from, height(tail_from)
        for _ in range(LAYERS - 1):
            top += thick / x
            if top >= 1:
                return True
            x = place(top)
        return False

    low, high = mpf(1), mpf(2) ** 20
    for _ in range(150):
        middle = (low + high) / 2
        if reaches(middle):
            low = middle
        else:
            high = middle
    return {
        "degrees": degrees,
        "tailFrom": mpmath.nstr(low, 18),
        "area": mpmath.nstr(area(low), 18),
        "half": mpmath.nstr(half, 18),
    }


made = {
    "made by": "make_bells.py",
    "python": platform.python_version(),
    "mpmath": mpmath.__version__,
    "rows": [layer(degrees) for degrees in DEGREES],
}
path = pathlib.Path(__file__).with_name("bells.json")
path.write_text(json.dumps(made, indent=2) + "\n")
