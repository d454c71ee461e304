// SPDX-License-Identifier: Apache-2.0
package landfall.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaModifier;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Public methods and record components of the engine take and give quantities. A bare double there is a pure number,
 * and {@code house/bare-doubles.txt} says of each what it is. The quantities themselves, and the recording of a step,
 * are made of doubles.
 */
class BareDoublesTest {
    private static final Set<String> MADE_OF_DOUBLES = Set.of("landfall.quantity", "landfall.working");
    private static final Set<String> BARE =
            Set.of("double", "float", "java.lang.Double", "[D", "[[D", "java.util.OptionalDouble");

    @Test
    void everyBareDoubleIsAPureNumberWithItsReason() {
        Set<String> there = new TreeSet<>();
        for (JavaClass type : House.classes()) {
            if (isOfTheEngine(type) && isPublic(type)) {
                type.getCodeUnits().stream()
                        .filter(unit -> unit.getModifiers().contains(JavaModifier.PUBLIC))
                        .filter(BareDoublesTest::isBare)
                        .filter(unit -> !saidElsewhere(type, unit))
                        .map(unit -> member(type, unit))
                        .forEach(there::add);
            }
        }
        assertThat(there)
                .as("public members with bare doubles; a pure number is listed in house/bare-doubles.txt")
                .isEqualTo(new TreeSet<>(allowed().keySet()));
    }

    @Test
    void everyReasonIsGiven() {
        assertThat(allowed())
                .allSatisfy((member, reason) -> assertThat(reason).as(member).isNotBlank());
    }

    private static boolean isOfTheEngine(JavaClass type) {
        String source = type.getSource().orElseThrow().getUri().toString();
        return source.contains("/engine/") && !MADE_OF_DOUBLES.contains(type.getPackageName());
    }

    private static boolean isPublic(JavaClass type) {
        return type.getModifiers().contains(JavaModifier.PUBLIC)
                && type.getEnclosingClass().map(BareDoublesTest::isPublic).orElse(true);
    }

    private static boolean isBare(JavaCodeUnit unit) {
        return BARE.contains(unit.getRawReturnType().getName())
                || unit.getRawParameterTypes().stream().anyMatch(given -> BARE.contains(given.getName()));
    }

    /** A record's components say what its constructor takes, and a method of ours what those that override it do. */
    private static boolean saidElsewhere(JavaClass type, JavaCodeUnit unit) {
        return (unit.isConstructor() && type.isRecord())
                || type.getAllRawInterfaces().stream()
                        .filter(above -> above.getPackageName().startsWith("landfall"))
                        .flatMap(above -> above.getMethods().stream())
                        .anyMatch(above -> above.getName().equals(unit.getName())
                                && above.getRawParameterTypes().equals(unit.getRawParameterTypes()));
    }

    /** {@code thread.Lead.perTurn}; a class's constructor is called {@code new}. */
    private static String member(JavaClass type, JavaCodeUnit unit) {
        String name = unit.isConstructor() ? "new" : unit.getName();
        return type.getName().substring("landfall.".length()).replace('$', '.') + "." + name;
    }

    private static Map<String, String> allowed() {
        return House.text(House.root().resolve("app/src/test/resources/house/bare-doubles.txt"))
                .lines()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .map(line -> line.split("\\s+", 2))
                .collect(Collectors.toMap(
                        parts -> parts[0],
                        parts -> parts.length > 1 ? parts[1] : "",
                        (first, second) -> first,
                        TreeMap::new));
    }
}
