/** Floor 7, not exported: forecasts of a journal's own readings against what came. */
package io.github.weirwise.score;
