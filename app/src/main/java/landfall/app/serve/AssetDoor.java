// SPDX-License-Identifier: Apache-2.0
package landfall.app.serve;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import landfall.app.shell.Assets;

/** Sends a file that pages load. Its address changes with its content, so a browser need never ask again. */
final class AssetDoor {
    private AssetDoor() {}

    static void send(Context ctx) {
        Assets.Asset asset = Assets.of(ctx.pathParam("name"))
                .filter(found -> found.digest().equals(ctx.pathParam("digest")))
                .orElseThrow(NotFoundResponse::new);
        ctx.header("Cache-Control", "public, max-age=31536000, immutable");
        ctx.contentType(asset.type()).result(asset.bytes());
    }
}
