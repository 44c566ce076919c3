"""Golden distributions of sums, by mpmath at 30 digits. Writes chains.json beside this file.

Each chain is a list of terms. Its characteristic function is a product of closed forms (a quadrature for the normal and
t in decibels); Gil-Pelaez's integral over Gauss-Legendre panels gives share below and density, a root search the
quantiles. Sums of two parts without a smooth one converge too slowly that way: there the share below is the mean of
the one part's share below over the other part, by adaptive quadrature split at the kinks.

Run: python3 test/golden/make_chains.py   (needs mpmath; takes some minutes)
"""
import json
import pathlib
import platform

import mpmath
from mpmath import mp, mpc, mpf

mp.dps = 30
LN10 = mpmath.log(10)


def sinc(x):
    return mpf(1) if x == 0 else mpmath.sin(x) / x


# --- terms: a dict with a shape and its numbers, all centred on 0 ---

def rectangular(a):
    return {"shape": "rectangular", "halfWidth": a}


def triangular(a):
    return {"shape": "triangular", "halfWidth": a}


def trapezoidal(a, beta):
    return {"shape": "trapezoidal", "halfWidth": a, "topRatio": beta}


def curvilinear(a, d):
    return {"shape": "curvilinear", "halfWidth": a, "limitHalfWidth": d}


def arcsine(a):
    return {"shape": "arcsine", "halfWidth": a}


def normal(s):
    return {"shape": "normal", "standardDeviation": s}


def student(n, s):
    return {"shape": "student", "scale": s, "degreesOfFreedom": n}


def decibels(factor, of):
    """factor x lg(1 + x): of power with 10, of volts with 20; given 1 + x > 0."""
    return {"shape": "decibels", "factor": factor, "of": of}


def in_decibels(w, factor, of):
    s = mpc(0, w * factor) / LN10
    kind = of["shape"]
    if kind == "rectangular":
        a = mpf(of["halfWidth"])
        return ((1 + a) ** (1 + s) - (1 - a) ** (1 + s)) / (2 * a * (1 + s))
    if kind == "triangular":
        a = mpf(of["halfWidth"])
        return ((1 + a) ** (s + 2) - 2 + (1 - a) ** (s + 2)) / (a * a * (s + 1) * (s + 2))
    if kind == "arcsine":
        return mpmath.hyp2f1(-s / 2, (1 - s) / 2, 1, mpf(of["halfWidth"]) ** 2)
    if kind == "normal":
        u = mpf(of["standardDeviation"])
        return mpmath.quad(lambda z: mpmath.npdf(z) * (1 + u * z) ** s, mpmath.linspace(-12, 12, 13))
    places, weights = student_places(factor, of["degreesOfFreedom"], mpf(of["scale"]))
    return mpmath.fsum(weight * mpmath.expj(w * y) for y, weight in zip(places, weights))


PLACES = {}


def student_places(factor, n, u):
    """Gauss-Legendre panels over y = factor lg(1 + x) for x a t: places and shares, given 1 + x > 0."""
    key = (factor, n, float(u))
    if key not in PLACES:
        near = [mpf(k) / 10 for k in range(-60, 61)]
        edges = [mpf(k) / 2 for k in range(-80, -12)] + near + [mpf(k) / 2 for k in range(13, 81)]
        places, weights = [], []
        for low, high in zip(edges, edges[1:]):
            for t, weight in GAUSS:
                y = (high - low) / 2 * t + (high + low) / 2
                ratio = mpf(10) ** (y / factor)
                density = (1 + ((ratio - 1) / u) ** 2 / n) ** (-(mpf(n) + 1) / 2) * ratio
                places.append(y)
                weights.append(density * weight * (high - low) / 2)
        total = mpmath.fsum(weights)
        PLACES[key] = places, [weight / total for weight in weights]
    return PLACES[key]


def characteristic(term, w):
    w = w * mpf(term.get("sensitivity", 1))
    kind = term["shape"]
    if kind == "rectangular":
        return sinc(w * mpf(term["halfWidth"]))
    if kind == "triangular":
        return sinc(w * mpf(term["halfWidth"]) / 2) ** 2
    if kind == "trapezoidal":
        a, b = mpf(term["halfWidth"]), mpf(term["topRatio"])
        return sinc(w * a * (1 + b) / 2) * sinc(w * a * (1 - b) / 2)
    if kind == "curvilinear":
        a, d = mpf(term["halfWidth"]), mpf(term["limitHalfWidth"])
        return (mpmath.si(w * (a + d)) - mpmath.si(w * (a - d))) / (2 * d * w)
    if kind == "arcsine":
        return mpmath.besselj(0, w * mpf(term["halfWidth"]))
    if kind == "normal":
        return mpmath.exp(-((w * mpf(term["standardDeviation"])) ** 2) / 2)
    if kind == "student":
        n = mpf(term["degreesOfFreedom"])
        z = mpmath.sqrt(n) * mpf(term["scale"]) * abs(w)
        return 2 ** (1 - n / 2) / mpmath.gamma(n / 2) * z ** (n / 2) * mpmath.besselk(n / 2, z)
    return in_decibels(w, term["factor"], term["of"])


