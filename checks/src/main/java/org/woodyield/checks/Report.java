package org.woodyield.checks;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes a run as CSV and as a few closing lines. */
final class Report {

    private Report() {}

    /** Writes {@code checks.csv}, {@code counts.csv} and the course sheet {@code course.md} into a folder, which is made if need be. */
    static void write(Run run, Path folder) throws IOException {
        Files.createDirectories(folder);
        try (CsvWriter csv = CsvWriter.builder().build(folder.resolve("checks.csv"))) {
            csv.writeRecord(
                    "id",
                    "calculation",
                    "kind",
                    "standing",
                    "source",
                    "given",
                    "published",
                    "computed",
                    "difference",
                    "allowance",
                    "verdict");
            for (Result result : run.results()) {
                CheckTable.Row row = result.row();
                csv.writeRecord(
                        row.id(),
                        row.calculation(),
                        row.kind().label(),
                        row.source().standing().label(),
                        row.source().id(),
                        result.given(),
                        row.published(),
                        result.computed(),
                        result.difference(),
                        result.allowance(),
                        result.verdict().label());
            }
        }
        Files.writeString(folder.resolve("course.md"), CourseSheet.read().markdown());
        try (CsvWriter csv = CsvWriter.builder().build(folder.resolve("counts.csv"))) {
            csv.writeRecord("kind", "standing", "verdict", "rows");
            run.counts()
                    .forEach((sort, rows) -> csv.writeRecord(
                            sort.kind().label(),
                            sort.standing().label(),
                            sort.verdict().label(),
                            rows.toString()));
        }
    }

    /** Problems and failed rows first, then the counts; they are of different kinds and are not added up. */
    static String closing(Run run) {
        StringBuilder lines = new StringBuilder();
        run.problems().forEach(problem -> lines.append(problem).append('\n'));
        run.results().stream()
                .filter(Result::fails)
                .forEach(result -> lines.append(result).append('\n'));
        run.counts()
                .forEach((sort, rows) -> lines.append(sort.kind().label())
                        .append(", ")
                        .append(sort.standing().label())
                        .append(": ")
                        .append(rows)
                        .append(' ')
                        .append(sort.verdict().label())
                        .append('\n'));
        return lines.toString();
    }
}
