/** What is pressed and read beside the picture. Each panel is a plain component that is refreshed from a desk. */
package io.github.weirwise.demo.panel;
