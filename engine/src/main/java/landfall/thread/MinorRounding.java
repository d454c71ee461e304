// SPDX-License-Identifier: Apache-2.0
package landfall.thread;

/** How inch minor diameters of three places are rounded. */
public enum MinorRounding {
    /** Once, half up, from the exact sum: the current standard. */
    CURRENT,
    /** To four places and then to three, half to even: what printed tables up to 2003 carry. */
    PRINTED
}
