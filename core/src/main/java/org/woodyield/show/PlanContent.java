package org.woodyield.show;

import static org.woodyield.show.PlanWords.amount;
import static org.woodyield.show.PlanWords.cubic;
import static org.woodyield.show.PlanWords.feet;
import static org.woodyield.show.PlanWords.marked;
import static org.woodyield.show.PlanWords.share;
import static org.woodyield.show.PlanWords.signed;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.woodyield.lumber.CoverArea;
import org.woodyield.lumber.Product;
import org.woodyield.lumber.Product.Surface;
import org.woodyield.measure.BoardFeet;
import org.woodyield.plan.JobPlan;
import org.woodyield.plan.LogPlan;
import org.woodyield.plan.Planner;
import org.woodyield.plan.Supply;
import org.woodyield.scaling.Overrun;
import org.woodyield.show.Block.Derivation;
import org.woodyield.show.Block.Fact;
import org.woodyield.show.Block.Facts;
import org.woodyield.show.Block.Points;
import org.woodyield.show.Block.Prose;
import org.woodyield.show.Block.Section;
import org.woodyield.show.Block.Tabular;
import org.woodyield.show.Block.Workings;
import org.woodyield.show.PlanTable.Cell;
import org.woodyield.source.Source;
import org.woodyield.source.Standing;
import org.woodyield.work.InputValue;
import org.woodyield.work.Outlook;
import org.woodyield.work.WorkEstimate;
import org.woodyield.work.WorkInput;

/** What a plan says, in the order in which it is shown: sections of text, tables, drawings and workings. */
final class PlanContent {

    private final PlanWords words;
    private final JobPlan plan;

    private PlanContent(PlanWords words) {
        this.words = words;
        plan = words.plan();
    }

    static List<Section> of(JobPlan plan, Source origin) {
        PlanWords words = new PlanWords(plan);
        words.sources().add(origin);
        return new PlanContent(words).sections();
    }

    private List<Section> sections() {
        LogSections logs = new LogSections(words);
        WoodSections wood = new WoodSections(words);
        WorkSections work = new WorkSections(words);
        List<Section> sections = new ArrayList<>();
        sections.add(inShort());
        sections.add(wanted());
        sections.add(wood.fallDown());
        sections.add(wood.greenSizes());
        sections.add(logs.logs());
        List<String> sizes = plan.supply().stream().map(Supply::wantedId).toList();
        int index = 0;
        for (LogPlan log : plan.logs()) {
            index++;
            sections.add(logs.log(index, log, sizes));
        }
        sections.add(FlatnessSection.of(words));
        sections.add(wood.balance());
        sections.add(work.time());
        ExposureSection.of(words).ifPresent(sections::add);
        sections.add(wood.weight());
        sections.add(MovingSection.of(words));
        wood.yard().ifPresent(sections::add);
        sections.add(work.money());
        sections.add(cautions());
        sections.add(assumptions());
        // Last, when every source that the plan rests on is known.
        sections.add(sources());
        return sections;
    }

