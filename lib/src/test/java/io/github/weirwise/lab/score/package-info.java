/** Scores the library on a real journal: what was to be expected before each reading against what came. */
package io.github.weirwise.lab.score;
