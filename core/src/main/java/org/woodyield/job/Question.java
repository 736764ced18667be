package org.woodyield.job;

import java.util.List;
import java.util.Optional;
import org.woodyield.lumber.Product;
import org.woodyield.lumber.Product.Size;
import org.woodyield.lumber.Product.Surface;
import org.woodyield.lumber.Product.Wood;
import org.woodyield.measure.Length;
import org.woodyield.plan.JobInput;
import org.woodyield.plan.JobPlan;
import org.woodyield.plan.WhatIf;

/**
 * What is asked of one log of a plan.
 *
 * @param log its id
 * @param more a size that would be wanted beside the list, if one is named
 */
record Question(String log, Optional<Product> more) {

    static final String OPTION = "--size";

    private static final String FORM = "size, length, surface and moisture as in wanted.csv, with commas between:"
            + " 1x6, 8 ft, dressed dry, 15 %";

    /**
     * Reads a question.
     *
     * @param log the id of a log
     * @param size as the user wrote it, if a size is named
     * @return the question
     * @throws BadInputException with all that is wrong with the size
     */
    static Question read(String log, Optional<String> size) {
        Problems problems = new Problems();
        Optional<Product> more = size.flatMap(text -> product(new Cell(OPTION, 0, "", text, problems)));
        problems.stopIfAny();
        return new Question(log, more);
    }

    /**
     * The same question as it is asked of a job: the size has a name that nothing wanted there has.
     *
     * @throws org.woodyield.measure.OutOfDomainException if no plan of the job could answer it
     */
    Question of(JobInput job) {
        Optional<Product> named = more.map(size -> named(size, job));
        WhatIf.requireAnswerable(job, log, named);
        return new Question(log, named);
    }

    private static Product named(Product size, JobInput job) {
        String name = size.id();
        while (taken(name, job)) {
            name += " more";
        }
        return size.named(name);
    }

    private static boolean taken(String name, JobInput job) {
        return job.pieces().stream().anyMatch(piece -> piece.id().equals(name))
                || job.areas().stream().anyMatch(area -> area.id().equals(name))
                || job.naturalEdges().stream().anyMatch(board -> board.id().equals(name));
    }

    WhatIf answer(JobPlan plan) {
        return more.map(size -> WhatIf.of(plan, log, size)).orElseGet(() -> WhatIf.of(plan, log));
    }

    private static Optional<Product> product(Cell cell) {
        List<Cell> parts = cell.split(',');
        if (parts.size() != 4) {
            cell.refuse(
                    FORM,
                    (cell.text().indexOf(';') >= 0 ? "write commas, not semicolons; " : "") + "it has " + parts.size()
                            + (parts.size() == 1 ? " part" : " parts"));
            return Optional.empty();
        }
        Optional<Size> size = Sizes.size(parts.get(0));
        Optional<Length> length = parts.get(1).length(Sizes.SHORTEST, Sizes.LONGEST, Sizes.LENGTHS, Sizes.OTHER_LENGTH);
        Optional<Surface> surface = parts.get(2).choice(Choices.SURFACE);
        Optional<Double> moisture = Woods.moisture(parts.get(3), surface);
        if (size.isEmpty()
                || length.isEmpty()
                || surface.isEmpty()
                || moisture.isEmpty()
                || Sizes.finished(parts.get(0), size.get(), surface.get()).isEmpty()) {
            return Optional.empty();
        }
        String name = size.get().words() + ", " + parts.get(1).text() + ", "
                + surface.get().words();
        return Optional.of(
                new Product(name, size.get(), length.get(), 1, Wood.of(Wood.Kind.ANY), surface.get(), moisture.get()));
    }
}
