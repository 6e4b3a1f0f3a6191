package io.github.weirwise.lab.truth;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Amount and level of the full foam column on a grid of outside water, air and bubble life; straight lines between. */
final class ColumnTable {
    private static final Map<String, ColumnTable> ALL = read();

    private final double[] rise;
    private final List<Double> air = new ArrayList<>();
    private final List<Double> life = new ArrayList<>();
    private final List<double[]> logs = new ArrayList<>();
    private final List<double[]> levels = new ArrayList<>();

    private ColumnTable(double[] rise) {
        this.rise = rise;
    }

    /** All tables of a shape, one for each law of lives that was solved. */
    static List<ColumnTable> of(String shape) {
        return ALL.entrySet().stream()
                .filter(each -> each.getKey().startsWith(shape + ","))
                .map(Map.Entry::getValue)
                .toList();
    }

    private static Map<String, ColumnTable> read() {
        Map<String, ColumnTable> all = new TreeMap<>();
        try (InputStream in = ColumnTable.class.getResourceAsStream("column.csv")) {
            double[] rise = {};
            for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\n")) {
                String[] cells = line.split(",");
                if (line.startsWith("rise")) {
                    rise = numbers(cells, 1, cells.length - 1);
                } else if (!line.startsWith("#")) {
                    double[] sizes = rise;
                    all.computeIfAbsent(cells[0] + "," + cells[1], key -> new ColumnTable(sizes))
                            .add(cells);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return all;
    }

    private void add(String[] cells) {
        double airShare = Double.parseDouble(cells[2]);
        double lifeShare = Double.parseDouble(cells[3]);
        if (!air.contains(airShare)) {
            air.add(airShare);
        }
        if (!life.contains(lifeShare)) {
            life.add(lifeShare);
        }
        logs.add(numbers(cells, 4, rise.length));
        levels.add(numbers(cells, 4 + rise.length, rise.length));
    }

    private static double[] numbers(String[] cells, int from, int count) {
        double[] values = new double[count];
        for (int i = 0; i < count; i++) {
            values[i] = Double.parseDouble(cells[from + i]);
        }
        return values;
    }

    /** Logarithm of the amount over the wanted. */
    double log(double riseMm, double airShare, double lifeShare) {
        return at(logs, riseMm, airShare, lifeShare);
    }

    /** Level over the funnel base, mm. */
    double levelMm(double riseMm, double airShare) {
        double beyond = Math.max(0, riseMm - rise[rise.length - 1]) + Math.min(0, riseMm - rise[0]);
        return at(levels, riseMm, airShare, 1) + beyond;
    }

    private double at(List<double[]> table, double riseMm, double airShare, double lifeShare) {
        int a = cell(air, airShare);
        int l = cell(life, lifeShare);
        int r = 0;
        while (r < rise.length - 2 && rise[r + 1] <= riseMm) {
            r++;
        }
        double alongA = along(air.get(a), air.get(a + 1), airShare);
        double alongL = along(life.get(l), life.get(l + 1), lifeShare);
        double alongR = along(rise[r], rise[r + 1], riseMm);
        double sum = 0;
        for (int i = 0; i < 4; i++) {
            double[] row = table.get((a + i / 2) * life.size() + l + i % 2);
            double weight = (i / 2 == 1 ? alongA : 1 - alongA) * (i % 2 == 1 ? alongL : 1 - alongL);
            sum += weight * (row[r] + alongR * (row[r + 1] - row[r]));
        }
        return sum;
    }

    private static int cell(List<Double> values, double at) {
        int i = 0;
        while (i < values.size() - 2 && values.get(i + 1) <= at) {
            i++;
        }
        return i;
    }

    private static double along(double low, double high, double at) {
        return Math.max(0, Math.min(1, (at - low) / (high - low)));
    }
}
