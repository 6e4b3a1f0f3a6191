package io.github.weirwise.internal.physics.colour;

import io.github.weirwise.report.Range;
import io.github.weirwise.report.Require;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * The tables of the CIE: standard observer 1931, 2 degrees (ISO/CIE 11664-1), and relative power of illuminant D65
 * (ISO/CIE 11664-2, 100 at 560 nm), without unit, by wavelength in nm; every 5 nm from 360 to 830, linear in between.
 */
public final class CieTable {
    /** Wavelengths of the tables, nm. */
    public static final Range WAVELENGTH_NM = new Range(360, 830);

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

    /** Which of the three functions of the CIE 1931 observer. */
    public enum Observer {
        /** Red most of all. */
        X,
        /** Brightness. */
        Y,
        /** Blue. */
        Z
    }

    /**
     * One of the observer's colour-matching functions.
     *
     * @param function x, y or z
     * @param wavelengthNm 360 to 830 nm
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double observer(Observer function, double wavelengthNm) {
        return D65.between(wavelengthNm, 1 + function.ordinal());
    }

    /**
     * Relative power of illuminant D65, 100 at 560 nm.
     *
     * @param wavelengthNm 360 to 830 nm
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double daylight(double wavelengthNm) {
        return D65.between(wavelengthNm, 4);
    }

    private double between(double wavelengthNm, int column) {
        Require.inRange(
                "wavelengthNm", wavelengthNm, WAVELENGTH_NM.low(), WAVELENGTH_NM.high(), "nm", "stay in the table");
        double place = (wavelengthNm - WAVELENGTH_NM.low()) / 5;
        int i = Math.min((int) place, rows.length - 2);
        double share = place - i;
        return rows[i][column] * (1 - share) + rows[i + 1][column] * share;
    }

    int size() {
        return rows.length;
    }

    double wavelengthNm(int i) {
        return rows[i][0];
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
