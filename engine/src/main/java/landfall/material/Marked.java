// SPDX-License-Identifier: Apache-2.0
package landfall.material;

import landfall.working.Source;
import landfall.working.Trust;

/** A figure of a list with where it comes from and how far it is to be trusted. */
public record Marked<T>(T value, Source source, Trust trust) {}
