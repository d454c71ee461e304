// SPDX-License-Identifier: Apache-2.0
package landfall.app.today;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The one box of Today")
class TypingTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "M8x1.25-6H | /thread?thread=M8x1.25-6H",
                "1/4-20 UNC | /thread?thread=1%2F4-20+UNC",
                "1/2-14 NPT | /thread?thread=1%2F2-14+NPT",
                "M8x1.35-6H | /thread?thread=M8x1.35-6H",
                "1/4-20 UNC GH3 HSS | /marking?marking=1%2F4-20+UNC+GH3+HSS",
                "nonsense | /thread?thread=nonsense",
                ".2545 20 tpi | /identify?major=.2545&tpi=20",
                ".2545 20 | /identify?major=.2545&tpi=20",
                ".2545 in 20 | /identify?major=.2545+in&tpi=20",
                "8.05 mm x 1.25 mm | /identify?major=8.05+mm&pitch=1.25+mm",
                "8.05 1.25 | /identify?major=8.05&pitch=1.25",
                "6.46 mm, 20 threads | /identify?major=6.46+mm&tpi=20"
            })
    void leadsWhereTheTextBelongs(String text, String address) {
        assertThat(Typing.address(text)).isEqualTo(address);
    }

    @ParameterizedTest
    @CsvSource({
        "http://127.0.0.1:7317/crib/T0001-W,/crib/T0001-W",
        "HTTPS://shop.example/job/J-12?x=1,/job/J-12",
        " http://shop:7317/crib/A.1 ,/crib/A.1"
    })
    void aScannedLabelIsAPageOfThisServer(String text, String page) {
        assertThat(Typing.label(text)).contains(page);
    }

    @ParameterizedTest
    @CsvSource({
        "M8x1.25-6H",
        "http://shop/people/ida",
        "http://shop/crib/../people",
        "//shop/crib/A-1",
        "javascript:alert(1)",
        "http://shop/crib/A-1/take-back"
    })
    void whatIsNoLabelOpensNoPage(String text) {
        assertThat(Typing.label(text)).isEmpty();
    }
}
