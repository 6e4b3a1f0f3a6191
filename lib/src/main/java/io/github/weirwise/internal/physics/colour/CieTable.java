package io.github.weirwise.internal.physics.colour;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * The tables of the CIE: standard observer 1931, 2 degrees (ISO/CIE 11664-1), and relative power of illuminant D65
 * (ISO/CIE 11664-2, 100 at 560 nm), without unit, by wavelength in nm; every 5 nm from 360 to 830.
 */
public final class CieTable {
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
        return cell(i, 0);
    }

    /** A number as the tables have it: wavelength, the observer's x, y and z, daylight. */
    double cell(int i, int column) {
        return rows[i][column];
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
