// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import landfall.fault.Caution;
import landfall.grind.Place;
import landfall.quantity.Length;

/** What these readings cannot tell, and which reading would tell it. */
final class Doubts {
    private final DialAsk ask;
    private final DialFindings found;
    private final LandModel model;
    private final List<Caution> list = new ArrayList<>();

    private Doubts(DialAsk ask, DialFindings found, LandModel model) {
        this.ask = ask;
        this.found = found;
        this.model = model;
    }

    static List<Caution> of(DialAsk ask, DialFindings found, LandModel model) {
        Doubts doubts = new Doubts(ask, found, model);
        doubts.model();
        doubts.runOut();
        doubts.reference();
        doubts.turned();
        doubts.phase();
        doubts.spread();
        doubts.outliers();
        doubts.zero();
        doubts.target();
        doubts.list.addAll(TapDoubts.of(ask, found));
        return doubts.list;
    }

    private void model() {
        int[] lands = model.lands;
        if (model.terms == Terms.RISE_ONLY) {
            add(
                    "runOutNotTold",
                    "Eccentricity and its direction cannot be told from these readings, nor land heights and load"
                            + " shares, and run-out leans into the slope of a single land: read three lands or more,"
                            + " spread round the tap, at four angles each.",
                    "lands read: " + lands.length);
        } else if (model.terms == Terms.COMMON_ZERO) {
            add(
                    "heightsNotTold",
                    lands.length < 3
                            ? "Land heights cannot be told from fewer than three lands; all are taken as one"
                                    + " height, and what differs is counted as run-out: read every land."
                            : "The angles lie too close together to tell land heights from run-out; all"
                                    + " lands are taken as one height: read each land from edge to heel.",
                    "lands read: " + lands.length);
        } else {
            heightsLikeRunOut();
        }
        if (lands.length < ask.tap().flutes()) {
            String few = "Only %s of %d were read: "
                    .formatted(
                            Arrays.stream(lands)
                                    .mapToObj(land -> "land " + land)
                                    .collect(Collectors.joining(", ")),
                            ask.tap().flutes());
            add("landsNotRead", few + ofTheOthers(), "lands read: " + lands.length);
        }
        boolean shared = found.lands().worst() != null;
        if (!shared && found.place() != Place.CHAMFER_STILL) {
            add(
                    "sharesNotTold",
                    "Load shares are told by a dial square to the chamfer alone, with the cam at rest: read each land"
                            + " there, at its edge, twice between, and at its heel.",
                    found.place().code());
        }
    }

    private String ofTheOthers() {
        return switch (model.terms) {
            case HEIGHTS -> "nothing is said of the others, nor of load shares. Read the others at the same angles.";
            case COMMON_ZERO ->
                "edge and share of the others follow from the run-out, as if all lands were of one height. Read the"
                        + " others at the same angles.";
            case RISE_ONLY, RUN_OUT_ONLY -> "nothing is said of the others. Read them at the same angles.";
        };
    }

    private void heightsLikeRunOut() {
        DialFit common = found.fits().commonZero();
        RunOut wide = found.fits().main().runOut();
        RunOut narrow = common == null ? null : common.runOut();
        if (wide != null && narrow != null) {
            add(
                    "heightsLikeRunOut",
                    ("Over one land run-out and land height look nearly alike, so both are told"
                                    + " widely; with all lands of one height the eccentricity would be %s,"
                                    + " uncertainty %s. A reference set on thread or shank tells them apart.")
                            .formatted(
                                    Numbers.both(narrow.eccentricity().value()),
                                    Numbers.both(narrow.eccentricity().uncertainty())),
                    "eccentricity");
        }
    }

    private void runOut() {
        RunOut runOut = found.runOut();
        if (runOut != null && runOut.direction() == null) {
            add(
                    "directionNotTold",
                    "The eccentricity is not told apart from none, so its direction may be any: the figure is"
                            + " only the likeliest. Read with a finer dial, or the whole land from edge to heel.",
                    "eccentricity");
        }
        if (found.place() == Place.END || found.place() == Place.FLANK) {
            add(
                    "axialRunOut",
                    "Along the axis the once-a-turn part is float or lobes of unequal height, not run-out of the tap.",
                    found.place().code());
        }
    }

