package org.woodyield.job;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.woodyield.log.HeartRot;
import org.woodyield.log.Log;
import org.woodyield.log.LogSolid;
import org.woodyield.log.Pith;
import org.woodyield.log.ProfileStation;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.plan.JobInput.Assumption;
import org.woodyield.source.Sourced;
import org.woodyield.wood.ShrinkageModel;
import org.woodyield.wood.Species;

/** Reads the logs. */
final class LogTable {

    private static final String ID = "id";
    private static final String SPECIES = "species";
    private static final String LENGTH = "length";
    private static final String SMALL = "small-end";
    private static final String ACROSS = "small-end-across";
    private static final String MEASURED = "measured";
    private static final String BARK = "bark";
    private static final String LARGE = "large-end";
    private static final String TAPER = "taper";
    private static final String SWEEP = "sweep";
    private static final String DIRECTION = "sweep-direction";
    private static final String BUTT = "butt";
    private static final String ROT = "rot";
    private static final String ROT_FROM = "rot-from";
    private static final String ROT_TO = "rot-to";
    private static final String PITH = "pith-offset";
    private static final String PITH_DIRECTION = "pith-direction";

    static final List<Table.Column> COLUMNS = List.of(
            Table.Column.required(ID),
            Table.Column.required(SPECIES),
            Table.Column.required(LENGTH),
            Table.Column.required(SMALL),
            Table.Column.optional(ACROSS),
            Table.Column.required(MEASURED),
            Table.Column.optional(BARK),
            Table.Column.optional(LARGE),
            Table.Column.optional(TAPER),
            Table.Column.optional(SWEEP),
            Table.Column.optional(DIRECTION),
            Table.Column.optional(BUTT),
            Table.Column.optional(ROT),
            Table.Column.optional(ROT_FROM),
            Table.Column.optional(ROT_TO),
            Table.Column.optional(PITH),
            Table.Column.optional(PITH_DIRECTION));

    private static final Length LONGEST = Length.millimetres(30_000);
    private static final Length LARGEST = Length.millimetres(3000);
    private static final Length THICKEST_BARK = Length.millimetres(300);
    private static final double STEEPEST = 0.1;
    private static final Set<String> PROFILE_OR_LARGE_END = Set.of("profile", "large-end diameter");

    /** Bark worked out from a share of the volume is no better known than to a tenth of a millimetre. */
    private static final Length BARK_STEP = Length.nanometres(100_000);

    private final Names names = new Names();

    private record Entry(Log log, Table.Row row) {}

    private final List<Entry> entries = new ArrayList<>();
    private final List<Assumption> assumptions = new ArrayList<>();
    private final Set<String> ids = new LinkedHashSet<>();
    private final ProfileTable profiles;

    private LogTable(ProfileTable profiles) {
        this.profiles = profiles;
    }

    /** Reads all rows; those that cannot be a log are noted. */
    static LogTable read(List<Table.Row> rows, ProfileTable profiles) {
        LogTable table = new LogTable(profiles);
        rows.forEach(table::row);
        profiles.refuseUnknown(table.ids);
        return table;
    }

    List<Log> logs() {
        return entries.stream().map(Entry::log).toList();
    }

    List<Assumption> assumptions() {
        return List.copyOf(assumptions);
    }

