package org.woodyield.job;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.plan.JobInput;
import org.woodyield.plan.JobPlan;
import org.woodyield.plan.Planner;
import org.woodyield.show.IdleOffsets;
import org.woodyield.show.PlanSheet;
import org.woodyield.show.PlanTable;
import org.woodyield.source.Source;

/**
 * What a plan is shown as.
 *
 * @param sheet the plan laid out
 */
record Outputs(PlanSheet sheet) {

    private static final String PAGE = "plan.html";

    /** A short run is spent on compiling the program, for which threads leave too little room. */
    private static final int WORTH_THREADS = 24;

    /** The names of all files that a plan may be written as. */
    static final Set<String> FILES = Stream.concat(
                    Stream.of(PAGE), PlanSheet.TABLE_NAMES.stream().map(Outputs::tableFile))
            .collect(Collectors.toUnmodifiableSet());

    /** Plans a job and lays the plan out, if wanted with what one log would give if one thing were otherwise. */
    static Outputs of(JobInput job, Source origin, Optional<Question> whatIf, BiConsumer<Integer, Integer> progress) {
        JobPlan plan = planned(job, " in " + JobFile.JOB.fileName(), progress);
        PlanSheet sheet = PlanSheet.of(plan, origin);
        return new Outputs(
                whatIf.map(question -> sheet.with(question.answer(plan))).orElse(sheet));
    }

    /** The plan for the terminal. */
    String text() {
        return sheet.text();
    }

    /** Name to content, for a folder: a page, and each table of the plan. */
    Map<String, byte[]> files() {
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put(PAGE, sheet.html().getBytes(StandardCharsets.UTF_8));
        for (PlanTable table : sheet.tables()) {
            files.put(tableFile(table.name()), csv(table));
        }
        if (!FILES.containsAll(files.keySet())) {
            throw new IllegalStateException("a plan has files beyond " + FILES + ": " + files.keySet());
        }
        return files;
    }

    /**
     * Plans a job.
     *
     * @param saw where the saw is described
     */
    static JobPlan planned(JobInput job, String saw, BiConsumer<Integer, Integer> progress) {
        try {
            return planned(job, progress);
        } catch (OutOfDomainException e) {
            throw e.parameter().equals(Planner.WIDTH)
                    ? new OutOfDomainException(
                            e.parameter(),
                            e.value(),
                            e.unit(),
                            e.limits(),
                            "check " + Keys.SAW_WIDTH.text() + saw + "; or " + e.remedy())
                    : e;
        }
    }

    private static JobPlan planned(JobInput job, BiConsumer<Integer, Integer> progress) {
        if (job.logs().size() < WORTH_THREADS) {
            return Planner.plan(job, progress, Runnable::run);
        }
        ExecutorService executor =
                Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
        try {
            return Planner.plan(job, progress, executor);
        } finally {
            executor.shutdownNow();
        }
    }

    /** What was read, in one line. */
    static String summary(JobInput job) {
        return job.title() + ": " + counted(job.logs().size(), "log", "logs") + ", "
                + counted(job.pieces().size(), "kind of pieces", "kinds of pieces") + ", "
                + counted(job.areas().size(), "area", "areas") + ", "
                + (job.naturalEdges().isEmpty()
                        ? ""
                        : counted(job.naturalEdges().size(), "kind", "kinds") + " with natural edges, ")
                + counted(job.prices().size(), "price", "prices")
                + "; no problem found in the files; whether the saw can cut each log is seen only in planning\n"
                + searches(job)
                + job.otherKerfTooWide()
                        .map(why -> "The other saw would be left out of the plan, " + why + "\n")
                        .orElse("")
                + IdleOffsets.of(job).stream().map(words -> words + "\n").collect(Collectors.joining());
    }

    /** Of a plan that takes longer, since it is sought with less allowed too. */
    private static String searches(JobInput job) {
        int searches = Planner.searches(job);
        return searches == 1
                ? ""
                : "With " + job.saw().name() + " it is planned by " + searches
                        + " searches, 1 of all patterns that the job allows and " + (searches - 1) + " of less\n";
    }

    private static String counted(int count, String one, String several) {
        return count + " " + (count == 1 ? one : several);
    }

    /** Not a name that a file of a job has, so that a plan is never taken for one. */
    private static String tableFile(String name) {
        return "plan-" + name + ".csv";
    }

    /** A table as a file. */
    static byte[] csv(PlanTable table) {
        OutputTable out = new OutputTable(
                table.columns().stream().map(PlanTable.Column::key).toArray(String[]::new));
        for (List<PlanTable.Cell> cells : table.rows()) {
            OutputTable.Row row = out.row();
            for (PlanTable.Cell cell : cells) {
                if (cell.text()) {
                    row.text(cell.shown());
                } else if (cell.value().isPresent()) {
                    row.number(cell.value().get(), cell.decimals());
                } else {
                    row.empty();
                }
            }
        }
        return out.bytes();
    }
}
