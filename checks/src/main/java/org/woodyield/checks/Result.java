package org.woodyield.checks;

/**
 * One row after the run.
 *
 * @param row what was checked
 * @param given the inputs in words
 * @param computed the computed value, or why there is none
 * @param difference computed less published, possibly empty
 * @param allowance what difference was allowed
 * @param verdict how it came out
 * @param why of a failure: what is wrong; otherwise empty
 */
record Result(
        CheckTable.Row row,
        String given,
        String computed,
        String difference,
        String allowance,
        Verdict verdict,
        String why) {

    boolean fails() {
        return verdict == Verdict.FAILS;
    }

    @Override
    public String toString() {
        return row.id() + " line " + row.line() + ": " + row.calculation() + " with " + given + ": published "
                + row.published() + ", computed " + computed + ", allowed " + allowance + ", " + verdict.label()
                + (why.isEmpty() ? "" : ": " + why);
    }
}
