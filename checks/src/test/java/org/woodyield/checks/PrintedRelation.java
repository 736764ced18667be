package org.woodyield.checks;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.woodyield.log.Log;
import org.woodyield.lumber.BoardMeasure;
import org.woodyield.lumber.UndersizeZ;
import org.woodyield.sawing.KerfStack;
import org.woodyield.scaling.LogRules;
import org.woodyield.source.PublishedTable;
import org.woodyield.wood.DimensionalChange;
import org.woodyield.wood.WoodWeight;
import org.woodyield.work.MachineRate;

/**
 * What must hold within a printed table of core, whoever printed it. A lost digit often breaks it; a number that is out by
 * one unit of its last digit seldom does.
 *
 * @param file below {@code org/woodyield}
 * @param statement in words
 * @param check gives the places where it does not hold
 */
record PrintedRelation(String file, String statement, Function<PublishedTable, List<String>> check) {

    /** A relation between a cell and the one before it. */
    private enum Order {
        RISES,
        NEVER_FALLS,
        FALLS,
        NEVER_RISES;

        boolean holds(double before, double after) {
            return switch (this) {
                case RISES -> after > before;
                case NEVER_FALLS -> after >= before;
                case FALLS -> after < before;
                case NEVER_RISES -> after <= before;
            };
        }
    }

    /** The classes beside which the tables lie. */
    private static final Map<String, Class<?>> BESIDE = Map.of(
            "scaling",
            LogRules.class,
            "lumber",
            BoardMeasure.class,
            "wood",
            WoodWeight.class,
            "log",
            Log.class,
            "work",
            MachineRate.class,
            "sawing",
            KerfStack.class);

    /** The reprint has 1216 bf at 36 in and 1209 bf at 37 in; 1290, the mean of its neighbours, is likely. */
    private static final String FALLS = "37,2.5";

    private static final String SHRINKAGE = "wood/shrinkage_4_3.csv";
    private static final String SHRINKAGE_RECALLED = "wood/shrinkage_4_3_memory.csv";
    private static final String COEFFICIENTS = "wood/coefficients_13_5.csv";
    private static final String FOREST_SERVICE = "wood/fia_wood_bark.csv";

    /** Table 13-5 gives them the values of a group, or parts from Table 4-3 for no reason that it tells. */
    private static final Set<String> OWN_COEFFICIENT = Set.of(
            "Ash, green,CR",
            "Ash, green,CT",
            "Birch, sweet,CR",
            "Birch, sweet,CT",
            "Elm, cedar,CR",
            "Elm, cedar,CT",
            "Maple, black,CT",
            "Sycamore, American,CT");

    /** The Forest Service gives old and young redwood one value; the metric copy of the handbook prints 0.36 for the pine. */
    private static final Set<String> OWN_GRAVITY = Set.of("western-white-pine", "redwood", "redwood-old-growth");

    /** The reprint parts from it in these cells, by much. */
    private static final Set<String> OFF_THE_MEAN =
            Set.of("28,3.5", "28,4.5", "32,2.5", "37,2.5", "38,3.5", "38,4.5", "39,3.5", "39,4.5");

    /** The relations of one table. */
    static List<PrintedRelation> of(String file) {
        return all().stream().filter(relation -> relation.file.equals(file)).toList();
    }

