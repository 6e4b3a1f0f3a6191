"""The steady law of many points at once in NumPy: the same equations, starts and stops as SteadyLaw.

usage: steady.py INPUTS OUTPUTS SECONDS; files of doubles as for steady.c. Prints nanoseconds a point: of the quickest pass
over all points, and on average.
"""

import sys
import time

import numpy as np

GRAVITY = 9.80665
HEAD_CORRECTION_M = 0.001
RATIO = [0, 0.2, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1]
ALPHA = [0.587, 0.589, 0.591, 0.592, 0.593, 0.594, 0.596, 0.598, 0.602]
BETA = [-0.0023, -0.0018, 0.0058, 0.011, 0.018, 0.030, 0.045, 0.064, 0.075]
WIDTH_RATIO = [0, 0.2, 0.4, 0.6, 0.8, 1]
WIDTH_CORRECTION_M = [0.0024, 0.0024, 0.0027, 0.0036, 0.0042, -0.0009]


class Law:
    """Shapes and exponents of each point's unit, an array each."""

    def __init__(self, rows):
        (self.columns, self.weir_width, self.channel_width, self.opening, self.funnel_base, self.cone_top, self.lip,
         self.bore_radius, self.neck_radius, self.feed_share, self.holdup_exponent, self.drainage_exponent,
         self.foam_liquid) = rows.T
        self.radius_per_m = (self.neck_radius - self.bore_radius) / (self.cone_top - self.funnel_base)
        self.cone_volume = self.frustum(self.cone_top - self.funnel_base, self.bore_radius)
        self.neck_area = np.pi * self.neck_radius**2
        self.neck_volume = self.neck_area * (self.lip - self.cone_top)
        self.bore_area = np.pi * self.bore_radius**2
        n = self.drainage_exponent
        self.flood_fraction = (n - 1) / (n + 1)
        self.flood_gas = n * self.flood_fraction ** (n - 1) * (1 - self.flood_fraction) ** 2
        self.flood_power = self.flood_fraction**n
        share = self.weir_width / self.channel_width
        self.alpha = np.interp(share, RATIO, ALPHA)
        self.beta = np.interp(share, RATIO, BETA)
        correction = np.interp(share, WIDTH_RATIO, WIDTH_CORRECTION_M)
        self.coefficient = 2 / 3 * np.sqrt(2 * GRAVITY) * (self.weir_width + correction)

    def frustum(self, height, lower):
        return np.pi / 3 * height * (lower * lower + lower * self.neck_radius + self.neck_radius**2)

    def volume_above(self, level):
        radius = self.bore_radius + self.radius_per_m * (level - self.funnel_base)
        in_neck = self.neck_area * (self.lip - level)
        in_cone = self.neck_volume + self.frustum(self.cone_top - level, radius)
        in_bore = self.neck_volume + self.cone_volume + self.bore_area * (self.funnel_base - level)
        volume = np.where(level >= self.cone_top, in_neck, np.where(level >= self.funnel_base, in_cone, in_bore))
        return np.where(level >= self.lip, 0, volume)


def head(law, crest, discharge):
    target = discharge / law.coefficient
    slope = law.beta / crest
    cubic = law.alpha - slope * HEAD_CORRECTION_M
    x = np.cbrt(target / cubic)
    for _ in range(30):
        square = x * x
        excess = square * x * (cubic + slope * square) - target
        move = excess / (square * (3 * cubic + 5 * slope * square))
        x = x - move
        if np.all(np.abs(move) <= 1e-7 * x):
            break
    return np.maximum(0, x * x - HEAD_CORRECTION_M)


def holdup(law, gas, liquid, speed):
    """The lower root; NaN where the column floods. The box holds no upward liquid."""
    n = law.holdup_exponent
    bend = 2 / (n + 1)
    e = np.zeros_like(gas)
    for _ in range(80):
        power = (1 - e) ** (n - 1)
        excess = speed * e * (1 - e) * power - gas * (1 - e) + liquid * e
        slope = speed * power * (1 - (n + 1) * e) + gas + liquid
        move = np.where(slope > 0, excess / slope, e - 1)
        e = np.where(e > bend, e, e - move)
        curvature = 0.5 * speed * n * power * (2 - (n + 1) * e) / (1 - e)
        if np.all((e > bend) | (curvature * move * move <= 1e-12 * e * slope)):
            break
    return np.where(e <= bend, e, np.nan)


