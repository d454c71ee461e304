// SPDX-License-Identifier: Apache-2.0
package landfall.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Every form that changes what is kept brings back for whom it was written. */
class FormTokenTest {
    private static final Pattern FORM = Pattern.compile("<form [^>]*method=\"post\"[^>]*>(\\s*)(\\S.*)");

    @Test
    void everyFormThatIsPostedBeginsWithTheToken() {
        List<String> wrong = new ArrayList<>();
        int forms = 0;
        for (Path file : House.files("app/src/main/jte/.*\\.jte")) {
            String text = House.text(file);
            Matcher form = FORM.matcher(text);
            while (form.find()) {
                forms++;
                if (!form.group().contains("action=\"/sign-in\"")
                        && !form.group(2).startsWith("@template.part.token(frame = frame)")) {
                    wrong.add(House.place(file, text, form.start())
                            + " needs @template.part.token(frame = frame) as its first line");
                }
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(forms).isGreaterThan(8);
    }
}
