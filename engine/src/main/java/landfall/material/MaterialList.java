// SPDX-License-Identifier: Apache-2.0
package landfall.material;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import landfall.material.WorkMaterial.CuttingFigures;
import landfall.material.WorkMaterial.Naming;
import landfall.material.WorkMaterial.ReliefRange;
import landfall.quantity.Angle;
import landfall.quantity.Speed;
import landfall.quantity.Stress;

/** The file of materials, row by row; its head names the columns. */
final class MaterialList {
    private static final String RESOURCE = "/material/materials.csv";
    private static final int COLUMNS = 20;

    private MaterialList() {}

    static List<WorkMaterial> read() {
        try (InputStream in = MaterialList.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("missing resource " + RESOURCE);
            }
            return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .map(line -> row(line.split(";", -1)))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static WorkMaterial row(String[] cells) {
        if (cells.length != COLUMNS) {
            throw new IllegalStateException("row of " + cells.length + " columns: " + String.join(";", cells));
        }
        Between<Angle> relief = between(cells[11], Angle::ofDeg);
        return new WorkMaterial(
                new Naming(cells[0], List.of(cells[1].split("\\s*\\|\\s*")), cells[2], cells[3], cells[19]),
                coded(WorkGroup.values(), cells[4]),
                new CuttingFigures(
                        Origin.mark(pressure(cells[5]), cells[6]),
                        Origin.mark(new ChipForm(coded(ChipClass.values(), code(cells[7])), words(cells[7])), cells[8]),
                        Origin.mark(between(cells[9], Angle::ofDeg), cells[10]),
                        Origin.mark(between(cells[13], Speed::ofMPerMin), cells[14]),
                        Origin.mark(
                                new FluidAdvice(coded(CuttingFluid.values(), code(cells[15])), words(cells[15])),
                                cells[16])),
                new ReliefRange(
                        relief.least(),
                        relief.greatest(),
                        Origin.mark("", cells[12]).trust().words()),
                Origin.mark(between(cells[17], Stress::ofNPerMm2), cells[18]));
    }

    private static CuttingPressure pressure(String cell) {
        String[] two = cell.split(" ");
        return new CuttingPressure(Stress.ofNPerMm2(Double.parseDouble(two[0])), Double.parseDouble(two[1]));
    }

    private static <Q extends Comparable<Q>> Between<Q> between(String cell, DoubleFunction<Q> unit) {
        String[] ends = cell.split(" to ");
        return new Between<>(unit.apply(Double.parseDouble(ends[0])), unit.apply(Double.parseDouble(ends[1])));
    }

    private static String code(String cell) {
        return cell.substring(0, cell.indexOf(':'));
    }

    private static String words(String cell) {
        return cell.substring(cell.indexOf(':') + 1).strip();
    }

    private static <E extends Enum<E>> E coded(E[] values, String code) {
        String name = code.toUpperCase(Locale.ROOT).replace('-', '_');
        return Arrays.stream(values)
                .filter(value -> value.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("not in the list's codes: " + code));
    }
}