def spread_of(term):
    kind = term["shape"]
    if kind == "decibels":
        return abs(term["factor"]) / 2.3 * spread_of(term["of"])
    width = term.get("halfWidth") or term.get("standardDeviation") or term.get("scale")
    return abs(term.get("sensitivity", 1)) * width


def gauss(count):
    """Nodes and weights of Gauss-Legendre on -1 to 1."""
    nodes = []
    for k in range(1, count + 1):
        x = mpmath.cos(mpmath.pi * (k - mpf(1) / 4) / (count + mpf(1) / 2))
        for _ in range(8):
            value, before = mpmath.legendre(count, x), mpmath.legendre(count - 1, x)
            slope = count * (x * value - before) / (x * x - 1)
            x -= value / slope
        nodes.append((x, 2 / ((1 - x * x) * slope * slope)))
    return nodes


GAUSS = gauss(20)


class ByCharacteristic:
    """Share below and density from the characteristic function at nodes computed once."""

    def __init__(self, terms):
        total = sum(spread_of(t) for t in terms)
        far = {1: 240, 2: 20, 3: 10}
        reach = sum(spread_of(t) * far.get(t.get("degreesOfFreedom"), 5) for t in terms)
        panel = min(mpf(1) / total, mpf(8) / reach)
        edges = [panel * mpf(4) ** -k for k in range(24, 0, -1)]
        self.nodes = []
        low = mpf(0)
        quiet = 0
        step = 0
        while quiet < 8:
            high = edges[step] if step < len(edges) else low + panel
            size = mpf(0)
            for x, weight in GAUSS:
                w = (high - low) / 2 * x + (high + low) / 2
                value = mpf(1)
                for term in terms:
                    value *= characteristic(term, w)
                size = max(size, abs(value) / w * panel)
                self.nodes.append((w, value, weight * (high - low) / 2))
            quiet = quiet + 1 if size < mpf(10) ** -13 else 0
            low = high
            step += 1

    def at(self, x):
        share = density = mpf(0)
        for w, value, weight in self.nodes:
            turned = value * mpmath.expj(-w * x)
            share += weight * mpmath.im(turned) / w
            density += weight * mpmath.re(turned)
        return mpf(1) / 2 - share / mpmath.pi, density / mpmath.pi


def share_below_one(term, x):
    """Share below of the two shapes that `ByMean` uses as its first part."""
    if term["shape"] == "rectangular":
        a = mpf(term["halfWidth"])
        return min(mpf(1), max(mpf(0), (x + a) / (2 * a)))
    if term["shape"] == "arcsine":
        a = mpf(term["halfWidth"])
        return mpf(0) if x <= -a else mpf(1) if x >= a else mpf(1) / 2 + mpmath.asin(x / a) / mpmath.pi
    inside = mpf(10) ** (x / term["factor"]) - 1
    return share_below_one(term["of"], inside)


def ends_of(term):
    if term["shape"] == "decibels":
        return [term["factor"] * mpmath.log10(1 + e) for e in ends_of(term["of"])]
    return [-mpf(term["halfWidth"]), mpf(term["halfWidth"])]


class ByMean:
    """Share below of first + second, the second being an arcsine or rectangle."""

    def __init__(self, terms):
        self.first, self.second = terms

    def share(self, x):
        b = mpf(self.second["halfWidth"])
        kinks = sorted((x - e) / b for e in ends_of(self.first) if abs((x - e) / b) < 1)
        if self.second["shape"] == "rectangular":
            places = [mpf(-1), *kinks, mpf(1)]
            return mpmath.quad(lambda y: share_below_one(self.first, x - b * y), places) / 2
        places = sorted([mpf(0), *[mpmath.acos(k) for k in kinks], mpmath.pi])
        return mpmath.quad(lambda a: share_below_one(self.first, x - b * mpmath.cos(a)), places) / mpmath.pi

    def at(self, x):
        h = mpf(10) ** -9
        return self.share(x), (self.share(x + h) - self.share(x - h)) / (2 * h)


def quantile(sum_, p, start):
    """Newton's step where it stays inside a bracket, halving where it does not."""
    low, high = -start, start
    while sum_.at(low)[0] > p:
        low *= 2
    while sum_.at(high)[0] < p:
        high *= 2
    x = (low + high) / 2
    for _ in range(100):
        share, density = sum_.at(x)
        low, high = (x, high) if share < p else (low, x)
        step = (p - share) / density if density > 0 else high - low
        x = x + step if low < x + step < high else (low + high) / 2
        if abs(step) < mpf(10) ** -15 * start:
            return x
    raise ValueError("no quantile found")


