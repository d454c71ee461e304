// SPDX-License-Identifier: Apache-2.0
package landfall.cards.spread;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.spread.Summary;

/**
 * A run that was stopped: the whole wish, and what its first blocks have shown, to the last bit. Going on from it gives
 * what running through would have given.
 */
public record SpreadState(SpreadSetup setup, Summary summary) {
    private static final String MARK = "landfall spread 1";
    private static final int LONGEST_WISH = 4 * 1024 * 1024;

    public byte[] bytes() {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            out.writeUTF(MARK);
            byte[] wish = SpreadFile.write(setup.wish()).getBytes(StandardCharsets.UTF_8);
            out.writeInt(wish.length);
            out.write(wish);
            summary.write(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    /** @param name of the file, for the refusal */
    public static Answer<SpreadState> of(byte[] bytes, String name) {
        try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes))) {
            if (!in.readUTF().equals(MARK)) {
                return refused(name);
            }
            int length = in.readInt();
            if (length < 0 || length > LONGEST_WISH) {
                return refused(name);
            }
            String wish = new String(in.readNBytes(length), StandardCharsets.UTF_8);
            Answer<SpreadSetup> setup = SpreadFile.read(wish).then(SpreadSetup::of);
            if (!(setup instanceof Answer.Of<SpreadSetup> of)) {
                return Answer.refused(setup.findings());
            }
            return Answer.of(new SpreadState(of.value(), Summary.read(of.value().plan(), in)));
        } catch (IOException e) {
            return refused(name);
        }
    }

    private static Answer<SpreadState> refused(String name) {
        return Answer.refused(new Finding(
                "state",
                name,
                "is not the state of a run that was stopped",
                "give the file that the stopped run named"));
    }
}