    private void row(Table.Row row) {
        Optional<String> id = names.read(row.cell(ID), "a name of your own for the log");
        id.ifPresent(ids::add);
        Optional<Species> species = Woods.species(row.cell(SPECIES));
        Optional<Length> length = row.cell(LENGTH).lengthUpTo(LONGEST, "give the length of one log, not of the stem");
        Optional<Length> small = row.cell(SMALL).lengthUpTo(LARGEST, "check the unit");
        Optional<Length> across = row.cellIfAny(ACROSS)
                .map(cell -> cell.lengthUpTo(LARGEST, "check the unit"))
                .orElse(small);
        Optional<Boolean> overBark = row.cell(MEASURED).choice(Choices.OVER_BARK);
        Optional<Cell> barkCell = row.cellIfAny(BARK);
        Optional<Length> bark =
                barkCell.flatMap(cell -> cell.lengthOrNoneUpTo(THICKEST_BARK, "give the thickness on one side"));
        Optional<Length> sweep = row.cellIfAny(SWEEP)
                .map(cell -> cell.lengthOrNoneUpTo(LONGEST, "give the greatest distance from a taut string"))
                .orElse(Optional.of(Length.ZERO));
        Optional<Double> direction = direction(row, DIRECTION);
        Optional<Boolean> butt =
                row.cellIfAny(BUTT).map(cell -> cell.choice(Choices.YES_NO)).orElse(Optional.of(false));
        Optional<Cell> largeCell = row.cellIfAny(LARGE);
        Optional<Cell> taperCell = row.cellIfAny(TAPER);
        boolean measured = id.isPresent() && profiles.has(id.get());
        if (measured && (largeCell.isPresent() || taperCell.isPresent())) {
            row.cell(largeCell.isPresent() ? LARGE : TAPER)
                    .refuse(
                            "empty where " + JobFile.PROFILES.fileName() + " gives the large end",
                            "leave it empty, or take the log's profile out");
            return;
        }
        if (!measured && largeCell.isPresent() == taperCell.isPresent()) {
            row.cell(LARGE)
                    .refuse("either " + LARGE + " or " + TAPER, largeCell.isPresent() ? "leave one empty" : "give one");
        }
        Optional<Length> large = largeCell.flatMap(cell -> cell.lengthUpTo(LARGEST, "check the unit"));
        Optional<Double> taper = taperCell.flatMap(cell -> cell.slope(STEEPEST));
        Optional<HeartRot> rot = rot(row, length);
        Optional<Pith> pith = pith(row);
        if (id.isEmpty()
                || species.isEmpty()
                || length.isEmpty()
                || small.isEmpty()
                || across.isEmpty()
                || overBark.isEmpty()
                || barkCell.isPresent() != bark.isPresent()
                || sweep.isEmpty()
                || direction.isEmpty()
                || butt.isEmpty()
                || rot.isEmpty()
                || pith.isEmpty()
                || (!measured && large.isPresent() == taper.isPresent())) {
            return;
        }
        Length mean = small.get().plus(across.get()).dividedBy(2, Rounding.DOWN);
        if (large.isPresent() && large.get().compareTo(mean) < 0) {
            row.cell(LARGE)
                    .refuse(
                            "no less than the small end, " + mean + " in the mean",
                            "measure again, or change the two ends");
            return;
        }
        Optional<Length> thickness = bark.isPresent() ? bark : bark(row, id.get(), species.get(), mean, overBark.get());
        if (thickness.isEmpty()) {
            return;
        }
        Length off = overBark.get() ? thickness.get().times(2) : Length.ZERO;
        if (off.compareTo(Length.min(small.get(), across.get())) >= 0) {
            row.cell(BARK).refuse("less than half the diameter over bark", "give the thickness on one side");
            return;
        }
        Optional<List<ProfileStation>> profile = profiles.stations(id.get(), off);
        if (profile.isEmpty()) {
            return;
        }
        Length largeEnd = measured
                ? profile.get().get(profile.get().size() - 1).diameter()
                : large.orElseGet(() -> mean.plus(Length.ofMetres(
                                taper.orElseThrow() * length.get().toMetres(), Rounding.HALF_UP)))
                        .minus(off);
        try {
            Log log = new Log(
                    id.get(),
                    species.get(),
                    length.get(),
                    Length.max(small.get(), across.get()).minus(off),
                    Length.min(small.get(), across.get()).minus(off),
                    largeEnd,
                    thickness.get(),
                    sweep.get(),
                    direction.get(),
                    butt.get(),
                    profile.get(),
                    rot.get(),
                    pith.get());
            // Rot has to lie in the wood; only the solid knows.
            LogSolid.of(log);
            entries.add(new Entry(log, row));
        } catch (OutOfDomainException e) {
            if (measured && (e.parameter().contains("station") || PROFILE_OR_LARGE_END.contains(e.parameter()))) {
                profiles.refuse(id.get(), e);
            } else {
                row.cell(column(e.parameter())).refuse(e);
            }
        }
    }

    private static Optional<Double> direction(Table.Row row, String column) {
        return row.cellIfAny(column)
                .map(cell -> cell.quantity(Units.DEGREES, Domain.of("direction", "degrees", -360, 360)))
                .orElse(Optional.of(0.0));
    }

