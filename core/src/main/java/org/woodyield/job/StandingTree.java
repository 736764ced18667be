package org.woodyield.job;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.woodyield.log.BarkRatio;
import org.woodyield.log.FormClass;
import org.woodyield.log.FormClassStem;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;

/** A standing tree by its form class, as the columns of a table or the options of a command with the same names give it. */
final class StandingTree {

    static final String BREAST_HEIGHT = "breast-height";
    static final String FORM_CLASS = "form-class";
    static final String BARK = "bark";
    static final String BARK_RATIO = "bark-ratio";
    static final String TAPER = "taper";
    static final String TOTAL_HEIGHT = "total-height";

    static final List<Table.Column> COLUMNS = List.of(
            Table.Column.optional(BREAST_HEIGHT),
            Table.Column.optional(FORM_CLASS),
            Table.Column.optional(BARK),
            Table.Column.optional(BARK_RATIO),
            Table.Column.optional(TAPER),
            Table.Column.optional(TOTAL_HEIGHT));

    /** What the columns hold, for the help. */
    static final String WORDS = BREAST_HEIGHT + " (outside bark), " + FORM_CLASS + " (78 %%); optional " + BARK
            + " (on one side at breast height) or " + BARK_RATIO
            + " (inside over outside bark, such as 0.9) and, for the stem above 17.3 ft, " + TAPER
            + " (such as 1 in per 8 ft) or "
            + TOTAL_HEIGHT + " (straight to the tip)";

    static final Length WIDEST = Length.millimetres(3000);
    static final Length HIGHEST = Length.feet(400);
    static final Domain PERCENT =
            new Domain("", "%", 40, 100, "inside bark at 17.3 ft, over the diameter at breast height outside bark");
    private static final Domain RATIO =
            new Domain("", "", 0.5, 1, "diameter inside bark over diameter outside bark, such as 0.9");

    private StandingTree() {}

    /** The ratio in a cell, or a problem; nothing where nothing stands. */
    static Optional<BarkRatio> barkRatio(Cell cell) {
        return cell.ifAny(one -> one.number(RATIO).map(BarkRatio::new));
    }

    /** The total height in a cell, or a problem; nothing where nothing stands. */
    static Optional<Length> totalHeight(Cell cell) {
        return cell.ifAny(one -> one.lengthUpTo(HIGHEST, "measure from the ground to the tip"));
    }

    static OptionalDouble ifKnown(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }

    /** The options of one tree. */
    static Usage options(Usage usage) {
        return usage.option(
                        "--" + BREAST_HEIGHT,
                        "DIAMETER",
                        "Diameter outside bark at 4.5 ft of a standing tree that is known by its form class.")
                .option("--" + FORM_CLASS, "PERCENT", "Its diameter inside bark at 17.3 ft over that, such as '78 %%'.")
                .option("--" + BARK, "THICKNESS", "Its bark on one side at breast height, if known.")
                .option(
                        "--" + BARK_RATIO,
                        "RATIO",
                        "Diameter inside bark over diameter outside bark, such as 0.9: in place of --" + BARK
                                + "; or of a table whose diameters are outside bark.")
                .option("--" + TAPER, "TAPER", "What it loses above 17.3 ft, such as '1 in per 8 ft'.")
                .option(
                        "--" + TOTAL_HEIGHT,
                        "HEIGHT",
                        "Height of its tip above the ground; in place of --" + TAPER
                                + " the stem goes straight to it.");
    }

    /**
     * The tree, or a problem.
     *
     * @param cells what stands under a name; empty where nothing does
     */
    static Optional<FormClassStem> read(Function<String, Cell> cells) {
        Optional<Length> breast = cells.apply(BREAST_HEIGHT).lengthUpTo(WIDEST, "check the unit");
        Optional<Double> percent = cells.apply(FORM_CLASS).quantity(Units.PERCENT, PERCENT);
        Cell barkCell = cells.apply(BARK);
        Cell ratioCell = cells.apply(BARK_RATIO);
        Cell taperCell = cells.apply(TAPER);
        Cell heightCell = cells.apply(TOTAL_HEIGHT);
        Optional<Length> bark =
                barkCell.ifAny(cell -> cell.lengthOrNoneUpTo(Length.millimetres(300), "give it on one side"));
        Optional<BarkRatio> ratio = barkRatio(ratioCell);
        if (bark.isPresent() && ratio.isPresent()) {
            ratioCell.refuse("the bark once", "leave out " + BARK + " or " + BARK_RATIO);
            return Optional.empty();
        }
        Optional<Double> taper = taperCell.ifAny(cell -> cell.slope(0.1));
        Optional<Length> height = totalHeight(heightCell);
        if (breast.isEmpty()
                || percent.isEmpty()
                || barkCell.isUnread(bark)
                || ratioCell.isUnread(ratio)
                || taperCell.isUnread(taper)
                || heightCell.isUnread(height)) {
            return Optional.empty();
        }
        double outside = breast.get().toInches();
        Optional<Double> thick = bark.map(Length::toInches).or(() -> ratio.map(k -> (outside - k.inside(outside)) / 2));
        try {
            return Optional.of(new FormClassStem(
                    outside,
                    new FormClass(percent.get()),
                    ifKnown(thick),
                    ifKnown(taper.map(slope -> 12 * slope)),
                    ifKnown(height.map(Length::toFeet))));
        } catch (OutOfDomainException e) {
            String name = named(e.parameter());
            cells.apply(name.equals(BARK) && bark.isEmpty() ? BARK_RATIO : name).refuse(e);
            return Optional.empty();
        }
    }

    private static String named(String parameter) {
        if (parameter.startsWith("bark")) {
            return BARK;
        }
        if (parameter.startsWith("taper")) {
            return TAPER;
        }
        return parameter.startsWith("total height") ? TOTAL_HEIGHT : BREAST_HEIGHT;
    }
}
