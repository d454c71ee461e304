// SPDX-License-Identifier: Apache-2.0
package landfall.app.shell;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The few files that pages load: style, scripts and mark. Their address carries a digest of their content, so that a
 * browser may keep them for ever and yet never shows an old one.
 */
public final class Assets {
    /** One file as it is sent. */
    public record Asset(String type, byte[] bytes, String digest) {}

    private static final String THREE = "three.module.min.js";
    /** Asked for by {@link #THREE} from beside it, so that both have one address. */
    private static final String THREE_CORE = "three.core.min.js";

    private static final Map<String, String> TYPES = Map.of(
            "landfall.css",
            "text/css; charset=utf-8",
            "landfall.js",
            "text/javascript; charset=utf-8",
            "waiting.js",
            "text/javascript; charset=utf-8",
            "body.js",
            "text/javascript; charset=utf-8",
            "turn.js",
            "text/javascript; charset=utf-8",
            THREE,
            "text/javascript; charset=utf-8",
            THREE_CORE,
            "text/javascript; charset=utf-8",
            "mark.svg",
            "image/svg+xml");

    private static final Map<String, Asset> FILES = read();

    private Assets() {}

    /** The address of a file in the present program. */
    public static String address(String name) {
        Asset asset = FILES.get(name);
        if (asset == null) {
            throw new IllegalStateException("no asset of that name: " + name);
        }
        return "/assets/" + asset.digest() + "/" + name;
    }

    public static Optional<Asset> of(String name) {
        return Optional.ofNullable(FILES.get(name));
    }

    private static Map<String, Asset> read() {
        Map<String, Asset> files = new TreeMap<>();
        TYPES.forEach((name, type) -> {
            byte[] bytes = bytes("/landfall/app/assets/" + name);
            byte[] named = name.equals(THREE_CORE) ? bytes("/landfall/app/assets/" + THREE) : bytes;
            files.put(name, new Asset(type, bytes, digest(named)));
        });
        return Map.copyOf(files);
    }

    private static byte[] bytes(String resource) {
        try (InputStream in = Assets.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("the program is not whole, it lacks " + resource);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String digest(byte[] bytes) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(bytes);
            return HexFormat.of().formatHex(hash, 0, 6);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("SHA-256 is part of every JDK", e);
        }
    }
}
