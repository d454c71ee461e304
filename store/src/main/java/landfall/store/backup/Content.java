// SPDX-License-Identifier: Apache-2.0
package landfall.store.backup;

/** What a backup or a store holds: two of equal content are equal, word for word. */
public record Content(long things, long events, long jobs, long people, String sha256) {}
