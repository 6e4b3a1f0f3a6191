"""The steady foam column in SciPy: the equations of ColumnMarch, the same tolerances, the quickest of SciPy's own methods.

usage: column_bench.py INPUTS OUTPUTS TOLERANCE SECONDS; one row of 15 doubles a column: bore, opening of the cone (funnel base), top
of the cone, neck bore (radii, heights in m), water, lip, gas m3/s, rho, mu, gamma, mobility, fresh radius, grown radius,
mean life, alpha. Writes the liquid over the lip, m3/s, of each and prints for each method the
nanoseconds a column: of the quickest pass over all columns, and on average.
"""

import math
import sys
import time

import numpy as np
from scipy.integrate import solve_ivp

GRAVITY = 9.80665
PACKING = 0.36
STRENGTH = 3.2
BEND = 2.15
CURVE = 1.37
GROWN_AGE = 100.0
NOTHING_LEFT = 1e-6
DRIEST = 1e-7
WETTEST = 0.95


def flux(e):
    wet = 1 - e * (BEND - CURVE * e)
    return e * e / (wet * wet)


def slope(e):
    wet = 1 - e * (BEND - CURVE * e)
    return e * e / (wet * wet) * (2 / e - 2 * (2 * CURVE * e - BEND) / wet)


def zero(low, high, f):
    a, b, fa, fb, kept = low, high, f(low), f(high), 0
    step = 0
    while step < 100 and b - a > 1e-13 * b and fb != 0:
        c = b - fb * (b - a) / (fb - fa)
        if not a < c < b:
            c = 0.5 * (a + b)
        fc = f(c)
        if fc > 0:
            a, fa = c, fc
            fb *= 0.5 if kept == 1 else 1
            kept = 1
        else:
            b, fb = c, fc
            fa *= 0.5 if kept == -1 else 1
            kept = -1
        step += 1
    return b if fb == 0 else 0.5 * (a + b)


def flux_slope(j, k, e):
    return j / ((1 - e) * (1 - e)) - k * slope(e)


def liquid_flux(j, k, e):
    return j * e / (1 - e) - k * flux(e)


def fullest(j, k):
    low, at = 0.0, min(j / (2 * k), PACKING)
    while at < PACKING and flux_slope(j, k, at) > 0:
        low, at = at, min(PACKING, at * 1.25)
    if at >= PACKING and flux_slope(j, k, PACKING) > 0:
        return PACKING
    return zero(low if low > 0 else 1e-300, at, lambda e: flux_slope(j, k, e))


def drained(j, k, wanted):
    low = max(DRIEST, fullest(j, k))
    if liquid_flux(j, k, low) <= wanted:
        return low
    high = low
    while high < WETTEST:
        high = min(WETTEST, high * 1.25 + 1e-6)
        if liquid_flux(j, k, high) <= wanted:
            return zero(low, high, lambda e: liquid_flux(j, k, e) - wanted)
        low = high
    return WETTEST


class Column:
    def __init__(self, row, tolerance):
        (self.bore, self.base, self.cone_top, self.neck, self.water, self.lip, self.gas, rho, mu, gamma, mobility,
         fresh, grown, life, self.alpha) = row
        self.per_square = mobility * rho * GRAVITY / mu
        self.tension = gamma / (rho * GRAVITY)
        self.fresh = fresh * fresh
        self.growth = (grown * grown - fresh * fresh) / GROWN_AGE
        self.life_volume = self.gas * life
        self.theta = life * (self.alpha - 1)
        self.tolerance = tolerance
        self.flow = 0.0

    def area(self, z):
        along = max(0.0, min(1.0, (z - self.base) / (self.cone_top - self.base)))
        r = self.bore + (self.neck - self.bore) * along
        return math.pi * r * r

    def local(self, z, y):
        area = self.area(z)
        left = max(NOTHING_LEFT, 1 - y[0] / self.life_volume)
        age = self.theta * (left ** (-1 / (self.alpha - 1)) - 1)
        gas = self.gas * (1 + age / self.theta) ** -self.alpha
        square = self.fresh + self.growth * age
        if y[1] > 0:
            e = max(DRIEST, PACKING - math.sqrt(y[1]))
        else:
            e = max(PACKING, drained(gas / area, self.per_square * square, self.flow / area))
        return area, gas, age, square, e

    def slopes(self, z, y):
        if 1 - y[0] / self.life_volume <= NOTHING_LEFT:
            return [0.0, 0.0, 0.0, 0.0]
        area, gas, age, square, e = self.local(z, y)
        r = math.sqrt(square)
        v = gas / (area * (1 - e))
        drainage = self.per_square * square * flux(e)
        rest = PACKING - e
        root = math.sqrt(e)
        suction = self.tension / r * STRENGTH * max(0.0, rest) ** 2 / root
        growing = suction * 0.5 * self.growth / square / v
        unbalanced = v * e - drainage * (1 + growing / (1 - e)) - self.flow / area
        per_rest = self.tension / r * STRENGTH * (2 + 0.5 * rest / e) / root
        change = -2 * (1 - e) * unbalanced / (drainage * per_rest)
        if y[1] <= 0:
            change = max(0.0, change)
        return [area * (1 - e), change, area * e, e]

    def march(self, method):
        span = self.lip - self.water
        atol = [1e-3 * self.tolerance * self.life_volume, 0.1 * self.tolerance,
                1e-3 * self.tolerance * self.life_volume, self.tolerance * span]
        run = solve_ivp(self.slopes, (self.water, self.lip), [0.0] * 4, method=method, rtol=self.tolerance, atol=atol,
                        max_step=0.1 * span)
        end = run.y[:, -1]
        if 1 - end[0] / self.life_volume <= NOTHING_LEFT:
            return 0.0
        area, gas, _, square, _ = self.local(self.lip, end)
        j, k = gas / area, self.per_square * square
        return area * max(0.0, liquid_flux(j, k, fullest(j, k)))

    def settle(self, method):
        self.flow = 0.0
        wanted = self.march(method)
        known, known_wanted = 0.0, 0.0
        for _ in range(12):
            if abs(wanted - self.flow) <= 0.1 * self.tolerance * wanted:
                break
            gain = 0.0 if self.flow == known else (wanted - known_wanted) / (self.flow - known)
            known, known_wanted = self.flow, wanted
            self.flow = max(0.0, self.flow + (wanted - self.flow) / (1 - gain) if gain < 0.9 else wanted)
            wanted = self.march(method)
        return wanted


def main():
    rows = np.fromfile(sys.argv[1]).reshape(-1, 15)
    tolerance, seconds = float(sys.argv[3]), float(sys.argv[4])
    columns = [row.tolist() for row in rows]
    for method in ("RK45", "DOP853", "LSODA"):
        taken = []
        end = time.perf_counter() + seconds
        while not taken or time.perf_counter() < end:
            start = time.perf_counter()
            found = [Column(row, tolerance).settle(method) for row in columns]
            taken.append((time.perf_counter() - start) / len(rows))
        if method == "RK45":
            np.array(found).tofile(sys.argv[2])
        print(f"{method} {1e9 * min(taken):.1f} {1e9 * sum(taken) / len(taken):.1f}")


if __name__ == "__main__":
    main()
