"""A tank-year in SciPy: the main equations of the tank (water, salt, alkalinity, organics, nitrogen, foam, wear), the skimmer at
rest asked at every step, the same meals, upkeep, tolerances and method (Dormand-Prince 5(4)) as ours, states every hour. Left
out: oxygen, break-in, daily swing, noise of the load, the ledgers and the watch for full vessels, all of which ours carries.

usage: tank_year.py PLAN SECONDS; PLAN holds lines "name value" and "event hours kind amount". Prints nanoseconds a year of the
quickest and on average, then litres of skimmate and grams of nitrate nitrogen at the end.
"""

import math
import sys
import time

import numpy as np
from scipy.integrate import solve_ivp

GRAVITY = 9.80665
HOURS = 8760.0
(WATER, SALT, ALKALINITY, SKIMMABLE, REFRACTORY, SOLIDS, PAD_SOLIDS, DIGESTING, AMMONIA, NITRITE, NITRATE, FIRST, SECOND,
 NECK, AIR_LINE, NOZZLE, WEAR, PAD, STRAINER, SKIMMATE, FILM_LOST, OIL, SKIMMATE_ML) = range(23)
SIZE = 23
CARRIED = (WATER, SALT, ALKALINITY, SKIMMABLE, REFRACTORY, AMMONIA, NITRITE, NITRATE)
GRAMS_PER_PRACTICAL = 35.16504 / 35
RETAINED_SHARE = 0.16
AMMONIA_SHARE = 0.092 / 0.16
ORGANIC_SHARE = 1 - AMMONIA_SHARE - RETAINED_SHARE


def density(s, t):
    t *= 1.00024
    pure = 999.842594 + t * (6.793952e-2 + t * (-9.095290e-3 + t * (1.001685e-4 + t * (-1.120083e-6 + t * 6.536332e-9))))
    linear = 0.824493 + t * (-4.0899e-3 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9)))
    root = -5.72466e-3 + t * (1.0227e-4 + t * -1.6546e-6)
    return pure + s * (linear + math.sqrt(s) * root + s * 4.8314e-4)


def viscosity(s, t):
    s /= 1000
    shifted = t + 64.992620050
    pure = 4.2844324477e-5 + 1 / (0.15700386464 * shifted * shifted - 91.296496657)
    a = 1.5409136040 + t * (1.9981117208e-2 - t * 9.5203865864e-5)
    b = 7.9739318223 + t * (-7.5614568881e-2 + t * 4.7237011074e-4)
    return pure * (1 + s * (a + b * s))


def inhibition(s):
    cube = (s / 6) ** 3
    return cube / (1 + cube)


def rise_speed(d, rho, mu):
    best = 4 * rho * (rho - 1.2) * GRAVITY * d ** 3 / (3 * mu * mu)
    re = min(best / 24, (best / (0.15 * 24)) ** (1 / 1.687))
    for _ in range(30):
        growth = 0.15 * re ** 0.687
        move = (24 * re * (1 + growth) - best) / (24 * (1 + 1.687 * growth))
        re -= move
        if abs(move) <= 1e-10 * re:
            break
    return re * mu / (rho * d)


