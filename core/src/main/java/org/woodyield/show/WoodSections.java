package org.woodyield.show;

import static org.woodyield.show.PlanWords.NOTHING;
import static org.woodyield.show.PlanWords.cubic;
import static org.woodyield.show.PlanWords.share;
import static org.woodyield.show.PlanWords.wood;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.woodyield.lumber.BoardMeasure;
import org.woodyield.lumber.FallDown;
import org.woodyield.lumber.Product;
import org.woodyield.measure.Length;
import org.woodyield.measure.Volume;
import org.woodyield.plan.DryingYard;
import org.woodyield.plan.GreenSize;
import org.woodyield.plan.JobPlan;
import org.woodyield.plan.LogPlan;
import org.woodyield.plan.YardPlan;
import org.woodyield.sawing.Saw;
import org.woodyield.sawing.WoodBalance;
import org.woodyield.show.Block.Derivation;
import org.woodyield.show.Block.Figure;
import org.woodyield.show.Block.Points;
import org.woodyield.show.Block.Prose;
import org.woodyield.show.Block.Section;
import org.woodyield.show.Block.Tabular;
import org.woodyield.show.Block.Workings;
import org.woodyield.show.PlanTable.Cell;
import org.woodyield.source.Sourced;
import org.woodyield.source.Sources;
import org.woodyield.wood.AirDrying;
import org.woodyield.working.Working;

/** What a plan says of the wood: sizes to saw green, where it goes, weight, drying and final size. */
final class WoodSections {

    private static final double POUND = 0.45359237;

    private final PlanWords words;
    private final JobPlan plan;

    WoodSections(PlanWords words) {
        this.words = words;
        plan = words.plan();
    }

    Section greenSizes() {
        PlanTable.Builder table = PlanTable.of("green-sizes", "Green target and setting, by thing wanted and wood")
                .text("Wanted", "wanted")
                .text("Wood", "species")
                .number(words.header("Finished thick"), "finished-thickness-mm")
                .number(words.header("Finished wide"), "finished-width-mm")
                .number("Green target thick, in", "target-thickness-in")
                .number("Green target wide, in", "target-width-in")
                .number(words.header("Saw thick"), "saw-thickness-mm")
                .number(words.header("Saw wide"), "saw-width-mm")
                .number("To spare after planing, in", "spare-thickness-in")
                .number("Too thin, %", "scant-percent");
        Map<String, Derivation> workings = new LinkedHashMap<>();
        Set<String> models = new LinkedHashSet<>();
        Length step = plan.input().saw().settingStep();
        for (GreenSize size : plan.greenSizes()) {
            size.shrinkageModel().ifPresent(models::add);
            table.row(
                    Cell.text(size.wantedId()),
                    Cell.text(wood(size)),
                    words.length(size.finishedThickness()),
                    words.length(size.finishedWidth()),
                    Cell.number(size.thickness().targetInches(), 3, 4),
                    Cell.number(size.width().targetInches(), 3, 4),
                    words.length(size.thicknessToSaw()),
                    words.length(size.widthToSaw()),
                    Cell.number(size.sparePlanedThicknessInches(), 3, 4),
                    Cell.number(100 * size.scantShare(), 1, 3));
            String of = size.wantedId() + " in " + size.species().commonName();
            size.shrinkageWorking().ifPresent(working -> once(of, working, workings));
            once(of + ", thickness", size.thickness().targetWorking(), workings);
            once(of + ", width", size.width().targetWorking(), workings);
            if (plan.input().saw().reference() == Saw.Reference.PREVIOUS_FACE) {
                once(of + ", thickness", size.thickness().settingWorking(step), workings);
            }
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Tabular(table.build()));
        blocks.add(new Prose(
                "Planed dry: (finished + planing) / (1 - shrinkage) + Z x sawing variation. The saw's setting is"
                        + " the next step of its scale above the target; too thin is the share of pieces that the saw's scatter"
                        + " leaves under what planing clean needs."
                        + (models.isEmpty() ? "" : " Shrinkage: " + String.join("; ", models) + ".")));
        blocks.add(new Workings("How the green sizes come about", List.copyOf(workings.values())));
        return new Section("green-sizes", "Sizes to saw green", blocks);
    }