    private void reference() {
        Readings reference = ask.beside().reference();
        if (reference == null && Against.isOnChamfer(found.place())) {
            add(
                    "runOutProvesNothing",
                    "Run-out counts against the tap's own thread, not against the spindle: a tap"
                            + " dialled in the chucking it was ground in always runs true and proves"
                            + " nothing. Dial the thread's crests or the shank as a reference, in another"
                            + " set-up if it has been ground.",
                    "eccentricity");
        } else if (reference != null && reference.place() == Place.SHANK) {
            add(
                    "shankNotThread",
                    "The reference is the shank; what the thread runs out to the shank stays unknown.",
                    "reference");
        }
        if (reference != null && model.terms == Terms.RISE_ONLY) {
            add(
                    "referenceNotUsed",
                    "The reference was not used: no run-out is told that it could be taken off.",
                    "reference");
        }
    }

    /** A falling land shows run-out turned towards its edge by its relief: e tan(α) of it cannot be taken off. */
    private void turned() {
        Against against = found.against();
        if (against == null || !Against.isOnChamfer(found.place())) {
            return;
        }
        double tangent =
                Math.abs(found.slope().value().mm()) / ask.tap().radius().mm();
        Length left = against.reference().eccentricity().value().times(tangent);
        if (left.mm() > ask.readings().resolution().mm() / 2) {
            add(
                    "reliefTurnsRunOut",
                    ("A relieved land shows run-out turned towards its edge by the relief angle, so up to %s of the"
                                    + " reference's own run-out is left over: re-seat until the reference runs true.")
                            .formatted(Numbers.both(left)),
                    "eccentricity");
        }
    }

    private void phase() {
        Phase phase = found.fits().phase();
        if (phase == null) {
            add(
                    "phaseNotTold",
                    "Where the rise begins cannot be told from readings on the rise alone: it"
                            + " takes two readings before it, on the end of the spindle or the shank with"
                            + " the cam at work, or all lands read at the edge with the zero fixed there.",
                    "slope");
            return;
        }
        add(
                "riseBeginsLate",
                ("The rise begins %s deg behind the edge (uncertainty %s deg); its slope from"
                                        + " there on is %s per radian, the")
                                .formatted(
                                        Numbers.plain(phase.start().value().deg()),
                                        Numbers.plain(
                                                phase.start().uncertainty().deg()),
                                        Numbers.both(phase.slope().value()))
                        + " fitted slope is a mean over dwell and rise.",
                "slope");
    }

    private void spread() {
        DialFit fit = found.fits().main();
        if (fit.spare() == 0) {
            add(
                    "noSpareReading",
                    "There is no reading to spare, so the scatter of hand and dial is not in the"
                            + " uncertainties: read one more angle on each land.",
                    "readings: " + ask.readings().list().size());
        } else if (fit.spread().mm()
                <= Spread.ofRounding(ask.readings().resolution().mm())) {
            add(
                    "dialDecides",
                    "The scatter is no more than the dial's division explains; a finer dial would tell more.",
                    "resolution " + Numbers.both(ask.readings().resolution()));
        }
    }

    private void outliers() {
        for (Outlier outlier : found.fits().outliers()) {
            add(
                    "outlier",
                    ("Reading %s: %s, which the others do not bear out; it is in the fit all the same,"
                                            + " and the fit without it")
                                    .formatted(
                                            outlier.reading().name(),
                                            Numbers.both(outlier.reading().value()))
                            + " stands beside: read it again.",
                    "studentised residual %s, limit %s"
                            .formatted(Numbers.plain(outlier.studentised()), Numbers.plain(outlier.limit())));
        }
    }

    private void target() {
        if (found.mend().wanted() == null) {
            add(
                    "targetNotTold",
                    "What the dial should read here hangs on the rises of the fixture, which are not told, so no"
                            + " target and no rise to turn: name the fixture.",
                    found.place().code());
        }
    }

    private void zero() {
        List<Reading> edges = ask.readings().list().stream()
                .filter(reading -> reading.angle().deg() == 0)
                .toList();
        boolean everyLand = edges.stream().mapToInt(Reading::land).distinct().count() == model.lands.length;
        if (model.lands.length > 1
                && everyLand
                && edges.stream().allMatch(r -> r.value().equals(Length.ZERO))) {
            add(
                    "zeroedAtEveryEdge",
                    "Every land reads 0 at its edge; if the dial was set to 0 there each time,"
                            + " heights, run-out and load shares are those of the setting and not of the"
                            + " tap: set the dial once and read all lands.",
                    "readings at 0 deg");
        }
    }

    private void add(String code, String text, String raisedBy) {
        list.add(new Caution(code, text, raisedBy));
    }
}