class Skimmer:
    def __init__(self, p):
        self.p = p
        self.bore, self.neck = p["boreMm"] / 2000, p["neckBoreMm"] / 2000
        self.base = p["funnelBaseMm"] / 1000
        self.cone_top = self.base + p["funnelHeightMm"] / 1000
        self.lip = self.cone_top + p["neckHeightMm"] / 1000
        self.opening = p["openingMm"] / 1000
        self.neck_volume = math.pi * self.neck ** 2 * (self.lip - self.cone_top)

    def volume_above(self, level):
        if level >= self.lip:
            return 0.0
        if level >= self.cone_top:
            return math.pi * self.neck ** 2 * (self.lip - level)
        at = max(level, self.base)
        r = self.bore + (self.neck - self.bore) * (at - self.base) / (self.cone_top - self.base)
        cone = math.pi / 3 * (self.cone_top - at) * (r * r + r * self.neck + self.neck ** 2)
        return self.neck_volume + cone + math.pi * self.bore ** 2 * (at - level)

    def head(self, flow, crest):
        width = self.p["weirMm"] / 1000
        target = flow / (2 / 3 * math.sqrt(2 * GRAVITY) * (width - 0.0009))
        slope = 0.075 / crest
        cubic = 0.602 - slope * 0.001
        x = (target / cubic) ** (1 / 3)
        for _ in range(30):
            square = x * x
            move = (square * x * (cubic + slope * square) - target) / (square * (3 * cubic + 5 * slope * square))
            x -= move
            if abs(move) <= 1e-7 * x:
                break
        return max(0.0, x * x - 0.001)

    def at(self, flow_lph, air_lph, salinity, load, neck, oil, beyond_mm):
        """Skimmate mL/day, its strength mg/L and whether it floods."""
        p = self.p
        celsius = p["celsius"]
        rho, mu = density(salinity, celsius), viscosity(salinity, celsius)
        d = p["freshBubbleMm"] / 1000 * 3 ** (inhibition(35) - inhibition(salinity))
        life = (p["meanLifeSeconds"] * (load / 2) ** 0.15
                * math.exp(-1.3 / 4 / 10 * (35 - salinity) - 1.3 / 4 * neck) * (1 - 0.6 * oil))
        crest = p["crestMm"] / 1000
        if beyond_mm > p["crestMm"]:
            raise ValueError("the weir drowns; this tank does not know how")
        level = crest + self.head(flow_lph / 3.6e6, crest)
        air = air_lph / 3.6e6
        rest = 1 - 4 * air / (math.pi * self.bore ** 2) / rise_speed(d, rho, mu)
        holdup = (1 - math.sqrt(rest)) / 2 if rest >= 0 else 0.5
        level = self.opening + (level - self.opening) / (1 - holdup)
        left = 1 - (1 - p["foamLiquid"]) * self.volume_above(level) / (air * life)
        alpha = p["lifeShape"]
        share = left ** (alpha / (alpha - 1)) if left > 0 else 0.0
        area = math.pi * self.neck ** 2
        j = share * air / area
        k = p["mobility"] * rho * GRAVITY * (p["lipBubbleMm"] / 2000) ** 2 / mu
        flooding = rest < 0 or level >= self.lip or j >= 8 / 27 * k
        if flooding:
            return area * max(0.0, j / 2 - k / 9) * 86400e6, load, True
        if j <= 0:
            return 0.0, load, False
        c = j / (2 * k)
        eps = c * (1 + c * (2 + c * (7 + c * (30 + c * 143))))
        for _ in range(40):
            gas = 1 - eps
            slope = gas * (1 - 3 * eps)
            move = (c - eps * gas * gas) / slope
            eps += move
            if (2 - 3 * eps) * move * move <= 1e-12 * eps * slope:
                break
        flux = j * eps / (1 - eps) * (1 - 1 / (2 * (1 - eps)))
        coverage = p["collectedShare"] * 2e-6 * load / (load + 5)
        strength = min(20000.0, load + 1000 * 6 / (p["lipBubbleMm"] / 1000) * coverage * j / flux)
        return area * flux * 86400e6, strength, False


def limited(amount, half):
    return amount / (amount + half) if amount > 0 else 0.0


