package org.woodyield.lumber;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.woodyield.lumber.SizeTable.Entry;
import org.woodyield.lumber.SizeTable.Fact;
import org.woodyield.lumber.SizeTable.Measure;
import org.woodyield.measure.Length;
import org.woodyield.measure.Rounding;
import org.woodyield.source.PublishedTable;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;

/** Brings the sizes of this package into one form. */
final class SizeTables {

    private static final String THICKNESS = SoftwoodSizes.THICKNESS;
    private static final String WIDTH = SoftwoodSizes.WIDTH;
    private static final String EN_336 = "en-336";
    private static final String GOST = "gost-24454";
    private static final String NORDIC = "nordic";
    private static final int FIRST_TIMBER = 5;
    private static final int LAST_TIMBER = 24;

    static final List<SizeTable> ALL = List.of(
            softwood(),
            nativeLumber(),
            worked(),
            earlier(),
            hardwood(),
            hardwoodGrades(),
            en336(),
            gost(),
            gostGreen(),
            series("australia", "Australian sizes, millimetres", List.of()),
            nordic(),
            series(
                    "japan",
                    "Japanese posts, millimetres",
                    List.of(new Fact(
                            "A piece counts thickness x width x length in cubic metres to three decimals, the fourth"
                                    + " rounded half up.",
                            Sources.get("japan-measure")))));

    private SizeTables() {}

    private static SizeTable softwood() {
        Source ps20 = Sources.get("ps-20");
        List<Entry> entries = new ArrayList<>();
        for (SoftwoodSizes.Line line : SoftwoodSizes.boardsAndDimension()) {
            entries.add(new Entry(
                    line.lumberClass().label(),
                    line.face(),
                    line.nominal(),
                    List.of(new Measure("dry", line.dry()), new Measure("green", line.green())),
                    ps20,
                    ofGreen(line.doubt())));
        }
        for (int inches = FIRST_TIMBER; inches <= LAST_TIMBER; inches++) {
            entries.add(timber(inches));
        }
        for (String face : List.of(THICKNESS, WIDTH)) {
            Set<Length> nominals = SoftwoodSizes.boardsAndDimension().stream()
                    .filter(line -> line.face().equals(face))
                    .map(SoftwoodSizes.Line::nominal)
                    .collect(Collectors.toCollection(LinkedHashSet::new));
            for (Length nominal : nominals) {
                SoftwoodSizes.millimetres(face, nominal)
                        .ifPresent(printed -> entries.add(new Entry(
                                "millimetres as printed",
                                face,
                                nominal,
                                List.of(new Measure("dry", millimetres(printed.value()))),
                                printed.source(),
                                "")));
            }
        }
        return new SizeTable(
                "softwood",
                "Minimum dressed sizes of boards, dimension and timbers by PS 20",
                false,
                entries,
                List.of());
    }

    private static String ofGreen(String doubt) {
        return doubt.isEmpty() ? "" : "green: " + doubt;
    }

    /** Thickness and width of a timber go by one rule. */
    private static Entry timber(int inches) {
        Length nominal = Length.inches(inches);
        NominalSize square = new NominalSize(nominal, nominal);
        SoftwoodSizes.Size dry = SoftwoodSizes.dressed(square, SoftwoodSizes.Condition.DRY);
        SoftwoodSizes.Size green = SoftwoodSizes.dressed(square, SoftwoodSizes.Condition.GREEN);
        return new Entry(
                NominalSize.LumberClass.TIMBER.label(),
                SizeTable.EITHER,
                nominal,
                List.of(new Measure("dry", dry.thickness()), new Measure("green", green.thickness())),
                dry.source(),
                ofGreen(SoftwoodSizes.timberDoubt(nominal)));
    }