def shortest(sum_, p, lower, upper):
    def equations(a, b):
        (below_a, density_a), (below_b, density_b) = sum_.at(a), sum_.at(b)
        return [below_b - below_a - p, density_a - density_b]

    a, b = mpmath.findroot(equations, (lower, upper), tol=mpf(10) ** -16)
    return [float(a), float(b)]


def mirrored(term):
    return term["shape"] != "decibels"


def golden(name, terms, constant=0, with_shortest=False):
    decaying = any(t["shape"] in ("normal", "student") for t in terms) or len(terms) > 2 or len(terms) == 1
    sum_ = ByCharacteristic(terms) if decaying else ByMean(terms)
    start = mpf(sum(spread_of(t) for t in terms))
    lower, upper = quantile(sum_, mpf("0.025"), start), quantile(sum_, mpf("0.975"), start)
    wide = [quantile(sum_, mpf(p), start) for p in ("0.00135", "0.99865")]
    entry = {
        "name": name,
        "constant": constant,
        "terms": terms,
        "interval95": [float(lower), float(upper)],
        "interval9973": [float(wide[0]), float(wide[1])],
    }
    if with_shortest:
        entry["shortest95"] = shortest(sum_, mpf("0.95"), lower, upper)
    print(name, entry["interval95"], flush=True)
    return entry


def signed(sensitivity, term):
    return {**term, "sensitivity": sensitivity}


def chains():
    R, T, A, N, S = rectangular, triangular, arcsine, normal, student
    root3 = float(mpmath.sqrt(3))
    eight = [R(0.1), A(0.08), N(0.06), S(9, 0.03), T(0.1), R(0.05), N(0.02), trapezoidal(0.06, 0.4)]
    yield golden("one t of one degree with a trace of a normal", [S(1, 0.05), N(0.001)])
    yield golden("two rectangles", [R(0.3), R(0.1)])
    yield golden("U shape and rectangle", [A(0.4), R(0.1)])
    yield golden("U shape and a narrow rectangle", [A(0.5), R(0.005)])
    yield golden("two U shapes", [A(0.3), A(0.2)])
    yield golden("mismatch in decibels and rectangle", [decibels(20, A(0.1)), R(0.05)])
    yield golden("four rectangles (JCGM 101, 9.2.3)", [R(root3)] * 4)
    yield golden("three rectangles and one of ten times the width (JCGM 101, 9.2.4)", [R(root3)] * 3 + [R(10 * root3)])
    yield golden("normal and rectangle", [N(0.1), R(0.3)])
    yield golden("t of one degree and rectangle", [S(1, 0.02), R(0.2)])
    yield golden("t of two degrees, U shape, normal", [S(2, 0.05), A(0.1), N(0.02)])
    yield golden("t of three and of two degrees", [S(3, 0.1), S(2, 0.05)])
    yield golden("t of one, two and three degrees, rectangle", [S(1, 0.01), S(2, 0.03), S(3, 0.05), R(0.1)])
    yield golden("five shapes", [S(9, 0.04), N(0.05), R(0.1), A(0.12), T(0.15)])
    yield golden("percent in decibels and a normal", [decibels(20, R(0.03)), decibels(10, R(0.05)), N(0.05)], 27, True)
    yield golden("true value in decibels", [decibels(-20, R(0.06)), decibels(-10, T(0.2)), N(0.05)], 0, True)
    yield golden("normal in decibels, U shape, rectangle", [decibels(20, N(0.05)), A(0.2), R(0.1)], 0, True)
    yield golden("t in decibels, normal, rectangle", [decibels(10, S(5, 0.02)), N(0.05), R(0.1)], 0, True)
    yield golden("curvilinear and plain trapezoid, normal", [curvilinear(0.2, 0.05), N(0.03), trapezoidal(0.3, 0.5)])
    yield golden("eight parts", eight, -40)
    yield golden("ten parts, signs mixed", [signed(-1, t) for t in eight] + [signed(-1, decibels(20, R(0.05))), decibels(20, A(0.05))])
    yield golden(
        "twelve parts, all shapes",
        eight + [curvilinear(0.1, 0.02), decibels(10, A(0.1)), signed(-2, decibels(20, R(0.02))), S(3, 0.01)],
        37,
        True,
    )
    yield golden("thousandfold sensitivity", [signed(1000, R(0.3)), signed(-500, N(0.1)), signed(300, A(0.2))])


def main():
    golden_values = {
        "made by": "make_chains.py",
        "mpmath": mpmath.__version__,
        "python": platform.python_version(),
        "digits": mp.dps,
        "chains": list(chains()),
    }
    target = pathlib.Path(__file__).with_name("chains.json")
    target.write_text(json.dumps(golden_values, indent=1) + "\n")


main()
