package io.github.weirwise.internal.physics.colour;

/** The functions behind the library's table of the CIE at any wavelength from 360 to 830 nm, straight between its rows; to hold it against print. */
public final class CieFunctions {
    private static final double FIRST_NM = 360;
    private static final double STEP_NM = 5;
    private static final int DAYLIGHT = 4;

    private CieFunctions() {}

    /** Which of the three functions of the CIE 1931 observer. */
    public enum Observer {
        /** Red most of all. */
        X,
        /** Brightness. */
        Y,
        /** Blue. */
        Z
    }

    /** One of the observer's colour-matching functions. */
    public static double observer(Observer function, double wavelengthNm) {
        return between(wavelengthNm, 1 + function.ordinal());
    }

    /** Relative power of illuminant D65, 100 at 560 nm. */
    public static double daylight(double wavelengthNm) {
        return between(wavelengthNm, DAYLIGHT);
    }

    private static double between(double wavelengthNm, int column) {
        CieTable table = CieTable.D65;
        double place = (wavelengthNm - FIRST_NM) / STEP_NM;
        int i = Math.min((int) place, table.size() - 2);
        double share = place - i;
        return table.cell(i, column) * (1 - share) + table.cell(i + 1, column) * share;
    }
}