    static List<PrintedRelation> all() {
        List<PrintedRelation> all = new ArrayList<>();
        for (String table : List.of("scaling/gost_2708_75_table1.csv", "scaling/tree_scribner_form_class_78.csv")) {
            all.add(down(table, "a thicker tree or log holds more", Order.RISES, List.of(), List.of()));
            all.add(across(table, "a longer tree or log holds more", Order.RISES, 1));
        }
        all.add(down(
                "scaling/scribner_diagram_16ft_memory.csv",
                "a thicker log holds more",
                Order.RISES,
                List.of(),
                List.of()));
        all.add(down(
                "scaling/scribner_factors_memory.csv",
                "in its class of length a thicker log holds more",
                Order.RISES,
                List.of("from_ft"),
                List.of("diameter_in", "factor_bf_per_ft")));
        all.add(new PrintedRelation(
                "scaling/tree_scribner_form_class_78.csv",
                "half a log more is the mean of its neighbours, to half a board foot",
                PrintedRelation::halfLogs));
        all.add(new PrintedRelation(
                "scaling/sweden_conversion.csv",
                "there and back is 1, each factor rounded to two decimals",
                PrintedRelation::thereAndBack));
        all.add(down(
                "lumber/gost_6782_1.csv", "a greater size shrinks no less", Order.NEVER_FALLS, List.of(), List.of()));
        all.add(across("lumber/gost_6782_1.csv", "wetter wood shrinks no more", Order.NEVER_RISES, 1));
        all.add(down(
                "lumber/undersize_z.csv",
                "the factor falls as more boards may be thin",
                Order.FALLS,
                List.of(),
                List.of("z")));
        all.add(each(
                "lumber/undersize_z.csv",
                "the factor is the normal law's to two decimals, but for 0, 1, 2.5 and 5 %",
                row -> Set.of("0", "1", "2.5", "5").contains(row.text("undersize_percent"))
                        != (Math.abs(exactZ(row) - row.number("z")) <= 0.005)));
        all.add(each(
                "lumber/en336_series.csv",
                "planing takes 3 mm up to 100 mm and 5 mm above",
                row -> row.number("sawn_mm") - row.number("planed_mm") == (row.number("sawn_mm") <= 100 ? 3 : 5)));
        all.add(each(
                "lumber/hardwood_thickness.csv",
                "the first side takes 1/8 in up to 1 1/2 in and 3/16 in above",
                row -> row.text("one_side_in").isEmpty()
                        || row.number("nominal_in") - row.number("one_side_in")
                                == (row.number("nominal_in") <= 1.5 ? 1.0 / 8 : 3.0 / 16)));
        all.add(each(
                "lumber/ps20_sizes.csv",
                "a board's thickness is 1/32 in more green than dry, but for 3/4 in",
                row -> !row.text("class").equals("board")
                        || !row.text("face").equals("thickness")
                        || row.text("nominal_in").equals("3/4")
                                != (row.number("green_in") - row.number("dry_in") == 1.0 / 32)));
        all.add(new PrintedRelation(
                "lumber/ps20_sizes.csv", "a board is as wide as dimension lumber", PrintedRelation::boardWidths));
        for (String table : List.of("lumber/ps20_sizes.csv", "lumber/tennessee_sizes.csv")) {
            all.add(new PrintedRelation(
                    table,
                    "Tennessee's rule prints the sizes of dimension lumber as the standard does",
                    changed -> tennessee(table, changed)));
        }
        List<String> sizes = List.of("nominal_in", "dry_in", "green_in");
        all.add(down(
                "lumber/ps20_sizes.csv",
                "in its class a greater size is greater in each state",
                Order.RISES,
                List.of("class", "face"),
                sizes));
        all.add(inOrder("lumber/ps20_sizes.csv", "dry_in", "green_in", "nominal_in"));
        all.add(apart(
                "lumber/tennessee_sizes.csv",
                "surfaced_dry",
                "rough_dry",
                1.0 / 8,
                "rough dry lumber is 1/8 in over its surfaced size"));
        all.add(inOrder("lumber/tennessee_sizes.csv", "surfaced_dry", "surfaced_green", "rough_green_suggested"));
        all.add(apart(
                "lumber/hardwood_thickness.csv",
                "two_sides_in",
                "one_side_in",
                1.0 / 16,
                "a second side costs 1/16 in more"));
        all.add(inOrder("lumber/hardwood_thickness.csv", "two_sides_in", "one_side_in", "nominal_in"));
        for (String table : List.of(SHRINKAGE, SHRINKAGE_RECALLED, "wood/shrinkage_4_4.csv")) {
            all.add(inOrder(table, "radial_pct", "tangential_pct", "volumetric_pct"));
        }
        for (String table : List.of(SHRINKAGE, SHRINKAGE_RECALLED, COEFFICIENTS)) {
            all.add(new PrintedRelation(
                    table,
                    "the coefficient of Table 13-5 follows from the shrinkage of Table 4-3",
                    changed -> coefficients(table, changed)));
        }
        all.add(inOrder(COEFFICIENTS, "CR", "CT"));
        all.add(inOrder("wood/gravity_5_3.csv", "sg_green", "sg_12pct"));
        for (String table : List.of("wood/gravity_5_3.csv", FOREST_SERVICE)) {
            all.add(new PrintedRelation(
                    table,
                    "the handbook and the Forest Service give a species one green gravity",
                    changed -> gravities(table, changed)));
        }
        all.add(inOrder("wood/air_drying_days.csv", "min_days", "max_days"));
        all.add(inOrder("wood/emc_ranges.csv", "emc_low", "emc_high"));
        all.add(new PrintedRelation(
                FOREST_SERVICE,
                "the factor from dry to green follows from the five figures before it",
                PrintedRelation::greenFactor));
        return List.copyOf(all);
    }