    private Section inShort() {
        List<Block> blocks = new ArrayList<>();
        List<Fact> facts = new ArrayList<>();
        long met = plan.supply().stream().filter(Supply::met).count();
        facts.add(new Fact("Wanted", met + " of " + plan.supply().size() + " met", shortages()));
        facts.add(new Fact("Lumber sawn", feet(plan.tally()), "by nominal tally; " + stages()));
        facts.add(new Fact(
                "Solid recovery",
                share(plan.balance().lumber(), plan.solid()),
                "green lumber of the solid volume of the logs that are sawn, " + cubic(plan.solid())));
        for (Fact overrun : overruns()) {
            facts.add(overrun);
        }
        WorkEstimate work = plan.work();
        facts.add(new Fact(
                words.fromMemory("Time on site"),
                NumberText.duration(work.time().total()),
                NumberText.fixed(work.days(), 1) + " days"
                        + WorkSections.ends(plan.prospects().days(), 1, "days") + "; the saw is in the wood for "
                        + NumberText.duration(work.time().cutting())));
        facts.add(new Fact(
                words.fromMemory("Fuel"),
                NumberText.fixed(work.use().fuelLitres(), 1) + " L",
                NumberText.fixed(work.use().barOilLitres(), 1) + " L of bar oil; "
                        + NumberText.fixed(work.use().sharpenings(), 1) + " sharpenings"
                        + WorkSections.ends(plan.prospects().fuelLitres(), 1, "L of fuel")));
        plan.breakEven().ifPresent(money -> {
            facts.add(new Fact(
                    words.fromMemory("Running cost"),
                    WorkSections.perFootInWords(money.workFree()),
                    "per usable board foot without own work"
                            + WorkSections.ends(
                                    plan.prospects().runningFree(),
                                    2,
                                    plan.input().currency()) + ". With it: "
                            + WorkSections.perFootInWords(money.workValued())
                            + WorkSections.ends(
                                    plan.prospects().runningValued(),
                                    2,
                                    plan.input().currency())));
            facts.add(new Fact(
                    "Same lumber bought",
                    money.boughtPerBoardFoot().map(NumberText::money).orElse("not known"),
                    "per board foot"
                            + plan.surplus()
                                    .map(surplus -> "; "
                                            + NumberText.fixed(surplus.usable().value(), 0)
                                            + " bf of it are beyond the need and count at "
                                            + NumberText.fixed(100 * surplus.share(), 0) + " %" + " of their price"
                                            + surplus.inFull()
                                                    .map(each -> ", in full " + NumberText.money(each))
                                                    .orElse(""))
                                    .orElse("")));
        });
        blocks.add(new Facts(facts));
        List<String> limited = plan.logs().stream()
                .filter(log ->
                        log.sawing().filter(LogSections::limitedByWidthOfCut).isPresent())
                .map(log -> log.log().id())
                .toList();
        if (!limited.isEmpty()) {
            blocks.add(
                    new Prose(
                            "The saw cuts " + plan.input().saw().widthOfCut() + " wide, and "
                                    + (limited.size() == 1 ? "log " : "logs ") + String.join(", ", limited)
                                    + (limited.size() == 1 ? " is" : " are")
                                    + " wider over the bark: part of the lumber is lost to that. The section of the log says what may help."));
        }
        plan.breakEven().ifPresent(money -> {
            List<String> lines = new ArrayList<>(List.of(
                    WorkSections.verdict("Own work not counted", money.workFree())
                            + prospect(plan.prospects().workFree()),
                    WorkSections.verdict("Own work counted at its wage", money.workValued())
                            + prospect(plan.prospects().workValued())));
            plan.ways()
                    .flatMap(ways -> new WaysSection(words, ways).likeForLike())
                    .ifPresent(lines::add);
            List<String> missing =
                    MissingPrices.of(plan).map(MissingPrices::keys).orElse(List.of());
            if (!missing.isEmpty()) {
                lines.add("Prices are missing: " + String.join(", ", missing)
                        + ". What is left out for want of each, and what to write, stands under Money.");
            }
            if (!plan.choice().uncounted().isEmpty()) {
                lines.add(uncounted());
            }
            blocks.add(new Points(lines));
        });
        return new Section("in-short", "In short", blocks);
    }

    /** A pass that seems to cost less than it does is made more often. */
    private String uncounted() {
        return "The cuts were chosen without counting the "
                + plan.choice().uncounted().stream().map(MissingPrices::named).collect(Collectors.joining(", the "))
                + ": a pass seemed to cost less than it does, so other cuts may be better. Where it costs nothing, write 0.";
    }

    /** What is left of the tally after each stage, and what of it never goes through one. */
    private String stages() {
        double dried = 0;
        double planed = 0;
        for (JobPlan.Lot lot : plan.fallDown()) {
            dried += lot.stages().dried().value();
            planed += lot.stages().planed().value();
        }
        return "left after drying " + NumberText.fixed(dried, 0) + " bf, after planing "
                + NumberText.fixed(planed, 0) + " bf, usable "
                + NumberText.fixed(plan.usable().value(), 0) + " bf"
                + of(Surface.ROUGH, "is left rough and not planed")
                + of(Surface.DRESSED_GREEN, "is dressed green and not dried");
    }

    private String of(Surface surface, String words) {
        Set<String> ids = Stream.concat(
                        plan.input().pieces().stream()
                                .filter(piece -> piece.surface() == surface)
                                .map(Product::id),
                        plan.input().areas().stream()
                                .filter(area -> area.surface() == surface)
                                .map(CoverArea::id))
                .collect(Collectors.toSet());
        double feet = 0;
        for (JobPlan.Lot lot : plan.fallDown()) {
            feet += ids.contains(lot.wantedId()) ? lot.tally() : 0;
        }
        return feet > 0 ? "; " + NumberText.fixed(feet, 0) + " bf of it " + words : "";
    }