def wallis(gas, speed):
    rest = 1 - 4 * gas / speed
    return np.where(rest < 0, np.nan, 2 * gas / speed / (1 + np.sqrt(np.maximum(rest, 0))))


def general_root(c, n):
    q = 2 / (n - 1)
    limit = 1 / (1 + q)
    d = c ** (0.5 * q)
    eps = np.minimum(d * (1 + q * d), limit)
    for _ in range(40):
        gas = 1 - eps
        power = gas**q
        slope = power * (1 - (1 + q) * eps) / gas
        move = np.where(slope > 0, (d - eps * power) / np.where(slope > 0, slope, 1), limit)
        eps = np.minimum(eps + move, limit)
        bend = 0.5 * q * (2 - (1 + q) * eps) * power
        if np.all((bend * move * move <= 1e-12 * eps * slope * gas * gas) | (eps >= limit)):
            break
    return eps


def channel_root(c):
    eps = c * (1 + c * (2 + c * (7 + c * (30 + c * 143))))
    for _ in range(40):
        gas = 1 - eps
        slope = gas * (1 - 3 * eps)
        move = np.where(slope > 0, (c - eps * gas * gas) / np.where(slope > 0, slope, 1), 0)
        eps = eps + move
        if np.all((2 - 3 * eps) * move * move <= 1e-12 * eps * slope):
            break
    return np.where(c >= 4 / 27, 1 / 3, np.minimum(eps, 1 / 3))


def at(law, rows, default_exponents):
    crest, flow, beyond, air, terminal, life, shape, drainage, back_pressure, weight = rows.T
    head_m = head(law, crest, flow)
    clear = crest + head_m
    air = air / law.columns
    gas_flux = air / law.bore_area
    if default_exponents:
        gas_share = wallis(gas_flux, terminal)
    else:
        gas_share = holdup(law, gas_flux, -law.feed_share * flow / (law.columns * law.bore_area), terminal)
    column_flooded = np.isnan(gas_share)
    gas_share = np.where(column_flooded, 1 / law.holdup_exponent, gas_share)
    per_metre = weight * law.foam_liquid
    push = clear - law.opening - back_pressure
    level = law.opening + (push - per_metre * (law.lip - law.opening)) / (1 - gas_share - per_metre)
    foam_gas = (1 - law.foam_liquid) * law.volume_above(level)
    left = np.maximum(0, 1 - foam_gas / (air * life))
    share = left ** (shape / (shape - 1))
    lip_flux = share * air / law.neck_area
    lip_flooded = (level >= law.lip) | (lip_flux >= law.flood_gas * drainage)
    n = law.drainage_exponent
    scaled = lip_flux / (n * drainage)
    fraction = channel_root(scaled) if default_exponents else general_root(scaled, n)
    fraction = np.where(lip_flooded, law.flood_fraction, fraction)
    dry = 1 - fraction
    fullest = lip_flux * fraction / dry * (1 - 1 / (n * dry))
    flooded = np.maximum(0, lip_flux * fraction / dry - drainage * law.flood_power)
    liquid = np.where(lip_flooded, flooded, fullest)
    foam_weight = per_metre * np.maximum(0, law.lip - level)
    skimmate = law.columns * law.neck_area * liquid
    return np.stack([
        head_m, clear, gas_share, level, foam_weight, foam_gas, share, lip_flux, fraction, liquid, skimmate,
        column_flooded, lip_flooded
    ], axis=1)


def main():
    numbers = np.fromfile(sys.argv[1])
    laws, points = int(numbers[0]), int(numbers[1])
    table = numbers[2:2 + 13 * laws].reshape(laws, 13)
    rows = numbers[2 + 13 * laws:].reshape(points, 11)
    law = Law(table[rows[:, 0].astype(int)])
    inputs = np.ascontiguousarray(rows[:, 1:])
    default_exponents = bool(np.all(law.drainage_exponent == 2) and np.all(law.holdup_exponent == 2)
                             and np.all(law.feed_share == 0))
    at(law, inputs, default_exponents).tofile(sys.argv[2])
    end = time.perf_counter() + float(sys.argv[3])
    taken = []
    while time.perf_counter() < end:
        start = time.perf_counter()
        at(law, inputs, default_exponents)
        taken.append((time.perf_counter() - start) / points)
    print(f"{1e9 * min(taken):.3f} {1e9 * sum(taken) / len(taken):.3f}")


if __name__ == "__main__":
    main()