    /** Rot reaches to the ends of the log unless the cells say otherwise. */
    private static Optional<HeartRot> rot(Table.Row row, Optional<Length> length) {
        Optional<Cell> cell = row.cellIfAny(ROT);
        if (cell.isEmpty()) {
            for (String column : List.of(ROT_FROM, ROT_TO)) {
                row.cellIfAny(column)
                        .ifPresent(end -> end.refuse("empty where there is no " + ROT, "give its diameter"));
            }
            return Optional.of(HeartRot.NONE);
        }
        Optional<Length> diameter = cell.get().lengthOrNoneUpTo(LARGEST, "check the unit");
        Optional<Length> from = row.cellIfAny(ROT_FROM)
                .map(end -> end.lengthOrNoneUpTo(LONGEST, "measure from the small end"))
                .orElse(Optional.of(Length.ZERO));
        Optional<Length> to = row.cellIfAny(ROT_TO)
                .map(end -> end.lengthUpTo(LONGEST, "measure from the small end"))
                .orElse(length);
        if (diameter.isEmpty() || from.isEmpty() || to.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(new HeartRot(diameter.get(), from.get(), to.get()));
        } catch (OutOfDomainException e) {
            row.cell(column(e.parameter())).refuse(e);
            return Optional.empty();
        }
    }

    private static Optional<Pith> pith(Table.Row row) {
        Optional<Length> offset = row.cellIfAny(PITH)
                .map(cell -> cell.lengthOrNoneUpTo(LARGEST, "give its distance from the middle of the section"))
                .orElse(Optional.of(Length.ZERO));
        Optional<Double> direction = direction(row, PITH_DIRECTION);
        return offset.flatMap(from -> direction.map(turn -> new Pith(from, turn)));
    }

    /** Notes each log that would give lumber finished dry though no model knows how its wood shrinks. */
    void refuseUnknownShrinkage(Function<Species, List<Double>> dryMoistures) {
        List<ShrinkageModel> models = List.of(ShrinkageModel.straightLine(), ShrinkageModel.lumberEquation());
        for (Entry entry : entries) {
            Species species = entry.log().species();
            for (double moisture : dryMoistures.apply(species)) {
                if (models.stream()
                        .noneMatch(model ->
                                model.appliesTo(species) && model.moisture().holds(moisture))) {
                    entry.row()
                            .cell(SPECIES)
                            .refuse(
                                    "species whose shrinkage is known, to " + OutputTable.fixed(moisture, 0)
                                            + " % moisture",
                                    "name a related species, or want its lumber dressed green");
                    break;
                }
            }
        }
    }

    /** The bark that the species' share of bark by volume would make, on a log of this diameter. */
    private Optional<Length> bark(Table.Row row, String id, Species species, Length mean, boolean overBark) {
        Optional<Sourced> share = species.barkPercentOfWood();
        if (share.isEmpty()) {
            row.cell(BARK)
                    .missing(
                            "the thickness of the bark on one side",
                            "no share of bark is known of " + species.commonName() + "; measure it");
            return Optional.empty();
        }
        double growth = StrictMath.sqrt(1 + share.get().value() / 100);
        double metres = mean.toMetres() / 2 * (overBark ? 1 - 1 / growth : growth - 1);
        Length thickness = Length.ofMetres(metres, Rounding.HALF_UP).roundedTo(BARK_STEP, Rounding.HALF_UP);
        assumptions.add(new Assumption(
                "bark of log " + id,
                thickness.inMillimetres(1) + ", from bark as " + share.get().value() + " % of the wood's volume",
                share.get().source()));
        return Optional.of(thickness);
    }

    /** What a log refused, by the column where it stands. */
    private static String column(String parameter) {
        return switch (parameter) {
            case "length" -> LENGTH;
            case "large-end diameter" -> LARGE;
            case "bark thickness" -> BARK;
            case "sweep" -> SWEEP;
            case "sweep direction" -> DIRECTION;
            case "rot diameter" -> ROT;
            case "beginning of the rot" -> ROT_FROM;
            case "end of the rot" -> ROT_TO;
            default -> SMALL;
        };
    }
}
