/**
 * What is this tap? Candidates for an unmarked tap from what can be measured on it.
 *
 * <p>A score is a likelihood times how common such a tap is, normed with everything else ({@code other}) to 1. It is an
 * estimate: widths and weights are practice and are stated in the method note, docs/methods/what-is-this-tap.md. A
 * tap's crest stands over nominal when fresh, at it when worn, and under it by design on the first taps of a hand set:
 * so an undersize tap is not called worn before its rings are known.
 */
@NullMarked
package landfall.identity;

import org.jspecify.annotations.NullMarked;
