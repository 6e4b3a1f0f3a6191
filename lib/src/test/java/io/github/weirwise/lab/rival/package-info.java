/** Who plays the hidden tanks: the adviser, the careful keeper and other rules, and the oracle. */
package io.github.weirwise.lab.rival;
