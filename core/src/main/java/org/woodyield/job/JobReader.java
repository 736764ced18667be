package org.woodyield.job;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.woodyield.log.Log;
import org.woodyield.lumber.CoverArea;
import org.woodyield.lumber.FallDown;
import org.woodyield.lumber.NaturalEdge;
import org.woodyield.lumber.Product;
import org.woodyield.measure.Length;
import org.woodyield.plan.DryingYard;
import org.woodyield.plan.JobInput;
import org.woodyield.plan.JobInput.Assumption;
import org.woodyield.plan.JobInput.Price;
import org.woodyield.plan.KerfTooWide;
import org.woodyield.plan.Planner;
import org.woodyield.sawing.Saw;
import org.woodyield.sawing.SawGuide;
import org.woodyield.sawing.SearchSpace;
import org.woodyield.wood.NearestNames;
import org.woodyield.work.WorkInputs;

/** Reads a job folder, strictly and to its end: all that is wrong with it is told together. */
final class JobReader {

    private final Problems problems = new Problems();

    private JobReader() {}

    /**
     * Reads a job.
     *
     * @throws BadInputException with all that is wrong with it
     */
    static JobInput read(JobFiles files) throws IOException {
        return new JobReader().job(files);
    }

    private JobInput job(JobFiles files) throws IOException {
        Map<JobFile, String> texts = texts(files);
        SettingsReader settings = new SettingsReader(
                Settings.read(JobFile.JOB.fileName(), texts.getOrDefault(JobFile.JOB, ""), keys(texts), problems));
        if (!settings.formatIsKnown()) {
            problems.stopIfAny();
        }
        Optional<String> title = settings.title();
        Optional<String> currency = settings.currency();
        Optional<Saw> saw = settings.saw();
        Optional<SawGuide> guide = settings.guide();
        Optional<SearchSpace> space = settings.space();
        Optional<WorkInputs> work = settings.work();
        Optional<Length> planing = settings.planing();
        Optional<Double> undersize = settings.undersize();
        Optional<FallDown> fallDown = settings.fallDown();
        Optional<DryingYard> yard = settings.yard(fallDown.orElse(FallDown.NONE));
        LogTable logs = LogTable.read(
                rows(texts, JobFile.LOGS, LogTable.COLUMNS),
                ProfileTable.read(rows(texts, JobFile.PROFILES, ProfileTable.COLUMNS)));
        Names names = new Names();
        WantedTable wanted = WantedTable.read(rows(texts, JobFile.WANTED, WantedTable.COLUMNS), names);
        AreaTable areas = AreaTable.read(rows(texts, JobFile.AREAS, AreaTable.COLUMNS), names);
        NaturalEdgeTable naturalEdges =
                NaturalEdgeTable.read(rows(texts, JobFile.NATURAL_EDGE, NaturalEdgeTable.COLUMNS), names);
        TimedCutTable timed = TimedCutTable.read(rows(texts, JobFile.TIMED_CUTS, TimedCutTable.COLUMNS));
        List<Price> prices = PriceTable.read(rows(texts, JobFile.PRICES, PriceTable.COLUMNS));
        if (problems.isEmpty()) {
            requireSense(settings, saw, fallDown.orElse(FallDown.NONE), logs, wanted, areas, naturalEdges);
            work = Optional.of(timed.into(work.orElseThrow(), saw.orElseThrow(), problems));
        }
        // What is wrong with it by itself is told with the rest; it is read when there is a job to read it for.
        SawFile.check(JobFile.OTHER_SAW.fileName(), Optional.ofNullable(texts.get(JobFile.OTHER_SAW)), problems);
        problems.stopIfAny();
        List<Assumption> assumptions = new ArrayList<>(settings.assumptions());
        assumptions.addAll(logs.assumptions());
        assumptions.addAll(areas.assumptions());
        assumptions.addAll(timed.assumptions());
        JobInput job = new JobInput(
                title.orElseThrow(),
                currency.orElseThrow(),
                logs.logs(),
                wanted.pieces(),
                areas.areas(),
                naturalEdges.boards(),
                saw.orElseThrow(),
                guide.orElseThrow(),
                space.orElseThrow(),
                work.orElseThrow(),
                planing.orElseThrow(),
                undersize.orElseThrow(),
                yard.orElseThrow(),
                prices,
                Optional.empty(),
                assumptions);
        Optional<JobInput> withOther = Optional.ofNullable(texts.get(JobFile.OTHER_SAW))
                .flatMap(text -> SawFile.read(JobFile.OTHER_SAW.fileName(), text, job, problems));
        withOther
                .map(other -> other.saw().name())
                .filter(job.saw().name()::equals)
                .ifPresent(name ->
                        SawFile.refuseName(JobFile.OTHER_SAW.fileName(), name, JobFile.JOB.fileName(), problems));
        problems.stopIfAny();
        return job.withOtherSaw(withOther.map(other -> new JobInput.OtherSaw(other.saw(), other.work())));
    }

