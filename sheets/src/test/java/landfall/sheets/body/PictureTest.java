// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.body;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import javax.imageio.ImageIO;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The still picture of a body")
class PictureTest {
    @Test
    void itShowsMetalAndTheStepsOfTheChamfer() throws IOException {
        byte[] png = Picture.png(Bodies.ground(), Length.ofMm(14), Angle.ofDeg(20));
        Files.createDirectories(Path.of("target"));
        Files.write(Path.of("target/body.png"), png);
        var image = ImageIO.read(new ByteArrayInputStream(png));
        Set<Integer> inks = new HashSet<>();
        int metal = 0;
        for (int x = 0; x < image.getWidth(); x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                int colour = image.getRGB(x, y) & 0xFFFFFF;
                int red = colour >> 16;
                int blue = colour & 0xFF;
                if (red == (colour >> 8 & 0xFF) && red == blue) {
                    metal++;
                } else if (blue > red) {
                    inks.add(colour);
                }
            }
        }
        assertThat(metal).as("grey pixels").isGreaterThan(40_000);
        assertThat(inks).as("tones of the chamfer").hasSizeGreaterThan(10);
    }
}
