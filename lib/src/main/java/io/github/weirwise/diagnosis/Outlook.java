package io.github.weirwise.diagnosis;

/**
 * What one possibility expects to be seen at some settings.
 *
 * @param submergenceMm true column level over the funnel base
 * @param outsideMm chamber level over the funnel base
 * @param headMm head over the true crest
 * @param logAmount natural logarithm of the amount of skimmate over the target's
 * @param darknessPtCo darkness
 * @param airLitresPerHour air that enters
 * @param flooding water at or over the lip, or a flooded column
 * @since 0.1
 */
public record Outlook(
        double submergenceMm,
        double outsideMm,
        double headMm,
        double logAmount,
        double darknessPtCo,
        double airLitresPerHour,
        boolean flooding) {
    /** The same with another amount. */
    Outlook withLogAmount(double value) {
        return new Outlook(submergenceMm, outsideMm, headMm, value, darknessPtCo, airLitresPerHour, flooding);
    }
}