    private String prospect(Optional<Outlook> outlook) {
        return outlook.map(one -> " In figures: " + new WorkSections(words).prospect(one) + "." + movers(one))
                .orElse("");
    }

    private String movers(Outlook outlook) {
        String most = outlook.movers().stream()
                .limit(WorkSections.MOVERS)
                .map(new WorkSections(words)::taken)
                .collect(Collectors.joining("; "));
        return most.isEmpty() ? "" : " What moves it most: " + most + ".";
    }

    private String shortages() {
        String lacking = plan.supply().stream()
                .filter(supply -> !supply.met())
                .map(supply -> supply.wantedId() + " " + amount(supply.shortage(), supply.unit()))
                .collect(Collectors.joining(", "));
        return lacking.isEmpty() ? "nothing is short" : "short: " + lacking;
    }

    /** Over the scale of those logs that are sawn and have a scale, so that both sides count the same logs. */
    private List<Fact> overruns() {
        List<Fact> facts = new ArrayList<>();
        for (LogPlan.Scaled rule : plan.logs().get(0).scales()) {
            double scale = 0;
            double tally = 0;
            int counted = 0;
            for (LogPlan log : plan.logs()) {
                Optional<BoardFeet> scaled = log.scales().stream()
                        .filter(one -> one.ruleId().equals(rule.ruleId()))
                        .findFirst()
                        .flatMap(LogPlan.Scaled::scale);
                if (log.sawing().isPresent() && scaled.isPresent()) {
                    scale += scaled.get().value();
                    tally += log.tally().value();
                    counted++;
                }
            }
            if (scale > 0) {
                double percent = Overrun.percent(BoardFeet.tally(tally), BoardFeet.scale(scale));
                facts.add(new Fact(
                        "Overrun over " + marked(rule.ruleName(), rule.standing()),
                        signed(percent) + " %",
                        "tally " + NumberText.fixed(tally, 0) + " bf over scale " + NumberText.fixed(scale, 0) + " bf, "
                                + counted + (counted == 1 ? " log" : " logs")));
            }
        }
        return facts;
    }

    private Section wanted() {
        PlanTable.Builder table = PlanTable.of("wanted", "Needed, to be sawn, sawn")
                .text("Wanted", "wanted")
                .text("What it is", "description")
                .text("Unit", "unit")
                .number("Needed", "needed")
                .number("To saw", "to-saw")
                .number("Sawn", "sawn")
                .number("Short", "short")
                .number("Surplus", "surplus")
                .text("Verdict", "verdict");
        for (Supply supply : plan.supply()) {
            int decimals = supply.unit().equals("pieces") ? 0 : 2;
            table.row(
                    Cell.text(supply.wantedId()),
                    Cell.text(supply.label()),
                    Cell.text(supply.unit()),
                    Cell.number(supply.wanted(), decimals),
                    Cell.number(supply.toSaw(), decimals),
                    Cell.number(supply.sawn(), decimals),
                    Cell.number(supply.shortage(), decimals),
                    Cell.number(supply.surplus(), decimals),
                    Cell.text(supply.met() ? "met" : "SHORT"));
        }
        JobPlan.Choice choice = plan.choice();
        boolean priced = choice.unit().equals(plan.input().currency());
        String share = NumberText.fixed(100 * choice.surplusShare(), 0) + " % of ";
        String better = "Which log gives what was chosen by this measure: what is needed counts "
                + (priced ? "its price bought" : "its board feet") + ", what is beyond the need " + share
                + (priced ? "it" : "them")
                + (priced
                        ? ", less fuel, oil and wear and " + NumberText.fixed(100 * Planner.OWN_HOURS_SHARE, 0)
                                + " % of the wage for sawing it"
                        : "; the cost of sawing is left out")
                + ". The choice comes to " + NumberText.fixed(choice.worth(), 2) + " " + choice.unit()
                + "; no other way to saw these logs, among the patterns that were looked at, comes to more than "
                + NumberText.fixed(choice.bound(), 2) + " " + choice.unit() + "."
                + (priced ? " What the job costs and saves stands under Money." : "")
                + searches(choice)
                + (choice.uncounted().isEmpty() ? "" : " " + uncounted());
        List<Block> blocks = new ArrayList<>(List.of(new Tabular(table.build())));
        List<String> free = plan.input().pricedAtNothing();
        if (!free.isEmpty()) {
            blocks.add(
                    new Prose("Nothing is sawn for " + String.join(", ", free) + ": the price in prices.csv is 0, and"
                            + " what costs nothing bought is worth no pass. Write what it would cost."));
        }
        blocks.add(new Prose(better));
        return new Section("wanted", "What is wanted", blocks);
    }