    private static SizeTable nativeLumber() {
        PublishedTable table = PublishedTable.read(SizeTables.class, "tennessee_sizes.csv");
        return new SizeTable(
                "native",
                "Native softwood lumber in Tennessee, surfaced and rough",
                false,
                table.rows().stream()
                        .map(row -> new Entry(
                                NominalSize.LumberClass.DIMENSION.label(),
                                row.text("face"),
                                SoftwoodSizes.cell(row, "nominal"),
                                List.of(
                                        measure("surfaced dry", row, "surfaced_dry"),
                                        measure("surfaced green", row, "surfaced_green"),
                                        measure("rough dry", row, "rough_dry"),
                                        measure("rough green", row, "rough_green_suggested")),
                                table.source(),
                                ""))
                        .toList(),
                List.of(new Fact("The rule only suggests the rough green sizes.", table.source())));
    }

    private static Measure measure(String state, PublishedTable.Row row, String column) {
        return new Measure(state, SoftwoodSizes.cell(row, column));
    }

    private static SizeTable worked() {
        return new SizeTable(
                "worked",
                "Worked softwood: finish, flooring, shiplap, tongued and grooved, bevel siding",
                false,
                WorkedLumber.all().stream()
                        .map(line -> new Entry(
                                line.pattern(),
                                line.face(),
                                line.nominal(),
                                Stream.concat(
                                                Stream.of(new Measure("dry", line.dry())),
                                                line.green().map(green -> new Measure("green", green)).stream())
                                        .toList(),
                                line.source(),
                                ""))
                        .toList(),
                WorkedLumber.southernPine().stream()
                        .map(range -> new Fact(
                                "Southern pine " + range.product() + " is made "
                                        + fromTo(range.leastThickness(), range.greatestThickness()) + " thick and "
                                        + fromTo(range.leastWidth(), range.greatestWidth()) + " wide, nominal.",
                                range.source()))
                        .toList());
    }

    private static String fromTo(Length least, Length greatest) {
        return least.equals(greatest) ? least.toString() : least + " to " + greatest;
    }

    private static SizeTable earlier() {
        return new SizeTable(
                "earlier",
                "What softwood of a nominal size measured dressed in earlier years",
                false,
                SizeHistory.facts().stream()
                        .map(fact -> new Entry(
                                years(fact.from(), fact.until()),
                                fact.face(),
                                fact.nominal(),
                                List.of(new Measure("dressed", fact.dressed())),
                                fact.source(),
                                ""))
                        .toList(),
                SizeHistory.nationalStandards().stream()
                        .map(standard -> new Fact(standard.year() + ": " + standard.what() + ".", standard.source()))
                        .toList());
    }

    private static String years(Optional<Integer> from, Optional<Integer> until) {
        if (from.equals(until)) {
            return "in " + from.map(String::valueOf).orElse("earlier years");
        }
        return from.map(year -> "from " + year)
                .orElseGet(() -> "up to " + until.map(String::valueOf).orElseThrow());
    }

    private static SizeTable hardwood() {
        List<Entry> entries = new ArrayList<>();
        List<Fact> facts = new ArrayList<>();
        Source variation = Sources.get("nhla-2019-par-9");
        for (HardwoodThickness.Line line : HardwoodThickness.standard()) {
            List<Measure> measures = new ArrayList<>();
            line.oneSide().ifPresent(length -> measures.add(new Measure("surfaced one side", length)));
            measures.add(new Measure("surfaced two sides", line.twoSides()));
            entries.add(new Entry("surfaced", THICKNESS, line.nominal(), measures, line.source(), line.doubt()));
        }
        Source kilnDried = Sources.get("nhla-kiln-dried-2023");
        for (HardwoodThickness.Line line : HardwoodThickness.standard()) {
            double least = HardwoodThickness.kilnDriedInches(line.nominal().toInches());
            entries.add(new Entry(
                    "rough, kiln-dried",
                    THICKNESS,
                    line.nominal(),
                    List.of(new Measure("no less than", Length.ofInches(least, Rounding.HALF_UP))),
                    kilnDried,
                    ""));
        }
        for (HardwoodThickness.Allowance allowance : HardwoodThickness.kilnDriedAllowances()) {
            facts.add(new Fact(
                    "Kiln-dried, " + allowance.dimension() + ", " + allowance.appliesTo()
                            + allowance
                                    .least()
                                    .map(least -> ", " + least
                                            + allowance
                                                    .greatest()
                                                    .map(most -> " to " + most)
                                                    .orElse(" and more")
                                            + " thick")
                                    .orElse("")
                            + ": may be "
                            + allowance.scant() + " scant.",
                    allowance.source()));
        }
        for (HardwoodThickness.Line line : HardwoodThickness.standard()) {
            facts.add(new Fact(
                    "A board of " + line.nominal() + " may be up to " + HardwoodThickness.variation(line.nominal())
                            + " thicker than at its thinnest cutting, and no thinner than its name.",
                    variation));
        }
        return new SizeTable(
                "hardwood", "Hardwood thickness, rough by quarters of an inch and surfaced", false, entries, facts);
    }

