package io.github.weirwise.demo.desk;

import io.github.weirwise.report.Unit;
import io.github.weirwise.unit.Settings;

/** What can be turned in free play, with the unit its number is told in. */
public enum Lever {
    WEIR(Unit.MILLIMETRE) {
        @Override
        public double of(Settings settings) {
            return settings.weirCrestMm();
        }
    },
    FLOW(Unit.LITRE_PER_HOUR) {
        @Override
        public double of(Settings settings) {
            return settings.flowLitresPerHour();
        }
    },
    AIR(Unit.LITRE_PER_HOUR) {
        @Override
        public double of(Settings settings) {
            return settings.airLitresPerHour();
        }
    },
    SALINITY(Unit.SALINITY) {
        @Override
        public double of(Settings settings) {
            return settings.practicalSalinity();
        }
    },
    LOAD(Unit.MILLIGRAM_PER_LITRE) {
        @Override
        public double of(Settings settings) {
            return settings.condition().skimmableMgPerLitre();
        }
    },
    NECK(Unit.SHARE) {
        @Override
        public double of(Settings settings) {
            return settings.condition().neckFouling();
        }
    },
    AIR_LINE(Unit.SHARE) {
        @Override
        public double of(Settings settings) {
            return settings.condition().airLineOpening();
        }
    };

    private final Unit unit;

    Lever(Unit unit) {
        this.unit = unit;
    }

    public Unit unit() {
        return unit;
    }

    /** Its value in some settings. */
    public abstract double of(Settings settings);
}
