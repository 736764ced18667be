package org.woodyield.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.woodyield.lumber.Product.Wood;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.plan.JobInput.Assumption;
import org.woodyield.sawing.Saw;
import org.woodyield.source.Sources;
import org.woodyield.work.EnergyFit;
import org.woodyield.work.TimedCut;
import org.woodyield.work.WorkInput;
import org.woodyield.work.WorkInputs;
import org.woodyield.working.Working;

/** Reads the cuts that the user timed, and puts the cutting energy that they give in place of the default. */
final class TimedCutTable {

    private static final String ID = "id";
    private static final String WOOD = "wood";
    private static final String WIDTH = "width";
    private static final String LENGTH = "length";
    private static final String TIME = "time";

    static final List<Table.Column> COLUMNS = List.of(
            Table.Column.required(ID),
            Table.Column.required(WOOD),
            Table.Column.required(WIDTH),
            Table.Column.required(LENGTH),
            Table.Column.required(TIME));

    private static final Length WIDEST = Length.millimetres(4000);
    private static final Length LONGEST = Length.millimetres(30_000);

    private final Names names = new Names();
    private final List<TimedCut> cuts = new ArrayList<>();
    private final List<Assumption> assumptions = new ArrayList<>();

    private TimedCutTable() {}

    static TimedCutTable read(List<Table.Row> rows) {
        TimedCutTable table = new TimedCutTable();
        rows.forEach(table::row);
        return table;
    }

    private void row(Table.Row row) {
        Optional<String> id = names.read(row.cell(ID), "a name of your own for the cut");
        Optional<Wood> wood = Woods.read(row.cell(WOOD));
        if (wood.isPresent() && wood.get().kind() == Wood.Kind.ANY) {
            row.cell(WOOD).refuse("softwood, hardwood, or the name of a species", "say which wood was cut");
            return;
        }
        Optional<Length> width = row.cell(WIDTH).lengthUpTo(WIDEST, "give the mean width of the cut, over bark");
        Optional<Length> length = row.cell(LENGTH).lengthUpTo(LONGEST, "give the length of the cut");
        Optional<Double> seconds = row.cell(TIME).quantity(Units.SECONDS, TimedCut.SECONDS);
        if (id.isEmpty() || wood.isEmpty() || width.isEmpty() || length.isEmpty() || seconds.isEmpty()) {
            return;
        }
        try {
            cuts.add(wood.get()
                    .species()
                    .map(species -> TimedCut.of(id.get(), species, width.get(), length.get(), seconds.get()))
                    .orElseGet(() -> new TimedCut(
                            id.get(),
                            wood.get().kind() == Wood.Kind.HARDWOOD,
                            Optional.empty(),
                            width.get(),
                            length.get(),
                            seconds.get())));
        } catch (OutOfDomainException e) {
            row.cell(WIDTH).refuse(e);
        }
    }

    /** What the fits rest on, in words. */
    List<Assumption> assumptions() {
        return List.copyOf(assumptions);
    }

    /** The inputs with the energy of each kind of wood that was timed; what cannot be fitted is noted. */
    WorkInputs into(WorkInputs inputs, Saw saw, Problems problems) {
        WorkInputs fitted = inputs;
        for (boolean hardwood : new boolean[] {false, true}) {
            if (cuts.stream().anyMatch(cut -> cut.hardwood() == hardwood)) {
                WorkInput energy = hardwood ? WorkInput.ENERGY_HARDWOOD : WorkInput.ENERGY_SOFTWOOD;
                if (inputs.find(energy)
                        .filter(value -> value.source().id().equals("user"))
                        .isPresent()) {
                    problems.add(
                            JobFile.TIMED_CUTS.fileName(),
                            0,
                            "",
                            "",
                            "timed cuts or " + Keys.work(energy).text() + ", not both",
                            "remove one of the two");
                    continue;
                }
                long few =
                        cuts.stream().filter(cut -> cut.hardwood() == hardwood).count();
                if (few < EnergyFit.FEWEST) {
                    notUsed(hardwood, few);
                    continue;
                }
                try {
                    EnergyFit fit = EnergyFit.of(inputs, saw.kerf(), hardwood, cuts);
                    fitted = fit.into(fitted);
                    note(fit, EnergyFit.working(inputs, saw.kerf(), hardwood, cuts));
                } catch (OutOfDomainException e) {
                    problems.add(JobFile.TIMED_CUTS.fileName(), 0, e.parameter(), e.value(), e.limits(), e.remedy());
                }
            }
        }
        return fitted;
    }

    private void notUsed(boolean hardwood, long few) {
        assumptions.add(new Assumption(
                "timed cuts in " + (hardwood ? "hardwood" : "softwood"),
                "not used: " + few + (few == 1 ? " cut" : " cuts") + ", and fewer than " + EnergyFit.FEWEST
                        + " say too little of their own scatter; the cutting energy stays as it was",
                Sources.get("user")));
    }

    private void note(EnergyFit fit, Working working) {
        String aside = fit.setAside().isEmpty()
                ? ""
                : "; set aside, the feed limit held: " + String.join(", ", fit.setAside());
        assumptions.add(new Assumption(
                "timed cuts in " + (fit.hardwood() ? "hardwood" : "softwood"),
                fit.used() + " cuts: cutting energy " + OutputTable.fixed(fit.energy(), 1) + " J/cm3, with 95 % from "
                        + OutputTable.fixed(fit.least(), 1) + " to " + OutputTable.fixed(fit.greatest(), 1) + aside,
                Sources.get("timed-cuts"),
                Optional.of(working)));
    }
}