class Tank:
    def __init__(self, p, events):
        self.p, self.events = p, events
        self.skimmer = Skimmer(p)
        theta = p["NITRIFICATION_THETA"] ** (p["celsius"] - 24)
        self.saturated = p["NITRIFICATION_SATURATED"] * theta
        drowned = p["drownedShare"]
        self.media = (1 - drowned + drowned * p["DROWNED_MEDIA_WORTH"]) * p["mediaM2"] / 24
        self.atol = np.full(SIZE, 1e-6)
        self.atol[[WATER, SALT, ALKALINITY]] = 1e-6 * p["litres"]
        self.atol[SKIMMABLE:NITRATE + 1] = 1e-6 * p["litres"]
        self.atol[SKIMMATE] = 1e-3 * p["targetMlPerDay"]
        self.atol[SKIMMATE_ML] = 1e6

    def salinity(self, y):
        return 1000 * y[SALT] / (y[WATER] + y[SALT]) / GRAMS_PER_PRACTICAL

    def litres(self, y):
        return 1000 * (y[WATER] + y[SALT]) / density(self.salinity(y), self.p["celsius"])

    def rate(self, grams_per_litre, first):
        p = self.p
        c = max(0.0, grams_per_litre)
        return min(first * c, self.saturated * min(1.0, math.sqrt(c / p["NITRIFICATION_CROSSOVER"])))

    def slopes(self, _, state):
        p = self.p
        y = state.tolist()
        dy = [0.0] * SIZE
        salinity, litres = self.salinity(y), self.litres(y)
        flow = p["flowLitresPerHour"] * (1 - p["STRAINER_WORST_LOSS"] * y[STRAINER])
        opened = max(1e-6, 1 - y[PAD])
        beyond = p["padLevelMm"] + p["PAD_HEAD_MM"] * flow / p["flowLitresPerHour"] / (opened * opened)
        air = p["airLitresPerHour"] * (1 - y[AIR_LINE]) * (1 - y[WEAR]) * (1 - y[NOZZLE])
        load = 1000 * max(0.0, y[SKIMMABLE]) / litres
        steady, strength, flooding = self.skimmer.at(
            flow, air, salinity, load, y[NECK], max(0.0, y[OIL]), min(beyond, p["bypassLevelMm"]))
        pace = 1 / (p["FLOOD_HOURS"] if flooding else p["SETTLING_HOURS"])
        dy[SKIMMATE] = pace * (steady * (1 - y[FILM_LOST]) - y[SKIMMATE])
        dy[FILM_LOST] = -y[FILM_LOST] / p["FILM_RETURN_HOURS"]
        dy[OIL] = -y[OIL] / p["OIL_HOURS"]
        out = max(0.0, y[SKIMMATE]) / 24000
        share = out / litres
        for i in CARRIED:
            dy[i] = -share * y[i]
        dy[SKIMMABLE] = -out * max(strength, load) / 1000 if y[SKIMMABLE] > 0 else 0.0
        dy[SKIMMATE_ML] = 1000 * out
        self.water(y, dy, salinity, litres, out)
        self.waste(y, dy, litres, flow)
        self.nitrogen(y, dy, litres)
        amount = max(0.0, y[SKIMMATE]) / p["targetMlPerDay"]
        dy[NECK] = p["NECK_PER_DAY"] / 24 * 2 * amount / (1 + amount) * (1 - y[NECK])
        for part, name in ((AIR_LINE, "AIR_LINE"), (NOZZLE, "NOZZLE"), (WEAR, "WEAR"), (STRAINER, "STRAINER")):
            dy[part] = p[name + "_PER_DAY"] / 24 * (1 - y[part])
        return dy

    def water(self, y, dy, salinity, litres, out):
        p = self.p
        evaporated = p["freshKgPerHour"] - p["lessKgPerHourPerSalinity"] * salinity
        gap = p["sumpLitres"] - (litres - p["heldLitres"])
        top_off = max(0.0, min(p["TOP_OFF_LIMIT_LITRES_PER_HOUR"],
                               evaporated + out + p["TOP_OFF_RETURN_PER_HOUR"] * gap))
        dy[WATER] += top_off * p["topOffKgPerLitre"] - evaporated

    def waste(self, y, dy, litres, flow):
        p = self.p
        nitrogen = y[DIGESTING] / p["DIGESTION_HOURS"]
        organics = ORGANIC_SHARE * nitrogen / p["NITROGEN_IN_ORGANICS"]
        dy[DIGESTING] -= nitrogen
        dy[AMMONIA] += AMMONIA_SHARE * nitrogen
        solid, skimmable = p["SOLID_SHARE_OF_WASTE"], p["SKIMMABLE_SHARE_OF_DISSOLVED"]
        caught = p["PAD_CATCH_SHARE"] * flow / litres * (1 - y[PAD]) * y[SOLIDS]
        decay = p["SOLIDS_DECAY_PER_DAY"] / 24
        rotten = decay * (y[SOLIDS] + y[PAD_SOLIDS])
        dissolved = (1 - solid) * organics + (1 - p["SOLIDS_MINERALISED_SHARE"]) * rotten
        dy[SOLIDS] += solid * organics - caught - decay * y[SOLIDS]
        dy[PAD_SOLIDS] += caught - decay * y[PAD_SOLIDS]
        dy[PAD] += p["PAD_PER_GRAM"] / p["padM2"] * caught * (1 - y[PAD])
        gone = p["SKIMMABLE_DECAY_PER_DAY"] / 24 * y[SKIMMABLE]
        slow = p["REFRACTORY_DECAY_PER_DAY"] / 24 * y[REFRACTORY]
        dy[SKIMMABLE] += skimmable * dissolved - gone
        dy[REFRACTORY] += (1 - skimmable) * dissolved + p["SKIMMABLE_TO_REFRACTORY_SHARE"] * gone - slow
        burnt = (p["SOLIDS_MINERALISED_SHARE"] * rotten + (1 - p["SKIMMABLE_TO_REFRACTORY_SHARE"]) * gone + slow)
        dy[AMMONIA] += p["NITROGEN_IN_ORGANICS"] * burnt

    def nitrogen(self, y, dy, litres):
        p = self.p
        ammonia, nitrite, alkalinity = (1000 * y[i] / litres for i in (AMMONIA, NITRITE, ALKALINITY))
        supply = limited(p["oxygenMgPerLitre"], p["NITRIFICATION_HALF_OXYGEN"]) * self.media
        first = (supply * limited(alkalinity, p["NITRIFICATION_HALF_ALKALINITY"]) * y[FIRST]
                 * self.rate(ammonia, p["AMMONIA_FIRST_ORDER"]))
        second = supply * y[SECOND] * self.rate(nitrite, p["NITRITE_FIRST_ORDER"])
        gas = p["DENITRIFICATION_PER_DAY"] / 24 * y[NITRATE]
        dy[AMMONIA] -= first
        dy[NITRITE] += first - second
        dy[NITRATE] += second - gas
        dosed = max(0.0, p["ALKALINITY_MEQ_PER_LITRE"] - alkalinity) * litres / 1000
        dy[ALKALINITY] += 2 / 14.0067 * (0.5 * gas - first) + dosed / (24 * p["ALKALINITY_RETURN_DAYS"])
        half = p["COLONY_HALF_CONCENTRATION"]
        dy[FIRST] += p["AMMONIA_COLONY_PER_DAY"] / 24 * y[FIRST] * (1 - y[FIRST]) * limited(ammonia, half)
        dy[SECOND] += p["NITRITE_COLONY_PER_DAY"] / 24 * y[SECOND] * (1 - y[SECOND]) * limited(nitrite, half)

    def start(self):
        p = self.p
        litres = p["litres"]
        y = np.zeros(SIZE)
        kg = litres * density(35, p["celsius"]) / 1000
        y[SALT] = kg * 35 * GRAMS_PER_PRACTICAL / 1000
        y[WATER] = kg - y[SALT]
        y[ALKALINITY] = p["ALKALINITY_MEQ_PER_LITRE"] * litres / 1000
        load = 2 * litres / 1000
        y[SKIMMABLE], y[REFRACTORY], y[SOLIDS], y[PAD_SOLIDS] = load, 1.5 * load, 0.3 * load, 2 * load
        y[AMMONIA] = y[NITRITE] = 0.05 * litres / 1000
        y[NITRATE] = 10 * litres / 1000
        y[FIRST] = y[SECOND] = 1
        return y

    def happen(self, y, kind, amount):
        if kind == "MEAL":
            y[DIGESTING] += 0.16 * self.p["proteinShare"] * amount
            y[OIL] = min(1, y[OIL] + self.p["MEAL_OIL"] * amount * 100 / self.litres(y))
        elif kind == "WATER":
            before = self.salinity(y)
            share = amount / self.litres(y)
            for i in CARRIED:
                y[i] -= share * y[i]
            kg = amount * density(35, self.p["celsius"]) / 1000
            salt = kg * 35 * GRAMS_PER_PRACTICAL / 1000
            y[SALT] += salt
            y[WATER] += kg - salt
            y[ALKALINITY] += amount * self.p["ALKALINITY_MEQ_PER_LITRE"] / 1000
            alive = math.exp(-abs(self.salinity(y) - before) / 6.5)
            y[FIRST] *= alive
            y[SECOND] *= alive
        elif kind == "NECK":
            y[NECK], y[FILM_LOST], y[SKIMMATE] = 0, 1, 0
        elif kind == "PAD":
            y[PAD_SOLIDS], y[PAD] = 0, 0
        else:
            part = {"AIR_LINE": AIR_LINE, "NOZZLE": NOZZLE, "INJECTOR_PUMP": WEAR, "STRAINER": STRAINER}[kind]
            y[part] = 0

    def year(self):
        y, now, samples = self.start(), 0.0, 0
        for at, kind, amount in self.events + [(HOURS, "END", 0)]:
            if at > now:
                hourly = np.arange(math.floor(now) + 1, math.floor(at) + 1)
                run = solve_ivp(self.slopes, (now, at), y, method="RK45", rtol=1e-5, atol=self.atol, t_eval=np.append(
                    hourly[hourly < at], at), max_step=12, first_step=min(3.0, at - now))
                samples += run.y.shape[1]
                y, now = run.y[:, -1].copy(), at
            if kind != "END":
                self.happen(y, kind, amount)
        return y, samples


def main():
    p, events = {}, []
    with open(sys.argv[1], encoding="utf-8") as lines:
        for line in lines:
            cells = line.split()
            if cells[0] == "event":
                events.append((float(cells[1]), cells[2], float(cells[3])))
            else:
                p[cells[0]] = float(cells[1])
    tank = Tank(p, events)
    taken = []
    end = time.perf_counter() + float(sys.argv[2])
    while not taken or time.perf_counter() < end:
        start = time.perf_counter()
        y, _ = tank.year()
        taken.append(time.perf_counter() - start)
    print(f"year {1e9 * min(taken):.0f} {1e9 * sum(taken) / len(taken):.0f}")
    print(f"end {y[SKIMMATE_ML] / 1000:.6f} {y[NITRATE]:.6f}")


if __name__ == "__main__":
    main()
