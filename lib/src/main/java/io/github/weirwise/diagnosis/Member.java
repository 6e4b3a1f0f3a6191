package io.github.weirwise.diagnosis;

/**
 * A point of the unit cube with the possibility that it stands for.
 *
 * @param point the point
 * @param possibility what it stands for
 * @param log logarithm of its weight against the uniform density on the cube
 * @param observationLogs logarithms of the likelihood, observation by observation
 */
record Member(double[] point, Possibility possibility, double log, double[] observationLogs) {}
