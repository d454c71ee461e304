// SPDX-License-Identifier: Apache-2.0
package landfall.store.table;

/**
 * A cell of a table. A text that a calculation sheet would take for a formula is written with an apostrophe before it,
 * and read without.
 */
final class Cell {
    private static final String FORMULA = "=+-@\t\r";

    private Cell() {}

    static String write(String text) {
        return isFormula(text) || (text.startsWith("'") && isFormula(text.substring(1))) ? "'" + text : text;
    }

    static String read(String cell) {
        String rest = cell.startsWith("'") ? cell.substring(1) : "";
        boolean shielded = isFormula(rest) || (rest.startsWith("'") && isFormula(rest.substring(1)));
        return shielded ? rest : cell;
    }

    private static boolean isFormula(String text) {
        return !text.isEmpty() && FORMULA.indexOf(text.charAt(0)) >= 0;
    }
}