    /** What holds between values that are each right by themselves. */
    private void requireSense(
            SettingsReader settings,
            Optional<Saw> saw,
            FallDown fallDown,
            LogTable logTable,
            WantedTable wanted,
            AreaTable areas,
            NaturalEdgeTable naturalEdges) {
        List<Log> logs = logTable.logs();
        if (logs.isEmpty()) {
            problems.add(JobFile.LOGS.fileName(), 0, "", "", "one log or more", "add a row for each log");
        }
        if (wanted.pieces().isEmpty()
                && areas.areas().isEmpty()
                && naturalEdges.boards().isEmpty()) {
            problems.add(
                    JobFile.WANTED.fileName(),
                    0,
                    "",
                    "",
                    "one piece, area or board with natural edges or more",
                    "add a row for what you want");
        }
        saw.ifPresent(one ->
                refuseWideKerf(settings, one.kerf(), logs, wanted.pieces(), areas.areas(), naturalEdges.boards()));
        saw.flatMap(Planner::layoutRefusal).ifPresent(settings::refuseLayout);
        if (!logs.isEmpty()) {
            wanted.refuseImpossible(logs, fallDown);
            areas.refuseImpossible(logs, fallDown);
            naturalEdges.refuseImpossible(logs, fallDown);
            logTable.refuseUnknownShrinkage(species -> Stream.of(
                            wanted.dryMoistures(species),
                            areas.dryMoistures(species),
                            naturalEdges.dryMoistures(species))
                    .flatMap(List::stream)
                    .toList());
        }
    }

    /** Notes that a kerf does not suit the job. */
    static void refuseWideKerf(
            SettingsReader settings,
            Length kerf,
            List<Log> logs,
            List<Product> pieces,
            List<CoverArea> areas,
            List<NaturalEdge> naturalEdges) {
        KerfTooWide.of(kerf, logs, pieces, areas, naturalEdges).ifPresent(reason -> {
            if (reason.ofLog()) {
                settings.refuseKerf(reason.id());
            } else {
                settings.refuseKerfOver(reason.id(), reason.thickness().toString());
            }
        });
    }

    /** The keys; none is missed in a file that could not be read. */
    private static List<Key> keys(Map<JobFile, String> texts) {
        return texts.containsKey(JobFile.JOB) ? Keys.all() : List.of();
    }

    private List<Table.Row> rows(Map<JobFile, String> texts, JobFile file, List<Table.Column> columns) {
        return texts.containsKey(file) ? Table.read(file.fileName(), texts.get(file), columns, problems) : List.of();
    }

    private Map<JobFile, String> texts(JobFiles files) throws IOException {
        Map<JobFile, String> texts = new LinkedHashMap<>();
        List<String> names = files.names().stream()
                .filter(name -> !JobFile.names().contains(name))
                .toList();
        for (JobFile file : JobFile.values()) {
            Optional<byte[]> bytes = files.bytes(file.fileName());
            List<String> likely = bytes.isPresent() ? List.of() : NearestNames.to(file.fileName(), names);
            if (bytes.isPresent()) {
                FileText.decode(file.fileName(), bytes.get(), problems).ifPresent(text -> texts.put(file, text));
            } else if (file.required() || !likely.isEmpty()) {
                problems.add(
                        file.fileName(),
                        0,
                        "",
                        "",
                        "a job folder with " + JobFile.words(),
                        likely.isEmpty()
                                ? "the file is missing; woodyield new-job writes an example"
                                : "the file is missing; rename " + String.join(" or ", likely));
            }
        }
        return texts;
    }
}
