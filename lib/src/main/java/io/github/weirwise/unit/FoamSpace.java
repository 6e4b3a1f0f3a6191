package io.github.weirwise.unit;

/** The room between the water surface in a column and the lip, in SI units; exact for cylinder, cone and neck. */
final class FoamSpace {
    private final double funnelBaseM;
    private final double coneTopM;
    private final double lipM;
    private final double boreRadiusM;
    private final double neckRadiusM;
    private final double radiusPerM;
    private final double coneVolumeM3;
    private final double neckVolumeM3;

    FoamSpace(Column column) {
        funnelBaseM = column.funnelBaseMm() / 1000;
        coneTopM = (column.funnelBaseMm() + column.funnelHeightMm()) / 1000;
        lipM = column.lipMm() / 1000;
        boreRadiusM = column.boreMm() / 2000;
        neckRadiusM = column.neckBoreMm() / 2000;
        radiusPerM = (neckRadiusM - boreRadiusM) / (coneTopM - funnelBaseM);
        coneVolumeM3 = frustum(coneTopM - funnelBaseM, boreRadiusM);
        neckVolumeM3 = Math.PI * neckRadiusM * neckRadiusM * (lipM - coneTopM);
    }

    /** Volume from the level up to the lip, m3; zero for a level at or over the lip. */
    double volumeAboveM3(double levelM) {
        if (levelM >= lipM) {
            return 0;
        }
        if (levelM >= coneTopM) {
            return Math.PI * neckRadiusM * neckRadiusM * (lipM - levelM);
        }
        if (levelM >= funnelBaseM) {
            double radius = boreRadiusM + radiusPerM * (levelM - funnelBaseM);
            return neckVolumeM3 + frustum(coneTopM - levelM, radius);
        }
        return neckVolumeM3 + coneVolumeM3 + Math.PI * boreRadiusM * boreRadiusM * (funnelBaseM - levelM);
    }

    private double frustum(double heightM, double lowerRadiusM) {
        return Math.PI
                / 3
                * heightM
                * (lowerRadiusM * lowerRadiusM + lowerRadiusM * neckRadiusM + neckRadiusM * neckRadiusM);
    }

    double lipM() {
        return lipM;
    }

    double neckAreaM2() {
        return Math.PI * neckRadiusM * neckRadiusM;
    }

    double boreAreaM2() {
        return Math.PI * boreRadiusM * boreRadiusM;
    }
}