    /** Down each column, apart for each content of the key columns; the columns are all if none is named. */
    private static PrintedRelation down(
            String file, String statement, Order order, List<String> keys, List<String> columns) {
        return new PrintedRelation(file, statement, table -> {
            List<String> breaches = new ArrayList<>();
            Map<String, Double> above = new LinkedHashMap<>();
            for (PublishedTable.Row row : table.rows()) {
                String group = keys.stream().map(row::text).collect(Collectors.joining(","));
                for (String column : columns.isEmpty() ? table.columns() : columns) {
                    String place = row.text(table.columns().get(0)) + "," + column;
                    row.numberIfPrinted(column).ifPresent(cell -> {
                        Double before = above.put(group + "," + column, cell);
                        if (before != null && order.holds(before, cell) == FALLS.equals(place)) {
                            breaches.add(place);
                        }
                    });
                }
            }
            return breaches;
        });
    }

    /** Along each row, from a column on. */
    private static PrintedRelation across(String file, String statement, Order order, int from) {
        return new PrintedRelation(file, statement, table -> {
            List<String> breaches = new ArrayList<>();
            for (PublishedTable.Row row : table.rows()) {
                breaches.addAll(
                        along(row, table.columns().subList(from, table.columns().size()), order));
            }
            return breaches;
        });
    }

    /** The columns of a row, each no less than the one before. */
    private static PrintedRelation inOrder(String file, String... columns) {
        String statement = String.join(" <= ", columns);
        return new PrintedRelation(file, statement, table -> {
            List<String> breaches = new ArrayList<>();
            table.rows().forEach(row -> breaches.addAll(along(row, List.of(columns), Order.NEVER_FALLS)));
            return breaches;
        });
    }

    private static List<String> along(PublishedTable.Row row, List<String> columns, Order order) {
        List<String> breaches = new ArrayList<>();
        Optional<Double> before = Optional.empty();
        for (String column : columns) {
            Optional<Double> cell = row.numberIfPrinted(column);
            if (cell.isPresent()) {
                if (before.isPresent() && !order.holds(before.get(), cell.get())) {
                    breaches.add("line " + row.line() + ", " + column);
                }
                before = cell;
            }
        }
        return breaches;
    }

    private static PrintedRelation each(String file, String statement, Predicate<PublishedTable.Row> holds) {
        return new PrintedRelation(
                file,
                statement,
                table -> table.rows().stream()
                        .filter(holds.negate())
                        .map(row -> "line " + row.line())
                        .toList());
    }

    private static double exactZ(PublishedTable.Row row) {
        double percent = row.number("undersize_percent");
        return percent > 0 ? UndersizeZ.exact(percent) : Double.POSITIVE_INFINITY;
    }