    private static SizeTable hardwoodGrades() {
        List<Fact> facts = new ArrayList<>();
        for (HardwoodGrade grade : HardwoodGrade.all()) {
            facts.add(new Fact(
                    grade.name() + ": boards from " + grade.leastWidth() + " x "
                            + grade.leastLength().inFeet(1, Rounding.DOWN)
                            + grade.faces()
                                    .map(faces -> "; better face " + faces.better() + ", poorer face " + faces.poorer())
                                    .orElse("; cuttings of " + String.join(" or ", grade.cuttings()))
                            + ".",
                    grade.source()));
            for (HardwoodGrade.Way way : grade.ways()) {
                facts.add(new Fact(grade.name() + ", " + promise(way) + ".", way.source()));
            }
        }
        HardwoodGrade.rules()
                .forEach(rule -> facts.add(new Fact(rule.topic() + ": " + rule.statement(), rule.source())));
        return new SizeTable(
                "hardwood-grades",
                "What hardwood grades promise: least board, cuttings and clear cutting units",
                false,
                List.of(),
                facts);
    }

    private static String promise(HardwoodGrade.Way way) {
        String limits = way.greatestSquareFeet()
                .map(most -> way.leastSquareFeet() == most
                        ? "surface measure " + most + " ft2"
                        : "surface measure " + way.leastSquareFeet() + " to " + most + " ft2")
                .orElse("any surface measure (SM)");
        String count = way.count()
                .map(c -> c.divisor() == 1 && c.most() == 0
                        ? c.extra() + (c.extra() == 1 ? " cutting" : " cuttings")
                        : "(SM + " + c.add() + ") / " + c.divisor() + " cuttings, the fraction dropped, at most "
                                + c.most() + (c.extra() == 0 ? "" : ", and " + c.extra() + " more"))
                .orElse("any number of cuttings");
        return limits + ": SM x " + SizeTable.plain(way.unitsPerFoot()) + " clear cutting units of 12, in " + count
                + (way.condition().isEmpty() ? "" : "; " + way.condition());
    }

    private static SizeTable en336() {
        Source handbook = Sources.get("building-handbook-8");
        List<Entry> entries = MetricSizes.en336(false).stream()
                .map(sawn -> new Entry(
                        "target size",
                        SizeTable.EITHER,
                        sawn,
                        List.of(new Measure("sawn", sawn), new Measure("planed", MetricSizes.en336Planed(sawn))),
                        handbook,
                        ""))
                .toList();
        List<Fact> facts = new ArrayList<>();
        facts.addAll(tolerances(EN_336));
        facts.addAll(moistures(EN_336));
        PublishedTable planing = PublishedTable.read(SizeTables.class, "planing_reductions_memory.csv");
        for (PublishedTable.Row row : planing.rows()) {
            facts.add(new Fact(
                    "British reduction for " + row.text("use") + ", sawn from " + row.text("from_mm") + " mm"
                            + (row.text("to_mm").isEmpty() ? "" : " to " + row.text("to_mm") + " mm") + ": "
                            + row.text("off_mm") + " mm off two faces together.",
                    planing.source()));
        }
        return new SizeTable(EN_336, "Target sizes of structural timber by EN 336", true, entries, facts);
    }

