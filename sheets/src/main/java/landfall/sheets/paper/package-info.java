/**
 * The set-up sheet as a page to print (XHTML) and as PDF.
 *
 * <p>Black on white, A4 or Letter, readable at arm's length: what to set, what the dials should read, what to tick and
 * where to note. Figures come ready from the engine; only rounding for the eye is done here. Figures in the drawings
 * stand in the text too, because the PDF's renderer turns lettering of drawings into outlines that cannot be searched.
 */
@NullMarked
package landfall.sheets.paper;

import org.jspecify.annotations.NullMarked;
