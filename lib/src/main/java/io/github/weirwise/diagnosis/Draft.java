package io.github.weirwise.diagnosis;

/**
 * A possibility before the unknowns that merely shift readings are drawn.
 *
 * @param possibility with eyes without bias and skimmate of ordinary darkness
 * @param logWeight logarithm of its weight before the readings
 * @param usualEye standard normal number for the bias of the usual reader's eye
 * @param otherEye the same for anybody else
 * @param tone standard normal number for the darkness of the unit's skimmate
 */
record Draft(Possibility possibility, double logWeight, double usualEye, double otherEye, double tone) {}
