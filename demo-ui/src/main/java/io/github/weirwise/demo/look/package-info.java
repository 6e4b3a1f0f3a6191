/** Colours, fonts and words: everything that a person sees takes them from here. */
package io.github.weirwise.demo.look;
