package landfall.quantity;

/** The two systems of units a shop works in. */
public enum UnitSystem {
    INCH,
    METRIC
}
