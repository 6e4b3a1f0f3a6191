package io.github.weirwise.json;

import io.github.weirwise.report.Phrase;
import io.github.weirwise.unit.LanternQuay;
import io.github.weirwise.unit.SkimmerUnit;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/** A unit, whole or by the name of one of the Lantern Quay units; a whole one may bring its document's version along. */
final class UnitShape implements Shape<SkimmerUnit> {
    private final Shape<SkimmerUnit> whole;
    private final Map<String, SkimmerUnit> byName = new LinkedHashMap<>();

    UnitShape(Shape<SkimmerUnit> whole) {
        this.whole = whole;
        for (SkimmerUnit unit : LanternQuay.units()) {
            byName.put(unit.name().toLowerCase(Locale.ROOT).replace(' ', '-'), unit);
        }
    }

    @Override
    public SkimmerUnit read(Place at) {
        if (at.node().isString()) {
            SkimmerUnit unit = byName.get(at.node().stringValue());
            if (unit == null) {
                throw at.wrong(
                        Phrase.of("json.notUnitKnown", at.found()),
                        Phrase.of("json.useOneGive", String.join(", ", byName.keySet())));
            }
            return unit;
        }
        FormatVersion.takeOptional(at.asObject());
        return whole.read(at);
    }

    @Override
    public JsonNode write(SkimmerUnit unit) {
        return whole.write(unit);
    }
}
