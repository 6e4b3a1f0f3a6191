"""Fourteen days with one skimmer, through the filter: advice, what was done written down, advice again.

    python3 docs/examples/fortnight.py lib/target/weirwise-0.1.0-all.jar

The keeper and the unit are invented. Nothing but docs/service.md and docs/formats.md was used to write this.
"""
import json
import subprocess
import sys
from datetime import datetime, timedelta, timezone


class Service:
    """One process, one line in, one line out."""

    def __init__(self, jar):
        self.process = subprocess.Popen(
            ["java", "-jar", jar], stdin=subprocess.PIPE, stdout=subprocess.PIPE, encoding="utf-8")

    def ask(self, request):
        self.process.stdin.write(json.dumps(request) + "\n")
        self.process.stdin.flush()
        answer = json.loads(self.process.stdout.readline())
        if "error" in answer:
            raise ValueError("%(path)s %(problem)s; %(tryThis)s" % answer["error"])
        return answer

    def close(self):
        self.process.stdin.close()
        self.process.wait()


class Unit:
    """What this invented unit really does. Its air line is narrowed until somebody cleans it; a surge floods it once."""

    def __init__(self):
        self.crest, self.air, self.narrowed, self.surge = 206.0, 150.0, 0.8, 0.0

    def level(self):
        return self.crest - 193 - 6 * self.narrowed

    def ml_a_day(self):
        if self.air == 0:
            return 0.0
        return 240 * 1.15 ** (self.level() - 13) * (self.air / 150) ** 2 * (1 - 0.5 * self.narrowed) * 4 ** self.surge


class Keeper:
    """Looks, acts, and writes down what was done."""

    def __init__(self, unit):
        self.unit, self.now = unit, datetime(2026, 3, 2, 8, tzinfo=timezone.utc)
        self.journal, self.cannot, self.taken = [], ["AIR_FLOW", "FOAM_COLLAPSE"], set()

    def write(self, **entry):
        self.journal.append({"type": entry.pop("type"), "at": self.now.isoformat(), **entry})

    def read(self, *observations):
        self.write(type="reading", by="Ana", observations=list(observations))

    def round(self):
        ml = self.unit.ml_a_day()
        full = ml > 1000
        self.read({"type": "funnelLevel", "mm": round(self.unit.level(), 1)},
                  {"type": "cupVolume", "ml": min(1000, round(ml)), "hours": 24, "full": full},
                  {"type": "foamLook", "look": "STREAMING" if full else "CREAMY" if ml > 100 else "STIFF"})

    def observation(self, form):
        """A look as `recordAs` wants it: numbers from the unit, words from those that are offered."""
        found = {"type": form["type"]}
        for member in form["members"]:
            if member["optional"]:
                continue
            words, name = member["words"], member["name"]
            if name == "finding":
                part = found.get("part")
                found[name] = "BAD" if part == "AIR_LINE" and self.unit.narrowed > 0.5 else "GOOD"
            elif words:
                found[name] = "CREAMY" if "CREAMY" in words else words[0]
            else:
                found[name] = {"mm": 0.0, "ml": 200.0, "hours": 24.0, "practicalSalinity": 35.0,
                               "litresPerHour": 2200.0}.get(name, 40.0)
        if form["type"] == "levelBeyondWeir":
            found["mm"] = -100.0
        if form["type"] == "funnelLevel":
            found["mm"] = round(self.unit.level(), 1)
        if form["type"] == "headOverCrest":
            found["mm"] = 23.0
        return found

    def act(self, answer):
        """Does the step and writes it down; returns whether to ask again today."""
        step = answer["step"]
        kind = step["type"]
        self.taken.add(kind)
        if kind == "hold":
            return False  # nothing was done, so nothing is written down
        if kind == "look":
            as_ = answer["recordAs"]
            if step["what"] in ("CUP_VENT", "SEATING"):
                self.cannot.append(as_["cannot"])  # cannot be taken here: never ask again
            else:
                self.read(self.observation(as_["observations"][0]))
            return True
        if kind == "moveWeir":
            self.unit.crest = step["toCrestMm"]
            self.write(type="weirMove", toCrestMm=step["toCrestMm"], probe=step["probe"])
        if kind == "servicePart":
            for part in [step["part"], *step["also"]]:
                if part == "AIR_LINE":
                    self.unit.narrowed = 0.0
                self.write(type="service", part=part)
        if kind == "makeSafe":
            if step["byMm"] != 0:
                self.write(type="weirMove", toCrestMm=step["toCrestMm"])
            if step["airLitresPerHour"] != self.unit.air:
                self.write(type="settingChange", what="AIR", litresPerHour=step["airLitresPerHour"])
            if step["how"] == "START_PUMPS":
                self.write(type="happening", kind="PUMP_RESTARTED")
            self.unit.crest, self.unit.air = step["toCrestMm"], step["airLitresPerHour"]
            self.unit.surge = 0.0
        return False


def main(jar):
    unit = Unit()
    keeper = Keeper(unit)
    service = Service(jar)
    settings = {"weirCrestMm": 206, "flowLitresPerHour": 2200, "airLitresPerHour": 150,
                "waterCelsius": 25, "practicalSalinity": 35}
    for day in range(14):
        keeper.now = datetime(2026, 3, 2 + day, 8, tzinfo=timezone.utc)
        unit.surge = 1.0 if day == 9 else 0.0
        keeper.round()
        again, asked = True, 0
        while again and asked < 8:
            keeper.now += timedelta(minutes=5)
            asked += 1
            answer = service.ask({
                "version": 2, "id": "day-%d" % day, "options": {"cannotMeasure": keeper.cannot, "detail": "STEP"},
                "unit": "jetty", "settings": settings, "journal": keeper.journal, "now": keeper.now.isoformat()})
            print("day %2d  %s" % (day + 1, answer["what"]["text"]))
            again = keeper.act(answer)
    service.close()
    print("entries=%d steps=%s" % (len(keeper.journal), ",".join(sorted(keeper.taken))))


if __name__ == "__main__":
    main(sys.argv[1])
