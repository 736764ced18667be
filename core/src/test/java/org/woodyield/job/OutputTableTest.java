package org.woodyield.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OutputTableTest {

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@sum", "\t=1", "\r=1", "\n=1", "\uff1d1"})
    void aTextThatASpreadsheetWouldRunGetsAnApostrophe(String text) {
        assertThat(OutputTable.harmless(text)).isEqualTo("'" + text);
    }

    @Test
    void negativeNumbersStayNumbers() {
        OutputTable table = new OutputTable("log", "gain");
        table.row().text("-A").number(-1.255, 2);
        assertThat(text(table)).isEqualTo("log,gain\n'-A,-1.26\n");
    }

    @Test
    void minusZeroIsZero() {
        assertThat(OutputTable.fixed(-0.0, 1)).isEqualTo("0.0");
        assertThat(OutputTable.fixed(-0.04, 1)).isEqualTo("0.0");
    }

    @Test
    void aNumberThatIsNoneIsNeverWritten() {
        assertThatThrownBy(() -> OutputTable.fixed(Double.NaN, 1)).isInstanceOf(IllegalStateException.class);
    }

    @Test
    void cellsAreQuotedWhereTheyMustBeAndLinesEndWithLineFeeds() {
        OutputTable table = new OutputTable("a", "b");
        table.row().text("one, \"two\"").text("x\ny");
        assertThat(text(table)).isEqualTo("a,b\n\"one, \"\"two\"\"\",\"x\ny\"\n");
    }

    /** The independent writer quotes where this one does. */
    @Property
    void theBytesAreThoseOfAWriterOfItsOwn(@ForAll String first, @ForAll String second) {
        OutputTable table = new OutputTable("#a", "b");
        table.row().text(first).text(second);
        StringWriter other = new StringWriter();
        try (CsvWriter writer =
                CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(other)) {
            writer.writeRecord("#a", "b");
            writer.writeRecord(OutputTable.harmless(first), OutputTable.harmless(second));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        assertThat(table.bytes()).isEqualTo(other.toString().getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void aRowIsFilledBeforeTheNext() {
        OutputTable table = new OutputTable("a");
        OutputTable.Row first = table.row().text("x");
        table.row().text("y");
        assertThatThrownBy(() -> first.text("z")).isInstanceOf(IllegalStateException.class);
        assertThat(text(table)).isEqualTo("a\nx\ny\n");
    }

    @Test
    void aRowTooShortIsAFault() {
        OutputTable table = new OutputTable("a", "b");
        table.row().text("x");
        assertThatThrownBy(table::bytes).isInstanceOf(IllegalStateException.class);
    }

    @Property
    void whatIsWrittenReadsBack(@ForAll String first, @ForAll String second) {
        OutputTable table = new OutputTable("a", "b");
        table.row().text(first).text(second);
        List<CsvRecord> records = new ArrayList<>();
        CsvReader.builder().ofCsvRecord(text(table)).forEach(records::add);
        assertThat(records).hasSize(2);
        assertThat(records.get(1).getFields())
                .containsExactly(valid(OutputTable.harmless(first)), valid(OutputTable.harmless(second)));
    }

    /** Half a surrogate pair has no bytes in UTF-8; it is written as a question mark. */
    private static String valid(String text) {
        return new String(text.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8);
    }

    private static String text(OutputTable table) {
        return new String(table.bytes(), StandardCharsets.UTF_8);
    }

    /** The quick way against the decimals themselves, also at and beside halves. */
    @Test
    void numbersAreRoundedAsTheirShortestDecimal() {
        java.util.Random random = new java.util.Random(4);
        for (int i = 0; i < 20_000; i++) {
            double value = i % 2 == 0
                    ? random.nextGaussian() * Math.pow(10, random.nextInt(9) - 3)
                    : (random.nextInt(4_000_000) - 2_000_000) / 2000.0;
            for (double near : new double[] {value, Math.nextUp(value), Math.nextDown(value)}) {
                for (int decimals = 0; decimals <= 4; decimals++) {
                    assertThat(OutputTable.fixed(near, decimals))
                            .isEqualTo(new java.math.BigDecimal(Double.toString(near))
                                    .setScale(decimals, java.math.RoundingMode.HALF_UP)
                                    .toPlainString());
                }
            }
        }
    }
}