    /** Things that have the same working line for line share it; its title names them all. */
    private void once(String of, Working working, Map<String, Derivation> known) {
        String lines = WorkingText.plain(working);
        Derivation same = known.get(lines);
        known.put(lines, same == null ? words.derivation(working.title() + ": " + of, working) : same.alsoOf(of));
    }

    Section fallDown() {
        if (plan.fallDown().isEmpty()) {
            return new Section("fall-down", "From the saw to use", List.of(new Prose(NOTHING)));
        }
        PlanTable.Builder table = PlanTable.of("fall-down", "Board feet sawn, dried, planed and usable")
                .text("Wanted", "wanted")
                .text("Wood", "species")
                .text("Unit", "unit")
                .number("Sawn", "sawn")
                .number("Usable", "usable")
                .number("Sawn green, bf", "sawn-bf")
                .number("Dried, bf", "dried-bf")
                .number("Planed, bf", "planed-bf")
                .number("Usable, bf", "usable-bf");
        Map<String, Derivation> workings = new LinkedHashMap<>();
        FallDown losses = plan.input().yard().fallDown();
        for (Product piece : plan.input().pieces()) {
            once(piece.id(), losses.of(piece.surface()).piecesToSawWorking(piece.quantity()), workings);
        }
        FallDown.Stages sum = FallDown.NONE.stages(0, 0, 0);
        for (JobPlan.Lot lot : plan.fallDown()) {
            int decimals = lot.unit().equals("pieces") ? 0 : 2;
            table.row(Stream.concat(
                            Stream.of(
                                    Cell.text(lot.wantedId()),
                                    Cell.text(lot.species().commonName()),
                                    Cell.text(lot.unit()),
                                    Cell.number(lot.sawn(), decimals),
                                    Cell.number(lot.left(), Math.max(1, decimals))),
                            stages(lot.stages()))
                    .toList());
            sum = sum.plus(lot.stages());
            once(lot.wantedId() + " in " + lot.species().commonName(), lot.working(), workings);
        }
        table.row(Stream.concat(
                        Stream.of(Cell.text("sum"), Cell.text(""), Cell.text(""), Cell.NONE, Cell.NONE), stages(sum))
                .toList());
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Tabular(table.build()));
        blocks.add(new Prose(lossesInWords(losses)));
        blocks.add(new Workings("How the spares and the board feet come about", List.copyOf(workings.values())));
        return new Section("fall-down", "From the saw to use", blocks);
    }

    private static Stream<Cell> stages(FallDown.Stages stages) {
        return Stream.of(stages.sawn(), stages.dried(), stages.planed(), stages.usable())
                .map(feet -> Cell.number(feet.value(), 1, 4));
    }

    private String lossesInWords(FallDown losses) {
        if (losses.equals(FallDown.NONE)) {
            return "No losses of drying are counted: the job gives none (finish.end-trim, finish.splits, finish.warp), or gives them as 0. So no"
                    + " spares are sawn: dried is what is sawn. Wood does check, split and warp, and no published share was"
                    + " found to stand in.";
        }
        return "Sawn counts the whole length, " + words.lengths().size(losses.endTrim())
                + " at each end for checks included; the tally elsewhere counts the trimmed length. Dried: the ends cut off and "
                + NumberText.full(losses.splitPercent())
                + " % of the pieces split. Planed: less those too thin to plane clean. Usable: less "
                + NumberText.full(losses.warpPercent())
                + " % warped. To saw = needed / ((1 - splits) (1 - warp)), pieces up to the next whole one, areas with their waste as they are: spares in the mean. The"
                + " shares are the job's own; lumber dressed green loses none.";
    }

    Section balance() {
        WoodBalance balance = plan.balance();
        if (balance.sum().cubicMetres() == 0) {
            return new Section("balance", "Where the wood goes", List.of(new Prose(NOTHING)));
        }
        PlanTable.Builder table = PlanTable.of("balance", "Balance of wood, inside bark")
                .text("Share", "share")
                .number("ft3", "volume-ft3")
                .number("m3", "volume-m3")
                .number("% of the solid", "percent");
        List<ShareBar.Part> parts = new ArrayList<>();
        Volume[] volumes = {
            balance.lumber(), balance.kerf(), balance.slab(), balance.edging(), balance.trim(), balance.rot()
        };
        String[] names = {"lumber", "kerf", "slabs", "edgings", "trimmed ends", "rot"};
        for (int i = 0; i < names.length; i++) {
            if (names[i].equals("rot") && volumes[i].cubicMetres() == 0) {
                continue;
            }
            parts.add(new ShareBar.Part(
                    names[i], volumes[i].cubicMetres(), cubic(volumes[i]) + ", " + share(volumes[i], plan.solid())));
            table.row(volume(names[i], volumes[i]));
        }
        table.row(volume("sum", balance.sum()));
        table.row(volume("solid of the logs sawn", plan.solid()));
        double off = Math.abs(balance.sum().cubicMetres() - plan.solid().cubicMetres());
        double relative = off / plan.solid().cubicMetres();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Figure(
                ShareBar.svg("balance", "Where the wood of the logs goes", parts), "Where the wood of the logs goes."));
        blocks.add(new Tabular(table.build()));
        blocks.add(
                new Prose("Each share is integrated over its own places, none is a difference. Sum and solid differ by "
                        + NumberText.significant(relative, 2) + " of the solid. " + ofKerf(balance.kerf())));
        return new Section("balance", "Where the wood goes", blocks);
    }

    /** In board feet of full size; a nominal one that is bought holds less wood. */
    private String ofKerf(Volume kerf) {
        double feet = kerf.cubicMetres() / BoardMeasure.solid(1).cubicMetres();
        String price = plan.breakEven()
                .flatMap(money -> money.boughtPerBoardFoot())
                .map(each -> ", " + NumberText.fixed(each.amount() * feet, 2) + " "
                        + plan.input().currency() + " at the price of the same lumber bought")
                .orElse("");
        return "The kerf is as much wood as " + NumberText.fixed(feet, 0) + " board feet of full size" + price
                + "; how much of that a thinner kerf would save, --what-if and compare-saws tell.";
    }

    private List<Cell> volume(String name, Volume volume) {
        return List.of(
                Cell.text(name),
                Cell.number(volume.cubicFeet(), 2, 6),
                Cell.number(volume.cubicMetres(), 4, 8),
                Cell.number(100 * volume.cubicMetres() / plan.solid().cubicMetres(), 1, 6));
    }

    Section weight() {
        List<Block> blocks = new ArrayList<>();
        List<String> lines = new ArrayList<>();
        lines.add("Heaviest log: " + heavy(plan.heaviestLog()));
        plan.heaviestPiece().ifPresent(piece -> lines.add("Heaviest piece: " + heavy(piece)));
        blocks.add(new Points(lines));
        PlanTable.Builder logs = PlanTable.of(
                        "weights", "Weight of the logs as they lie, bark included where its share is known")
                .text("Log", "log")
                .text("Species", "species")
                .number("kg", "green-kg")
                .number("lb", "green-lb");
        for (LogPlan log : plan.logs()) {
            logs.row(
                    Cell.text(log.log().id()),
                    Cell.text(log.log().species().commonName()),
                    Cell.number(log.greenKilograms(), 0, 1),
                    Cell.number(log.greenKilograms() / POUND, 0, 1));
        }
        blocks.add(new Tabular(logs.build()));
        if (!plan.drying().isEmpty()) {
            PlanTable.Builder table = PlanTable.of("drying", "Air-drying to 20 % moisture")
                    .text("Species", "species")
                    .number("Green thickness, in", "thickness-in")
                    .number("Days at least", "days-least")
                    .number("Days at most", "days-most")
                    .text("Rests on", "source");
            for (JobPlan.Drying drying : plan.drying()) {
                drying.days().ifPresent(days -> words.sources().add(days.source()));
                table.row(
                        Cell.text(drying.species()),
                        Cell.number(drying.thickness(), 3, 4),
                        drying.days()
                                .map(days -> Cell.number(days.least(), 0, 2))
                                .orElse(Cell.NONE),
                        drying.days()
                                .map(days -> Cell.number(days.greatest(), 0, 2))
                                .orElse(Cell.NONE),
                        Cell.text(drying.days()
                                .map(days -> days.source().citation())
                                .orElse("no figure is known")));
            }
            blocks.add(new Tabular(table.build()));
            AirDrying.ThicknessExponent used = AirDrying.ThicknessExponent.TENTH_THICKER;
            words.sources().add(used.source());
            words.sources().add(AirDrying.ThicknessExponent.RED_OAK_KILN.source());
            blocks.add(new Prose("Days are those of 1 in times thickness^" + NumberText.full(used.value())
                    + " (one tenth thicker takes 15 % longer, secondhand). Other views are "
                    + NumberText.full(AirDrying.ThicknessExponent.DOUBLE_THICKNESS.value())
                    + " (twice as thick, 2.5 times as"
                    + " long, secondhand) and " + NumberText.full(AirDrying.ThicknessExponent.RED_OAK_KILN.value())
                    + " (red oak in a kiln, secondhand)."));
        }
        PlanTable.Builder sizes = PlanTable.of("final-sizes", "Final size after drying and planing")
                .text("Wanted", "wanted")
                .text("Wood", "species")
                .number(words.header("Sawn thick"), "sawn-thickness-mm")
                .number("Dried and planed, at most, in", "planed-thickness-in")
                .number(words.header("Finished thick"), "finished-thickness-mm")
                .number(words.header("Sawn wide"), "sawn-width-mm")
                .number("Dried and planed, at most, in", "planed-width-in")
                .number(words.header("Finished wide"), "finished-width-mm");
        for (GreenSize size : plan.greenSizes()) {
            sizes.row(
                    Cell.text(size.wantedId()),
                    Cell.text(wood(size)),
                    words.length(size.thicknessToSaw()),
                    Cell.number(size.thickness().planedInches(size.thicknessToSaw()), 3, 4),
                    words.length(size.finishedThickness()),
                    words.length(size.widthToSaw()),
                    Cell.number(size.width().planedInches(size.widthToSaw()), 3, 4),
                    words.length(size.finishedWidth()));
        }
        blocks.add(new Tabular(sizes.build()));
        blocks.add(
                new Prose("The mean piece, dried and planed by no more than the allowance, would measure the figure in"
                        + " inches; planed to size it measures the finished one."));
        return new Section("weight", "Weight, drying and final size", blocks);
    }

    /** The yard, as far as the job gives one. */
    Optional<Section> yard() {
        DryingYard yard = plan.input().yard();
        YardPlan drying = YardPlan.of(plan);
        DryingParts parts = new DryingParts(words.lengths(), Sources.get("user"));
        List<Block> blocks = new ArrayList<>();
        yard.air().ifPresent(air -> blocks.addAll(parts.air(air)));
        if (!drying.piles().isEmpty()) {
            blocks.addAll(parts.stacks(drying.piles().stream()
                    .map(pile -> new DryingParts.Pile(
                            pile.wantedId() + ", "
                                    + words.lengths().longways(pile.stack().length()),
                            pile.species(),
                            pile.stack(),
                            pile.species().greenMoisturePercent().map(Sourced::value),
                            pile.dryPercent()))
                    .toList()));
            blocks.add(
                    new Prose(
                            "Boards lie as long as they are sawn, each size by itself"
                                    + (drying.piles().stream().anyMatch(YardPlan.Pile::meanWidth)
                                            ? "; boards of random width at their mean width, to the nearest 1/16 in"
                                            : "")
                                    + ". Green is at the green moisture of the wood, dry at the moisture wanted. What is dressed green is not stacked."));
        }
        if (!drying.cups().isEmpty()) {
            blocks.addAll(parts.cups(drying.cups().stream()
                    .map(cup -> new DryingParts.Cup(
                            cup.wantedId() + ", " + cup.species().commonName(), cup.board(), cup.dryPercent()))
                    .toList()));
        }
        List<String> leftOut = new ArrayList<>(drying.leftOut());
        leftOut.addAll(parts.leftOut());
        if (!leftOut.isEmpty()) {
            blocks.add(new Points(leftOut));
        }
        if (blocks.isEmpty()) {
            return Optional.empty();
        }
        if (!parts.workings().isEmpty()) {
            blocks.add(new Workings("How the figures of the yard come about", parts.workings()));
        }
        words.sources().addAll(parts.sources());
        return Optional.of(new Section("yard", "In the drying yard", blocks));
    }

    private static String heavy(JobPlan.Heavy heavy) {
        return heavy.what() + ", " + weight(heavy.greenKilograms()) + " green"
                + heavy.dryKilograms().map(dry -> ", " + weight(dry) + " dry").orElse("") + ".";
    }

    private static String weight(double kilograms) {
        return NumberText.fixed(kilograms, 0) + " kg (" + NumberText.fixed(kilograms / POUND, 0) + " lb)";
    }
}
