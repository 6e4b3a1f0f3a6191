/** Floor 0, not exported: values written out as bytes and read back, bit by bit the same. */
package io.github.weirwise.internal.kept;