    /** Widths that both print. */
    private static List<String> boardWidths(PublishedTable table) {
        Map<Double, PublishedTable.Row> dimension = new LinkedHashMap<>();
        for (PublishedTable.Row row : table.rows()) {
            if (row.text("class").equals("dimension") && row.text("face").equals("width")) {
                dimension.put(row.number("nominal_in"), row);
            }
        }
        Set<String> dimensionOnly = new TreeSet<>(List.of("2 1/2", "3 1/2", "4 1/2"));
        Set<String> boardOnly = new TreeSet<>(List.of("7", "9", "11"));
        List<String> breaches = new ArrayList<>();
        for (PublishedTable.Row row : table.rows()) {
            if (row.text("class").equals("board") && row.text("face").equals("width")) {
                PublishedTable.Row same = dimension.remove(row.number("nominal_in"));
                if (same == null
                        ? !boardOnly.remove(row.text("nominal_in"))
                        : !sameSizes(row, same, "dry_in", "green_in")) {
                    breaches.add("line " + row.line());
                }
            }
        }
        dimension.values().stream()
                .filter(row -> !dimensionOnly.remove(row.text("nominal_in")))
                .forEach(row -> breaches.add("line " + row.line()));
        return breaches;
    }

    private static boolean sameSizes(PublishedTable.Row one, PublishedTable.Row other, String dry, String green) {
        return one.number("dry_in") == other.number(dry) && one.number("green_in") == other.number(green);
    }

    private static List<String> tennessee(String file, PublishedTable changed) {
        boolean standard = file.equals("lumber/ps20_sizes.csv");
        Map<String, PublishedTable.Row> state = new LinkedHashMap<>();
        for (PublishedTable.Row row : (standard ? table("lumber/tennessee_sizes.csv") : changed).rows()) {
            state.put(row.text("face") + row.number("nominal"), row);
        }
        List<String> breaches = new ArrayList<>();
        for (PublishedTable.Row row : (standard ? changed : table("lumber/ps20_sizes.csv")).rows()) {
            if (row.text("class").equals("dimension")) {
                PublishedTable.Row same = state.get(row.text("face") + row.number("nominal_in"));
                if (same == null || !sameSizes(row, same, "surfaced_dry", "surfaced_green")) {
                    breaches.add("line " + row.line());
                }
            }
        }
        return breaches;
    }

    private static List<String> halfLogs(PublishedTable table) {
        List<String> breaches = new ArrayList<>();
        List<String> columns = table.columns();
        for (PublishedTable.Row row : table.rows()) {
            for (int i = 2; i + 1 < columns.size(); i += 2) {
                Optional<Double> less = row.numberIfPrinted(columns.get(i - 1));
                Optional<Double> half = row.numberIfPrinted(columns.get(i));
                Optional<Double> more = row.numberIfPrinted(columns.get(i + 1));
                if (less.isPresent() && half.isPresent() && more.isPresent()) {
                    String place = row.text("dbh_in") + "," + columns.get(i);
                    boolean mean = Math.abs((less.get() + more.get()) / 2 - half.get()) <= 0.5;
                    if (mean == OFF_THE_MEAN.contains(place)) {
                        breaches.add(place);
                    }
                }
            }
        }
        return breaches;
    }

    private static PrintedRelation apart(String file, String less, String more, double step, String statement) {
        return new PrintedRelation(file, statement, table -> {
            List<String> breaches = new ArrayList<>();
            for (PublishedTable.Row row : table.rows()) {
                Optional<Double> small = row.numberIfPrinted(less);
                Optional<Double> large = row.numberIfPrinted(more);
                if (small.isPresent() && large.isPresent() && large.get() - small.get() != step) {
                    breaches.add("line " + row.line());
                }
            }
            return breaches;
        });
    }

    private static List<String> thereAndBack(PublishedTable table) {
        List<String> breaches = new ArrayList<>();
        List<String> measures = table.columns().subList(1, table.columns().size());
        for (int i = 0; i < measures.size(); i++) {
            for (int j = 0; j < measures.size(); j++) {
                double there = table.rows().get(i).number(measures.get(j));
                double back = table.rows().get(j).number(measures.get(i));
                boolean same = i == j
                        ? there == 1
                        : (there - 0.005) * (back - 0.005) < 1 && (there + 0.005) * (back + 0.005) > 1;
                if (!same) {
                    breaches.add(measures.get(i) + " to " + measures.get(j));
                }
            }
        }
        return breaches;
    }

