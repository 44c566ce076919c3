"""Golden words of the seeded generator, by plain integer arithmetic. Writes random.json beside this file.

xoshiro128** and SplitMix64 written anew from their papers (D. Blackman and S. Vigna 2021; G. Steele, D. Lea, C. Flood
2014), apart from the program under test.

Run: python3 test/golden/make_random.py
"""
import json
import pathlib
import platform

M32, M64 = 2**32 - 1, 2**64 - 1


def split_mix(seed):
    while True:
        seed = (seed + 0x9E3779B97F4A7C15) & M64
        z = seed
        z = ((z ^ (z >> 30)) * 0xBF58476D1CE4E5B9) & M64
        z = ((z ^ (z >> 27)) * 0x94D049BB133111EB) & M64
        yield z ^ (z >> 31)


def rotate(x, k):
    return ((x << k) | (x >> (32 - k))) & M32


def xoshiro(seed):
    mix = split_mix(seed)
    first, second = next(mix), next(mix)
    s = [first & M32, first >> 32, second & M32, second >> 32]
    while True:
        yield (rotate((s[1] * 5) & M32, 7) * 9) & M32
        t = (s[1] << 9) & M32
        s[2] ^= s[0]
        s[3] ^= s[1]
        s[1] ^= s[2]
        s[0] ^= s[3]
        s[2] ^= t
        s[3] = rotate(s[3], 11)


def row(seed):
    words = xoshiro(seed)
    values = [next(words) for _ in range(1000)]
    return {"seed": seed, "words": values[:12], "thousandth": values[999]}


golden = {
    "made by": "make_random.py",
    "python": platform.python_version(),
    "rows": [row(seed) for seed in (0, 1, 42, 2**32, 2**53 - 1)],
}
pathlib.Path(__file__).with_name("random.json").write_text(json.dumps(golden, indent=1) + "\n")