    private String searches(JobPlan.Choice choice) {
        if (choice.searches() == 1) {
            return "";
        }
        long lesser = plan.logs().stream()
                .filter(log -> log.sawing().isPresent() && !log.space().equals(choice.space()))
                .count();
        return " It is the best found by " + choice.searches()
                + " searches: one of all patterns that the job allows, the"
                + " others of less, since allowing more may lead such a search to less. "
                + (lesser == 0 ? "No log is" : lesser == 1 ? "One log is" : lesser + " logs are")
                + " sawn by a pattern from a search of less.";
    }

    private static Section cautions() {
        return new Section(
                "cautions",
                "Cautions",
                List.of(new Points(List.of(
                        "A plan is arithmetic. Shake, rot, knots, metal and tension in the wood show only in the log;"
                                + " look again after the first cut.",
                        "Lumber sawn here is not graded. Whether it may carry a building, and in what size, is for the"
                                + " local code and a licensed person to decide; nothing here is a design value.",
                        "A saw under load kicks, climbs and throws. Guards, chaps, helmet, gloves and eye protection;"
                                + " nobody in line with the chain or blade; somebody within call.",
                        "Milling with an engine means hours of noise and fumes: ear protection, wind from the side,"
                                + " never in a closed shed. Fine dust is a hazard to the lungs.",
                        "A green log can roll and weighs what the plan says: chock it on both sides, lift with levers"
                                + " and winch, keep feet and hands from under it.",
                        "Let the engine cool before the tank is filled; keep water or an extinguisher near."))));
    }

    private Section assumptions() {
        List<Block> blocks = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        for (JobPlan.Note note : plan.notes()) {
            words.sources().add(note.source());
            notes.add(
                    note.source().standing() == Standing.DERIVED
                                    || note.source().standing() == Standing.GIVEN
                            ? note.text()
                            : note.text() + " (" + note.source().citation() + ")");
        }
        blocks.add(new Points(notes));
        PlanTable.Builder table = PlanTable.of("assumptions", "What nobody gave and was taken instead")
                .text("What", "what")
                .text("Taken", "taken")
                .text("Range", "range")
                .text("Standing", "standing")
                .text("Rests on", "source");
        List<Derivation> workings = new ArrayList<>();
        plan.input().assumptions().forEach(one -> {
            words.sources().add(one.source());
            one.working().ifPresent(working -> workings.add(words.derivation(one.what(), working)));
            table.row(
                    Cell.text(one.what()),
                    Cell.text(one.taken()),
                    Cell.text(""),
                    Cell.text(one.source().standing().label()),
                    Cell.text(PlanWords.title(one.source())));
        });
        for (Map.Entry<WorkInput, InputValue> entry :
                plan.input().work().values().entrySet()) {
            InputValue value = entry.getValue();
            words.sources().add(value.source());
            if (!value.source().id().equals("user")) {
                String unit = entry.getKey().unit();
                table.row(
                        Cell.text(entry.getKey().label()),
                        Cell.text((PlanWords.value(value.value()) + " " + unit).strip()),
                        Cell.text(PlanWords.range(value.spread())),
                        Cell.text(value.source().standing().label()),
                        Cell.text(PlanWords.title(value.source())));
            }
        }
        blocks.add(new Tabular(table.build()));
        if (!workings.isEmpty()) {
            blocks.add(new Workings("How your own measurements were used", workings));
        }
        return new Section("models", "Models, and what was taken for granted", blocks);
    }

    private Section sources() {
        PlanTable.Builder table = PlanTable.of("sources", "What the figures of this plan rest on")
                .text("Standing", "standing")
                .text("Author or agency", "author")
                .text("Title", "title")
                .text("Edition", "edition")
                .text("Place", "place")
                .text("Key", "key");
        for (Source source : words.sources()) {
            table.row(
                    Cell.text(source.standing().label()),
                    Cell.text(source.author()),
                    Cell.text(source.title()),
                    Cell.text(source.edition()),
                    Cell.text(source.place()),
                    Cell.text(source.id()));
        }
        return new Section("sources", "Sources", List.of(new Tabular(table.build())));
    }
}
