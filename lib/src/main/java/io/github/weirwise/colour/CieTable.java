package io.github.weirwise.colour;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The CIE 1931 observer, weighted by illuminant D65 so that clear water has Y = 100; every 5 nm from 360 to 830. */
final class CieTable {
    static final CieTable D65 = read("cie-1931-2deg-d65-5nm.csv");

    private final double[][] rows;
    private final double scale;

    private CieTable(double[][] rows) {
        this.rows = rows;
        double sum = 0;
        for (double[] row : rows) {
            sum += row[2] * row[4];
        }
        this.scale = 100 / sum;
    }

    int size() {
        return rows.length;
    }

    double wavelengthNm(int i) {
        return rows[i][0];
    }

    /** Observer function 0 (x), 1 (y) or 2 (z), as tabulated. */
    double observer(int i, int function) {
        return rows[i][1 + function];
    }

    /** Relative power of D65, 100 at 560 nm. */
    double illuminant(int i) {
        return rows[i][4];
    }

    /** What the light of one row adds to the tristimulus value. */
    double weight(int i, int function) {
        return scale * rows[i][1 + function] * rows[i][4];
    }

    private static CieTable read(String name) {
        try (InputStream in = CieTable.class.getResourceAsStream(name);
                BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            List<double[]> rows = lines.lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("nm"))
                    .map(CieTable::row)
                    .toList();
            return new CieTable(rows.toArray(double[][]::new));
        } catch (IOException e) {
            throw new UncheckedIOException("the library's own table " + name + " cannot be read", e);
        }
    }

    private static double[] row(String line) {
        String[] cells = line.split(",");
        double[] numbers = new double[cells.length];
        for (int i = 0; i < cells.length; i++) {
            numbers[i] = Double.parseDouble(cells[i]);
        }
        return numbers;
    }
}
