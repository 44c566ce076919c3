"""Golden values of the special functions, by mpmath at 50 digits. Writes special.json beside this file.

Run: python3 test/golden/make_special.py   (needs mpmath; takes about a minute)
"""
import json
import pathlib
import platform

import mpmath
from mpmath import mp, mpf

mp.dps = 50


def text(value):
    return mpmath.nstr(value, 25, strip_zeros=False)


def row(*inputs, **values):
    return {"inputs": [float(i) for i in inputs], **{k: text(v) for k, v in values.items()}}


def normal_below(z):
    return mpmath.erfc(-z / mpmath.sqrt(2)) / 2


def student_tail(t, n):
    """Share above t >= 0."""
    return mpmath.betainc(n / 2, mpf(1) / 2, 0, n / (n + t * t), regularized=True) / 2


def student_centre(t, n):
    return mpmath.betainc(mpf(1) / 2, n / 2, 0, t * t / (n + t * t), regularized=True) / 2


def student_density(t, n):
    log = mpmath.loggamma((n + 1) / 2) - mpmath.loggamma(n / 2) - mpmath.log(n * mpmath.pi) / 2
    return mpmath.exp(log - (n + 1) / 2 * mpmath.log1p(t * t / n))


def student_characteristic(w, n):
    z = mpmath.sqrt(n) * w
    return 2 ** (1 - n / 2) / mpmath.gamma(n / 2) * z ** (n / 2) * mpmath.besselk(n / 2, z)


def bisect(f, wanted, low, high):
    """Root of a rising f by halving: slow and beyond doubt. `low` and `high` are logarithms."""
    for _ in range(170):
        middle = (low + high) / 2
        if f(mpmath.exp(middle)) < wanted:
            low = middle
        else:
            high = middle
    return mpmath.exp(low)


def student_quantile(p, n):
    """p is a double below 1/2, taken exactly; the answer is negative."""
    centre = mpf(1) / 2 - p
    if centre < mpf(1) / 4:
        return -bisect(lambda t: student_centre(t, n), centre, mpf(-45), mpf(10))
    return -bisect(lambda t: -student_tail(t, n), -p, mpf(-5), mpf(160))


def normal_quantile(p):
    return -bisect(lambda z: -normal_below(-z), -p, mpf(-45), mpf(6))


def gamma_below(a, x):
    return mpmath.gammainc(a, 0, x, regularized=True)


def gamma_above(a, x):
    return mpmath.gammainc(a, x, mpmath.inf, regularized=True)


def chi_square_quantile(p, n):
    if p < 0.5:
        return 2 * bisect(lambda x: gamma_below(n / 2, x), p, mpf(-180), mpf(13))
    return 2 * bisect(lambda x: -gamma_above(n / 2, x), p - 1, mpf(-180), mpf(13))


def main():
    numbers = lambda *values: [mpf(v) for v in values]
    degrees = numbers(0.5, 1, 2, 2.5, 3, 4, 5, 9, 10, 16.73, 30, 100, 1000.5)
    places = numbers(0, 1e-8, 0.001, 0.3, 1, 1.96, 3, 12.7, 60, 1e4)
    shares = numbers(1e-12, 1e-6, 0.00135, 0.01, 0.025, 0.1, 0.2, 0.25, 0.26, 0.3, 0.4, 0.49, 0.4999999)
    golden = {
        "made by": "make_special.py",
        "mpmath": mpmath.__version__,
        "python": platform.python_version(),
        "digits": mp.dps,
        "logGamma": [
            row(x, value=mpmath.loggamma(x))
            for x in numbers(1e-6, 0.1, 0.5, 0.999, 1, 1.5, 2, 2.001, 3, 7.25, 9.999, 10, 10.001, 171.5, 1e4, 1e9)
        ],
        "erf": [
            row(x, erf=mpmath.erf(x), erfc=mpmath.erfc(x))
            for x in numbers(-6, -4.0001, -3, -0.47, -0.46875, -0.1, 0, 1e-10, 0.2, 0.46875, 0.46876, 1, 2, 3.9999, 4, 4.01, 6, 10, 20, 26)
        ],
        "normalShareBelow": [
            row(z, value=normal_below(z)) for z in numbers(-37, -20, -8, -5.5, -3, -1.96, -0.5, -1e-9, 0, 0.3, 1, 2.5, 6, 10)
        ],
        "normalQuantile": [row(p, value=normal_quantile(p)) for p in numbers(1e-300, 1e-100, 1e-20, 1e-11, 1.3e-11, 1.4e-11, *shares, 0.074, 0.0751)],
        "regularisedBeta": [
            row(x, a, b, value=mpmath.betainc(a, b, 0, x, regularized=True))
            for a, b in [(0.05, 0.05), (0.5, 0.5), (0.5, 5), (1, 1), (2, 3), (5, 0.5), (10, 20), (100, 0.5), (80, 120), (1000, 1500)]
            for a, b in [(mpf(a), mpf(b))]
            for x in numbers(1e-6, 0.01, 0.25, 0.4, 0.5, 0.9, 0.999)
        ],
        "regularisedGamma": [
            row(a, x, below=gamma_below(a, x), above=gamma_above(a, x))
            for a in numbers(0.01, 0.5, 1, 2.5, 10, 50, 300, 5000)
            for factor in numbers(1e-6, 0.1, 0.5, 0.9, 1, 1.1, 2, 5)
            for x in [a * factor]
        ],
        "student": [
            row(t, n, density=student_density(t, n), tail=student_tail(t, n)) for n in degrees for t in places
        ],
        "studentQuantile": [row(p, n, value=student_quantile(p, n)) for n in degrees for p in shares],
        "studentManyDegrees": [
            row(t, n, density=student_density(t, n), tail=mpmath.quad(lambda s: student_density(s, n), [t, t + 1, t + 3, t + 8, t + 20, t + 60]))
            for n in numbers(1e5, 1e8)
            for t in numbers(0.5, 1.96, 5)
        ],
        "chiSquareQuantile": [
            row(p, n, value=chi_square_quantile(p, n))
            for n in numbers(0.5, 1, 2, 5, 10, 30, 100, 2000)
            for p in numbers(1e-10, 0.001, 0.025, 0.3, 0.5, 0.7, 0.975, 0.999)
        ],
        "besselJ0": [row(x, value=mpmath.besselj(0, x)) for x in numbers(0, 0.1, 1, 2.404825557695773, 5, 10, 20, 24.999, 25, 25.001, 40, 300.25, 5000)],
        "studentCharacteristic": [
            row(w, n, value=student_characteristic(w, n)) for n in numbers(0.5, 1, 2, 3, 4, 9, 40, 1000, 10000) for w in numbers(0.001, 0.1, 0.7, 2, 5)
        ],
    }
    target = pathlib.Path(__file__).with_name("special.json")
    target.write_text(json.dumps(golden, indent=1) + "\n")


main()
