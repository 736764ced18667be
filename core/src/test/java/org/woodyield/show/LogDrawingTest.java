package org.woodyield.show;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.woodyield.sawing.Saw;
import org.woodyield.sawing.SawingPlan;
import org.woodyield.sawing.SawnPiece;

class LogDrawingTest {

    private record Box(double left, double right, double top, double bottom, String text) {
        boolean overlaps(Box other) {
            return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
        }
    }

    static Stream<Arguments> plans() {
        Saw saw = SawnLogs.saw(Saw.Reference.PREVIOUS_FACE);
        return Stream.of(
                Arguments.of("round, live", SawnLogs.plan(SawnLogs.log("A", 20, 20, 22, 0), 0, false, saw)),
                Arguments.of("oval turned, cant", SawnLogs.plan(SawnLogs.log("B", 14, 12, 16, 0), 30, true, saw)),
                Arguments.of("swept", SawnLogs.plan(SawnLogs.log("C", 10, 10, 11, 3), 45, false, saw)),
                Arguments.of("thick, live", SawnLogs.plan(SawnLogs.log("D", 40, 40, 42, 0), 0, false, saw)),
                Arguments.of("thick, cant", SawnLogs.plan(SawnLogs.log("E", 40, 38, 42, 0), 90, true, saw)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("plans")
    void noTextOfTheEndViewLiesOnAnother(String name, SawingPlan plan) {
        Document svg = Xml.parse(LogDrawing.of("log", plan).endView());
        List<Box> boxes = boxes(svg);
        for (int i = 0; i < boxes.size(); i++) {
            for (int j = i + 1; j < boxes.size(); j++) {
                assertThat(boxes.get(i).overlaps(boxes.get(j)))
                        .as("%s on %s", boxes.get(i), boxes.get(j))
                        .isFalse();
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("plans")
    void allTextLiesInsideTheDrawing(String name, SawingPlan plan) {
        for (String view : views(plan)) {
            Element svg = Xml.parse(view).getDocumentElement();
            double width = Double.parseDouble(svg.getAttribute("width"));
            double height = Double.parseDouble(svg.getAttribute("height"));
            assertThat(boxes(svg.getOwnerDocument())).allSatisfy(box -> {
                assertThat(box.left).isGreaterThanOrEqualTo(0);
                assertThat(box.right).isLessThanOrEqualTo(width);
                assertThat(box.top).isGreaterThanOrEqualTo(0);
                assertThat(box.bottom).isLessThanOrEqualTo(height);
            });
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("plans")
    void everyPassAndEveryPieceHasItsNumberOnce(String name, SawingPlan plan) {
        Document svg = Xml.parse(LogDrawing.of("log", plan).endView());
        List<String> kerfs = new ArrayList<>();
        List<String> pieces = new ArrayList<>();
        for (Element text : Xml.all(svg, "text")) {
            if (text.getAttribute("class").equals("kerf")) {
                kerfs.add(text.getTextContent());
            } else if (text.getAttribute("class").equals("piece")) {
                pieces.add(text.getTextContent());
            }
        }
        assertThat(kerfs)
                .containsExactlyInAnyOrderElementsOf(plan.passes().stream()
                        .map(pass -> Integer.toString(pass.number()))
                        .toList());
        assertThat(pieces)
                .containsExactlyInAnyOrderElementsOf(plan.pieces().stream()
                        .map(piece -> Integer.toString(piece.number()))
                        .toList());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("plans")
    void aDrawingNamesItselfForThoseWhoDoNotSeeIt(String name, SawingPlan plan) {
        for (String view : views(plan)) {
            Document svg = Xml.parse(view);
            assertThat(svg.getDocumentElement().getAttribute("role")).isEqualTo("img");
            assertThat(svg.getDocumentElement().getAttribute("aria-labelledby").split(" "))
                    .allSatisfy(id -> assertThat(Xml.all(svg, "*"))
                            .anySatisfy(element ->
                                    assertThat(element.getAttribute("id")).isEqualTo(id)));
            assertThat(Xml.all(svg, "title").get(0).getTextContent()).contains("log");
        }
        String words = Xml.all(Xml.parse(LogDrawing.of("log", plan).endView()), "desc")
                .get(0)
                .getTextContent();
        for (SawnPiece piece : plan.pieces()) {
            assertThat(words).contains(piece.number() + " is " + piece.optionId());
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("plans")
    void noColourTellsSizesApartAndEachHasItsOwnHatching(String name, SawingPlan plan) {
        String view = LogDrawing.of("log", plan).endView();
        assertThat(view).doesNotContainPattern("#[0-9a-f]{6}").doesNotContain("rgb(");
        Set<String> patterns = new LinkedHashSet<>();
        Document svg = Xml.parse(view);
        Xml.all(svg, "pattern").forEach(pattern -> patterns.add(pattern.getAttribute("id")));
        assertThat(patterns).hasSize((int)
                plan.pieces().stream().map(SawnPiece::optionId).distinct().count());
        for (Element shape : Xml.all(svg, "rect")) {
            String fill = shape.getAttribute("fill");
            if (fill.startsWith("url(#")) {
                assertThat(patterns).contains(fill.substring(5, fill.length() - 1));
            }
        }
    }

    private static List<String> views(SawingPlan plan) {
        LogDrawing drawing = LogDrawing.of("log " + SawnLogs.NASTY, plan);
        return List.of(drawing.endView(), drawing.sideView().orElseThrow());
    }

    /** Text is taken to be as wide as a wide sans-serif would set it, 0.58 of its height for a character. */
    private static List<Box> boxes(Document svg) {
        List<Box> boxes = new ArrayList<>();
        for (Element text : Xml.all(svg, "text")) {
            String size = text.getAttribute("font-size");
            double height = size.isEmpty() ? 12 : Double.parseDouble(size);
            double width = 0.58 * height * text.getTextContent().length();
            double x = Double.parseDouble(text.getAttribute("x"));
            double y = Double.parseDouble(text.getAttribute("y"));
            double left = switch (text.getAttribute("text-anchor")) {
                case "end" -> x - width;
                case "middle" -> x - width / 2;
                default -> x;
            };
            boxes.add(new Box(left, left + width, y - 0.76 * height, y + 0.02 * height, text.getTextContent()));
        }
        return boxes;
    }
}