    /** Both tables print a species under one name; the coefficient has five decimals. */
    private static List<String> coefficients(String file, PublishedTable changed) {
        List<String> breaches = new ArrayList<>();
        PublishedTable printed = file.equals(COEFFICIENTS) ? changed : table(COEFFICIENTS);
        List<PublishedTable.Row> shrinkage = new ArrayList<>();
        for (String table : List.of(SHRINKAGE, SHRINKAGE_RECALLED)) {
            shrinkage.addAll((file.equals(table) ? changed : table(table)).rows());
        }
        for (PublishedTable.Row row : printed.rows()) {
            String species = row.text("species");
            shrinkage.stream()
                    .filter(one -> one.text("species").equals(species))
                    .forEach(one -> Map.of("CR", "radial_pct", "CT", "tangential_pct")
                            .forEach((column, percent) -> {
                                Optional<Double> size = one.numberIfPrinted(percent);
                                Optional<Double> coefficient = row.numberIfPrinted(column);
                                boolean follows = size.isEmpty()
                                        || coefficient.isEmpty()
                                        || Math.abs(DimensionalChange.coefficientFromShrinkage(size.get())
                                                        - coefficient.get())
                                                < 0.000005000001;
                                if (follows == OWN_COEFFICIENT.contains(species + "," + column)) {
                                    breaches.add(species + ", " + column);
                                }
                            }));
        }
        return breaches;
    }

    /** Matched as the register of species matches them. */
    private static List<String> gravities(String file, PublishedTable changed) {
        boolean handbook = !file.equals(FOREST_SERVICE);
        Map<String, Double> green = new LinkedHashMap<>();
        (handbook ? changed : table("wood/gravity_5_3.csv"))
                .rows()
                .forEach(row -> green.put(row.text("species"), row.number("sg_green")));
        Map<String, Double> other = new LinkedHashMap<>();
        (handbook ? table(FOREST_SERVICE) : changed)
                .rows()
                .forEach(row -> other.put(row.text("spcd"), row.number("wood_sg_green")));
        List<String> breaches = new ArrayList<>();
        for (PublishedTable.Row species : table("wood/species.csv").rows()) {
            Double one = green.get(species.text("table_5_3"));
            Double two = other.get(species.text("fia_spcd"));
            if (one != null && two != null && one.equals(two) == OWN_GRAVITY.contains(species.text("id"))) {
                breaches.add(species.text("id"));
            }
        }
        return breaches;
    }

    /** The source cuts moisture to five decimals. */
    private static List<String> greenFactor(PublishedTable table) {
        List<String> breaches = new ArrayList<>();
        for (PublishedTable.Row row : table.rows()) {
            double factor = WoodWeight.dryToGreenFactor(
                    row.number("wood_sg_green"),
                    row.number("mc_green_wood_pct"),
                    row.number("bark_sg_green"),
                    row.number("mc_green_bark_pct"),
                    row.number("bark_vol_pct_of_wood"));
            if (Math.abs(factor - row.number("drywt_to_greenwt")) > 1e-8) {
                breaches.add("line " + row.line());
            }
        }
        return breaches;
    }

    /** The places where it does not hold. */
    List<String> breaches(PublishedTable table) {
        return check.apply(table);
    }

    static PublishedTable table(String file) {
        return PublishedTable.read(beside(file), file.substring(file.indexOf('/') + 1));
    }

    /** A class beside which a table lies. */
    static Class<?> beside(String file) {
        Class<?> beside = BESIDE.get(file.substring(0, file.indexOf('/')));
        if (beside == null) {
            throw new IllegalArgumentException("no class beside " + file);
        }
        return beside;
    }
}
