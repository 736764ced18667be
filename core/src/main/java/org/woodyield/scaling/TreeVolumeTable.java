package org.woodyield.scaling;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.woodyield.log.FormClass;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Domain;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.PublishedTable;
import org.woodyield.source.Source;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * Board feet of standing trees by diameter at breast height and number of 16-ft logs, as printed for one form class. The
 * printed columns of half logs are the means of their neighbours to the board foot, which {@link #between} computes; where a
 * printed cell and that mean part by more, the cell is marked as doubtful and is given as printed all the same.
 */
public final class TreeVolumeTable {

    private static final double HALF_PRINTED = 0.5;
    private static final String[] COLUMNS = {"1", "1.5", "2", "2.5", "3", "3.5", "4", "4.5", "5"};

    private final FormClass formClass;
    private final Source source;
    private final Domain diameters;
    private final Map<Integer, List<Optional<Double>>> rows;

    private TreeVolumeTable(FormClass formClass, PublishedTable table) {
        this.formClass = formClass;
        source = table.source();
        rows = new LinkedHashMap<>();
        int least = Integer.MAX_VALUE;
        int greatest = 0;
        for (PublishedTable.Row row : table.rows()) {
            int diameter = (int) row.number("dbh_in");
            List<Optional<Double>> cells = new ArrayList<>();
            for (String column : COLUMNS) {
                cells.add(row.numberIfPrinted(column));
            }
            rows.put(diameter, List.copyOf(cells));
            least = Math.min(least, diameter);
            greatest = Math.max(greatest, diameter);
        }
        diameters = new Domain(
                "diameter at breast height", "in", least, greatest, "the table has whole inches; take the nearest");
    }

    /**
     * Scribner, Girard form class 78.
     *
     * @return the table, 10 to 40 in and 1 to 5 logs
     */
    public static TreeVolumeTable scribnerFormClass78() {
        return new TreeVolumeTable(
                new FormClass(78), PublishedTable.read(TreeVolumeTable.class, "tree_scribner_form_class_78.csv"));
    }

    /**
     * The form class of the trees.
     *
     * @return in percent
     */
    public FormClass formClass() {
        return formClass;
    }

    /**
     * What the table rests on.
     *
     * @return the source
     */
    public Source source() {
        return source;
    }

    /**
     * The printed cell.
     *
     * @param breastHeightInches whole inches, outside bark
     * @param logs count of 16-ft logs, in halves
     * @return board feet of a scale, gross
     * @throws OutOfDomainException if there is no such cell
     */
    @Calculation("scaling.tree-volume")
    public BoardFeet boardFeet(double breastHeightInches, double logs) {
        return BoardFeet.scale(cell(breastHeightInches, logs));
    }

    private double cell(double breastHeightInches, double logs) {
        diameters.require(breastHeightInches);
        List<Optional<Double>> row = rows.get((int) breastHeightInches);
        double column = (logs - 1) * 2;
        if (row == null
                || breastHeightInches != Math.rint(breastHeightInches)
                || !(column >= 0 && column < COLUMNS.length)
                || column != Math.rint(column)
                || row.get((int) column).isEmpty()) {
            throw new OutOfDomainException(
                    "tree",
                    breastHeightInches + " in, " + logs + " logs",
                    "",
                    "cells of the table: whole inches from 10 to 40, half logs from 1, the more the thicker the tree",
                    "take the nearest cell; nothing is extrapolated");
        }
        return row.get((int) column).orElseThrow();
    }

    /**
     * Whether the copy of the cell that was read is doubtful: it parts from the mean of its neighbours.
     *
     * @param breastHeightInches whole inches
     * @param logs a count of logs and a half, such as 2.5
     * @return true if it is more than half a board foot off that mean
     * @throws OutOfDomainException if there is no such cell, or one of its neighbours is not printed
     */
    public boolean doubtful(double breastHeightInches, double logs) {
        return Math.abs(cell(breastHeightInches, logs) - between(breastHeightInches, logs)) > HALF_PRINTED;
    }

    /**
     * For a count of logs between two that are printed whole: straight between them.
     *
     * @param breastHeightInches whole inches, outside bark
     * @param logs 1 to 5, not whole
     * @return board feet, not rounded
     * @throws OutOfDomainException if one of the two cells is not printed, or the count is whole
     */
    @Calculation("scaling.tree-volume-between")
    public double between(double breastHeightInches, double logs) {
        double below = below(logs);
        double share = logs - below;
        double less = cell(breastHeightInches, below);
        return less + (cell(breastHeightInches, below + 1) - less) * share;
    }

    private static double below(double logs) {
        double below = Math.floor(logs);
        if (!(logs > below)) {
            throw new OutOfDomainException(
                    "count of logs", Double.toString(logs), "", "between two whole ones", "read the cell itself");
        }
        return below;
    }

    /**
     * The working of {@link #boardFeet}.
     *
     * @param breastHeightInches whole inches, outside bark
     * @param logs count of 16-ft logs, in halves
     * @return a working with the same value
     * @throws OutOfDomainException if there is no such cell
     */
    public Working boardFeetWorking(double breastHeightInches, double logs) {
        double cell = cell(breastHeightInches, logs);
        return Working.of("Board feet of a standing tree, " + title())
                .given("B", "diameter at breast height", breastHeightInches, "in")
                .given("n", "logs of 16 ft", logs, "")
                .lookup(
                        "V",
                        "gross scale",
                        (int) breastHeightInches + " in, " + PublishedRule.literal(logs) + " logs",
                        cell,
                        "bf",
                        source)
                .build();
    }

    /**
     * The working of {@link #between}.
     *
     * @param breastHeightInches whole inches, outside bark
     * @param logs 1 to 5, not whole
     * @return a working with the same value
     * @throws OutOfDomainException if one of the two cells is not printed, or the count is whole
     */
    public Working betweenWorking(double breastHeightInches, double logs) {
        double below = below(logs);
        int inches = (int) breastHeightInches;
        return Working.of("Board feet of a standing tree between two counts of logs, " + title())
                .given("n", "logs of 16 ft", logs, "")
                .given("m", "whole logs below", below, "")
                .lookup("a", "fewer", inches + " in, " + (int) below + " logs", cell(inches, below), "bf", source)
                .lookup(
                        "b",
                        "more",
                        inches + " in, " + (int) (below + 1) + " logs",
                        cell(inches, below + 1),
                        "bf",
                        source)
                .step("V", "straight between them", "a + (b - a) * (n - m)", "bf", source)
                .build();
    }

    private String title() {
        return "Scribner, form class " + PublishedRule.literal(formClass.percent());
    }
}
