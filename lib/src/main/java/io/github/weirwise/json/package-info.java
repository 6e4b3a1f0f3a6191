/**
 * Floor 9: the service, versioned JSON documents, a journal file and a filter for programs in other languages.
 *
 * <p>A text becomes a tree by a strict parser, the tree becomes records of the lower floors, member by component, and
 * whatever is wrong on the way becomes one {@link io.github.weirwise.json.DocumentException} that says where. The way back
 * is the same in reverse. {@link io.github.weirwise.json.WeirwiseJson} is the front door; a
 * {@link io.github.weirwise.json.JournalFile} keeps one unit's journal on disk; the
 * {@link io.github.weirwise.json.LineFilter} answers requests that come in line by line.
 *
 * <p>Member names are the names of the records' components, units included ({@code weirCrestMm}). No type of the JSON
 * parser is visible here.
 */
package io.github.weirwise.json;
