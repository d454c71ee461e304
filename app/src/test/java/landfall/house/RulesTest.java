// SPDX-License-Identifier: Apache-2.0
package landfall.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import landfall.working.Rule;
import landfall.working.Trust;
import landfall.working.WorkingCheck;
import org.junit.jupiter.api.Test;

/** Every printed formula in the shipped code. */
class RulesTest {
    private final Map<String, Rule> rules = rules();
    private final Bibliography bibliography = Bibliography.ofTheProject();

    @Test
    void thereAreRules() {
        assertThat(rules).isNotEmpty();
    }

    @Test
    void everyFormulaCanBeRead() {
        List<String> wrong = new ArrayList<>();
        rules.forEach((place, rule) -> WorkingCheck.unreadable(rule).ifPresent(why -> wrong.add(place + ": " + why)));
        assertThat(wrong).isEmpty();
    }

    @Test
    void everyFigureIsNamedAndSaysWhatItIs() {
        List<String> wrong = new ArrayList<>();
        rules.forEach((place, rule) -> {
            if (rule.symbol().isBlank() || rule.unit().isBlank() || rule.means().isBlank()) {
                wrong.add(place);
            }
        });
        assertThat(wrong).as("rules without a symbol, a unit or a meaning").isEmpty();
    }

    @Test
    void noRuleClaimsAStandardWhosePublisherIsNotRecorded() {
        List<String> wrong = new ArrayList<>();
        rules.forEach((place, rule) -> {
            String key = rule.source().key();
            if (rule.trust() == Trust.STANDARD && !bibliography.entry(key).namesItsPublisher()) {
                wrong.add(place + " claims the standard " + key);
            }
        });
        assertThat(wrong).isEmpty();
    }

    /** Constants by {@code Class.NAME}. */
    private static Map<String, Rule> rules() {
        Map<String, Rule> rules = new LinkedHashMap<>();
        for (JavaClass type : House.classes()) {
            for (JavaField field : type.getFields()) {
                if (field.getRawType().isEquivalentTo(Rule.class)
                        && field.getModifiers().contains(JavaModifier.STATIC)) {
                    rules.put(type.getSimpleName() + "." + field.getName(), value(field.reflect()));
                }
            }
        }
        return rules;
    }

    private static Rule value(Field field) {
        try {
            field.setAccessible(true);
            return (Rule) field.get(null);
        } catch (IllegalAccessException e) {
            throw new IllegalStateException("cannot read " + field, e);
        }
    }
}