    private static SizeTable gost() {
        Source standard = Sources.get("gost-24454");
        List<Entry> entries = new ArrayList<>();
        for (Length thickness : MetricSizes.gostThicknesses()) {
            String kind = thickness.inMillimetres(0) + " thick";
            entries.add(new Entry(kind, THICKNESS, thickness, List.of(), standard, ""));
            MetricSizes.gostWidths(thickness)
                    .forEach(width -> entries.add(new Entry(kind, WIDTH, width, List.of(), standard, "")));
        }
        List<Fact> facts = new ArrayList<>(tolerances(GOST));
        facts.addAll(lengths(GOST));
        facts.addAll(moistures(GOST));
        facts.add(new Fact(MetricSizes.gostNarrowFaces(), standard));
        return new SizeTable(GOST, "Softwood sizes by GOST 24454-80", true, entries, facts);
    }

    private static SizeTable gostGreen() {
        Source standard = Sources.get("gost-6782-1");
        List<Entry> entries = new ArrayList<>();
        for (Length size : GostShrinkage.sizes()) {
            List<Measure> measures = new ArrayList<>();
            for (int middle = 6; middle <= 36; middle += 3) {
                measures.add(new Measure(
                        (middle - 1) + "-" + (middle + 1) + " %",
                        millimetres(GostShrinkage.greenMillimetres(size.toMillimetres(), middle))));
            }
            entries.add(new Entry("to saw green", SizeTable.EITHER, size, measures, standard, ""));
        }
        return new SizeTable(
                "gost-6782-1",
                "Size to saw green by final moisture, GOST 6782.1-75, for spruce, pine, cedar pine and fir",
                true,
                entries,
                List.of());
    }

    private static SizeTable series(String key, String title, List<Fact> more) {
        List<Entry> entries = new ArrayList<>();
        for (MetricSizes.Series series : MetricSizes.series()) {
            if (series.table().equals(key)) {
                series.sizes()
                        .forEach(size -> entries.add(
                                new Entry(series.name(), series.face(), size, List.of(), series.source(), "")));
            }
        }
        List<Fact> facts = new ArrayList<>(lengths(key));
        facts.addAll(moistures(key));
        facts.addAll(more);
        return new SizeTable(key, title, true, entries, facts);
    }

    private static SizeTable nordic() {
        List<Fact> facts = new ArrayList<>(lengths(NORDIC));
        facts.addAll(moistures(NORDIC));
        return new SizeTable(
                NORDIC, "Stock lengths and reference moistures of Finland and Sweden", true, List.of(), facts);
    }

    private static List<Fact> tolerances(String table) {
        return MetricTolerance.all().stream()
                .filter(row -> row.table().equals(table))
                .map(row -> new Fact(
                        row.rule() + ", " + row.dimension() + " above "
                                + row.above().inMillimetres(0)
                                + row.upTo()
                                        .map(most -> " up to " + most.inMillimetres(0))
                                        .orElse("") + ": -"
                                + row.minus().inMillimetres(1) + " to +"
                                + row.plus().inMillimetres(1) + ".",
                        row.source()))
                .toList();
    }

    private static List<Fact> lengths(String table) {
        return MetricSizes.lengths().stream()
                .filter(row -> row.table().equals(table))
                .map(row -> new Fact(
                        row.name() + ": lengths"
                                + row.least()
                                        .map(least -> " from " + least.inMillimetres(0))
                                        .orElse("")
                                + row.greatest()
                                        .map(most -> " to " + most.inMillimetres(0))
                                        .orElse("") + " by "
                                + row.step().inMillimetres(0) + ".",
                        row.source()))
                .toList();
    }

    private static List<Fact> moistures(String table) {
        return MetricSizes.referenceMoistures().stream()
                .filter(row -> row.table().equals(table))
                .map(row -> new Fact(
                        row.rule() + ", " + row.what() + ": moisture " + SizeTable.plain(row.leastPercent())
                                + (row.leastPercent() == row.greatestPercent()
                                        ? ""
                                        : " to " + SizeTable.plain(row.greatestPercent()))
                                + " %.",
                        row.source()))
                .toList();
    }

    private static Length millimetres(double value) {
        return Length.ofMetres(value / 1000, Rounding.HALF_UP);
    }
}
