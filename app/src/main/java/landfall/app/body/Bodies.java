// SPDX-License-Identifier: Apache-2.0
package landfall.app.body;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import landfall.cards.ask.GrindAsk;
import landfall.cards.ask.GrindTrial;
import landfall.fault.Answer;
import landfall.fault.OutOfRange;
import landfall.grind.GrindSetup;
import landfall.sheets.body.BodyFormat;
import landfall.solid.TapBody;
import landfall.thread.Hand;

/** The tap of a set-up as a body, with the hand that its call-out says. */
public final class Bodies {
    private static final GrindAsk QUESTION = new GrindAsk();

    private Bodies() {}

    /** Before the grind an even relief of the usual size is drawn, after it what the wheel leaves. */
    public enum State {
        BEFORE,
        AFTER
    }

    /** The body of a set-up as it was typed, or every reason why not. */
    public static Answer<TapBody> of(Map<String, String> typed, State state) {
        return trial(typed).then(trial -> of(trial, state));
    }

    /** The set-up as it was typed, with what is amiss in it. */
    public static Answer<GrindTrial> trial(Map<String, String> typed) {
        try {
            return QUESTION.trial(typed);
        } catch (OutOfRange e) {
            return Answer.refused(e.finding());
        }
    }

    private static Answer<TapBody> of(GrindTrial trial, State state) {
        GrindSetup setup = trial.setup();
        Answer<TapBody> body = state == State.BEFORE
                ? TapBody.of(setup.tap(), TapBody.USUAL_ERROR)
                : TapBody.ground(setup, trial.ground(), TapBody.USUAL_ERROR);
        return setup.tap().thread().hand() == Hand.LEFT ? body.map(TapBody::mirrored) : body;
    }

    /** A body as a file. */
    public static byte[] file(TapBody body, BodyFormat format) {
        try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            format.write(body, out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
