package org.woodyield.show;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.woodyield.measure.Length;
import org.woodyield.wood.Cupping;

class CupDrawingTest {

    @Test
    void showsGreenAndDryOutlineRingsAndTheHollowInWords() {
        Cupping board = new Cupping(Length.inches(8), Length.inches(1), 0, Length.inches(5), 4, 8);
        String svg = CupDrawing.svg("cup", board);
        Document document = Xml.parse(svg);
        assertThat(document.getElementsByTagName("circle").getLength()).isEqualTo(30);
        assertThat(document.getElementsByTagName("path").getLength()).isEqualTo(3);
        assertThat(document.getElementsByTagName("desc").item(0).getTextContent())
                .contains("hollow by " + NumberText.fixed(board.depthInches(Cupping.Side.BARK), 3) + " in");
        assertThat(svg).contains("stroke-dasharray", "bark side", "pith side").doesNotContain("NaN");
    }
}
