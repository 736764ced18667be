package org.woodyield.lumber;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.source.PublishedTable;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * What a hardwood grade of the National Hardwood Lumber Association promises: the least board, and how much of its face can be
 * cut into clear pieces of at least a size. It states the promise; it does not grade a board, which takes an inspector.
 *
 * <p>A cutting unit is 12 square inches: a strip one inch wide and one foot long. A board has 12 for each foot of surface
 * measure.
 *
 * @param name of the grade
 * @param leastWidth of the board
 * @param leastLength of the board
 * @param faces the grades of the better and the poorer face, where the grade is made of two others
 * @param cuttings the least sizes of a cutting in words, as many as there are to choose from; empty with {@code faces}
 * @param ways the ways to make the grade on a face; with {@code faces} only those of small boards
 * @param source the table
 * @see org.woodyield.source.Sources sources nhla-grade-summary, nhla-chart-distributor and nhla-2015
 */
public record HardwoodGrade(
        String name,
        Length leastWidth,
        Length leastLength,
        Optional<Faces> faces,
        List<String> cuttings,
        List<Way> ways,
        Source source) {

    /**
     * The grades of the two faces.
     *
     * @param better of the better face
     * @param poorer of the poorer face
     */
    public record Faces(String better, String poorer) {}

    /**
     * How many cuttings may be taken: {@code min(floor((SM + add) / divisor), most)}.
     *
     * @param add added to the surface measure
     * @param divisor by which the sum is divided
     * @param most the most cuttings
     * @param extra one more where the way allows an extra cutting, otherwise 0
     */
    public record CuttingCount(int add, int divisor, int most, int extra) {}

    /**
     * One way to make a grade.
     *
     * @param leastSquareFeet the least surface measure to which it applies
     * @param greatestSquareFeet the greatest one; empty without limit
     * @param unitsPerFoot clear cutting units for each foot of surface measure, 12 for a clear face
     * @param count how many cuttings; empty without limit
     * @param condition what else is asked, possibly empty
     * @param source who says so
     */
    public record Way(
            int leastSquareFeet,
            Optional<Integer> greatestSquareFeet,
            double unitsPerFoot,
            Optional<CuttingCount> count,
            String condition,
            Source source) {

        /**
         * Whether a board of this surface measure can go this way: it is within the limits and has at least one cutting.
         *
         * @param squareFeet whole surface measure
         * @return true if so
         */
        public boolean holds(int squareFeet) {
            return squareFeet >= leastSquareFeet
                    && greatestSquareFeet.map(most -> squareFeet <= most).orElse(true)
                    && mostCuttings(squareFeet).map(most -> most > 0).orElse(true);
        }

        /**
         * The clear cutting units that a board must yield.
         *
         * @param squareFeet whole surface measure, 1 to 100
         * @return units
         * @throws OutOfDomainException if the surface measure is outside
         */
        public double units(int squareFeet) {
            return SQUARE_FEET.require(squareFeet) * unitsPerFoot;
        }

        /**
         * The most cuttings that may be taken.
         *
         * @param squareFeet whole surface measure, 1 to 100
         * @return how many; empty without limit
         * @throws OutOfDomainException if the surface measure is outside
         */
        public Optional<Integer> mostCuttings(int squareFeet) {
            SQUARE_FEET.require(squareFeet);
            return count.map(c -> Math.min(Math.floorDiv(squareFeet + c.add(), c.divisor()), c.most()) + c.extra());
        }
    }

    /**
     * A rule of grading or measuring, in words.
     *
     * @param topic what it is about
     * @param statement the rule
     * @param source who says so
     */
    public record Rule(String topic, String statement, Source source) {}

    private static final Domain SQUARE_FEET = Domain.of("surface measure", "ft2", 1, 100);
    private static final Domain UNITS = Domain.of("cutting units for a foot", "", 0, 12);
    private static final Domain CUTTING_WIDTH = Domain.of("width of the cutting", "in", 0.25, 60);
    private static final Domain CUTTING_LENGTH = Domain.of("length of the cutting", "ft", 0.25, 40);
    private static final List<HardwoodGrade> GRADES = grades();
    private static final List<Rule> RULES = PublishedTable.read(HardwoodGrade.class, "nhla_rules.csv").rows().stream()
            .map(row -> new Rule(row.text("topic"), row.text("statement"), Sources.get(row.text("source"))))
            .toList();

    /** Keeps immutable copies. */
    public HardwoodGrade {
        cuttings = List.copyOf(cuttings);
        ways = List.copyOf(ways);
    }

    /**
     * The standard grades, best first.
     *
     * @return an immutable list
     */
    public static List<HardwoodGrade> all() {
        return GRADES;
    }

    /**
     * The rules beside the yields, which no calculation here needs: how boards are inspected and tallied, and what special
     * grades ask.
     *
     * @return an immutable list
     */
    public static List<Rule> rules() {
        return RULES;
    }

    /**
     * A grade by its name.
     *
     * @param name for example {@code FAS} or {@code No. 1 Common}, in letters of either case
     * @return the grade
     * @throws OutOfDomainException if there is none; the message names those there are
     */
    public static HardwoodGrade named(String name) {
        return GRADES.stream()
                .filter(grade -> grade.name().equalsIgnoreCase(name.strip()))
                .findFirst()
                .orElseThrow(() -> new OutOfDomainException(
                        "grade",
                        "'" + name + "'",
                        "",
                        String.join(
                                ", ", GRADES.stream().map(HardwoodGrade::name).toList()),
                        ""));
    }

    /**
     * The ways in which a board can make this grade on one face.
     *
     * @param squareFeet whole surface measure, 1 to 100
     * @return those that hold, possibly none: the board is then too small
     * @throws OutOfDomainException if the surface measure is outside, or the grade is that of its two faces
     */
    public List<Way> waysFor(int squareFeet) {
        SQUARE_FEET.require(squareFeet);
        List<Way> held = ways.stream().filter(way -> way.holds(squareFeet)).toList();
        if (held.isEmpty() && faces.isPresent()) {
            throw new OutOfDomainException(
                    "grade",
                    name,
                    "",
                    "a grade with cuttings of its own",
                    "ask for " + faces.get().better() + " and " + faces.get().poorer());
        }
        return held;
    }

    /**
     * The cuttings allowed in a long board of FAS, F1F, Selects or No. 1 Common where the buyer asks for them: one more for each
     * 4 ft of surface measure over 16, up to 7 in all.
     *
     * @param usual the cuttings allowed without it
     * @param squareFeet whole surface measure
     * @param length of the board; over 17 ft for the rule to hold
     * @return the cuttings
     * @throws OutOfDomainException if the surface measure is outside
     */
    public static int cuttingsInLongBoard(int usual, int squareFeet, Length length) {
        SQUARE_FEET.require(squareFeet);
        boolean longer = length.compareTo(Length.feet(17)) > 0 && squareFeet > 16;
        return longer ? Math.min(7, usual + (squareFeet - 16) / 4) : usual;
    }

    /**
     * The cutting units in a cutting: its width in inches times its length in feet.
     *
     * @param widthInches 1/4 to 60
     * @param lengthFeet 1/4 to 40
     * @return units of 12 square inches
     * @throws OutOfDomainException if one is outside
     */
    @Calculation("lumber.cutting-units")
    public static double cuttingUnits(double widthInches, double lengthFeet) {
        return CUTTING_WIDTH.require(widthInches) * CUTTING_LENGTH.require(lengthFeet);
    }

    /**
     * How {@link #cuttingUnits} came about.
     *
     * @param widthInches as there
     * @param lengthFeet as there
     * @return the working; its value equals the units bit for bit
     * @throws OutOfDomainException as there
     */
    public static Working cuttingUnitsWorking(double widthInches, double lengthFeet) {
        return Working.of("Cutting units of a cutting")
                .given("w", "width", CUTTING_WIDTH.require(widthInches), "in")
                .given("l", "length", CUTTING_LENGTH.require(lengthFeet), "ft")
                .step("u", "cutting units of 12 square inches", "w * l", "", Sources.get("nhla-grade-summary"))
                .build();
    }

    /**
     * The share of a face that must be clear: {@code 100 * u / 12}.
     *
     * @param unitsPerFoot clear cutting units for each foot of surface measure, 0 to 12
     * @return percent
     * @throws OutOfDomainException if the units are outside
     */
    @Calculation("lumber.clear-share")
    public static double clearPercent(double unitsPerFoot) {
        return 100 * UNITS.require(unitsPerFoot) / 12;
    }

    /**
     * How {@link #clearPercent} came about.
     *
     * @param unitsPerFoot as there
     * @return the working; its value equals the share bit for bit
     * @throws OutOfDomainException as there
     */
    public static Working clearPercentWorking(double unitsPerFoot) {
        return Working.of("Clear share of a face")
                .given("u", "clear cutting units for a foot of surface measure", UNITS.require(unitsPerFoot), "")
                .step("p", "clear share", "100 * u / 12", "%", Sources.get("nhla-grade-summary"))
                .build();
    }

    private static List<HardwoodGrade> grades() {
        PublishedTable table = PublishedTable.read(HardwoodGrade.class, "nhla_grades.csv");
        PublishedTable others = PublishedTable.read(HardwoodGrade.class, "nhla_other_yields.csv");
        List<HardwoodGrade> grades = new ArrayList<>();
        for (PublishedTable.Row row : table.rows()) {
            boolean twoFaces = !row.text("better_face").isEmpty();
            List<Way> ways = new ArrayList<>();
            if (!twoFaces) {
                ways.addAll(ways(row, table.source()));
            }
            others.rows().stream()
                    .filter(other -> other.text("grade").equals(row.text("grade")))
                    .map(other -> other(other, others.source()))
                    .forEach(ways::add);
            grades.add(new HardwoodGrade(
                    row.text("grade"),
                    SoftwoodSizes.cell(row, "least_width_in"),
                    Length.ofFeet(row.number("least_length_ft"), Rounding.HALF_UP),
                    twoFaces
                            ? Optional.of(new Faces(row.text("better_face"), row.text("poor_face")))
                            : Optional.empty(),
                    row.text("cuttings").isEmpty()
                            ? List.of()
                            : List.of(row.text("cuttings").split("; ", -1)),
                    ways,
                    table.source()));
        }
        return List.copyOf(grades);
    }

    private static List<Way> ways(PublishedTable.Row row, Source source) {
        List<Way> ways = new ArrayList<>();
        Optional<CuttingCount> count = row.text("divisor").isEmpty()
                ? Optional.empty()
                : Optional.of(new CuttingCount(whole(row, "add"), whole(row, "divisor"), whole(row, "most"), 0));
        ways.add(new Way(1, Optional.empty(), row.number("units"), count, "", source));
        if (!row.text("extra_units").isEmpty()) {
            CuttingCount usual = count.orElseThrow();
            ways.add(new Way(
                    whole(row, "extra_from"),
                    Optional.of(whole(row, "extra_to")),
                    row.number("extra_units"),
                    Optional.of(new CuttingCount(usual.add(), usual.divisor(), usual.most(), 1)),
                    "one extra cutting",
                    source));
        }
        return ways;
    }

    private static Way other(PublishedTable.Row row, Source source) {
        int cuttings = whole(row, "cuttings");
        return new Way(
                whole(row, "least_sm"),
                Optional.of(whole(row, "greatest_sm")),
                row.number("units"),
                Optional.of(new CuttingCount(0, 1, 0, cuttings)),
                row.text("condition"),
                source);
    }

    private static int whole(PublishedTable.Row row, String column) {
        return Math.toIntExact(Math.round(row.number(column)));
    }
}
