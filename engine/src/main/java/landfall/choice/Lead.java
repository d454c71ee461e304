// SPDX-License-Identifier: Apache-2.0
package landfall.choice;

import landfall.material.WorkMaterial;
import landfall.tap.FluteKind;

/** The chamfer that leads the tap in, and its relief and skin: common practice. */
final class Lead {
    private Lead() {}

    static ChamferForm of(TapWish wish, FluteKind kind) {
        if (kind == FluteKind.SPIRAL_POINT) {
            return ChamferForm.POINTED;
        }
        if (!wish.through()) {
            return wish.byHand() ? ChamferForm.PLUG : ChamferForm.SEMI_BOTTOMING;
        }
        WorkMaterial material = wish.material();
        boolean hardens = material != null && material.group().hardensUnderTheTool();
        return wish.byHand() && !hardens ? ChamferForm.TAPER : ChamferForm.PLUG;
    }

    static TapChoice.Words words(TapWish wish, FluteKind kind) {
        return new TapChoice.Words(relief(wish, kind), surface(wish, kind));
    }

    private static String relief(TapWish wish, FluteKind kind) {
        if (kind == FluteKind.FORMING) {
            return "lobed";
        }
        return wish.byHand()
                ? "concentric: the thread guides the tap"
                : "con-eccentric; eccentric where the feed is synchronised";
    }

    private static String surface(TapWish wish, FluteKind kind) {
        WorkMaterial material = wish.material();
        if (kind == FluteKind.FORMING) {
            return "coated (TiN, TiCN)";
        }
        if (material == null) {
            return "bright, or steam oxide in steel";
        }
        return switch (material.group()) {
            case STEEL -> "steam oxide or TiN";
            case STAINLESS -> "steam oxide or TiCN";
            case HARDENED, TITANIUM_NICKEL -> "TiCN or TiAlN";
            case IRON -> "nitrided or TiCN";
            case PLASTIC -> "bright, or nitrided where it is filled";
            case ALUMINIUM, COPPER, MAGNESIUM, ZINC -> "bright";
        };
    }
}
