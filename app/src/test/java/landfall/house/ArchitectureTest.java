// SPDX-License-Identifier: Apache-2.0
package landfall.house;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Holds the code to the two tables of {@code docs/architecture.md}. */
class ArchitectureTest {
    private static final String ROOT_PACKAGE = "landfall.";

    /** Words that name a drawer for anything, not a thing of the trade. */
    private static final Pattern SAYS_NOTHING =
            Pattern.compile("(?i)\\b(util|utils|helper|helpers|manager|service|services|common|impl|misc)\\b");

    private static final Pattern CLASS_SAYS_NOTHING =
            Pattern.compile(".*(Utils?|Helper|Manager|Service|Impl|Data|Info)");

    @Test
    void packagesAreFreeOfCycles() {
        slices().matching("landfall.(**)").should().beFreeOfCycles().check(House.classes());
    }

    @Test
    void eachPackageHasARowAndEachRowAPackage() {
        Set<String> there = new TreeSet<>();
        House.classes().forEach(type -> there.add(shortName(type.getPackageName())));
        assertThat(packageTable().keySet()).containsExactlyInAnyOrderElementsOf(there);
    }

    @Test
    void packagesUseOnlyWhatTheTableAllows() {
        Map<String, Set<String>> table = packageTable();
        Map<String, String> wrong = new TreeMap<>();
        for (JavaClass type : House.classes()) {
            String from = shortName(type.getPackageName());
            Set<String> allowed = closure(from, table);
            for (Dependency use : type.getDirectDependenciesFromSelf()) {
                String targetPackage =
                        use.getTargetClass().getBaseComponentType().getPackageName();
                String to = shortName(targetPackage);
                if (targetPackage.startsWith(ROOT_PACKAGE) && !to.equals(from) && !allowed.contains(to)) {
                    wrong.putIfAbsent(from + " may not use " + to, use.getDescription());
                }
            }
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void theTableNamesOnlyPackagesThatStandAbove() {
        Set<String> above = new HashSet<>();
        packageTable().forEach((name, uses) -> {
            assertThat(above).as("what %s may use", name).containsAll(uses);
            above.add(name);
        });
    }

    @Test
    void modulesDependOnlyOnWhatTheTableAllows() {
        List<List<String>> rows = Table.under("Modules");
        List<String> modules = new ArrayList<>();
        List<String> wrong = new ArrayList<>();
        for (List<String> row : rows) {
            String module = Table.names(row.get(0)).iterator().next();
            modules.add(module);
            Set<String> allowed = new HashSet<>(Table.names(row.get(3)));
            Table.names(row.get(2)).forEach(name -> allowed.add("landfall-" + name));
            for (String used : shippedDependencies(House.root().resolve(module + "/pom.xml"))) {
                if (!allowed.contains(used)) {
                    wrong.add(module + " may not depend on " + used);
                }
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(modules).containsExactlyInAnyOrderElementsOf(modulesOfThePom());
    }

    @Test
    void noPackageOrClassIsCalledByAWordThatSaysNothing() {
        List<String> wrong = House.classes().stream()
                .filter(type -> SAYS_NOTHING.matcher(type.getPackageName()).find()
                        || CLASS_SAYS_NOTHING.matcher(type.getSimpleName()).matches())
                .map(JavaClass::getName)
                .sorted()
                .toList();
        assertThat(wrong).isEmpty();
    }

    /** Package to what its row names, in the table's order. */
    private static Map<String, Set<String>> packageTable() {
        Map<String, Set<String>> table = new LinkedHashMap<>();
        for (List<String> row : Table.under("Packages")) {
            String name = Table.names(row.get(0)).iterator().next();
            assertThat(table.put(name, Table.names(row.get(2))))
                    .as("second row of %s", name)
                    .isNull();
        }
        return table;
    }

    private static Set<String> closure(String name, Map<String, Set<String>> table) {
        Set<String> reached = new HashSet<>();
        List<String> open = new ArrayList<>(table.getOrDefault(name, Set.of()));
        while (!open.isEmpty()) {
            String next = open.remove(open.size() - 1);
            if (reached.add(next)) {
                open.addAll(table.getOrDefault(next, Set.of()));
            }
        }
        return reached;
    }

    private static String shortName(String packageName) {
        return packageName.startsWith(ROOT_PACKAGE) ? packageName.substring(ROOT_PACKAGE.length()) : packageName;
    }

    /** Artifacts that a module ships with or compiles against: not those of test scope, nor of a profile. */
    private static List<String> shippedDependencies(Path pom) {
        String text = House.text(pom).replaceAll("(?s)<(build|profiles|dependencyManagement)>.*?</\\1>", "");
        List<String> artifacts = new ArrayList<>();
        Matcher dependency =
                Pattern.compile("(?s)<dependency>(.*?)</dependency>").matcher(text);
        while (dependency.find()) {
            Matcher artifact = Pattern.compile("<artifactId>(.*?)</artifactId>").matcher(dependency.group(1));
            if (artifact.find() && !dependency.group(1).contains("<scope>test</scope>")) {
                artifacts.add(artifact.group(1));
            }
        }
        return artifacts;
    }

    private static List<String> modulesOfThePom() {
        List<String> modules = new ArrayList<>();
        Matcher module = Pattern.compile("<module>(.*?)</module>")
                .matcher(House.text(House.root().resolve("pom.xml")));
        while (module.find()) {
            modules.add(module.group(1));
        }
        return modules;
    }
}
